#include "compare/changemark.h"

#include "parts/findingwords.h"

#include <QCoreApplication>
#include <QPainter>
#include <stdexcept>

namespace rhizograph::app {
namespace {

using Shape = ChangeMark::Shape;

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

} // namespace

ChangeMark markOf(Change change, const Theme& theme) {
    switch (change) {
    case Change::worse:
        return {Shape::down, tr("worse"), theme.brick, true};
    case Change::created:
        return {Shape::diamond, tr("new"), theme.ochreInk, true};
    case Change::better:
        return {Shape::up, tr("better"), theme.spruce, false};
    case Change::resolved:
        return {Shape::up, tr("resolved"), theme.spruce, false};
    case Change::same:
        return {Shape::bars, tr("same"), theme.quiet, false};
    case Change::different:
        return {Shape::diamond, tr("changed"), theme.quiet, false};
    case Change::notComparable:
        return {Shape::dash, tr("not comparable"), theme.quiet, false};
    }
    throw std::logic_error("no such change");
}

ChangeMark markOf(const SideDifference& difference, const Theme& theme) {
    if (!difference.comparable) return {Shape::dash, tr("not comparable"), theme.quiet, false};
    if (!difference.beyondError) return {Shape::bars, tr("alike"), theme.quiet, false};
    const QString side = sideWords(difference.lesser);
    return {Shape::diamond, side.isEmpty() ? tr("differs") : tr("differs, %1").arg(side), theme.ochreInk,
            true};
}

void paintChangeShape(QPainter& painter, Shape shape, const QPointF& center, const QColor& color) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    const qreal x = center.x();
    const qreal y = center.y();
    switch (shape) {
    case Shape::down:
        painter.drawPolygon(QPolygonF{{x - 7, y - 5}, {x + 7, y - 5}, {x, y + 6}});
        break;
    case Shape::up:
        painter.drawPolygon(QPolygonF{{x - 7, y + 5}, {x + 7, y + 5}, {x, y - 6}});
        break;
    case Shape::bars:
        painter.drawRect(QRectF(x - 6, y - 4, 12, 2));
        painter.drawRect(QRectF(x - 6, y + 2, 12, 2));
        break;
    case Shape::diamond:
        painter.drawPolygon(QPolygonF{{x, y - 7}, {x + 7, y}, {x, y + 7}, {x - 7, y}});
        break;
    case Shape::dash:
        painter.drawRect(QRectF(x - 5, y - 1, 10, 2));
        break;
    }
}

} // namespace rhizograph::app
