#include "window/patientstrip.h"

#include "parts/button.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/words.h"
#include "shell/visitsession.h"

#include <QHBoxLayout>
#include <QPainter>

namespace rhizograph::app {

SavedMark::SavedMark(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::TabFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void SavedMark::set(State state, const QString& text) {
    state_ = state;
    setText(text);
    setAccessibleName(text);
    setEnabled(state == State::failing);
    updateGeometry();
    update();
}

QSize SavedMark::sizeHint() const {
    const int words = QFontMetrics(sized(this, 16, QFont::Medium)).horizontalAdvance(text());
    return {words + 34, grown(this, 44)};
}

void SavedMark::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF mark(10, height() / 2.0);
    QColor color = theme.quiet;
    if (state_ == State::saved) {
        color = theme.spruce;
        paintGlyph(painter, Glyph::check, mark, color, 18);
    } else if (state_ == State::failing) {
        color = theme.brick;
        painter.setPen(Qt::NoPen);
        painter.setBrush(color);
        painter.drawPolygon(QPolygonF(
            {mark + QPointF(0, -8), mark + QPointF(8, 0), mark + QPointF(0, 8), mark + QPointF(-8, 0)}));
    } else if (state_ == State::saving) {
        painter.setPen(QPen(color, 2));
        painter.drawEllipse(mark, 6, 6);
    } else {
        paintGlyph(painter, Glyph::lock, mark, color, 18);
    }
    painter.setFont(sized(this, 16, state_ == State::failing ? QFont::DemiBold : QFont::Normal));
    painter.setPen(color);
    painter.drawText(rect().adjusted(26, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
    if (hasFocus()) paintFocusRing(painter, QRectF(rect()).adjusted(4, 6, -4, -6), 6, theme);
}

PatientStrip::PatientStrip(VisitSession& session, QWidget* parent) : Strip(parent), session_(session) {
    const Identity& identity = session_.start().patient.identity;
    const Visit& visit = session_.start().visit;
    auto& row = content();
    row.setSpacing(10);
    auto* back = new PlainButton({}, PlainButton::Kind::flat, this);
    back->setGlyph(Glyph::left);
    back->setAccessibleName(tr("Back to the patients"));
    row.addWidget(back);
    auto* name =
        new Label(QString::fromStdString(identity.name), 19, QFont::DemiBold, Label::Tone::ink, this);
    name->setMinimumWidth(90);
    name->setElided(true);
    row.addWidget(name);
    row.addWidget(new Label(ageAndSex(identity, visit.date), 16, QFont::Normal, Label::Tone::quiet, this));
    const QString number = QString::fromStdString(identity.recordNumber);
    record_ = new Label(number.isEmpty() ? QString{} : tr("Record %1").arg(number), 16, QFont::Normal,
                        Label::Tone::quiet, this);
    row.addWidget(record_);
    row.addWidget(divider(this));
    visit_ = new Label({}, 16, QFont::Normal, Label::Tone::ink, this);
    row.addWidget(visit_);
    row.addStretch(1);
    handOver_ = new PlainButton({}, PlainButton::Kind::primary, this);
    handOver_->setGlyph(Glyph::arrow, true);
    handOver_->hide();
    addTool(handOver_);
    saved_ = new SavedMark(this);
    addTool(saved_);
    undo_ = new PlainButton({}, PlainButton::Kind::flat, this);
    undo_->setGlyph(Glyph::undo);
    redo_ = new PlainButton({}, PlainButton::Kind::flat, this);
    redo_->setGlyph(Glyph::redo);
    addTool(undo_);
    addTool(redo_);
    setUser(session_.start().userName);
    connect(back, &PlainButton::clicked, this, &PatientStrip::backWanted);
    connect(handOver_, &PlainButton::clicked, this, &PatientStrip::handOverWanted);
    connect(saved_, &SavedMark::clicked, this, &PatientStrip::savedPressed);
    connect(undo_, &PlainButton::clicked, &session_.undoStack(), &QUndoStack::undo);
    connect(redo_, &PlainButton::clicked, &session_.undoStack(), &QUndoStack::redo);
    connect(&session_.undoStack(), &QUndoStack::indexChanged, this, &PatientStrip::refresh);
    nameParts();
    refresh();
}

void PatientStrip::setNarrow(bool narrow) {
    if (narrow_ == narrow) return;
    narrow_ = narrow;
    nameParts();
}

void PatientStrip::nameParts() {
    const Visit& visit = session_.start().visit;
    visit_->setText(narrow_ ? tr("Visit %1").arg(visit.number)
                            : tr("Visit %1, %2").arg(visit.number).arg(dayText(visit.date)));
    record_->setVisible(!narrow_ && !record_->text().isEmpty());
    setUserShown(!narrow_);
}

void PatientStrip::setHandOver(const QString& text) {
    handOver_->setText(text);
    handOver_->setVisible(!text.isEmpty());
    handOver_->updateGeometry();
}

void PatientStrip::refresh() {
    QUndoStack& stack = session_.undoStack();
    undo_->setEnabled(stack.canUndo());
    redo_->setEnabled(stack.canRedo());
    undo_->setAccessibleName(stack.canUndo() ? tr("Undo %1").arg(stack.undoText()) : tr("Undo"));
    redo_->setAccessibleName(stack.canRedo() ? tr("Redo %1").arg(stack.redoText()) : tr("Redo"));
    undo_->setToolTip(undo_->accessibleName());
    redo_->setToolTip(redo_->accessibleName());
    undo_->setVisible(!session_.readOnly());
    redo_->setVisible(!session_.readOnly());
}

} // namespace rhizograph::app
