#include "clinicfixture.h"

#include "record/sqlite.h"

#include <chrono>
#include <csignal>
#include <fmt/format.h>
#include <poll.h>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace rhizograph::testing {
namespace {

constexpr int kills = 300;
constexpr int killsPerClinic = 10; // one recovery after another on the same file

/// A process that taps, with the end of the pipe on which it acknowledges.
class Tapper {
public:
    Tapper(const std::filesystem::path& clinic, const VisitId& visit, int first) {
        std::array<int, 2> ends{};
        if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
        process_ = ::fork();
        if (process_ == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::close(ends[1]);
            const std::string number = std::to_string(first);
            ::execl(RECORD_TAPPER, RECORD_TAPPER, clinic.c_str(), visit.text().c_str(), passphrase,
                    number.c_str(), nullptr);
            std::_Exit(127);
        }
        ::close(ends[1]);
        acknowledgements_ = ends[0];
    }
    ~Tapper() {
        if (acknowledgements_ >= 0) ::close(acknowledgements_);
    }
    Tapper(const Tapper&) = delete;
    Tapper& operator=(const Tapper&) = delete;

    /// Whether it acknowledges something before the time is over.
    [[nodiscard]] bool taps(std::chrono::milliseconds limit) const {
        pollfd waiting{acknowledgements_, POLLIN, 0};
        return ::poll(&waiting, 1, static_cast<int>(limit.count())) == 1 && (waiting.revents & POLLIN) != 0;
    }

    /// Kills it; the last number it acknowledged, or `none`.
    int kill(int none) {
        ::kill(process_, SIGKILL);
        std::string said;
        std::array<char, 4096> part{};
        for (ssize_t count = 0; (count = ::read(acknowledgements_, part.data(), part.size())) > 0;)
            said.append(part.data(), static_cast<std::size_t>(count));
        int status = 0;
        ::waitpid(process_, &status, 0);
        killed_ = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
        // A line that was cut off by the kill was not acknowledged whole.
        said.resize(said.rfind('\n') == std::string::npos ? 0 : said.rfind('\n'));
        return said.empty()
                   ? none
                   : std::stoi(said.substr(said.rfind('\n') == std::string::npos ? 0 : said.rfind('\n') + 1));
    }
    /// It was still alive when killed: had it given up by itself, the try would prove nothing.
    [[nodiscard]] bool wasAlive() const { return killed_; }

private:
    pid_t process_ = -1;
    int acknowledgements_ = -1;
    bool killed_ = false;
};

class ACrash : public Clinic {
protected:
    ACrash() : Clinic(Folder::Place::disk) {}

    /// The number of the last tap that is in the record, when all up to it are there and whole; else -1.
    int lastTap(const VisitId& visit) {
        int last = 0;
        int parts = 0; // of a change of five
        for (const FindingEvent& event : need(store->eventsAfter(visit, 0))) {
            const int number = static_cast<int>(event.finding->value.number());
            if (parts > 0 && number != last) return -1;
            if (parts == 0 && number != last + 1) return -1;
            parts = number % 7 == 0 ? (parts + 1) % 5 : 0;
            last = number;
        }
        return parts == 0 ? last : -1;
    }

    [[nodiscard]] bool intact() const {
        sqlite::Database database{file, 1000};
        return database.first("pragma integrity_check")->text(0) == "ok";
    }
};

TEST_F(ACrash, AtAnyMomentLosesNoAcknowledgedTap) {
    const auto seed = static_cast<unsigned>(std::chrono::steady_clock::now().time_since_epoch().count());
    SCOPED_TRACE(fmt::format("seed {}", seed));
    std::mt19937 random{seed};
    const Patient patient = somebody();
    VisitId visit;
    int acknowledged = 0;
    int inRecord = 0;
    long total = 0;
    int unacknowledgedButSaved = 0;
    int whileOpening = 0;
    for (int i = 0; i < kills; ++i) {
        if (i % killsPerClinic == 0) {
            visit = need(store->addVisit(patient.id, "2026-03-04")).id;
            inRecord = 0;
        }
        store.reset(); // the last connection leaves no log behind, so opening is part of what may be killed
        Tapper tapper{file, visit, inRecord + 1};
        // One in five is killed while it opens the clinic, replays the log or signs in; the others while
        // tapping.
        const bool early = i % 5 == 0;
        if (!early) {
            ASSERT_TRUE(tapper.taps(std::chrono::seconds{20})) << "the tapper did not start";
        }
        std::this_thread::sleep_for(std::chrono::microseconds{random() % (early ? 25'000 : 60'000)});
        acknowledged = tapper.kill(inRecord);
        ASSERT_TRUE(tapper.wasAlive());
        ASSERT_TRUE(intact()) << "kill " << i;
        store = signedIn("Ada Thornfield");
        const int saved = lastTap(visit);
        ASSERT_GE(saved, acknowledged) << "kill " << i << ": acknowledged taps are lost or a change is torn";
        // Taps are acknowledged one by one, so at most one can be saved without anybody having been told.
        ASSERT_LE(saved, acknowledged + 1) << "kill " << i;
        total += acknowledged - inRecord;
        unacknowledgedButSaved += saved - acknowledged;
        whileOpening += acknowledged == inRecord ? 1 : 0;
        inRecord = saved;
    }
    EXPECT_GT(total, kills) << "hardly anything was tapped: the test proves little";
    const Verification whole = need(store->verify());
    EXPECT_TRUE(whole.sound());
    fmt::print(
        "crash: {} kills ({} before the first tap), {} taps acknowledged, 0 lost, 0 files damaged, {} saved "
        "without the acknowledgement having been read; {} events verified\n",
        kills, whileOpening, total, unacknowledgedButSaved, whole.events);
}

} // namespace
} // namespace rhizograph::testing
