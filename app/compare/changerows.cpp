#include "compare/changerows.h"

#include "compare/trendrows.h"
#include "language/language.h"
#include "parts/findingwords.h"

#include <array>
#include <cmath>
#include <QCoreApplication>
#include <QStringList>
#include <utility>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

QString labelOf(const Catalogue& catalogue, const ItemId& id) {
    const Item* item = catalogue.find(id);
    return medical(item == nullptr ? id.text() : item->label);
}

QString valueOf(const Catalogue& catalogue, const ItemId& id, const std::optional<Value>& value) {
    const Item* item = catalogue.find(id);
    return value && item != nullptr ? valueWords(*item, *value) : tr("not examined");
}

QString groupLabel(const Catalogue& catalogue, const GroupId& id) {
    for (const Group& group : catalogue.groups())
        if (group.id == id) return medical(group.label);
    return word(id.text());
}

/// Two figures are all that an estimate on an average adult bears.
QString area(double cm2) {
    if (cm2 <= 0) return tr("none");
    const double unit = std::pow(10.0, std::floor(std::log10(cm2)) - 1);
    return tr("about %1 cm²").arg(std::round(cm2 / unit) * unit, 0, 'f', 0);
}

std::size_t foldOf(Change change) {
    return change == Change::same ? 1 : change == Change::notComparable ? 2 : 0;
}

QString counted(const VisitComparison& comparison) {
    const std::array<std::pair<Change, QString>, 5> named{{{Change::worse, tr("%1 worse")},
                                                           {Change::created, tr("%1 new")},
                                                           {Change::better, tr("%1 better")},
                                                           {Change::resolved, tr("%1 resolved")},
                                                           {Change::different, tr("%1 changed")}}};
    QStringList words;
    for (const auto& [change, text] : named) {
        int count = 0;
        for (const ItemChange& item : comparison.items)
            count += item.change == change ? 1 : 0;
        if (count > 0) words << text.arg(count);
    }
    return words.isEmpty() ? tr("No change beyond measurement error") : words.join(QStringLiteral(", "));
}

void nameFolds(ChangeRows& rows, const QString& same, const QString& open) {
    rows.foldNames = {QString(), same.arg(rows.folds[1].size()), open.arg(rows.folds[2].size())};
}

} // namespace

QString ChangeRow::spoken() const {
    QStringList parts{item};
    for (const QString& part : {side, before, now, mark.word, threshold})
        if (!part.isEmpty()) parts << part;
    return parts.join(QStringLiteral(", "));
}

ChangeRows visitRows(const VisitComparison& comparison, const Catalogue& catalogue, const Theme& theme,
                     const QString& earlierName) {
    ChangeRows rows;
    rows.title = counted(comparison);
    rows.heads = {tr("Item"), tr("Side"), earlierName, tr("Now"), tr("Change"), tr("What counts")};
    rows.folds.resize(3);
    for (const NumbAreaChange& each : comparison.numbAreas) {
        ChangeRow row;
        row.item = tr("Less feeling, %1").arg(inSentence(groupLabel(catalogue, each.group)));
        row.side = sideWords(each.side);
        row.before = each.regions > 0 ? area(each.before) : QString();
        row.now = each.regions > 0 ? area(each.now) : QString();
        row.mark = markOf(each.change, theme);
        row.threshold = word(each.because.empty() ? each.threshold : each.because);
        row.source = word(each.source);
        row.curve = areaCurve(each.group, each.side);
        rows.folds[foldOf(each.change)].push_back(std::move(row));
    }
    for (const ItemChange& each : comparison.items) {
        ChangeRow row;
        row.item = labelOf(catalogue, each.key.item);
        row.side = sideWords(each.key.side);
        row.before = valueOf(catalogue, each.key.item, each.before);
        row.now = valueOf(catalogue, each.key.item, each.now);
        row.mark = markOf(each.change, theme);
        row.threshold = word(each.because.empty() ? each.threshold : each.because);
        row.source = word(each.source);
        row.finding = each.key;
        row.curve = curveOf(catalogue, each.key);
        rows.folds[foldOf(each.change)].push_back(std::move(row));
    }
    nameFolds(rows, tr("%1 the same"), tr("%1 not comparable"));
    return rows;
}

ChangeRows sideRows(const std::vector<SideDifference>& differences, const Catalogue& catalogue,
                    const Theme& theme) {
    ChangeRows rows;
    rows.heads = {tr("Item"), QString(), tr("Right"), tr("Left"), tr("Difference"), tr("What counts")};
    rows.folds.resize(3);
    for (const SideDifference& each : differences) {
        ChangeRow row;
        row.item = labelOf(catalogue, each.item);
        row.before = valueOf(catalogue, each.item, each.right);
        row.now = valueOf(catalogue, each.item, each.left);
        row.mark = markOf(each, theme);
        row.threshold = word(each.because.empty() ? each.threshold : each.because);
        row.source = word(each.source);
        row.finding = FindingKey{each.item, each.lesser == Side::left ? Side::left : Side::right};
        rows.folds[!each.comparable ? 2 : each.beyondError ? 0 : 1].push_back(std::move(row));
    }
    const auto count = rows.folds[0].size();
    rows.title = count == 0   ? tr("No difference beyond measurement error")
                 : count == 1 ? tr("1 difference between the sides")
                              : tr("%1 differences between the sides").arg(count);
    nameFolds(rows, tr("%1 alike"), tr("%1 not comparable"));
    return rows;
}

} // namespace rhizograph::app
