#include "invented.h"

#include "record/sqlite.h"
#include "record/sqlstore.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <fmt/format.h>
#include <random>

namespace rhizograph::bench {
namespace {

/// Passes everything on, but commits only now and then.
class Batching final : public sql::Connection {
public:
    explicit Batching(std::unique_ptr<sqlite::Database> database) : database_(std::move(database)) {
        // Nobody else looks at the file yet, and one that is not finished is thrown away.
        database_->script(
            "pragma locking_mode = exclusive; pragma journal_mode = off; pragma synchronous = off;"
            "pragma cache_size = -2000000; pragma foreign_keys = off;");
        database_->begin();
    }
    ~Batching() override { database_->commit(); }

    void each(const std::string& statement, const sql::Parameters& parameters,
              const std::function<bool(const sql::Row&)>& use) override {
        database_->each(statement, parameters, use);
    }
    void begin() override {}
    void beginReading() override {}
    void commit() override {
        if (++commits_ % 5000 != 0) return;
        database_->commit();
        database_->begin();
    }
    // There is nothing to fall back to but the last real commit, so what is being made is worth nothing.
    void rollback() noexcept override { std::terminate(); }
    std::optional<std::string> structuralDamage() override { return database_->structuralDamage(); }
    void purge() noexcept override {}
    std::int64_t changeCounter() override { return database_->changeCounter(); }
    [[nodiscard]] std::unique_ptr<sql::Connection> duplicate() const override {
        return database_->duplicate();
    }
    void copyInto(const std::filesystem::path& file) override { database_->copyInto(file); }
    [[nodiscard]] std::unique_ptr<sql::Connection> another(const std::filesystem::path& file) const override {
        return database_->another(file);
    }
    [[nodiscard]] std::string place() const override { return database_->place(); }

private:
    std::unique_ptr<sqlite::Database> database_;
    std::int64_t commits_ = 0;
};

const std::array values{"0", "1", "2", "3", "4", "5"};

ClinicOptions cheap() {
    ClinicOptions options;
    options.cost = KeyCost::cheapest();
    return options;
}

/// Six of a kind: names as long as those of the catalogue.
ItemId inventedItem(int number) {
    static const std::array kinds{"strength", "touch", "reflex", "pinprick", "tension", "palpation"};
    static const std::array ones{"one", "two", "three", "four", "five", "six"};
    const auto place = static_cast<std::size_t>(number);
    return ItemId{fmt::format("{}.{}", kinds[place / ones.size() % kinds.size()], ones[place % ones.size()])};
}

std::string dayText(int number) {
    const std::chrono::sys_days day =
        std::chrono::sys_days{std::chrono::year{2016} / 1 / 4} + std::chrono::days{number};
    return utcDate(day);
}

void signIn(Store& store) {
    for (const User& user : need(store.users()))
        if (user.name == administrator) need(store.signIn(user.id, passphrase));
}

void fill(Store& store, const PatientId& patient, int number, int findings, std::mt19937& random) {
    const Visit visit = need(store.addVisit(patient, dayText(number % 3650)));
    std::vector<FindingChange> changes;
    for (int i = 0; i < findings; ++i)
        changes.push_back({{inventedItem(i / 2), i % 2 == 0 ? Side::left : Side::right},
                           Finding{Value::token(values[random() % values.size()]), random() % 3 == 0, ""}});
    need(store.record(visit.id, changes));
    if (number % 10 != 0) need(store.sign(visit.id, "knowledge-1"));
}

} // namespace

std::string inventedName(int number) {
    static const std::array beginnings{"Ald",  "Bry", "Cor", "Del", "Esk", "Fen", "Gar", "Hol",
                                       "Isk",  "Jor", "Kel", "Lor", "Mar", "Nor", "Osk", "Pel",
                                       "Quin", "Ros", "Syl", "Tam", "Und", "Ver", "Wyn", "Zel"};
    static const std::array endings{"ina", "ric", "wen", "dan",  "mund", "ette",
                                    "ias", "olf", "ara", "bert", "isse", "ova"};
    static const std::array houses{"Thorn", "Ash",   "Fern", "Stone",  "Brook", "Heath", "Marsh",
                                   "Oak",   "Raven", "Wool", "Salt",   "Mill",  "Cop",   "Winter",
                                   "Black", "High",  "Long", "Nether", "Over",  "Under"};
    static const std::array places{"field", "bury",  "ley",   "mere",  "ford",   "gate",    "wick",
                                   "combe", "hurst", "stead", "worth", "bridge", "whistle", "grove"};
    auto rest = static_cast<std::size_t>(number);
    const auto pick = [&](const auto& from) {
        const char* word = from[rest % from.size()];
        rest /= from.size();
        return word;
    };
    std::string name = pick(beginnings);
    name += pick(endings);
    name += " ";
    name += pick(houses);
    name += pick(places);
    return rest == 0 ? name : name + fmt::format("-{}", pick(houses));
}

void inventClinic(const std::filesystem::path& file, const Size& size,
                  const std::function<void(int)>& progress) {
    need(createClinic(file, "Invented clinic", {administrator, Role::administrator, passphrase}, cheap()));
    auto database = std::make_unique<sqlite::Database>(file, 2000);
    database->prepareForWriting();
    SqlStore store{std::make_unique<Batching>(std::move(database)), cheap()};
    signIn(store);
    std::mt19937 random{1};
    std::vector<PatientId> patients;
    for (int i = 1; i < size.patients; ++i)
        patients.push_back(
            need(store.addPatient({inventedName(i), fmt::format("R-{:07}", i), dayText(-(i * 37) % 20'000),
                                   "other", "Invented Lane " + std::to_string(i), ""}))
                .id);
    const PatientId patient =
        need(store.addPatient({longHistoryName, "R-0000000", "1950-05-05", "other", "", ""})).id;
    for (int i = 0; i < longHistory; ++i)
        fill(store, patient, i * 31, size.findings, random);
    for (int i = longHistory; i < size.visits; ++i) {
        fill(store, patients[random() % patients.size()], i, size.findings, random);
        if (i % 10'000 == 0) progress(i);
    }
}

std::unique_ptr<Store> openedClinic(const std::filesystem::path& file) {
    auto store = need(openClinic(file, cheap()));
    signIn(*store);
    return store;
}

} // namespace rhizograph::bench
