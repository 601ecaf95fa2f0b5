#include "figures/paindrawing.h"

#include "figures/figurelayout.h"
#include "figures/marks.h"
#include "figures/skinwords.h"
#include "language/language.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/textsize.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

SkinLayer drawnLayer(const Catalogue& catalogue) {
    for (auto& layer : skinLayers(catalogue)) {
        if (layer.drawn()) return layer;
    }
    throw std::logic_error("the catalogue has no drawing layer");
}

} // namespace

PainDrawing::PainDrawing(VisitSession& session, std::shared_ptr<const FigureArt> art, QWidget* parent)
    : QWidget(parent), session_(session), art_(std::move(art)), layer_(drawnLayer(session.catalogue())) {
    build();
    connect(&session_, &VisitSession::findingsChanged, this, &PainDrawing::refresh);
    updateWords();
}

void PainDrawing::build() {
    auto* card = new Card(this);
    auto* title = new QLabel(medical(layer_.label()), card);
    title->setFont(sized(this, 17, QFont::DemiBold));
    hint_ = new QLabel(card);
    hint_->setFont(sized(this, 15));
    hint_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(10, 0, 4, 0);
    head->addWidget(title);
    head->addWidget(hint_, 1);

    choice_ = new QButtonGroup(this);
    auto* marks = new FlowLayout(7);
    const auto addBrush = [&](const QString& word, SkinMark mark, std::optional<Value> brush) {
        auto* button = new MarkButton(word, mark, card);
        button->setEnabled(!session_.readOnly());
        marks->addWidget(button);
        choice_->addButton(button, static_cast<int>(brushes_.size()));
        brushes_.push_back(std::move(brush));
    };
    for (const auto& entry : layer_.scale().values) {
        if (entry.token == layer_.scale().normal) continue;
        const Value value = Value::token(entry.token);
        addBrush(medical(entry.label), layer_.mark(value), value);
    }
    addBrush(tr("Rub out"), SkinMark::none, std::nullopt);

    canvas_ = new FigureCanvas(
        art_, [art = art_](const QSizeF& size, qreal scale) { return drawingLayout(*art, size, scale); },
        card);
    canvas_->setName(tr("Pain drawing"));
    canvas_->setReadOnly(session_.readOnly());
    canvas_->setPressable([this](const RegionKey& region) { return layer_.item(region.region) != nullptr; });
    canvas_->setMarks([this](const RegionKey& region) { return mark(region); });
    canvas_->setSpeaker([this](const RegionKey& region) {
        return spokenRegion(layer_, region, recorded(layer_, region, session_.exam()));
    });
    canvas_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    canvas_->setMinimumSize(320, 300);

    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(8, 8, 8, 8);
    inside->addLayout(head);
    inside->addLayout(marks);
    inside->addWidget(canvas_, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(card);

    connect(choice_, &QButtonGroup::idClicked, this,
            [this](int id) { setBrush(brushes_[static_cast<std::size_t>(id)]); });
    connect(canvas_, &FigureCanvas::strokeBegan, this, &PainDrawing::begin);
    connect(canvas_, &FigureCanvas::strokeMovedOver, this, [this](const RegionKey& region) {
        stroke_.paint(region);
        canvas_->refresh({region});
    });
    connect(canvas_, &FigureCanvas::strokeEnded, this, &PainDrawing::end);
    connect(canvas_, &FigureCanvas::strokeCancelled, this, [this] {
        stroke_.cancel();
        canvas_->refreshAll();
    });
    connect(canvas_, &FigureCanvas::keyTyped, this, &PainDrawing::typed);
    setBrush(brushes_.front());
}

void PainDrawing::setBrush(std::optional<Value> brush) {
    const auto found = std::ranges::find(brushes_, brush);
    if (found == brushes_.end()) return;
    brush_ = std::move(brush);
    choice_->button(static_cast<int>(found - brushes_.begin()))->setChecked(true);
}

void PainDrawing::goTo(const FindingKey& key) {
    if (const auto region = layer_.region(key)) {
        canvas_->focusRegion(*region);
        canvas_->setFocus(Qt::OtherFocusReason);
    }
}

SkinMark PainDrawing::mark(const RegionKey& region) const {
    if (const auto found = stroke_.painted().find(region); found != stroke_.painted().end()) {
        return found->second ? layer_.mark(*found->second) : SkinMark::none;
    }
    return layer_.mark(region, session_.exam());
}

void PainDrawing::begin(const RegionKey& region) {
    // A second press with the same mark takes it away again, as everywhere else.
    const bool again = brush_ && recorded(layer_, region, session_.exam()) == brush_;
    stroke_.begin(layer_, again ? std::nullopt : brush_);
    stroke_.paint(region);
    canvas_->refresh({region});
}

void PainDrawing::end() {
    std::vector<RegionKey> regions;
    for (const auto& [region, value] : stroke_.painted())
        regions.push_back(region);
    stroke_.record(session_);
    canvas_->refresh(regions);
}

void PainDrawing::typed(int key, const QString& text) {
    const int digit = text.isEmpty() ? -1 : text.at(0).digitValue();
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace || digit == 0) {
        setBrush(std::nullopt);
    } else if (digit > 0 && static_cast<std::size_t>(digit) < brushes_.size()) {
        setBrush(brushes_[static_cast<std::size_t>(digit) - 1]);
    } else {
        return;
    }
    canvas_->pressCell(canvas_->focusedCell());
}

void PainDrawing::refresh(const std::vector<FindingKey>& keys) {
    std::vector<RegionKey> regions;
    for (const auto& key : keys) {
        if (auto region = layer_.region(key)) regions.push_back(std::move(*region));
    }
    if (regions.empty()) return;
    canvas_->refresh(regions);
    updateWords();
}

void PainDrawing::updateWords() {
    int marked = 0;
    for (const RegionKey& region : art_->regions()) {
        marked += layer_.mark(region, session_.exam()) != SkinMark::none ? 1 : 0;
    }
    hint_->setText(marked == 0   ? tr("draw with a finger or pen")
                   : marked == 1 ? tr("1 region marked")
                                 : tr("%1 regions marked").arg(marked));
}

} // namespace rhizograph::app
