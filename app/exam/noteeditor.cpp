#include "exam/noteeditor.h"

#include "exam/flyout.h"
#include "exam/rowwords.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

NoteEditor* NoteEditor::open(VisitSession& session, const Item& item, Side side, QWidget* over) {
    auto* editor = new NoteEditor(session, item, side, over);
    editor->setFixedWidth(grown(over, 360));
    editor->adjustSize();
    editor->move(popupPlace(over, over->rect(), editor->size(), false));
    editor->show();
    editor->edit_->setFocus();
    return editor;
}

NoteEditor::NoteEditor(VisitSession& session, const Item& item, Side side, QWidget* parent)
    : QFrame(parent, Qt::Popup), session_(session), item_(item), side_(side) {
    setAttribute(Qt::WA_DeleteOnClose);
    auto* title = new QLabel(findingName(item, side), this);
    title->setFont(sized(this, 16, QFont::DemiBold));
    title->setWordWrap(true);
    edit_ = new QPlainTextEdit(this);
    edit_->setAccessibleName(tr("Note on %1").arg(findingName(item, side)));
    edit_->setTabChangesFocus(true);
    edit_->setFixedHeight(grown(this, 96));
    if (const Finding* now = session_.exam().find(FindingKey{item.id, side}); now != nullptr)
        edit_->setPlainText(QString::fromStdString(now->note));
    auto* done = new PlainButton(tr("Done"), PlainButton::Kind::primary, this);
    connect(done, &QAbstractButton::clicked, this, &QWidget::close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    for (QWidget* each : std::initializer_list<QWidget*>{title, edit_, done})
        column->addWidget(each);
}

void NoteEditor::keep() {
    const FindingKey key{item_.id, side_};
    const Finding* now = session_.exam().find(key);
    const std::string text = edit_->toPlainText().trimmed().toStdString();
    if (now == nullptr || now->note == text) return;
    Finding next = *now;
    next.note = text;
    session_.change(tr("%1: note").arg(findingName(item_, side_)), {{key, std::move(next)}});
}

void NoteEditor::closeEvent(QCloseEvent* event) {
    if (!discarded_) keep();
    QFrame::closeEvent(event);
}

void NoteEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        discarded_ = true;
        close();
        return;
    }
    QFrame::keyPressEvent(event);
}

void NoteEditor::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
