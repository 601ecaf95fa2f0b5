#include "record/sqlstore.h"

#include "record/chain.h"

#include <fmt/format.h>

namespace rhizograph {

SqlStore::SqlStore(std::unique_ptr<sql::Connection> database, ClinicOptions options)
    : database_(std::move(database)), options_(std::move(options)) {}

Problem SqlStore::problemOf(const RecordError& error) {
    lastFailure_ = error.kind();
    // What is refused is not the file's fault.
    return {error.kind() == Failure::refused ? std::string{} : database_->place(), "", error.what()};
}

Outcome SqlStore::guardedAction(const std::function<void()>& work) {
    lastFailure_ = Failure::none;
    try {
        work();
        return {};
    } catch (const RecordError& error) {
        return problemOf(error);
    }
}

Outcome SqlStore::together(const std::function<Outcome()>& work) {
    Outcome inner;
    Failure why = Failure::none;
    const Outcome outer = guardedAction([&] {
        static_cast<void>(session());
        sql::Transaction transaction{*database_};
        inner = work();
        why = lastFailure_;
        if (inner) transaction.commit();
    });
    if (inner && outer) return {};
    forgetPatients(); // it may have learned of patients who are not there
    if (!outer) return outer;
    lastFailure_ = why;
    return inner;
}

const SqlStore::Session& SqlStore::session() const {
    if (!session_) refuse("Sign in first.");
    return *session_;
}

void SqlStore::require(Permission permission) {
    const std::string id = session().user.id.text();
    const auto row = database_->first("select id, name, role, active, mac from staff where id = $1", {id});
    const std::optional<User> present = row ? std::optional{userFrom(*row)} : std::nullopt;
    // What an administrator took away since the sign-in is gone at once, here and in every other program.
    if (present && sameMac(row->bytes(4), staffMac(keys(), id, present->name, row->text(2), present->active)))
        session_->user = *present;
    else
        reportDamage(
            "The entry of this user was changed outside the program, so its role cannot be trusted. An "
            "administrator must save it again.");
    const User& user = session().user;
    if (!user.active) refuse(fmt::format("{} may no longer use this clinic.", user.name));
    if (allows(user.role, permission)) return;
    refuse(
        fmt::format("{} is signed in as {}, which does not allow this. Ask someone with the right to do it.",
                    user.name, name(user.role)));
}

Result<std::unique_ptr<Store>> SqlStore::duplicate() {
    return guarded<std::unique_ptr<Store>>([this] {
        const Session& mine = session();
        auto second = std::make_unique<SqlStore>(database_->duplicate(), options_);
        second->session_ = mine;
        return std::unique_ptr<Store>(std::move(second));
    });
}

Result<std::int64_t> SqlStore::changeCounter() {
    return guarded<std::int64_t>([this] { return database_->changeCounter(); });
}

Result<std::string> SqlStore::clinicName() {
    return guarded<std::string>([this] {
        const auto row = database_->first("select value from meta where key = 'clinic_name'");
        if (!row) reportDamage("The clinic file holds no clinic name.");
        return row->text(0);
    });
}

Result<std::optional<std::string>> SqlStore::setting(const std::string& key) {
    return guarded<std::optional<std::string>>([&]() -> std::optional<std::string> {
        const auto row = database_->first("select value from setting where key = $1", {key});
        if (!row) return std::nullopt;
        return row->text(0);
    });
}

Outcome SqlStore::setSetting(const std::string& key, const std::string& value) {
    return guardedAction([&] {
        require(Permission::changeSettings);
        sql::Transaction transaction{*database_};
        database_->run("insert into setting (key, value) values ($1, $2) "
                       "on conflict (key) do update set value = excluded.value",
                       {key, value});
        addAudit(AuditAction::settingsChanged, "", key + " = " + value);
        transaction.commit();
    });
}

} // namespace rhizograph
