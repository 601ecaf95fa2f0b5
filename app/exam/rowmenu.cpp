#include "exam/rowmenu.h"

#include "exam/historysheet.h"
#include "exam/howtosheet.h"
#include "exam/noteeditor.h"
#include "exam/rowwords.h"

namespace rhizograph::app {

RowMenu::RowMenu(VisitSession& session, const Item& item, Side side, const HowTo* howTo, QWidget* parent)
    : QMenu(parent), session_(session), item_(item) {
    setAttribute(Qt::WA_DeleteOnClose);
    addSection(findingName(item, side));
    const bool both = item.sided && side == Side::none;
    const std::vector<Side> sides = both ? std::vector{Side::right, Side::left} : std::vector{side};
    if (!session.readOnly()) {
        if (both) addReasons(tr("Both sides not testable"), sides);
        for (const Side each : sides)
            addSide(each, both);
    }
    if (session.start().past)
        for (const Side each : sides)
            addPast(each, both);
    if (howTo == nullptr) return;
    addSeparator();
    addAction(tr("How it is done"), this,
              [this, sheet = *howTo] { HowToSheet::open(item_, sheet, parentWidget()); });
}

void RowMenu::addReasons(const QString& title, const std::vector<Side>& sides) {
    QMenu* reasons = addMenu(title);
    for (const std::string& reason : session_.catalogue().notTestableReasons()) {
        QString word = reasonWord(reason);
        word[0] = word[0].toUpper();
        reasons->addAction(word, this, [this, sides, reason] { setNotTestable(sides, reason); });
    }
}

QString RowMenu::titled(const QString& text, Side side, bool named) {
    if (!named) return text;
    const QString word = sideWord(side);
    return word.left(1).toUpper() + word.mid(1) + ": " + text.left(1).toLower() + text.mid(1);
}

void RowMenu::addPast(Side side, bool named) {
    addAction(titled(tr("What it was before"), side, named), this,
              [this, side] { HistorySheet::open(session_, item_, side, parentWidget()); });
}

void RowMenu::addSide(Side side, bool named) {
    addReasons(titled(tr("Not testable"), side, named), {side});
    const FindingKey key{item_.id, side};
    const Finding* now = session_.exam().find(key);
    // A remark belongs to what was found: without a finding there is nothing to remark on.
    QAction* note = addAction(
        titled(now != nullptr && !now->note.empty() ? tr("Change the note") : tr("Add a note"), side, named),
        this, [this, key] { NoteEditor::open(session_, item_, key.side, parentWidget()); });
    note->setEnabled(now != nullptr);
    QAction* clear = addAction(titled(tr("Clear"), side, named), this, [this, key] {
        session_.change(tr("%1: cleared").arg(findingName(item_, key.side)), {{key, std::nullopt}});
    });
    clear->setEnabled(now != nullptr);
}

void RowMenu::setNotTestable(const std::vector<Side>& sides, const std::string& reason) {
    std::vector<FindingChange> changes;
    for (const Side side : sides) {
        const Finding* now = session_.exam().find(FindingKey{item_.id, side});
        changes.push_back(
            {{item_.id, side},
             Finding{Value::notTestable(reason), false, now != nullptr ? now->note : std::string{}}});
    }
    session_.change(
        tr("%1: not testable").arg(findingName(item_, sides.size() == 1 ? sides.front() : Side::none)),
        std::move(changes));
}

} // namespace rhizograph::app
