#include "record/unsaved.h"

#include "base/json.h"
#include "record/files.h"
#include "record/sqlstore.h"

#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr std::string_view magic = "RHZUNSAVED1\n";

enum Kind : std::int64_t { findings = 1, plan, note, acknowledgement, redSigns, worse };

void packChanges(Packer& out, const std::vector<FindingChange>& changes) {
    out.number(findings).number(static_cast<std::int64_t>(changes.size()));
    for (const FindingChange& change : changes) {
        out.text(change.key.item.text()).text(name(change.key.side));
        out.number(change.finding && change.finding->bulk ? 1 : 0).text(packFinding(change.finding));
    }
}

std::vector<FindingChange> unpackChanges(Unpacker& in) {
    std::vector<FindingChange> changes(in.count());
    for (FindingChange& change : changes) {
        change.key.item = ItemId{in.text()};
        const auto side = sideNamed(in.text());
        if (!side) reportDamage("A change names a side that does not exist.");
        change.key.side = *side;
        const bool bulk = in.number() != 0;
        change.finding = unpackFinding(in.text(), bulk);
    }
    return changes;
}

/// Chosen by the kind of change.
template <class... Parts> struct Overloaded : Parts... { using Parts::operator()...; };

} // namespace

std::string packUnsaved(const std::vector<UnsavedChange>& changes) {
    Packer out;
    out.number(static_cast<std::int64_t>(changes.size()));
    for (const UnsavedChange& change : changes) {
        out.text(change.visit.text());
        std::visit(
            Overloaded{
                [&](const std::vector<FindingChange>& c) { packChanges(out, c); },
                [&](const PlanChange& c) { out.number(plan).text(c.text); },
                [&](const NoteAdded& c) { out.number(note).text(c.text); },
                [&](const SignAcknowledged& c) { out.number(acknowledgement).text(c.sign).text(c.urgency); },
                [&](const OpenRedSigns& c) { out.number(redSigns).number(c.count); },
                [&](const WorseFindings& c) { out.number(worse).number(c.count); },
            },
            change.what);
    }
    return out.packed();
}

std::vector<UnsavedChange> unpackUnsaved(std::string_view bytes) {
    Unpacker in{bytes};
    std::vector<UnsavedChange> changes(in.count());
    for (UnsavedChange& change : changes) {
        change.visit = VisitId{in.text()};
        switch (in.number()) {
        case findings:
            change.what = unpackChanges(in);
            break;
        case plan:
            change.what = PlanChange{in.text()};
            break;
        case note:
            change.what = NoteAdded{in.text()};
            break;
        case acknowledgement: {
            std::string sign = in.text();
            change.what = SignAcknowledged{std::move(sign), in.text()};
            break;
        }
        case redSigns:
            change.what = OpenRedSigns{static_cast<int>(in.number())};
            break;
        case worse:
            change.what = WorseFindings{static_cast<int>(in.number())};
            break;
        default:
            reportDamage("The file of unsaved changes holds a kind of change that does not exist.");
        }
    }
    if (!in.atEnd()) reportDamage("The file of unsaved changes is longer than it should be.");
    return changes;
}

std::string SqlStore::unsavedContext() {
    const auto clinic = database_->first("select value from meta where key = 'clinic'");
    if (!clinic) reportDamage("The clinic file has lost its own id.");
    return Packer{}.text("unsaved").text(clinic->text(0)).packed();
}

Outcome SqlStore::saveUnsaved(const std::filesystem::path& file, const std::vector<UnsavedChange>& changes) {
    return guardedAction([&] {
        const Bytes sealed = seal(keys().sealing, packUnsaved(changes), unsavedContext());
        writePrivateFile(file, std::string{magic} + textOf(sealed));
    });
}

Result<int> SqlStore::replayUnsaved(const std::filesystem::path& file) {
    const Result<std::string> content = readTextFile(file);
    if (!content) {
        lastFailure_ = Failure::refused;
        return content.problems();
    }
    return guarded<int>([&] {
        require(Permission::recordFindings);
        if (!content->starts_with(magic))
            refuse(fmt::format("{} is not a file of unsaved changes.", file.string()));
        const Bytes sealed = bytesOf(std::string_view{*content}.substr(magic.size()));
        std::string plain;
        try {
            plain = open(keys().sealing, sealed, unsavedContext());
        } catch (const RecordError&) {
            refuse(fmt::format("{} is damaged or belongs to another clinic. Nothing was changed.",
                               file.string()));
        }
        const std::vector<UnsavedChange> changes = unpackUnsaved(plain);
        sql::Transaction transaction{*database_};
        for (const UnsavedChange& change : changes)
            replayWithin(change);
        addAudit(AuditAction::unsavedReplayed, "", fmt::format("{} changes", changes.size()));
        transaction.commit();
        return static_cast<int>(changes.size());
    });
}

void SqlStore::replayWithin(const UnsavedChange& change) {
    const auto within = [&](Permission permission, const std::function<void(VisitRow&)>& apply) {
        require(permission);
        VisitRow visit = unsignedVisitRow(change.visit);
        apply(visit);
        store(visit);
    };
    std::visit(
        Overloaded{
            [&](const std::vector<FindingChange>& c) {
                within(Permission::recordFindings, [&](VisitRow& visit) { recordWithin(visit, c); });
            },
            [&](const PlanChange& c) {
                within(Permission::writePlan, [&](VisitRow& visit) {
                    append(visit, {{"plan", c.text, {}}});
                });
            },
            [&](const NoteAdded& c) {
                within(Permission::recordFindings, [&](VisitRow& visit) {
                    append(visit, {{"note", c.text, {}}});
                });
            },
            [&](const SignAcknowledged& c) {
                within(Permission::acknowledgeSigns, [&](VisitRow& visit) {
                    append(visit, {{"acknowledgement", Packer{}.text(c.sign).text(c.urgency).packed(), {}}});
                });
            },
            [&](const OpenRedSigns& c) {
                within(Permission::recordFindings, [&](VisitRow& visit) { visit.openRedSigns = c.count; });
            },
            [&](const WorseFindings& c) {
                within(Permission::recordFindings, [&](VisitRow& visit) { visit.worse = c.count; });
            },
        },
        change.what);
}

} // namespace rhizograph
