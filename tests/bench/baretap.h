#pragma once

#include <filesystem>
#include <sqlite3.h>
#include <stdexcept>
#include <string>

namespace rhizograph::bench {

/// The statements of a tap in plain SQLite C, with rows as long as ours, on a file of its own.
class BareTap {
public:
    explicit BareTap(const std::filesystem::path& file) {
        check(sqlite3_open(file.c_str(), &database_));
        run("pragma journal_mode = wal; pragma synchronous = full;"
            "create table visit (id text primary key, changed text, state text, signs integer, events "
            "integer, head blob, "
            "mac blob) strict;"
            "create table event (visit text, number integer, kind text, item text, side text, bulk integer, "
            "author text, "
            "session text, at text, sealed blob, mac blob, primary key (visit, number)) strict, without "
            "rowid;"
            "create index event_rare on event (visit, kind) where kind <> 'finding';"
            "create table finding (visit text, item text, side text, event integer, primary key (visit, "
            "item, side)) strict, without rowid;"
            "insert into visit values ('0123456789abcdef0123456789abcdef', '', '', 0, 0, x'', x'')");
        select_ = prepared("select * from visit where id = ?1");
        insert_ = prepared("insert into event values (?1, ?2, 'finding', 'strength.one', 'left', 0, ?1, ?1, "
                           "'2026-03-04T09:00:00Z', ?3, ?4)");
        upsert_ = prepared(
            "insert into finding values (?1, 'strength.one', 'left', ?2) on conflict (visit, item, side) "
            "do update set event = excluded.event");
        update_ = prepared("update visit set changed = '2026-03-04T09:00:00Z', events = ?2, head = ?3, mac = "
                           "?4 where id = ?1");
        begin_ = prepared("begin immediate");
        commit_ = prepared("commit");
    }
    ~BareTap() {
        for (sqlite3_stmt* statement : {select_, insert_, upsert_, update_, begin_, commit_})
            sqlite3_finalize(statement);
        sqlite3_close(database_);
    }
    BareTap(const BareTap&) = delete;
    BareTap& operator=(const BareTap&) = delete;

    void tap() {
        ++number_;
        step(begin_, {}, {}, {});
        step(select_, visit_, {}, {});
        step(insert_, visit_, sealed_, mac_);
        step(upsert_, visit_, {}, {});
        step(update_, visit_, mac_, mac_);
        step(commit_, {}, {}, {});
    }

private:
    static void check(int code) {
        if (code != SQLITE_OK) throw std::runtime_error(sqlite3_errstr(code));
    }
    void run(const char* script) { check(sqlite3_exec(database_, script, nullptr, nullptr, nullptr)); }
    sqlite3_stmt* prepared(const char* text) {
        sqlite3_stmt* statement = nullptr;
        check(sqlite3_prepare_v2(database_, text, -1, &statement, nullptr));
        return statement;
    }
    void step(sqlite3_stmt* statement, const std::string& visit, const std::string& first,
              const std::string& second) {
        const int count = sqlite3_bind_parameter_count(statement);
        if (count > 0)
            check(
                sqlite3_bind_text(statement, 1, visit.data(), static_cast<int>(visit.size()), SQLITE_STATIC));
        if (count > 1) check(sqlite3_bind_int64(statement, 2, number_));
        if (count > 2)
            check(
                sqlite3_bind_blob(statement, 3, first.data(), static_cast<int>(first.size()), SQLITE_STATIC));
        if (count > 3)
            check(sqlite3_bind_blob(statement, 4, second.data(), static_cast<int>(second.size()),
                                    SQLITE_STATIC));
        int code = SQLITE_ROW;
        while ((code = sqlite3_step(statement)) == SQLITE_ROW) {
        }
        if (code != SQLITE_DONE) throw std::runtime_error(sqlite3_errmsg(database_));
        check(sqlite3_reset(statement));
    }

    sqlite3* database_ = nullptr;
    sqlite3_stmt* select_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
    sqlite3_stmt* upsert_ = nullptr;
    sqlite3_stmt* update_ = nullptr;
    sqlite3_stmt* begin_ = nullptr;
    sqlite3_stmt* commit_ = nullptr;
    std::int64_t number_ = 0;
    std::string visit_ = "0123456789abcdef0123456789abcdef";
    std::string sealed_ = std::string(81, 's'); // nonce 24, tag 16, content 41
    std::string mac_ = std::string(32, 'm');
};

} // namespace rhizograph::bench
