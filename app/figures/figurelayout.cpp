#include "figures/figurelayout.h"

namespace rhizograph::app {
namespace {

/// The feet on the front figure, in its millimeters.
const QRectF rightFoot(34, 953, 128, 232);
const QRectF leftFoot(262, 953, 128, 232);

const std::vector<Side> facing{Side::right, Side::left};

/// What the figure covers of its box, without room for words.
QRectF bodyBox(const ViewArt& art) {
    QRectF box;
    for (const auto& region : art.regions)
        box |= region.path.boundingRect();
    for (const auto& path : art.context)
        box |= path.boundingRect();
    return box.adjusted(-3, -3, 3, 3);
}

/// Room below a figure for the names of the sides and a note, and above it for a title.
struct Words {
    explicit Words(qreal textScale) : below(46 * textScale), above(26 * textScale) {}
    qreal below;
    qreal above;
};

FigurePanel whole(const FigureArt& art, FigureView view, QRectF cell, const Words& words,
                  const QString& title, const QString& note) {
    cell.adjust(0, title.isEmpty() ? 0 : words.above, 0, -words.below);
    return {view, bodyBox(art.view(view)), cell, facing, title, note, false};
}

FigurePanel front(const FigureArt& art, const QRectF& cell, const Words& words) {
    return whole(art, FigureView::front, cell, words, {}, FigureCanvas::tr("from the front"));
}

FigurePanel back(const FigureArt& art, const QRectF& cell, const Words& words) {
    return whole(art, FigureView::back, cell, words, {}, FigureCanvas::tr("from behind"));
}

void addFeet(FigureLayout& layout, const QRectF& cell, const Words& words) {
    constexpr qreal gap = 16;
    const QRectF body = cell.adjusted(0, words.above, 0, -words.below * 0.6);
    const qreal half = std::min((body.width() - gap) / 2, body.height() * 0.75);
    const qreal left = body.center().x() - half - gap / 2;
    layout.panels.push_back({FigureView::front,
                             rightFoot,
                             {left, body.top(), half, body.height()},
                             {Side::right},
                             FigureCanvas::tr("Feet, larger"),
                             {},
                             true});
    layout.panels.push_back({FigureView::front,
                             leftFoot,
                             {left + half + gap, body.top(), half, body.height()},
                             {Side::left},
                             {},
                             {},
                             true});
}

void addSolesAndSaddle(FigureLayout& layout, const FigureArt& art, const QRectF& soles, const QRectF& saddle,
                       const Words& words) {
    layout.panels.push_back(whole(art, FigureView::sole, soles, words, FigureCanvas::tr("Soles"), {}));
    layout.panels.push_back(whole(art, FigureView::saddle, saddle, words, FigureCanvas::tr("Saddle"), {}));
}

FigureLayout wideExamination(const FigureArt& art, const QSizeF& size, const Words& words) {
    constexpr qreal pad = 14;
    const qreal split = size.width() * 0.53;
    const QRectF left(pad, pad, split - 2 * pad, size.height() - pad);
    const QRectF right(split + pad, pad, size.width() - split - 2 * pad, size.height() - pad);
    FigureLayout layout;
    const qreal half = left.width() / 2;
    layout.panels.push_back(front(art, {left.left(), left.top(), half, left.height()}, words));
    layout.panels.push_back(back(art, {left.left() + half, left.top(), half, left.height()}, words));
    const qreal upper = right.height() * 0.57;
    addFeet(layout, {right.left(), right.top(), right.width(), upper}, words);
    const qreal sole = (right.width() - pad) * 0.46;
    const QRectF below(right.left(), right.top() + upper, right.width(), right.height() - upper);
    addSolesAndSaddle(layout, art, {below.left(), below.top(), sole, below.height()},
                      {below.left() + sole + pad, below.top(), below.width() - sole - pad, below.height()},
                      words);
    layout.dividers.emplace_back(split, pad, split, size.height() - pad);
    return layout;
}

FigureLayout tallExamination(const FigureArt& art, const QSizeF& size, const Words& words) {
    constexpr qreal pad = 14;
    const qreal upper = size.height() * 0.6;
    const qreal column = (size.width() - 4 * pad) / 3;
    const qreal third = 3 * pad + 2 * column;
    FigureLayout layout;
    layout.panels.push_back(front(art, {pad, pad, column, upper - pad}, words));
    layout.panels.push_back(back(art, {2 * pad + column, pad, column, upper - pad}, words));
    addFeet(layout, {pad, upper + pad, size.width() - 2 * pad, size.height() - upper - pad}, words);
    const qreal half = (upper - pad) / 2;
    addSolesAndSaddle(layout, art, {third, pad, column, half}, {third, pad + half, column, half}, words);
    layout.dividers.emplace_back(pad, upper + pad / 2, size.width() - pad, upper + pad / 2);
    return layout;
}

} // namespace

FigureLayout examinationLayout(const FigureArt& art, const QSizeF& size, qreal textScale) {
    const Words words(textScale);
    return size.width() > size.height() * 1.1 ? wideExamination(art, size, words)
                                              : tallExamination(art, size, words);
}

FigureLayout drawingLayout(const FigureArt& art, const QSizeF& size, qreal textScale) {
    constexpr qreal pad = 12;
    const Words words(textScale);
    const qreal column = (size.width() - 4 * pad) * 0.36;
    const qreal height = size.height() - pad;
    FigureLayout layout;
    layout.panels.push_back(front(art, {pad, pad, column, height}, words));
    layout.panels.push_back(back(art, {2 * pad + column, pad, column, height}, words));
    const qreal third = 3 * pad + 2 * column;
    const qreal rest = size.width() - pad - third;
    addSolesAndSaddle(layout, art, {third, pad, rest, height / 2},
                      {third, pad + height / 2, rest, height / 2}, words);
    return layout;
}

} // namespace rhizograph::app
