#include "impression/impressionpanel.h"

#include "impression/impressionforms.h"
#include "impression/impressionlist.h"
#include "parts/textsize.h"
#include "shell/theme.h"
#include "shell/visitsession.h"

#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QScroller>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int margin = 16;
constexpr int openWidth = 328;
constexpr int widest = 420;
constexpr int foldedWidth = 56;
constexpr int scrollBarWidth = 12;

} // namespace

ImpressionPanel::ImpressionPanel(VisitSession& session, QWidget* parent)
    : QWidget(parent), session_(session) {
    build();
    setFonts();
    arrange();
    refresh();
    connect(&session_, &VisitSession::assessed, this, &ImpressionPanel::refresh);
    connect(&session_, &VisitSession::acknowledgementsChanged, this, &ImpressionPanel::refresh);
}

void ImpressionPanel::build() {
    head_ = new ImpressionHead(this);
    list_ = new ImpressionList;
    scroll_ = new QScrollArea(this);
    scroll_->setWidget(list_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->verticalScrollBar()->installEventFilter(this);
    list_->setRightPadding(margin);
    scroll_->viewport()->setAutoFillBackground(false);
    list_->setAutoFillBackground(false);
    QScroller::grabGesture(scroll_->viewport(), QScroller::TouchGesture);
    caution_ = new QLabel(cautionWords(), this);
    caution_->setWordWrap(true);
    fold_ = new ImpressionFold(this);
    bar_ = new ImpressionBar(this);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    auto* head = new QVBoxLayout;
    head->setContentsMargins(margin + 1, 2, 4, 2);
    head->addWidget(head_);
    column->addLayout(head);
    auto* body = new QVBoxLayout;
    body->setContentsMargins(margin + 1, 0, 0, 0);
    body->addWidget(scroll_);
    column->addLayout(body, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(margin + 1, 8, margin, 8);
    foot->addWidget(caution_);
    column->addLayout(foot);
    column->addWidget(fold_, 1);
    column->addWidget(bar_);

    connect(head_, &ImpressionHead::foldPressed, this, [this] { setFolded(true); });
    connect(fold_, &QAbstractButton::clicked, this, [this] { setFolded(false); });
    connect(bar_, &ImpressionBar::openPressed, this, [this] { setFolded(false); });
    connect(bar_, &ImpressionBar::nextPressed, this, &ImpressionPanel::goToItem);
    connect(list_, &ImpressionList::findingPressed, this, &ImpressionPanel::goToItem);
    connect(list_, &ImpressionList::sitePressed, this, &ImpressionPanel::choose);
    connect(list_, &ImpressionList::morePressed, this, &ImpressionPanel::toggleReasons);
    connect(list_, &ImpressionList::focusMoved, this, [this](const QRect& rect) {
        scroll_->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
}

void ImpressionPanel::refresh() {
    list_->setRows(impressionRows(session_, view_));
    const ImpressionDigest digest = digestOf(session_);
    head_->show(digest);
    fold_->show(digest);
    bar_->show(digest);
    if (portrait_ && folded_ && minimumHeight() != barHeight()) {
        arrange();
        emit foldedChanged(folded_); // the bar needs another height
    }
}

void ImpressionPanel::choose(const SiteId& site, Side side) {
    view_.chosen = SitePlace{site, side};
    list_->setRows(impressionRows(session_, view_));
    emit siteChosen(site, side);
}

void ImpressionPanel::toggleReasons() {
    view_.allReasons = !view_.allReasons;
    list_->setRows(impressionRows(session_, view_));
}

void ImpressionPanel::setFolded(bool folded) {
    if (folded == folded_) return;
    folded_ = folded;
    arrange();
    emit foldedChanged(folded);
}

void ImpressionPanel::setPortrait(bool portrait) {
    if (portrait == portrait_) return;
    portrait_ = portrait;
    head_->setPortrait(portrait);
    arrange();
}

int ImpressionPanel::barHeight() const {
    return bar_->sizeHint().height();
}

void ImpressionPanel::arrange() {
    for (QWidget* part :
         {static_cast<QWidget*>(head_), static_cast<QWidget*>(scroll_), static_cast<QWidget*>(caution_)})
        part->setVisible(!folded_);
    fold_->setVisible(folded_ && !portrait_);
    bar_->setVisible(folded_ && portrait_);
    if (portrait_) {
        setMinimumSize(0, folded_ ? bar_->sizeHint().height() : 0);
        setMaximumSize(QWIDGETSIZE_MAX, folded_ ? bar_->sizeHint().height() : QWIDGETSIZE_MAX);
    } else {
        setMinimumSize(folded_ ? grown(this, foldedWidth) : openWidth, 0);
        setMaximumSize(folded_ ? grown(this, foldedWidth) : widest, QWIDGETSIZE_MAX);
    }
    updateGeometry();
}

QSize ImpressionPanel::sizeHint() const {
    if (portrait_) return {800, folded_ ? bar_->sizeHint().height() : 700};
    return {folded_ ? grown(this, foldedWidth) : openWidth, 600};
}

void ImpressionPanel::setFonts() {
    caution_->setFont(sized(this, 15));
}

bool ImpressionPanel::eventFilter(QObject* watched, QEvent* event) {
    // The rows keep their width whether the bar shows or not.
    if (watched == scroll_->verticalScrollBar() &&
        (event->type() == QEvent::Show || event->type() == QEvent::Hide))
        list_->setRightPadding(event->type() == QEvent::Show ? margin - scrollBarWidth : margin);
    return QWidget::eventFilter(watched, event);
}

void ImpressionPanel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange && caution_ != nullptr) {
        setFonts();
        arrange();
    }
    QWidget::changeEvent(event);
}

void ImpressionPanel::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    const QRect edge = portrait_ ? QRect(0, 0, width(), 1) : QRect(0, 0, 1, height());
    painter.fillRect(edge, theme.line);
    if (folded_) return;
    QPalette quiet = caution_->palette();
    if (quiet.color(QPalette::WindowText) != theme.quiet) {
        quiet.setColor(QPalette::WindowText, theme.quiet);
        caution_->setPalette(quiet);
    }
    painter.fillRect(QRect(margin, caution_->y() - 8, width() - 2 * margin, 1), theme.line);
}

} // namespace rhizograph::app
