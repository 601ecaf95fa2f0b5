#include "record/slot.h"
#include "record/sqlstore.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr int freeAttempts = 3;
constexpr std::int64_t longestWait = 300; // seconds

/// Seconds to wait after so many wrong passphrases in a row: none, none, none, 2, 4, 8 … 300.
std::int64_t waitAfter(std::int64_t failures) {
    if (failures < freeAttempts) return 0;
    const auto doublings = std::min<std::int64_t>(failures - freeAttempts + 1, 9);
    return std::min(longestWait, std::int64_t{1} << doublings);
}

constexpr const char* staffColumns =
    "id, name, role, active, operations, memory, salt, wrapped, failures, failed_at, mac";

KeySlot slotOf(const sql::Row& staff) {
    return {{staff.bytes(6), static_cast<std::uint64_t>(staff.integer(4)),
             static_cast<std::uint64_t>(staff.integer(5))},
            staff.bytes(7)};
}

std::string claimFor(const KeySlot& slot, const Keys& keys, const std::string& user) {
    return claim::ofSlot(keys, user, slot.derivation.salt, slot.wrapped);
}

} // namespace

User SqlStore::userFrom(const sql::Row& row) const {
    const auto role = roleNamed(row.text(2));
    if (!role) reportDamage("The clinic file names a role that does not exist.");
    return {UserId{row.text(0)}, row.text(1), *role, row.flag(3)};
}

std::optional<User> SqlStore::readableUser(const sql::Row& row) const {
    try {
        return userFrom(row);
    } catch (const RecordError&) {
        return std::nullopt;
    }
}

User SqlStore::userOf(const UserId& id) {
    const auto row = database_->first("select id, name, role, active from staff where id = $1", {id.text()});
    if (!row) refuse("There is no such user.");
    return userFrom(*row);
}

std::string SqlStore::userName(const std::string& id) {
    const auto row = database_->first("select name from staff where id = $1", {id});
    if (!row) reportDamage("The clinic file names a user that does not exist.");
    return row->text(0);
}

Result<std::vector<User>> SqlStore::users() {
    return guarded<std::vector<User>>([this] {
        std::vector<User> out;
        for (const sql::Row& row :
             database_->rows("select id, name, role, active from staff order by name, id"))
            // One damaged entry must not shut everybody out; verifying names it, and nobody can sign in with
            // it.
            if (const auto user = readableUser(row)) out.push_back(*user);
        return out;
    });
}

std::optional<User> SqlStore::signedIn() const {
    if (!session_) return std::nullopt;
    return session_->user;
}

void SqlStore::signOut() {
    session_.reset();
    forgetPatients();
}

void SqlStore::refuseWhileSlowedDown(std::int64_t failures, std::int64_t failedAt) const {
    const std::int64_t wait = waitAfter(failures);
    const std::int64_t passed = unixSeconds(options_.clock()) - failedAt;
    // A clock set back must not make the wait longer than it ever was.
    const std::int64_t left = passed < 0 ? wait : wait - passed;
    if (left > 0) refuse(fmt::format("Too many wrong passphrases. Try again in {} seconds.", left));
}

Outcome SqlStore::signIn(const UserId& user, const std::string& passphrase) {
    return guardedAction([&] {
        signOut();
        const auto staff =
            database_->first(fmt::format("select {} from staff where id = $1", staffColumns), {user.text()});
        if (!staff) refuse("There is no such user.");
        if (!staff->flag(3)) refuse("This user may no longer sign in.");
        refuseWhileSlowedDown(staff->integer(8), staff->integer(9));
        openSession(*staff, passphrase);
        try {
            noteSuccessfulSignIn();
        } catch (const RecordError&) {
            signOut(); // a sign-in that cannot be noted in the audit does not count
            throw;
        }
    });
}

void SqlStore::openSession(const sql::Row& staff, const std::string& passphrase) {
    auto data = slotOf(staff).unwrapped(staff.text(0), passphrase);
    if (!data) {
        noteFailedSignIn(staff.text(0), staff.integer(8) + 1);
        refuse("The passphrase is wrong.");
    }
    auto keys = std::make_shared<const Keys>(std::move(*data));
    const User user = userFrom(staff);
    if (!sameMac(staff.bytes(10), staffMac(*keys, user.id.text(), user.name, staff.text(2), user.active)))
        reportDamage(
            "The entry of this user was changed outside the program, so its role cannot be trusted. An "
            "administrator must save it again.");
    session_ = Session{user, std::move(keys), randomId()};
}

void SqlStore::noteFailedSignIn(const std::string& user, std::int64_t failures) {
    const TimePoint time = options_.clock();
    sql::Transaction transaction{*database_};
    database_->run("update staff set failures = $2, failed_at = $3 where id = $1",
                   {user, failures, unixSeconds(time)});
    database_->run("insert into signin_failure (staff, at) values ($1, $2)", {user, utcText(time)});
    transaction.commit();
}

void SqlStore::noteSuccessfulSignIn() {
    sql::Transaction transaction{*database_};
    const std::string& id = session().user.id.text();
    database_->run("update staff set failures = 0, failed_at = 0 where id = $1", {id});
    for (const sql::Row& row : database_->rows("select staff, at from signin_failure order by number"))
        addAuditFor(keys(), "", row.text(1), AuditAction::signInFailed, row.text(0), "");
    database_->run("delete from signin_failure");
    addAudit(AuditAction::signedIn, id, "");
    transaction.commit();
}

void SqlStore::checkPassphraseAllowed(const std::string& passphrase) const {
    if (passphrase.size() < shortestPassphrase)
        refuse(fmt::format("The passphrase needs at least {} characters.", shortestPassphrase));
}

SqlStore::NewUser SqlStore::insertUser(const Keys& keys, const std::string& name, Role role,
                                       const std::string& passphrase) {
    if (name.empty()) refuse("A user needs a name.");
    checkPassphraseAllowed(passphrase);
    if (database_->first("select 1 from staff where name = $1", {name}))
        refuse(fmt::format("There is already a user named {}.", name));
    const User user{UserId{randomId()}, name, role, true};
    const KeySlot slot = KeySlot::made(keys.data, user.id.text(), passphrase, options_.cost);
    const std::string roleWord{rhizograph::name(role)};
    const Mac mac = staffMac(keys, user.id.text(), name, roleWord, true);
    database_->run("insert into staff (id, name, role, active, operations, memory, salt, wrapped, mac) "
                   "values ($1, $2, $3, 1, $4, $5, $6, $7, $8)",
                   {user.id.text(), name, roleWord, static_cast<std::int64_t>(slot.derivation.operations),
                    static_cast<std::int64_t>(slot.derivation.memoryBytes), slot.derivation.salt,
                    slot.wrapped, mac});
    return {user, {{claim::staff, hexText(mac)}, {claim::slot, claimFor(slot, keys, user.id.text())}}};
}

Result<User> SqlStore::addUser(const std::string& name, Role role, const std::string& passphrase) {
    return guarded<User>([&] {
        require(Permission::manageUsers);
        sql::Transaction transaction{*database_};
        const NewUser added = insertUser(keys(), name, role, passphrase);
        addAudit(AuditAction::userAdded, added.user.id.text(),
                 fmt::format("{}, {}", name, rhizograph::name(role)), added.claims);
        transaction.commit();
        return added.user;
    });
}

Outcome SqlStore::updateUser(const User& user) {
    return guardedAction([&] {
        require(Permission::manageUsers);
        if (user.name.empty()) refuse("A user needs a name.");
        sql::Transaction transaction{*database_};
        const User before = userOf(user.id);
        if (database_->first("select 1 from staff where name = $1 and id <> $2", {user.name, user.id.text()}))
            refuse(fmt::format("There is already a user named {}.", user.name));
        const bool stays = user.active && user.role == Role::administrator;
        const auto others =
            database_->first("select count(*) from staff where role = 'administrator' and active = 1 "
                             "and id <> $1",
                             {user.id.text()});
        if (!stays && others->integer(0) == 0) refuse("The clinic would be left without an administrator.");
        const std::string role{rhizograph::name(user.role)};
        const Mac mac = staffMac(keys(), user.id.text(), user.name, role, user.active);
        database_->run("update staff set name = $2, role = $3, active = $4, mac = $5 where id = $1",
                       {user.id.text(), user.name, role, std::int64_t{user.active}, mac});
        addAudit(AuditAction::userChanged, user.id.text(),
                 fmt::format("{}, {}, {}; before {}, {}, {}", user.name, role,
                             user.active ? "active" : "not active", before.name,
                             rhizograph::name(before.role), before.active ? "active" : "not active"),
                 {{claim::staff, hexText(mac)}});
        transaction.commit();
        if (session_->user.id == user.id) session_->user = user;
    });
}

Outcome SqlStore::setPassphrase(const UserId& user, const std::string& passphrase) {
    return guardedAction([&] {
        if (session().user.id != user) require(Permission::manageUsers);
        checkPassphraseAllowed(passphrase);
        sql::Transaction transaction{*database_};
        const User known = userOf(user);
        const KeySlot slot = KeySlot::made(keys().data, known.id.text(), passphrase, options_.cost);
        database_->run("update staff set operations = $2, memory = $3, salt = $4, wrapped = $5, failures = "
                       "0, failed_at = 0 "
                       "where id = $1",
                       {known.id.text(), static_cast<std::int64_t>(slot.derivation.operations),
                        static_cast<std::int64_t>(slot.derivation.memoryBytes), slot.derivation.salt,
                        slot.wrapped});
        addAudit(AuditAction::passphraseChanged, known.id.text(), "",
                 {{claim::slot, claimFor(slot, keys(), known.id.text())}});
        transaction.commit();
    });
}

void SqlStore::found(const std::string& clinicName, const FirstUser& first) {
    if (clinicName.empty()) refuse("A clinic needs a name.");
    if (first.role != Role::administrator) refuse("The first user of a clinic must be an administrator.");
    auto keys = std::make_shared<const Keys>(SecretKey::random());
    sql::Transaction transaction{*database_};
    const std::string at = now();
    const std::string id = randomId();
    for (const auto& [key, value] : {std::pair<std::string, std::string>{"clinic", id},
                                     {"clinic_name", clinicName},
                                     {"created", at},
                                     {"patient_revision", "0"},
                                     {"erasures", "0"}})
        database_->run("insert into meta (key, value) values ($1, $2)", {key, value});
    const NewUser added = insertUser(*keys, first.name, first.role, first.passphrase);
    const std::string user = added.user.id.text();
    addAuditFor(*keys, user, at, AuditAction::clinicCreated, "", clinicName,
                {{claim::clinic, id}, {claim::all, ""}});
    addAuditFor(*keys, user, at, AuditAction::userAdded, user,
                fmt::format("{}, {}", first.name, rhizograph::name(first.role)), added.claims);
    transaction.commit();
}

} // namespace rhizograph
