#include "figures/skinfigure.h"

#include "figures/figurelayout.h"
#include "figures/marks.h"
#include "figures/skinwords.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/scrolling.h"
#include "parts/segmented.h"
#include "parts/textsize.h"

#include <cmath>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

std::vector<SkinLayer> examinedLayers(const Catalogue& catalogue) {
    std::vector<SkinLayer> layers = skinLayers(catalogue);
    std::erase_if(layers, [](const SkinLayer& layer) { return layer.drawn(); });
    return layers;
}

std::vector<MarkLegend::Entry> legendOf(const SkinLayer& layer) {
    std::vector<MarkLegend::Entry> entries;
    for (const auto& value : layer.scale().values) {
        entries.push_back({layer.mark(Value::token(value.token)), medicalInSentence(value.label)});
    }
    entries.push_back({SkinMark::none, SkinFigure::tr("not examined")});
    return entries;
}

} // namespace

double dullSkin(const SkinLayer& layer, const FigureArt& art, const Exam& exam) {
    double area = 0;
    for (const RegionKey& region : art.regions()) {
        const SkinMark mark = layer.mark(region, exam);
        if (mark == SkinMark::reduced || mark == SkinMark::absent) area += art.area(region.region);
    }
    return area;
}

QString aboutArea(double area) {
    const double step = area >= 100 ? 10 : area >= 20 ? 5 : 1;
    return SkinFigure::tr("about %1 cm²").arg(std::lround(area / step) * std::lround(step));
}

SkinFigure::SkinFigure(VisitSession& session, std::shared_ptr<const FigureArt> art, QWidget* parent)
    : QWidget(parent), session_(session), art_(std::move(art)), layers_(examinedLayers(session.catalogue())) {
    if (layers_.empty()) throw std::logic_error("the catalogue has no skin layer");
    build();
    connect(&session_, &VisitSession::findingsChanged, this, &SkinFigure::refresh);
    updateWords();
}

void SkinFigure::build() {
    QStringList names;
    for (const auto& layer : layers_)
        names << medical(layer.label());
    layerChoice_ = new Segmented(tr("Layer"), names, this);
    territoryButton_ = new PlainButton(tr("Show a territory"), PlainButton::Kind::quiet, this);
    territoryButton_->setGlyph(Glyph::down, true);
    territoryButton_->hide();
    auto* points = new PlainButton(QString(), PlainButton::Kind::choice, this);
    points->setGlyph(Glyph::rings);
    points->setAccessibleName(tr("Points to touch"));
    points->setToolTip(tr("Shows where to touch for each level"));
    fillButton_ = new PlainButton(tr("Mirror normal"), PlainButton::Kind::action, this);
    fillButton_->setToolTip(tr("Marks what is not examined on this layer as normal, the saddle left out"));
    zoomButton_ = new PlainButton(QString(), PlainButton::Kind::quiet, this);
    zoomButton_->setGlyph(Glyph::zoomIn);
    zoomButton_->setAccessibleName(tr("Enlarge"));
    fillButton_->setEnabled(!session_.readOnly());

    auto* top = new FlowLayout(8);
    top->addWidget(layerChoice_);
    for (QWidget* widget : {territoryButton_, points, fillButton_, zoomButton_})
        top->addWidget(widget);
    top->setAlignment(territoryButton_, Qt::AlignRight);
    top->setAlignment(points, Qt::AlignRight);

    canvas_ = new FigureCanvas(
        art_, [art = art_](const QSizeF& size, qreal scale) { return examinationLayout(*art, size, scale); },
        this);
    canvas_->setName(tr("Skin figures"));
    canvas_->setReadOnly(session_.readOnly());
    canvas_->setPressable([this](const RegionKey& region) { return layer().item(region.region) != nullptr; });
    canvas_->setSpeaker([this](const RegionKey& region) { return spoken(region); });
    canvas_->setMarks([this](const RegionKey& region) { return mark(region); });
    canvas_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    canvas_->setMinimumSize(420, 360);
    auto* card = new Card(this);
    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(6, 4, 6, 4);
    inside->addWidget(canvas_);

    tally_ = new QLabel(this);
    area_ = new QLabel(this);
    for (QLabel* label : {tally_, area_})
        label->setTextFormat(Qt::RichText);
    auto* bottom = new FlowLayout(16); // two lines where both do not fit on one
    bottom->addWidget(tally_);
    bottom->addWidget(area_);

    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(6);
    whole->addLayout(top);
    whole->addWidget(new MarkLegend(
        legendOf(layer()), session_.readOnly() ? QString() : tr("a tap moves on to the next"), this));
    whole->addWidget(card, 1);
    whole->addLayout(bottom);

    connect(layerChoice_, &Segmented::chosenChanged, this, &SkinFigure::setLayer);
    connect(territoryButton_, &QAbstractButton::clicked, this, &SkinFigure::showTerritories);
    connect(points, &QAbstractButton::toggled, canvas_, &FigureCanvas::setKeyPointsShown);
    connect(fillButton_, &QAbstractButton::clicked, this, &SkinFigure::fillRest);
    connect(zoomButton_, &QAbstractButton::clicked, this, &SkinFigure::toggleZoom);
    connect(canvas_, &FigureCanvas::strokeBegan, this, &SkinFigure::begin);
    connect(canvas_, &FigureCanvas::strokeMovedOver, this, &SkinFigure::paintOver);
    connect(canvas_, &FigureCanvas::strokeEnded, this, &SkinFigure::end);
    connect(canvas_, &FigureCanvas::strokeCancelled, this, &SkinFigure::cancel);
    connect(canvas_, &FigureCanvas::keyTyped, this, &SkinFigure::typed);
    connect(canvas_, &FigureCanvas::zoomChanged, this, [this](qreal zoom) {
        zoomButton_->setGlyph(zoom > 1 ? Glyph::zoomOut : Glyph::zoomIn);
        zoomButton_->setAccessibleName(zoom > 1 ? tr("Whole figures") : tr("Enlarge"));
    });
}

void SkinFigure::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitWords();
}

void SkinFigure::fitWords() {
    for (QLabel* label : {tally_, area_})
        wrapWithin(*label, width() - 4);
}

bool SkinFigure::shows(const FindingKey& key) const {
    return std::ranges::any_of(layers_,
                               [&](const SkinLayer& layer) { return layer.region(key).has_value(); });
}

void SkinFigure::goTo(const FindingKey& key) {
    for (std::size_t i = 0; i < layers_.size(); ++i) {
        if (const auto region = layers_[i].region(key)) {
            setLayer(static_cast<int>(i));
            canvas_->focusRegion(*region);
            canvas_->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
}

void SkinFigure::setLayer(int index) {
    if (index == layer_) return;
    layer_ = index;
    layerChoice_->choose(index);
    canvas_->setPressable([this](const RegionKey& region) { return layer().item(region.region) != nullptr; });
    canvas_->refreshAll();
    updateWords();
}

SkinMark SkinFigure::mark(const RegionKey& region) const {
    if (const auto found = stroke_.painted().find(region); found != stroke_.painted().end()) {
        return found->second ? layer().mark(*found->second) : SkinMark::none;
    }
    return layer().mark(region, session_.exam());
}

QString SkinFigure::spoken(const RegionKey& region) const {
    return spokenRegion(layer(), region, recorded(layer(), region, session_.exam()));
}

void SkinFigure::begin(const RegionKey& region) {
    stroke_.begin(layer(), layer().next(recorded(layer(), region, session_.exam())));
    paintOver(region);
}

void SkinFigure::paintOver(const RegionKey& region) {
    stroke_.paint(region);
    canvas_->refresh({region});
}

void SkinFigure::end() {
    std::vector<RegionKey> regions;
    for (const auto& [region, value] : stroke_.painted())
        regions.push_back(region);
    stroke_.record(session_);
    canvas_->refresh(regions);
    updateWords();
}

void SkinFigure::cancel() {
    stroke_.cancel();
    canvas_->refreshAll();
}

void SkinFigure::setValue(const RegionKey& region, std::optional<Value> value) {
    stroke_.begin(layer(), std::move(value));
    stroke_.paint(region);
    end();
}

void SkinFigure::typed(int key, const QString& text) {
    const auto region = canvas_->focusedRegion();
    if (!region) return;
    const auto& values = layer().scale().values;
    const int digit = text.isEmpty() ? -1 : text.at(0).digitValue();
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace || digit == 0) {
        setValue(*region, std::nullopt);
    } else if (digit > 0 && static_cast<std::size_t>(digit) <= values.size()) {
        setValue(*region, Value::token(values[static_cast<std::size_t>(digit) - 1].token));
    } else if (key == Qt::Key_N) {
        fillRest();
    }
}

void SkinFigure::fillRest() {
    auto changes = fillNormal(layer(), *art_, session_.exam());
    if (session_.readOnly() || changes.empty()) return;
    session_.change(tr("%1: rest normal").arg(medical(layer().label())), std::move(changes));
}

void SkinFigure::refresh(const std::vector<FindingKey>& keys) {
    std::vector<RegionKey> regions;
    for (const auto& key : keys) {
        if (auto region = layer().region(key)) regions.push_back(std::move(*region));
    }
    if (regions.empty()) return;
    canvas_->refresh(regions);
    updateWords();
}

void SkinFigure::setTerritories(std::function<std::vector<Territory>()> territories) {
    territories_ = std::move(territories);
    territoryButton_->setVisible(static_cast<bool>(territories_));
}

void SkinFigure::setTerritory(const Territory& territory) {
    canvas_->setTerritory(territory.regions);
    const bool shown = !territory.regions.empty();
    territoryButton_->setText(shown ? territory.name : tr("Show a territory"));
    territoryButton_->setGlyph(Glyph::down, true);
}

void SkinFigure::showTerritories() {
    QMenu menu(this);
    for (const auto& territory : territories_()) {
        menu.addAction(territory.name, this, [this, territory] { setTerritory(territory); });
    }
    if (!canvas_->territory().empty()) {
        menu.addSeparator();
        menu.addAction(tr("None"), this, [this] { setTerritory({}); });
    }
    menu.exec(territoryButton_->mapToGlobal(QPoint(0, territoryButton_->height() + 4)));
}

void SkinFigure::toggleZoom() {
    if (canvas_->zoom() > 1) return canvas_->resetZoom();
    const auto focused = canvas_->focusedRegion();
    const auto where = focused ? canvas_->placeOf(*focused) : std::nullopt;
    canvas_->setZoom(2.2, where.value_or(QPointF(canvas_->rect().center())));
}

} // namespace rhizograph::app
