#include "summary/pagepreview.h"

#include "parts/button.h"
#include "shell/theme.h"

#include <algorithm>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr int margin = 20; // of the desk around a sheet
constexpr int widestSheet = 900;

} // namespace

PagePreview::PagePreview(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void PagePreview::setDocument(std::shared_ptr<const PageDocument> document) {
    document_ = std::move(document);
    pictures_.clear();
    hover_ = -1;
    if (focus_ >= cellCount()) focus_ = -1;
    updateGeometry();
    update();
}

qreal PagePreview::scale() const {
    return std::min(width() - 2 * margin, widestSheet) / document_->size().width();
}

QRectF PagePreview::sheet(int page) const {
    const QSizeF size = document_->size() * scale();
    return {(width() - size.width()) / 2, margin + page * (size.height() + margin), size.width(),
            size.height()};
}

int PagePreview::heightForWidth(int width) const {
    if (document_ == nullptr) return 0;
    const qreal sheetWidth = std::min(width - 2 * margin, widestSheet);
    const qreal height = sheetWidth * document_->size().height() / document_->size().width();
    return margin + qCeil((height + margin) * document_->pageCount());
}

QSize PagePreview::sizeHint() const {
    return {800, heightForWidth(std::max(width(), 200))};
}

QString PagePreview::hostName() const {
    return tr("The page as it will print");
}

int PagePreview::cellCount() const {
    return document_ == nullptr ? 0 : static_cast<int>(document_->blocks().size());
}

QString PagePreview::spoken(const QString& section) const {
    for (const PageSection& each : document_->content().sections) {
        if (each.id == section)
            return QStringList{each.title, each.bold, each.text, each.quiet}
                .join(QStringLiteral(" "))
                .simplified();
    }
    return section;
}

Cell PagePreview::cell(int index) const {
    const PageBlock& block = document_->blocks().at(static_cast<std::size_t>(index));
    const QRectF page = sheet(block.page);
    const QRectF box(page.topLeft() + block.box.topLeft() * scale(), block.box.size() * scale());
    return {spoken(block.section),
            tr("Changes the words"),
            box.toAlignedRect(),
            QAccessible::PushButton,
            true,
            false};
}

int PagePreview::cellAt(const QPoint& position) const {
    for (int i = 0; i < cellCount(); ++i)
        if (cell(i).rect.contains(position)) return i;
    return -1;
}

void PagePreview::focusCell(int index) {
    focus_ = index;
    if (index >= 0) emit focusMoved(cell(index).rect);
    announceCell(this, index, QAccessible::Focus);
    update();
}

void PagePreview::pressCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    const QString section = document_->blocks().at(static_cast<std::size_t>(index)).section;
    emit sectionPressed(section);
}

const QPixmap& PagePreview::picture(int page) {
    const QRectF place = sheet(page);
    const int pixels = qRound(place.width() * devicePixelRatioF());
    if (picturesWidth_ != pixels || pictures_.size() != static_cast<std::size_t>(document_->pageCount())) {
        pictures_.assign(static_cast<std::size_t>(document_->pageCount()), {});
        picturesWidth_ = pixels;
    }
    QPixmap& picture = pictures_[static_cast<std::size_t>(page)];
    if (picture.isNull()) {
        picture = QPixmap((place.size() * devicePixelRatioF()).toSize());
        picture.fill(Qt::white);
        QPainter painter(&picture);
        const qreal factor = pixels / document_->size().width();
        painter.scale(factor, factor);
        document_->paint(painter, page);
    }
    return picture;
}

void PagePreview::paintEvent(QPaintEvent* event) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(event->rect(), theme.sunk);
    if (document_ == nullptr) return;
    for (int page = 0; page < document_->pageCount(); ++page) {
        const QRectF place = sheet(page);
        if (!place.toAlignedRect().intersects(event->rect())) continue;
        painter.drawPixmap(place.toRect(), picture(page));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.line, 1));
        painter.drawRect(place.adjusted(-0.5, -0.5, 0.5, 0.5));
    }
    painter.setRenderHint(QPainter::Antialiasing);
    if (hover_ >= 0) {
        // The sheet is white in every theme, and so is what is drawn over it.
        painter.setPen(QPen(QColor(0x1F5F56), 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(cell(hover_).rect).adjusted(-6, 1, 6, -1), 6, 6);
    }
    if (hasFocus() && focus_ >= 0) {
        painter.setPen(QPen(QColor(0x1D2B2A), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(cell(focus_).rect).adjusted(-6, 1, 6, -1), 6, 6);
    }
}

void PagePreview::mousePressEvent(QMouseEvent* event) {
    const int pressed = cellAt(event->position().toPoint());
    if (event->button() != Qt::LeftButton || pressed < 0) return;
    focus_ = pressed;
    pressCell(pressed);
}

void PagePreview::mouseMoveEvent(QMouseEvent* event) {
    const int over = cellAt(event->position().toPoint());
    if (over == hover_) return;
    hover_ = over;
    setCursor(over >= 0 ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void PagePreview::leaveEvent(QEvent*) {
    hover_ = -1;
    update();
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
        return focusCell(std::min(focus_ + 1, cellCount() - 1));
    case Qt::Key_Up:
        return focusCell(std::max(focus_ - 1, 0));
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        return pressCell(focus_);
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rhizograph::app
