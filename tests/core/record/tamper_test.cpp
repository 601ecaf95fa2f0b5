#include "clinicfixture.h"

#include "record/sqlite.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <random>

namespace rhizograph::testing {
namespace {

/// A clinic with two signed visits, addenda, a merged duplicate, an open visit and one user of each role,
/// copied afresh for each try. Whoever tampers has the file and a database tool, but no passphrase.
class Tampering : public Clinic {
protected:
    Tampering() {
        for (const Role role : {Role::nurse, Role::clinician, Role::reviewer})
            need(store->addUser("The " + std::string{name(role)}, role, passphrase));
        const Patient patient = somebody();
        const Patient other = somebody("Øydis Marlbrook", "M-3");
        const Patient duplicate = somebody("Quilon Fernwhistl", "Q-1707");
        Patient corrected = other;
        corrected.identity.contact = "Harbor Lane 11";
        need(store->updatePatient(corrected));
        signedVisit = fill(patient.id, "2025-11-20").id;
        otherSigned = fill(other.id, "2025-11-20").id;
        need(store->sign(signedVisit, "knowledge-7"));
        need(store->sign(otherSigned, "knowledge-7"));
        need(store->addAddendum(signedVisit, "phoned: better"));
        need(store->addAddendum(otherSigned, "phoned: worse"));
        fill(patient.id, "2026-03-04");
        need(store->addVisit(duplicate.id, "2026-01-10"));
        need(store->mergePatients(duplicate.id, patient.id));
        PatientEvent injected{{}, patient.id, "2025-12-01", "injection", "L5 left", false, "", ""};
        injected = need(store->writeEvent(injected));
        injected.text = "L5 right";
        need(store->writeEvent(injected));
        need(store->writeEvent({{}, patient.id, "2026-02-01", "follow_up", "", true, "", ""}));
        need(store->setWorse(need(store->visitsOf(patient.id)).back().id, 2));
        need(store->setSetting("idle_minutes", "7"));
        store.reset(); // closing empties the log into the file
    }

    Visit fill(const PatientId& patient, const std::string& date) {
        Visit visit = need(store->addVisit(patient, date));
        for (const char* value : {"2", "1", "0"})
            for (const Side side : {Side::left, Side::right})
                need(store->record(visit.id, {token("one", side, value), token("two", side, value, true)}));
        need(store->record(visit.id, {{{ItemId{"two"}, Side::left}, std::nullopt}}));
        need(store->setPlan(visit.id, "walk daily"));
        need(store->addNote(visit.id, "came by taxi"));
        need(store->acknowledge(visit.id, "a.sign", "urgent"));
        need(store->setState(visit.id, VisitState::toReview));
        return visit;
    }

    /// A copy of the clinic with all of the engine's own guards off.
    sqlite::Database& fresh() {
        tool.reset();
        std::filesystem::remove_all(copy.parent_path());
        std::filesystem::create_directory(copy.parent_path());
        std::filesystem::copy_file(file, copy);
        tool = std::make_unique<sqlite::Database>(copy, 100);
        tool->script(
            "pragma foreign_keys = off; pragma ignore_check_constraints = on; pragma synchronous = off;"
            "drop trigger visit_event_is_append_only; drop trigger audit_is_append_only;"
            "drop trigger audit_is_kept; drop trigger patient_event_is_append_only");
        return *tool;
    }

    /// What verify says of the copy; a copy that cannot even be opened or signed into counts as found.
    Verification verified() {
        tool.reset();
        const auto refused = [](const Problems& problems) {
            return Verification{0, 0, 0, {{VisitId{}, reasons(problems)}}};
        };
        auto opened = openClinic(copy, options);
        if (!opened) return refused(opened.problems());
        const auto users = (*opened)->users();
        if (!users) return refused(users.problems());
        for (const User& user : *users) {
            if (!allows(user.role, Permission::readAudit)) continue;
            if (const Outcome in = (*opened)->signIn(user.id, passphrase); !in) return refused(in.problems());
            break;
        }
        auto found = (*opened)->verify();
        return found ? *found : refused(found.problems());
    }

    [[nodiscard]] static bool names(const Verification& found, const VisitId& visit) {
        return std::any_of(found.damage.begin(), found.damage.end(),
                           [&](const Damage& d) { return d.visit == visit; });
    }

    std::size_t any(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>{0, count - 1}(random);
    }
    template <class T> const T& anyOf(const std::vector<T>& all) { return all[any(all.size())]; }

    /// The value of one column changed in one byte, as a database tool would write it.
    sql::Cell changed(const sql::Cell& cell) {
        if (const auto* number = std::get_if<std::int64_t>(&cell))
            return *number ^ (std::int64_t{1} << any(8));
        if (const auto* text = std::get_if<std::string>(&cell)) {
            std::string out = text->empty() ? "x" : *text;
            char& one = out[any(out.size())];
            one = static_cast<char>(one == 'a' ? 'b' : 'a'); // stays text
            return out;
        }
        if (const auto* bytes = std::get_if<Bytes>(&cell)) {
            Bytes out = *bytes;
            out[any(out.size())] ^= static_cast<unsigned char>(1U << any(8));
            return out;
        }
        return std::string{"x"};
    }

    VisitId signedVisit;
    VisitId otherSigned;
    std::filesystem::path copy = folder.path() / "copy" / "clinic.rhz";
    std::unique_ptr<sqlite::Database> tool;
    std::mt19937 random{17};
};

const std::vector<std::string> eventColumns{"number", "kind",    "item", "side",   "bulk",
                                            "author", "session", "at",   "sealed", "mac"};

/// The value of one column, whatever its type.
sql::Cell cellOf(sqlite::Database& tool, const std::string& select, const sql::Parameters& parameters) {
    const sql::Row row = tool.first(select, parameters).value();
    if (row.isNull(0)) return std::monostate{};
    try {
        return row.integer(0);
    } catch (const std::exception&) {
    }
    try {
        return row.text(0);
    } catch (const std::exception&) {
    }
    return row.bytes(0);
}

TEST_F(Tampering, IsNotSeenWhereThereWasNone) {
    fresh();
    const Verification found = verified();
    EXPECT_TRUE(found.sound()) << found.damage.front().what;
    EXPECT_EQ(found.visits, 4);
    EXPECT_GT(found.events, 50);
}

TEST_F(Tampering, WithAnyByteOfAnyEventOfASignedVisitIsFoundAndTheVisitNamed) {
    constexpr int tries = 1000;
    int found = 0;
    for (int i = 0; i < tries; ++i) {
        sqlite::Database& db = fresh();
        const auto events = db.rows("select number from visit_event where visit = $1", {signedVisit.text()});
        const std::int64_t number = anyOf(events).integer(0);
        const std::string& column = anyOf(eventColumns);
        const sql::Parameters where{signedVisit.text(), number};
        const sql::Cell before =
            cellOf(db, "select " + column + " from visit_event where visit = $1 and number = $2", where);
        sql::Cell after = changed(before);
        if (column == "number") after = std::get<std::int64_t>(after) + 1000; // the key must stay unique
        db.run("update visit_event set " + column + " = $3 where visit = $1 and number = $2",
               {signedVisit.text(), number, after});
        const Verification verification = verified();
        const bool seen = !verification.sound() && names(verification, signedVisit);
        found += seen ? 1 : 0;
        EXPECT_TRUE(seen) << "column " << column << " of event " << number;
    }
    fmt::print("tamper: a byte of an event changed: {} tries, {} found and the visit named\n", tries, found);
}

TEST_F(Tampering, ByRemovingReorderingOrCopyingEventsIsFoundAndTheVisitNamed) {
    using Attack = std::function<void(sqlite::Database&, std::int64_t, std::int64_t)>;
    const std::string from =
        "select $1, number, kind, item, side, bulk, author, session, at, sealed, mac from visit_event ";
    const std::vector<std::pair<const char*, Attack>> attacks{
        {"removed",
         [&](auto& db, auto a, auto) {
             db.run("delete from visit_event where visit = $1 and number = $2", {signedVisit.text(), a});
         }},
        {"removed and the rest moved up",
         [&](auto& db, auto a, auto) {
             db.run("delete from visit_event where visit = $1 and number = $2", {signedVisit.text(), a});
             db.run("update visit_event set number = -number + 1 where visit = $1 and number > $2",
                    {signedVisit.text(), a});
             db.run("update visit_event set number = -number where visit = $1 and number < 0",
                    {signedVisit.text()});
             db.run("update visit set events = events - 1 where id = $1", {signedVisit.text()});
         }},
        {"cut off from here on",
         [&](auto& db, auto a, auto) {
             db.run("delete from visit_event where visit = $1 and number >= $2", {signedVisit.text(), a});
         }},
        {"exchanged with another",
         [&](auto& db, auto a, auto b) {
             db.run("update visit_event set number = -1 where visit = $1 and number = $2",
                    {signedVisit.text(), a});
             db.run("update visit_event set number = $3 where visit = $1 and number = $2",
                    {signedVisit.text(), b, a});
             db.run("update visit_event set number = $2 where visit = $1 and number = -1",
                    {signedVisit.text(), b});
         }},
        {"replaced by that of another visit",
         [&](auto& db, auto a, auto) {
             db.run("delete from visit_event where visit = $1 and number = $2", {signedVisit.text(), a});
             db.run("insert into visit_event " + from + "where visit = $2 and number = $3",
                    {signedVisit.text(), otherSigned.text(), a});
         }},
        {"given the content of another in the same visit",
         [&](auto& db, auto a, auto b) {
             db.run("update visit_event set (sealed, mac) = (select sealed, mac from visit_event where visit "
                    "= $1 and "
                    "number = $3) where visit = $1 and number = $2",
                    {signedVisit.text(), a, b});
         }},
        {"added from another visit",
         [&](auto& db, auto a, auto) {
             db.run("insert into visit_event select $1, 1 + (select max(number) from visit_event where visit "
                    "= $1), kind, item, "
                    "side, bulk, author, session, at, sealed, mac from visit_event where visit = $2 and "
                    "number = $3",
                    {signedVisit.text(), otherSigned.text(), a});
         }},
        {"all replaced by those of another visit",
         [&](auto& db, auto, auto) {
             db.run("delete from visit_event where visit = $1", {signedVisit.text()});
             db.run("insert into visit_event " + from + "where visit = $2",
                    {signedVisit.text(), otherSigned.text()});
             db.run("update visit set (events, head) = (select events, head from visit where id = $2) where "
                    "id = $1",
                    {signedVisit.text(), otherSigned.text()});
         }},
    };
    std::map<std::string, int> tries;
    int found = 0;
    constexpr int all = 800;
    for (int i = 0; i < all; ++i) {
        sqlite::Database& db = fresh();
        const std::int64_t count =
            db.first("select count(*) from visit_event where visit = $1", {signedVisit.text()})->integer(0);
        const auto a = static_cast<std::int64_t>(any(static_cast<std::size_t>(count))) + 1;
        const std::int64_t b = a % count + 1; // another than a
        const auto& [what, attack] = attacks[static_cast<std::size_t>(i) % attacks.size()];
        attack(db, a, b);
        const Verification verification = verified();
        const bool seen = !verification.sound() && names(verification, signedVisit);
        EXPECT_TRUE(seen) << "event " << a << " " << what;
        ++tries[what];
        found += seen ? 1 : 0;
    }
    for (const auto& [what, count] : tries)
        fmt::print("  event {}: {}\n", what, count);
    fmt::print("tamper: events removed, reordered, copied: {} tries, {} found and the visit named\n", all,
               found);
}

TEST_F(Tampering, WithAnyOtherRowIsFound) {
    // The columns of every table that mean something; what is left out is named beside.
    const std::vector<std::pair<std::string, std::vector<std::string>>> tables{
        {"visit",
         {"id", "patient", "date", "started_at", "changed_at", "state", "age", "author", "open_red_signs",
          "worse", "events", "head", "mac"}},
        {"finding", {"visit", "item", "side", "event"}},
        {"patient", {"id", "person", "sealed"}}, // revision: only what was last looked at
        {"patient_version", {"patient", "sealed"}},
        {"patient_event",
         {"id", "revision", "patient", "date", "awaited", "removed", "author", "at", "sealed"}},
        {"staff",
         {"id", "name", "role", "active", "salt", "wrapped",
          "mac"}}, // failures, failed_at: counted without a key
        {"audit", {"number", "at", "staff", "action", "subject", "sealed", "mac"}},
        {"audit_head", {"number", "mac"}},
        {"setting", {"key", "value"}},
    };
    int tries = 0;
    int found = 0;
    for (const auto& [table, columns] : tables) {
        const std::string rowName =
            table == "finding" ? "visit || ' ' || item || ' ' || side" : "cast(rowid as text)";
        for (const std::string& column : columns)
            for (int i = 0; i < 12; ++i) {
                sqlite::Database& db = fresh();
                const auto rows = db.rows("select " + rowName + " from " + table);
                const std::string row = anyOf(rows).text(0);
                const sql::Cell after = changed(
                    cellOf(db, "select " + column + " from " + table + " where " + rowName + " = $1", {row}));
                db.run("update or ignore " + table + " set " + column + " = $2 where " + rowName + " = $1",
                       {row, after});
                if (db.first("select changes()")->integer(0) == 0) continue; // the key is taken
                const bool seen = !verified().sound();
                EXPECT_TRUE(seen) << table << "." << column << " row " << row;
                ++tries;
                found += seen ? 1 : 0;
            }
        for (int i = 0; i < 12; ++i) {
            sqlite::Database& db = fresh();
            const std::string row = anyOf(db.rows("select " + rowName + " from " + table)).text(0);
            db.run("delete from " + table + " where " + rowName + " = $1", {row});
            const bool seen = !verified().sound();
            EXPECT_TRUE(seen) << table << " row " << row << " removed";
            ++tries;
            found += seen ? 1 : 0;
        }
    }
    fmt::print("tamper: other rows changed or removed: {} tries, {} found\n", tries, found);
    EXPECT_GT(tries, 400);
}

TEST_F(Tampering, ByPuttingBackAnOlderStateOfARowIsFound) {
    // Each row here once stood in the record with the right hash.
    const std::vector<std::pair<const char*, const char*>> attacks{
        {"a patient's former identity",
         "update patient set sealed = (select sealed from patient_version v where v.patient = patient.id "
         "order by revision "
         "limit 1) where (select count(*) from patient_version v where v.patient = patient.id) > 1"},
        {"a visit without its events, signature and audit entries",
         "delete from finding where visit = :v; delete from visit_event where visit = :v; delete from visit "
         "where id = :v"},
        {"the end of the audit", "delete from audit where number > (select max(number) - 3 from audit)"},
        {"the end of the audit and what vouches for it",
         "delete from audit where number > (select max(number) - 3 from audit); delete from audit_head"},
        {"all of the audit", "delete from audit; delete from audit_head"},
        {"the joining of a duplicate", "update patient set person = id"},
        {"the settings", "delete from setting"},
        {"what an event said before", "delete from patient_event where revision > 1"},
        {"the events of a patient", "delete from patient_event"},
    };
    for (const auto& [what, script] : attacks) {
        sqlite::Database& db = fresh();
        std::string text = script;
        for (std::size_t at = 0; (at = text.find(":v")) != std::string::npos;)
            text.replace(at, 2, "'" + signedVisit.text() + "'");
        db.script(text);
        EXPECT_FALSE(verified().sound()) << what;
        // Signing in and going on working must not cover it up.
        auto opened = openClinic(copy, options);
        if (!opened) continue;
        for (int i = 0; i < 3; ++i) {
            if (!(*opened)->signIn(need((*opened)->users()).front().id, passphrase)) break;
            (void)(*opened)->addPatient({"Later Person", "", "", "", "", ""});
        }
        EXPECT_FALSE(verified().sound()) << what << ", after more work";
    }
    fmt::print("tamper: older states put back: {} kinds, all found, also after more work\n", attacks.size());
}

TEST_F(Tampering, WithAUsersFormerRoleIsFound) {
    store = signedIn("Ada Thornfield");
    User nurse = need(store->users())[2];
    ASSERT_EQ(nurse.name, "The nurse");
    nurse.role = Role::administrator;
    need(store->updateUser(nurse));
    sql::Cell mac;
    {
        sqlite::Database db{file, 100};
        mac = db.first("select mac from staff where id = $1", {nurse.id.text()})->bytes(0);
    }
    nurse.role = Role::nurse;
    need(store->updateUser(nurse));
    store.reset();
    fresh().run("update staff set role = 'administrator', mac = $2 where id = $1", {nurse.id.text(), mac});
    EXPECT_FALSE(verified().sound());
}

/// Everything a person could be shown.
std::string everything(Store& record) {
    std::string out;
    for (const Patient& patient : need(record.searchPatients(""))) {
        out += patient.id.text() + patient.identity.name + patient.identity.recordNumber +
               patient.identity.contact;
        for (const Visit& visit : need(record.visitsOf(patient.id))) {
            out += fmt::format("{} {} {} {} {}\n", visit.id.text(), visit.date, static_cast<int>(visit.state),
                               visit.author, visit.findings);
            for (const FindingEvent& event : need(record.eventsAfter(visit.id, 0)))
                out += fmt::format("{} {} {} {}\n", event.number, event.key.item.text(), event.by,
                                   event.finding ? event.finding->value.word() : "-");
            const Exam exam = need(record.exam(visit.id));
            for (const auto& [key, finding] : exam.findings())
                out += key.item.text() + std::string{name(key.side)} + finding.value.word() + finding.note;
            out += need(record.plan(visit.id));
            for (const AuthoredText& text : need(record.notes(visit.id)))
                out += text.text + text.by + text.at;
            for (const AuthoredText& text : need(record.addenda(visit.id)))
                out += text.text + text.by + text.at;
        }
    }
    return out;
}

TEST_F(Tampering, WithAnyByteOfTheFileIsFoundOrChangesNothingThatIsShown) {
    constexpr int tries = 1000;
    const std::string original = contentOf(file);
    std::string shown;
    {
        store = signedIn("Ada Thornfield");
        shown = everything(*store);
        store.reset();
    }
    int found = 0;
    int without = 0;
    std::filesystem::create_directory(copy.parent_path());
    for (int i = 0; i < tries; ++i) {
        std::string bytes = original;
        const std::size_t at = any(bytes.size());
        bytes[at] = static_cast<char>(bytes[at] ^ static_cast<char>(1U << any(8)));
        for (const char* suffix : {"-wal", "-shm"})
            std::filesystem::remove(copy.string() + suffix);
        std::ofstream(copy, std::ios::binary | std::ios::trunc) << bytes;
        const Verification verification = verified();
        if (!verification.sound()) {
            ++found;
            continue;
        }
        ++without;
        auto opened = need(openClinic(copy, options));
        need(opened->signIn(need(opened->users()).front().id, passphrase));
        EXPECT_EQ(everything(*opened), shown) << "byte " << at << " of " << bytes.size();
    }
    fmt::print("tamper: a byte of the file changed: {} tries, {} found, {} in unused places with everything "
               "shown as before\n",
               tries, found, without);
}

} // namespace
} // namespace rhizograph::testing
