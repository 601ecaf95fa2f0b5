#include "figures/skinwords.h"

#include "figures/skinfigure.h"
#include "language/language.h"
#include "parts/findingwords.h"
#include "parts/textsize.h"

#include <QLabel>

// The line below the figures: how many regions are abnormal, on which side, and about how much skin that is.

namespace rhizograph::app {
namespace {

struct Tally {
    std::map<std::string, int> abnormal; ///< by token of the scale
    std::map<Side, int> bySide;
    int examined = 0;
    int saddle = 0; ///< examined regions of the saddle
    int all = 0;
};

/// Graver looks are named first.
int gravity(Look look) {
    return look == Look::marked ? 0 : look == Look::reduced ? 1 : 2;
}

Tally count(const SkinLayer& layer, const FigureArt& art, const Exam& exam) {
    Tally tally;
    for (const RegionKey& region : art.regions()) {
        if (layer.item(region.region) == nullptr) continue;
        ++tally.all;
        const auto value = recorded(layer, region, exam);
        if (!value) continue;
        ++tally.examined;
        if (art.viewOf(region.region) == FigureView::saddle) ++tally.saddle;
        if (value->kind() == Value::Kind::token && value->word() != layer.scale().normal) {
            ++tally.abnormal[value->word()];
            ++tally.bySide[region.side];
        }
    }
    return tally;
}

QString where(const Tally& tally) {
    if (tally.bySide.size() > 1) return SkinFigure::tr("on both sides");
    return tally.bySide.begin()->first == Side::left ? SkinFigure::tr("all on the left")
                                                     : SkinFigure::tr("all on the right");
}

QString tallyText(const Tally& tally, const SkinLayer& layer) {
    if (tally.examined == 0) return SkinFigure::tr("Nothing examined on this layer");
    if (tally.abnormal.empty()) {
        return SkinFigure::tr("%1 of %2 regions examined, none abnormal").arg(tally.examined).arg(tally.all);
    }
    QStringList words;
    auto values = layer.scale().values;
    std::ranges::stable_sort(values, {}, [](const ScaleValue& value) { return gravity(value.look); });
    for (const auto& value : values) {
        const auto found = tally.abnormal.find(value.token);
        if (found == tally.abnormal.end()) continue;
        words.append(QStringLiteral("<b>%1 %2</b>")
                         .arg(medicalInSentence(value.label).toHtmlEscaped())
                         .arg(found->second));
    }
    return words.join(QStringLiteral(" · ")) + QStringLiteral(" · ") + where(tally);
}

} // namespace

QString regionWords(const SkinLayer& layer, const RegionKey& region) {
    const Item* item = layer.item(region.region);
    const QString name = item == nullptr ? QString::fromStdString(region.region) : medical(item->shortLabel);
    return region.side == Side::left ? SkinFigure::tr("Left %1").arg(smallFirst(name))
                                     : SkinFigure::tr("Right %1").arg(smallFirst(name));
}

QString spokenRegion(const SkinLayer& layer, const RegionKey& region, const std::optional<Value>& value) {
    QString found;
    if (!value)
        found = layer.drawn() ? SkinFigure::tr("not marked") : SkinFigure::tr("not examined");
    else if (const Item* item = layer.item(region.region); item != nullptr)
        found = valueWords(*item, *value);
    return regionWords(layer, region) + QStringLiteral(", ") + medicalInSentence(layer.label()) +
           QStringLiteral(", ") + found;
}

void SkinFigure::updateWords() {
    const Tally tally = count(layer(), *art_, session_.exam());
    for (QLabel* label : {tally_, area_}) {
        label->setFont(sized(this, 15));
    }
    tally_->setText(tallyText(tally, layer()));
    canvas_->setNote(FigureView::saddle, tally.saddle == 0 ? tr("not examined") : QString());

    const double area = dullSkin(layer(), *art_, session_.exam());
    QString text;
    if (area > 0) text = tr("less feeling: <b>%1</b> of skin").arg(aboutArea(area));
    if (session_.previous() != nullptr) {
        const double before = dullSkin(layer(), *art_, *session_.previous());
        if (area > 0 || before > 0) {
            const QString visit = session_.start().previousVisit
                                      ? tr("visit %1").arg(session_.start().previousVisit->number)
                                      : tr("last visit");
            text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + visit + QStringLiteral(": ") +
                    (before > 0 ? aboutArea(before) : tr("none found"));
        }
    }
    area_->setText(text);
}

} // namespace rhizograph::app
