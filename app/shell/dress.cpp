#include "shell/dress.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QFontDatabase>
#include <QPainter>
#include <QProxyStyle>
#include <QStyleFactory>
#include <QStyleOption>

namespace rhizograph::app {
namespace {

constexpr int menuMargin = 6; // px

bool standsAlone(const QWidget* field) {
    return field != nullptr && qobject_cast<QAbstractSpinBox*>(field->parentWidget()) == nullptr &&
           qobject_cast<QComboBox*>(field->parentWidget()) == nullptr;
}

/// The places of a scroll bar without arrows; the thumb is never shorter than a finger.
QRect scrollBarPart(const QStyleOptionSlider& bar, QStyle::SubControl part) {
    const bool upright = bar.orientation == Qt::Vertical;
    const int room = upright ? bar.rect.height() : bar.rect.width();
    const int range = bar.maximum - bar.minimum;
    const int thumb =
        range > 0 ? std::min(room, std::max(44, room * bar.pageStep / (range + bar.pageStep))) : room;
    const int at = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition, room - thumb,
                                                   bar.upsideDown);
    const auto stretch = [&](int from, int length) {
        return upright ? QRect(bar.rect.x(), bar.rect.y() + from, bar.rect.width(), length)
                       : QRect(bar.rect.x() + from, bar.rect.y(), length, bar.rect.height());
    };
    switch (part) {
    case QStyle::SC_ScrollBarGroove:
        return bar.rect;
    case QStyle::SC_ScrollBarSlider:
        return stretch(at, thumb);
    case QStyle::SC_ScrollBarSubPage:
        return stretch(0, at);
    case QStyle::SC_ScrollBarAddPage:
        return stretch(at + thumb, room - at - thumb);
    default:
        return {};
    }
}

/// The plain desktop style with sizes for fingers and no focus frames of its own.
class FingerStyle final : public QProxyStyle {
public:
    FingerStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override {
        switch (metric) {
        case PM_ScrollBarExtent:
            return 12;
        case PM_ScrollView_ScrollBarSpacing:
            return 0;
        case PM_IndicatorWidth:
        case PM_IndicatorHeight:
            return 24;
        case PM_MenuPanelWidth:
            return 1;
        case PM_MenuHMargin:
        case PM_MenuVMargin:
            return menuMargin;
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
        }
    }
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override {
        // A press on a scroll bar goes where the finger is.
        if (hint == SH_ScrollBar_LeftClickAbsolutePosition) return 1;
        return QProxyStyle::styleHint(hint, option, widget, data);
    }
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override {
        if (element != PE_PanelLineEdit || !standsAlone(widget)) {
            QProxyStyle::drawPrimitive(element, option, painter, widget);
            return;
        }
        // A field of our look; the one with the keyboard wears the action's color, twice as wide.
        const Theme& theme = Theme::of(widget);
        const bool focus = option->state.testFlag(State_HasFocus);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setBrush(theme.raised);
        painter->setPen(QPen(focus ? theme.spruce : theme.edge, focus ? 2 : 1.5));
        painter->drawRoundedRect(QRectF(option->rect).adjusted(1, 1, -1, -1), 10, 10);
        painter->restore();
    }
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override {
        if (control != CC_ScrollBar) {
            QProxyStyle::drawComplexControl(control, option, painter, widget);
            return;
        }
        // A thumb and nothing else: no arrows, no track.
        const QRectF room = subControlRect(CC_ScrollBar, option, SC_ScrollBarSlider, widget);
        const bool upright = room.height() >= room.width();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(Qt::NoPen);
        painter->setBrush(Theme::of(widget).edge);
        painter->drawRoundedRect(upright ? room.adjusted(3, 1, -3, -1) : room.adjusted(1, 3, -1, -3), 3, 3);
        painter->restore();
    }
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget) const override {
        const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (control != CC_ScrollBar || bar == nullptr)
            return QProxyStyle::subControlRect(control, option, part, widget);
        return scrollBarPart(*bar, part);
    }
    QRect subElementRect(SubElement element, const QStyleOption* option,
                         const QWidget* widget) const override {
        const QRect rect = QProxyStyle::subElementRect(element, option, widget);
        return element == SE_LineEditContents && standsAlone(widget) ? rect.adjusted(10, 0, -10, 0) : rect;
    }
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override {
        QSize out = QProxyStyle::sizeFromContents(type, option, size, widget);
        // The margins of our menus come off the room for the words, which would be shortened then.
        if (type == CT_MenuItem && out.height() > 12)
            out = QSize(out.width() + 2 * menuMargin + 24, std::max(out.height(), 44));
        if (type == CT_ComboBox || type == CT_LineEdit || type == CT_SpinBox || type == CT_PushButton)
            out.setHeight(std::max(out.height(), 44));
        return out;
    }
};

QString typeface() {
    const QString ours = QStringLiteral("Inter");
    if (QFontDatabase::families().contains(ours)) return ours;
    return QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
}

} // namespace

void dressApplication(ThemeName theme, qreal textScale) {
    if (qApp->style()->objectName() != QStringLiteral("finger")) {
        auto style = std::make_unique<FingerStyle>();
        style->setObjectName(QStringLiteral("finger"));
        QApplication::setStyle(style.release()); // the application owns its style
    }
    QFont font(typeface());
    font.setPixelSize(qRound(16 * textScale));
    QApplication::setFont(font);
    Theme::apply(theme);
}

} // namespace rhizograph::app
