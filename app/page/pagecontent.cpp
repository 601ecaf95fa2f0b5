#include "page/pagecontent.h"

#include "figures/skinlayer.h"

#include <algorithm>
#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Page", text);
}

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

/// What the eye sees, for the legend: a page may come out of the printer in grey.
QString lookOf(SkinMark mark) {
    switch (mark) {
    case SkinMark::normal:
        return tr("tint");
    case SkinMark::reduced:
        return tr("lines");
    case SkinMark::absent:
        return tr("solid");
    case SkinMark::heightened:
        return tr("dots");
    case SkinMark::waves:
        return tr("waves");
    case SkinMark::strokes:
        return tr("strokes");
    case SkinMark::pluses:
        return tr("crosses");
    case SkinMark::solid:
        return tr("grey");
    case SkinMark::none:
        break;
    }
    return tr("bare");
}

std::vector<std::pair<SkinMark, QString>> legendOf(const SkinLayer& layer) {
    std::vector<std::pair<SkinMark, QString>> legend;
    const QString join = QStringLiteral(": ");
    for (const ScaleValue& value : layer.scale().values) {
        const SkinMark mark = layer.mark(Value::token(value.token));
        if (mark != SkinMark::none)
            legend.emplace_back(mark, lookOf(mark) + join + word(lowered(value.label)));
    }
    legend.emplace_back(SkinMark::none, lookOf(SkinMark::none) + join + word(layer.word(std::nullopt)));
    return legend;
}

} // namespace

std::vector<PageSection> pageSections(const Narrative& narrative, bool notExamined) {
    std::vector<PageSection> out;
    for (const NarrativeSection& section : narrative.sections) {
        PageSection made{word(section.id), word(section.title), word(section.positives), word(section.rest),
                         notExamined ? word(section.notExamined) : QString()};
        if (!made.bold.isEmpty() || !made.text.isEmpty() || !made.quiet.isEmpty())
            out.push_back(std::move(made));
    }
    return out;
}

Narrative narrativeOf(const std::vector<PageSection>& sections, const QString& cautions) {
    Narrative out;
    for (const PageSection& each : sections)
        out.sections.push_back({each.id.toStdString(), each.title.toStdString(), each.bold.toStdString(),
                                each.text.toStdString(), each.quiet.toStdString()});
    out.cautions = cautions.toStdString();
    return out;
}

std::vector<PageFigures> pageFigures(const Catalogue& catalogue, const FigureArt& art, const Exam& exam) {
    std::vector<PageFigures> out;
    for (const SkinLayer& layer : skinLayers(catalogue)) {
        PageFigures figures;
        bool recorded = false;
        for (const RegionKey& region : art.regions()) {
            const auto key = layer.key(region);
            if (!key || exam.find(*key) == nullptr) continue;
            recorded = true;
            figures.marks[region] = layer.mark(region, exam);
        }
        if (!recorded) continue;
        figures.title = word(layer.label());
        figures.after = layer.drawn() ? QStringLiteral("drawing") : QStringLiteral("sensation");
        figures.legend = legendOf(layer);
        out.push_back(std::move(figures));
    }
    return out;
}

QString aboutWords(const Subject& subject) {
    QString words = subject.age ? tr("%1 y").arg(*subject.age) : tr("age not given");
    if (subject.sex == "male")
        words += tr(", man");
    else if (subject.sex == "female")
        words += tr(", woman");
    else if (!subject.sex.empty())
        words += QStringLiteral(", ") + word(subject.sex);
    return words;
}

QString longDate(const std::string& iso) {
    const QDate date = QDate::fromString(word(iso), Qt::ISODate);
    return date.isValid() ? QLocale(QLocale::English).toString(date, QStringLiteral("d MMMM yyyy"))
                          : tr("date not given");
}

QString longMoment(const std::string& utc) {
    const QDateTime moment = QDateTime::fromString(word(utc), Qt::ISODate).toLocalTime();
    return QLocale(QLocale::English).toString(moment, QStringLiteral("d MMMM yyyy, HH:mm"));
}

} // namespace rhizograph::app
