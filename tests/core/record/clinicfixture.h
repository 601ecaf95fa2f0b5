#pragma once

#include "record/store.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <string>
#include <unistd.h>

namespace rhizograph::testing {

constexpr const char* passphrase = "correct horse";

/// A folder that is removed at the end of the test.
class Folder {
public:
    enum class Place {
        memory, ///< in memory where the system has such a place: waits for no disk
        disk
    };
    explicit Folder(Place place = Place::memory) {
        const std::filesystem::path memory = "/dev/shm";
        const bool inMemory = place == Place::memory && ::access(memory.c_str(), W_OK) == 0;
        std::string pattern =
            ((inMemory ? memory : std::filesystem::temp_directory_path()) / "rhizograph-record-XXXXXX")
                .string();
        if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder");
        path_ = pattern;
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

/// Time that stands still until told otherwise.
struct StoppedClock {
    std::shared_ptr<TimePoint> time = std::make_shared<TimePoint>(
        std::chrono::sys_days{std::chrono::year{2026} / 3 / 4} + std::chrono::hours{9});
    [[nodiscard]] Clock clock() const {
        return [time = time] { return *time; };
    }
    void pass(std::chrono::seconds seconds) const { *time += seconds; }
};

inline std::string reasons(const Problems& problems) {
    std::string out;
    for (const Problem& problem : problems)
        out += problem.text() + "\n";
    return out;
}

template <class T> T need(Result<T> result) {
    if (!result) throw std::runtime_error(reasons(result.problems()));
    return std::move(result).value();
}

inline void need(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(reasons(outcome.problems()));
}

inline std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline FindingChange token(const std::string& item, Side side, const std::string& value, bool bulk = false) {
    return {{ItemId{item}, side}, Finding{Value::token(value), bulk, ""}};
}

/// A clinic in a folder of its own with an administrator signed in, whose time stands still.
class Clinic : public ::testing::Test {
protected:
    explicit Clinic(Folder::Place place = Folder::Place::memory) : folder(place) {
        options.clock = time.clock();
        options.cost = KeyCost::cheapest();
        options.busyMilliseconds = 50;
        need(createClinic(file, "Clinic of the Nine Bridges",
                          {"Ada Thornfield", Role::administrator, passphrase}, options));
        store = signedIn("Ada Thornfield");
    }

    std::unique_ptr<Store> signedIn(const std::string& userName) {
        auto opened = need(openClinic(file, options));
        for (const User& user : need(opened->users()))
            if (user.name == userName) need(opened->signIn(user.id, passphrase));
        if (!opened->signedIn()) throw std::runtime_error("no such user: " + userName);
        return opened;
    }

    std::unique_ptr<Store> signedInAs(Role role) {
        const std::string userName = "The " + std::string{name(role)};
        need(store->addUser(userName, role, passphrase));
        return signedIn(userName);
    }

    Patient somebody(const std::string& patientName = "Quillon Fernwhistle",
                     const std::string& number = "Q-1077") {
        return need(store->addPatient(
            {patientName, number, "1961-05-30", "male", "Harbor Lane 9", "prefers mornings"}));
    }

    Visit someVisit() { return need(store->addVisit(somebody().id, "2026-03-04")); }

    Folder folder;
    std::filesystem::path file = folder.path() / "clinic.rhz";
    StoppedClock time;
    ClinicOptions options;
    std::unique_ptr<Store> store;
};

} // namespace rhizograph::testing
