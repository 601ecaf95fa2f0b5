// What goes wrong with the disk under an open program: said in a sentence, nothing lost, and the way out
// works.
#include "windowfixture.h"

#include "window/noticebar.h"
#include "window/patientstrip.h"
#include "window/problempage.h"

#include <csignal>
#include <fstream>
#include <random>
#include <sys/mount.h>
#include <sys/resource.h>

namespace rhizograph::app::testing {
namespace {

namespace fs = std::filesystem;

/// A small disk of its own where the system allows one, otherwise a limit on the size of files.
class SmallDisk {
public:
    explicit SmallDisk(fs::path folder) : folder_(std::move(folder)) {
        mounted_ = ::mount("tmpfs", folder_.c_str(), "tmpfs", 0, "size=8m,mode=0700") == 0;
    }
    ~SmallDisk() {
        makeRoom();
        if (mounted_) ::umount2(folder_.c_str(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

    [[nodiscard]] bool real() const { return mounted_; }
    void fill() {
        if (mounted_) {
            std::ofstream filler(folder_ / "filler", std::ios::binary);
            const std::string block(4096, 'x');
            while (filler.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
            }
            return;
        }
        before_ = ::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &limit_);
        rlimit none = limit_;
        none.rlim_cur = 1;
        limited_ = ::setrlimit(RLIMIT_FSIZE, &none) == 0;
    }
    void makeRoom() {
        std::error_code ignored;
        if (mounted_) fs::remove(folder_ / "filler", ignored);
        if (!limited_) return;
        ::setrlimit(RLIMIT_FSIZE, &limit_);
        ::signal(SIGXFSZ, before_);
        limited_ = false;
    }
    bool protect(bool on) {
        if (!mounted_) return false;
        return ::mount("tmpfs", folder_.c_str(), "tmpfs", on ? MS_REMOUNT | MS_RDONLY : MS_REMOUNT,
                       "size=8m") == 0;
    }

private:
    fs::path folder_;
    bool mounted_ = false;
    bool limited_ = false;
    rlimit limit_{};
    void (*before_)(int) = SIG_DFL;
};

class FaultTest : public ::testing::Test {
protected:
    void begin() {
        clinic.options.busyMilliseconds = 50;
        clinic.create();
        visit = inventDay(*clinic.opened());
    }
    std::unique_ptr<MainWindow> openWindow() const {
        auto window = clinic.window();
        window->openDatabase();
        window->show();
        return window;
    }
    AppClinic clinic;
    VisitId visit;
};

TEST_F(FaultTest, AFullDiskIsSaidAndEveryTapIsSavedOnceThereIsRoom) {
    SmallDisk disk(clinic.file().parent_path());
    begin();
    auto window = openWindow();
    signIn(*window);
    window->openVisitById(visit);
    VisitPage& page = *window->visitPage();
    disk.fill();
    const std::vector<const char*> values{"0", "1", "2", "3"};
    for (const char* value : values)
        Finger(page).record({ItemId{"reflex.knee"}, Side::left}, Value::token(value));
    ASSERT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::failing; }));
    const QString said = page.saveNotice().text();
    EXPECT_TRUE(said.contains("full") || said.contains("did not accept")) << said.toStdString();
    EXPECT_TRUE(said.contains("kept here")) << said.toStdString();
    disk.makeRoom();
    pressButton(page.saveNotice(), "Try again");
    ASSERT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::saved; }));
    const auto past = need(window->store()->history(visit, {ItemId{"reflex.knee"}, Side::left}));
    ASSERT_GE(past.size(), values.size());
    for (std::size_t i = 0; i < values.size(); ++i)
        EXPECT_EQ(past[past.size() - values.size() + i].finding->value, Value::token(values[i]));
    EXPECT_TRUE(need(window->store()->verify()).sound());
}

TEST_F(FaultTest, AFullDiskIsNoReasonToLoseWhatIsSavedElsewhere) {
    SmallDisk disk(clinic.file().parent_path());
    begin();
    auto window = openWindow();
    signIn(*window);
    window->openVisitById(visit);
    VisitPage& page = *window->visitPage();
    const QTemporaryDir elsewhere;
    const fs::path copy = fs::path(elsewhere.path().toStdString()) / "rest.unsaved";
    if (!disk.real()) return; // the limit holds for every disk
    disk.fill();
    Finger(page).record({ItemId{"reflex.knee"}, Side::left}, Value::token("0"));
    ASSERT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::failing; }));
    answerFileDialog(copy);
    pressButton(page.saveNotice(), "Save a copy …");
    EXPECT_TRUE(fs::exists(copy));
    disk.makeRoom();
    // The tap, and with it what the list of patients who need a look is to say of the visit.
    EXPECT_GE(need(clinic.opened()->replayUnsaved(copy)), 1);
    EXPECT_EQ(need(clinic.opened()->exam(visit)).find("reflex.knee", Side::left)->value, Value::token("0"));
}

TEST_F(FaultTest, AReadOnlyPlaceIsSaidAndOpensOnceItMayBeWritten) {
    SmallDisk disk(clinic.file().parent_path());
    begin();
    if (!disk.protect(true)) {
        if (::getuid() == 0) return; // whoever may write everywhere meets no such place
        ::chmod(clinic.file().c_str(), 0400);
    }
    auto window = openWindow();
    ASSERT_EQ(window->screen(), &window->problemPage());
    EXPECT_TRUE(window->problemPage().text().contains("read-only"))
        << window->problemPage().text().toStdString();
    if (!disk.protect(false)) ::chmod(clinic.file().c_str(), 0600);
    pressButton(window->problemPage(), "Try again");
    ASSERT_EQ(window->screen(), &window->signInPage());
    signIn(*window);
    EXPECT_FALSE(need(window->store()->exam(visit)).findings().empty());
}

TEST_F(FaultTest, AClinicAnotherProgramDoesNotLetGoOfIsSaidAndOpensLater) {
    begin();
    auto other = std::make_unique<OtherProgram>(clinic.file());
    other->run("pragma locking_mode = exclusive");
    other->run("begin exclusive");
    auto window = openWindow();
    ASSERT_EQ(window->screen(), &window->problemPage());
    EXPECT_TRUE(window->problemPage().text().contains("another program", Qt::CaseInsensitive))
        << window->problemPage().text().toStdString();
    other.reset();
    pressButton(window->problemPage(), "Try again");
    ASSERT_EQ(window->screen(), &window->signInPage());
    signIn(*window);
    EXPECT_FALSE(need(window->store()->exam(visit)).findings().empty());
}

TEST_F(FaultTest, RandomBytesAndOtherDatabasesAreSaidAndLeftAsTheyAre) {
    std::mt19937 random{41};
    const auto bytesOf = [this] {
        std::ifstream in(clinic.file(), std::ios::binary);
        return std::string{std::istreambuf_iterator<char>(in), {}};
    };
    const auto expectSaid = [&] {
        const std::string bytes = bytesOf();
        auto window = openWindow();
        ASSERT_EQ(window->screen(), &window->problemPage());
        EXPECT_TRUE(window->problemPage().text().trimmed().endsWith('.'))
            << window->problemPage().text().toStdString();
        window.reset();
        EXPECT_EQ(bytesOf(), bytes);
    };
    for (int i = 0; i < 12; ++i) {
        std::string bytes(1 + random() % 20'000, '\0');
        for (char& byte : bytes)
            byte = static_cast<char>(random());
        if (i % 3 == 0) bytes.replace(0, std::min<std::size_t>(16, bytes.size()), "SQLite format 3\0", 16);
        std::ofstream(clinic.file(), std::ios::binary | std::ios::trunc) << bytes;
        expectSaid();
    }
    fs::remove(clinic.file());
    {
        OtherProgram(clinic.file())
            .run("create table letter (text text); insert into letter values ('Dear')");
    }
    expectSaid();
}

} // namespace
} // namespace rhizograph::app::testing
