#include "impression/impressionforms.h"

#include "language/language.h"
#include "parts/button.h"
#include "parts/findingwords.h"
#include "parts/textsize.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <QMouseEvent>
#include <QPainter>

namespace rhizograph::app {
namespace {

void paintBar(QPainter& painter, const QRectF& track, double share, bool upright, const Theme& theme) {
    const qreal radius = std::min(track.width(), track.height()) / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.sunk);
    painter.drawRoundedRect(track, radius, radius);
    if (share <= 0) return;
    painter.setBrush(theme.ink);
    QRectF filled = track;
    if (upright)
        filled.setTop(track.bottom() - std::max(2 * radius, track.height() * share));
    else
        filled.setWidth(std::max(2 * radius, track.width() * share));
    painter.drawRoundedRect(filled, radius, radius);
}

void paintDiamond(QPainter& painter, const QPointF& center, const QColor& color) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(QPolygonF{{center.x(), center.y() - 7},
                                  {center.x() + 7, center.y()},
                                  {center.x(), center.y() + 7},
                                  {center.x() - 7, center.y()}});
}

void paintTopLine(QPainter& painter, const QWidget* widget) {
    painter.fillRect(widget->rect(), Theme::of(widget).raised);
    painter.fillRect(QRect(0, 0, widget->width(), 1), Theme::of(widget).line);
}

} // namespace

ImpressionDigest digestOf(const VisitSession& session) {
    const Assessment& assessment = session.assessment();
    ImpressionDigest digest;
    digest.fit = fitWords(assessment);
    if (assessment.nothingKnown || assessment.localization.empty()) {
        digest.site = ImpressionBar::tr("No site yet");
    } else {
        const SiteResult& first = assessment.localization.front();
        digest.site = withSide(medical(session.knowledge().siteLabel(first.site)), first.side);
        digest.percent = percentWords(first.probability);
        digest.support = supportWord(first.support) + QStringLiteral(" ") + digest.percent;
        digest.share = first.probability;
    }
    for (const RedSign& sign : assessment.redSigns) {
        if (sign.urgency == Urgency::note) continue;
        ++digest.redSigns;
        if (!session.acknowledged(sign)) ++digest.unacknowledged;
    }
    if (!assessment.nextTests.empty()) {
        digest.next = assessment.nextTests.front().test;
        digest.nextTest = itemWords(session.catalogue(), *digest.next);
    }
    return digest;
}

QString ImpressionDigest::spoken() const {
    QString words = ImpressionBar::tr("Impression: %1").arg(site);
    if (!support.isEmpty()) words += QStringLiteral(", ") + support;
    words += QStringLiteral(", ") + fit;
    if (redSigns > 0)
        words += ImpressionBar::tr("; red signs: %1, of these not acknowledged: %2")
                     .arg(redSigns)
                     .arg(unacknowledged);
    return words;
}

ImpressionHead::ImpressionHead(QWidget* parent)
    : QWidget(parent), arrow_(new PlainButton({}, PlainButton::Kind::flat, this)) {
    setPortrait(false);
    connect(arrow_, &QAbstractButton::clicked, this, &ImpressionHead::foldPressed);
}

void ImpressionHead::show(const ImpressionDigest& digest) {
    fit_ = digest.fit;
    setAccessibleName(tr("Impression, %1").arg(fit_));
    updateGeometry();
    update();
}

void ImpressionHead::setPortrait(bool portrait) {
    arrow_->setGlyph(portrait ? Glyph::down : Glyph::right);
    arrow_->setAccessibleName(tr("Fold the impression"));
}

bool ImpressionHead::twoRows() const {
    const int title = QFontMetrics(sized(this, 17, QFont::DemiBold)).horizontalAdvance(tr("Impression"));
    const int fit = QFontMetrics(sized(this, 15)).horizontalAdvance(fit_);
    return title + fit + 16 > width() - grown(this, 44);
}

int ImpressionHead::fitHeight() const {
    return QFontMetrics(sized(this, 15))
        .boundingRect(QRect(0, 0, std::max(100, width() - 8), 10'000), Qt::TextWordWrap, fit_)
        .height();
}

QSize ImpressionHead::sizeHint() const {
    return {200, twoRows() ? grown(this, 38) + fitHeight() + 4 : grown(this, 44)};
}

void ImpressionHead::resizeEvent(QResizeEvent*) {
    const int side = grown(this, 44);
    arrow_->setGeometry(width() - side, 0, side, side);
    updateGeometry();
}

void ImpressionHead::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    const int side = grown(this, 44);
    painter.setFont(sized(this, 17, QFont::DemiBold));
    painter.setPen(theme.ink);
    painter.drawText(QRect(0, 0, width() - side, side), Qt::AlignVCenter | Qt::AlignLeft, tr("Impression"));
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    if (twoRows())
        painter.drawText(QRect(0, grown(this, 38), width() - 8, fitHeight()), Qt::TextWordWrap, fit_);
    else
        painter.drawText(QRect(0, 0, width() - side - 4, side), Qt::AlignVCenter | Qt::AlignRight, fit_);
}

ImpressionFold::ImpressionFold(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
}

void ImpressionFold::show(const ImpressionDigest& digest) {
    digest_ = digest;
    setAccessibleName(digest_.spoken());
    setAccessibleDescription(tr("Opens the impression"));
    setToolTip(digest_.spoken());
    update();
}

QSize ImpressionFold::sizeHint() const {
    return {grown(this, 56), 400};
}

void ImpressionFold::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isDown() || underMouse()) {
        QColor over = theme.ink;
        over.setAlphaF(isDown() ? 0.08F : 0.03F);
        painter.fillRect(rect(), over);
    }
    const qreal middle = width() / 2.0;
    paintGlyph(painter, Glyph::left, {middle, 22}, theme.ink);
    qreal y = 48;
    painter.setFont(sized(this, 15, QFont::DemiBold));
    if (digest_.redSigns > 0) {
        paintDiamond(painter, {middle, y + 8}, theme.brick);
        painter.setPen(theme.ink);
        painter.drawText(QRectF(0, y + 18, width(), grown(this, 22)), Qt::AlignCenter,
                         QString::number(digest_.redSigns));
        y += 24 + grown(this, 22);
    }
    if (!digest_.support.isEmpty()) {
        paintBar(painter, {middle - 6, y, 12, 160}, digest_.share, true, theme);
        y += 166;
        // "over 99 %" is wider than the strip: the figure below the bar, the word left to the open panel.
        painter.setPen(theme.ink);
        const QString percent = digest_.percent.section(u' ', -2);
        painter.drawText(QRectF(0, y, width(), grown(this, 22)), Qt::AlignCenter, percent);
        y += grown(this, 22) + 10;
    }
    painter.save();
    painter.translate(middle, y);
    painter.rotate(90);
    painter.setFont(sized(this, 16, QFont::DemiBold));
    painter.setPen(theme.ink);
    const qreal room = height() - y - 12;
    const QString site =
        painter.fontMetrics().elidedText(digest_.site, Qt::ElideRight, static_cast<int>(room));
    painter.drawText(QRectF(0, -width() / 2.0, room, width()), Qt::AlignVCenter | Qt::AlignLeft, site);
    painter.restore();
    if (hasFocus()) paintFocusRing(painter, QRectF(rect()).adjusted(6, 6, -6, -6), 8, theme);
}

ImpressionBar::ImpressionBar(QWidget* parent)
    : QWidget(parent), next_(new PlainButton({}, PlainButton::Kind::quiet, this)),
      open_(new PlainButton({}, PlainButton::Kind::flat, this)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    open_->setGlyph(Glyph::up);
    connect(open_, &QAbstractButton::clicked, this, &ImpressionBar::openPressed);
    connect(next_, &QAbstractButton::clicked, this, [this] {
        if (digest_.next) emit nextPressed(*digest_.next);
    });
}

void ImpressionBar::show(const ImpressionDigest& digest) {
    digest_ = digest;
    setAccessibleName(digest_.spoken());
    open_->setAccessibleName(tr("Open the impression"));
    setToolTip(digest_.spoken());
    next_->setAccessibleName(tr("Next test: %1").arg(digest_.nextTest));
    next_->setToolTip(next_->accessibleName());
    next_->setVisible(digest_.next.has_value());
    resizeEvent(nullptr);
    update();
}

/// Large text on a narrow screen: the next test gets a row of its own under the site.
bool ImpressionBar::twoRows() const {
    if (!digest_.next || textScale(this) < 1.1) return false;
    const int site = QFontMetrics(sized(this, 17, QFont::DemiBold)).horizontalAdvance(digest_.site);
    const int support = QFontMetrics(sized(this, 15, QFont::DemiBold)).horizontalAdvance(digest_.support);
    return site + support + 80 > width() * 3 / 5 - grown(this, 44) - 20;
}

QSize ImpressionBar::sizeHint() const {
    return {600, grown(this, twoRows() ? 64 + 50 : 64)};
}

void ImpressionBar::resizeEvent(QResizeEvent*) {
    const int side = grown(this, 44);
    const int first = std::min(height(), grown(this, 64));
    const int top = (first - side) / 2;
    open_->setGeometry(width() - side - 12, top, side, side);
    if (twoRows()) {
        next_->setText(QFontMetrics(sized(this, 16, QFont::DemiBold))
                           .elidedText(digest_.nextTest, Qt::ElideMiddle, width() - 24 - 32));
        next_->setGeometry(12, first, width() - 24, side);
        return;
    }
    // The next test gets at most two fifths; a longer name is cut in the middle, whole in its accessible
    // name.
    const int room = width() * 2 / 5;
    next_->setText(QFontMetrics(sized(this, 16, QFont::DemiBold))
                       .elidedText(digest_.nextTest, Qt::ElideMiddle, room - 32));
    const int wide = std::min(room, next_->sizeHint().width());
    next_->setGeometry(open_->x() - wide - 8, top, wide, side);
}

void ImpressionBar::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintTopLine(painter, this);
    const bool besideNext = next_->isVisible() && !twoRows();
    const int end = besideNext ? next_->x() - 12 : open_->x() - 12;
    const int first = std::min(height(), grown(this, 64));
    int x = 16;
    if (digest_.redSigns > 0) {
        paintDiamond(painter, {x + 8.0, first / 2.0}, theme.brick);
        painter.setFont(sized(this, 15, QFont::DemiBold));
        painter.setPen(theme.ink);
        const QString count = QString::number(digest_.redSigns);
        painter.drawText(QRect(x + 20, 0, 40, first), Qt::AlignVCenter | Qt::AlignLeft, count);
        x += 32 + painter.fontMetrics().horizontalAdvance(count);
    }
    const QFont strong = sized(this, 17, QFont::DemiBold);
    const QFont small = sized(this, 15, QFont::DemiBold);
    const int support =
        digest_.support.isEmpty() ? 0 : QFontMetrics(small).horizontalAdvance(digest_.support) + 12;
    // Site above a thin bar where the row is narrow, beside it where there is room.
    const int name = QFontMetrics(strong).horizontalAdvance(digest_.site);
    const int bar = end - x - name - support - 24;
    const bool beside = bar >= 80;
    painter.setPen(theme.ink);
    painter.setFont(strong);
    const QRect row = beside ? QRect(x, 0, end - x, first) : QRect(x, 0, end - x, first - 12);
    const QString site = QFontMetrics(strong).elidedText(digest_.site, Qt::ElideRight, end - x - support);
    painter.drawText(row, Qt::AlignVCenter | Qt::AlignLeft, site);
    painter.setFont(small);
    if (beside) {
        const int width = std::min(bar, 150);
        if (support > 0) {
            paintBar(painter, QRectF(x + name + 12, first / 2.0 - 6, width, 12), digest_.share, false, theme);
            painter.setPen(theme.ink);
            painter.setPen(theme.ink);
            painter.drawText(QRect(x + name + 12 + width + 12, 0, support, first),
                             Qt::AlignVCenter | Qt::AlignLeft, digest_.support);
        }
    } else if (support > 0) {
        painter.setPen(theme.ink);
        painter.drawText(row, Qt::AlignVCenter | Qt::AlignRight, digest_.support);
        paintBar(painter, QRectF(x, first - 18, end - x, 8), digest_.share, false, theme);
    }
}

void ImpressionBar::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && rect().contains(event->position().toPoint())) emit openPressed();
}

} // namespace rhizograph::app
