#include "exam/rowmenu.h"

#include "exam/howtosheet.h"
#include "exam/noteeditor.h"
#include "exam/rowwords.h"

namespace rhizograph::app {

RowMenu::RowMenu(VisitSession& session, const Item& item, Side side, const HowTo* howTo, QWidget* parent)
    : QMenu(parent), session_(session), item_(item) {
    setAttribute(Qt::WA_DeleteOnClose);
    addSection(findingName(item, side));
    if (item.sided && side == Side::none) {
        addReasons(tr("Both sides not testable"), {Side::right, Side::left});
        addSide(Side::right, true);
        addSide(Side::left, true);
    } else {
        addSide(side, false);
    }
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

void RowMenu::addSide(Side side, bool named) {
    const auto titled = [&](const QString& text) {
        if (!named) return text;
        const QString word = sideWord(side);
        return word.left(1).toUpper() + word.mid(1) + ": " + text.left(1).toLower() + text.mid(1);
    };
    addReasons(titled(tr("Not testable")), {side});
    const FindingKey key{item_.id, side};
    const Finding* now = session_.exam().find(key);
    // A remark belongs to what was found: without a finding there is nothing to remark on.
    QAction* note =
        addAction(titled(now != nullptr && !now->note.empty() ? tr("Change the note") : tr("Add a note")),
                  this, [this, key] { NoteEditor::open(session_, item_, key.side, parentWidget()); });
    note->setEnabled(now != nullptr);
    QAction* clear = addAction(titled(tr("Clear")), this, [this, key] {
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
