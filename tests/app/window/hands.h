#pragma once

#include "support/appclinic.h"

#include "exam/findingrow.h"
#include "exam/steppage.h"
#include "figures/paindrawing.h"
#include "figures/skinfigure.h"
#include "parts/button.h"
#include "patients/patientspage.h"
#include "patients/signinpage.h"
#include "patients/visitlist.h"
#include "window/visitpage.h"

#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QTest>
#include <stdexcept>

namespace rhizograph::app::testing {

inline void press(QWidget& widget, const QPoint& at) {
    QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
}

/// Presses the visible button with these words, or of this accessible name.
inline void pressButton(QWidget& within, const QString& words) {
    for (auto* button : within.findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || (button->text() != words && button->accessibleName() != words)) continue;
        press(*button, button->rect().center());
        return;
    }
    throw std::runtime_error("no button " + words.toStdString());
}

inline QLineEdit& field(QWidget& within, const QString& name) {
    for (auto* edit : within.findChildren<QLineEdit*>())
        if (edit->accessibleName() == name && edit->isVisible()) return *edit;
    throw std::runtime_error("no field " + name.toStdString());
}

inline void pressCell(QWidget& widget, const CellHost& host, int index) {
    press(widget, host.cell(index).rect.center());
}

inline void signIn(MainWindow& window) {
    QTest::keyClicks(&field(window.signInPage(), "Passphrase"), passphrase);
    pressButton(window.signInPage(), "Sign in");
    if (!waitUntil([&] { return window.screen() != &window.signInPage(); }))
        throw std::runtime_error("sign-in did not lead on");
}

/// Records one finding as a finger would: turns to its page, then presses its button, its region or its
/// number.
class Finger {
public:
    explicit Finger(VisitPage& page) : page_(page) {}

    void record(const FindingKey& key, const Value& value) {
        page_.goTo(key);
        QApplication::processEvents();
        auto& step = dynamic_cast<StepPage&>(page_.page(page_.pageIndex()));
        if (FindingRow* row = step.row(key.item)) return onRow(*row, key, value);
        if (step.drawing() != nullptr && step.drawing()->shows(key)) return draw(*step.drawing(), key, value);
        if (step.skin() != nullptr && step.skin()->shows(key)) return paint(*step.skin(), key, value);
        throw std::runtime_error("nowhere to record " + key.item.text());
    }

private:
    void onRow(FindingRow& row, const FindingKey& key, const Value& value) {
        const int cell = row.cellOf(key.side, value);
        if (cell < 0) throw std::runtime_error("no button for " + key.item.text() + " " + value.word());
        pressCell(row, row, cell);
    }

    void draw(PainDrawing& drawing, const FindingKey& key, const Value& value) {
        drawing.setBrush(value);
        press(drawing.canvas(), drawing.canvas().placeOf(*drawing.layer().region(key)).value().toPoint());
    }

    void paint(SkinFigure& skin, const FindingKey& key, const Value& value) {
        skin.goTo(key); // brings the layer forward
        const RegionKey region = skin.layer().region(key).value();
        // A press moves on to the next state; five presses go all the way round.
        for (int presses = 0; presses < 5; ++presses) {
            press(skin.canvas(), skin.canvas().placeOf(region).value().toPoint());
            if (page_.session().exam().find(key) != nullptr &&
                page_.session().exam().find(key)->value == value)
                return;
        }
        throw std::runtime_error("the region never became " + value.word());
    }

    VisitPage& page_;
};

} // namespace rhizograph::app::testing
