#include "clinicfixture.h"
#include "disk.h"

#include "record/sqlite.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace rhizograph::testing {
namespace {

constexpr int cuts = 200;

/// The clinic is opened through the watched disk only after it was made.
class APowerCut : public Clinic {
protected:
    APowerCut() {
        visit = someVisit().id;
        store.reset();
        disk = std::make_unique<WatchedDisk>(folder.path());
        store = signedIn("Ada Thornfield");
    }
    ~APowerCut() override {
        store.reset();
        disk.reset();
    }

    void tap(int number) {
        need(store->record(visit,
                           {{{ItemId{"single"}, Side::left}, Finding{Value::number(number), false, ""}}}));
    }

    [[nodiscard]] std::filesystem::path left() const { return folder.path() / "left"; }

    void cutPower() {
        std::filesystem::remove_all(left());
        std::filesystem::create_directory(left());
        disk->cutPower(left(), random);
    }

    /// The last tap that the files after a cut hold, when all before it are there and nothing is damaged;
    /// else -1.
    int survivors() {
        const std::filesystem::path clinic = left() / "clinic.rhz";
        {
            sqlite::Database database{clinic, 100};
            if (database.first("pragma integrity_check")->text(0) != "ok") return -1;
        }
        auto opened = need(openClinic(clinic, options));
        need(opened->signIn(need(opened->users()).front().id, passphrase));
        if (!need(opened->verify()).sound()) return -1;
        int last = 0;
        for (const FindingEvent& event : need(opened->eventsAfter(visit, 0)))
            if (static_cast<int>(event.finding->value.number()) != ++last) return -1;
        return last;
    }

    VisitId visit;
    std::unique_ptr<WatchedDisk> disk;
    std::mt19937 random{20260304};
};

TEST_F(APowerCut, AfterAnAcknowledgedTapTakesNothingOfIt) {
    std::size_t atRisk = 0;
    for (int number = 1; number <= cuts; ++number) {
        tap(number);
        atRisk += disk->pending();
        cutPower();
        ASSERT_EQ(survivors(), number) << "-1: damaged; else how many of the acknowledged taps are left";
    }
    EXPECT_GE(disk->syncs(), cuts) << "a tap was acknowledged without any synchronization";
    fmt::print(
        "power cut right after a tap: {0} cuts, {0} with every acknowledged tap and a sound record; {1} "
        "unsynchronized writes were at stake, {2} synchronizations\n",
        cuts, atRisk, disk->syncs());
}

TEST_F(APowerCut, InTheMiddleOfATapLeavesAllOfItOrNothing) {
    int whole = 0;
    int nothing = 0;
    std::size_t atRisk = 0;
    for (int number = 1; number <= cuts; ++number) {
        bool cut = false;
        auto left = random() % 24; // how many writes and synchronizations go well before
        const auto maybeCut = [&](const std::string&, std::size_t) {
            if (!cut && left-- == 0) {
                atRisk += disk->pending();
                cutPower();
                cut = true;
            }
            return SQLITE_OK;
        };
        disk->setWriteFault(maybeCut);
        disk->setSyncFault(maybeCut);
        tap(number);
        disk->setWriteFault({});
        disk->setSyncFault({});
        if (!cut) continue;
        const int last = survivors();
        ASSERT_GE(last, number - 1) << "-1: damaged; else an acknowledged tap is lost";
        (last == number ? whole : nothing) += 1;
    }
    EXPECT_GT(nothing + whole, cuts / 2) << "the cut hardly ever came within the tap";
    EXPECT_GT(atRisk, static_cast<std::size_t>(cuts)) << "hardly anything was unsynchronized";
    fmt::print("power cut within a tap: {} cuts, {} unsynchronized writes at stake: {} left nothing of the "
               "tap, {} all of "
               "it, 0 a part, 0 lost an earlier one\n",
               nothing + whole, atRisk, nothing, whole);
}

} // namespace
} // namespace rhizograph::testing
