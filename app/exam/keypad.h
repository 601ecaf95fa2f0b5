#pragma once

#include "exam/examoptions.h"
#include "shell/visitsession.h"

#include <QFrame>

class QGridLayout;
class QLabel;

namespace rhizograph::app {

class AngleDial;
class PlainButton;

/// Number keys for one measure, under a dial where it is an angle. Nothing is recorded before "Record", and
/// nothing outside the scale's range.
class Keypad : public QFrame {
    Q_OBJECT

public:
    Keypad(VisitSession& session, const Item& item, Side side, LengthUnit length, QWidget* parent);

    void openAt(const QRect& place);
    /// As if these keys had been pressed: digits, a decimal point, a minus.
    void type(const QString& keys);
    [[nodiscard]] AngleDial* dial() const { return dial_; }
    [[nodiscard]] const QString& typed() const { return typed_; }
    /// Why what is typed cannot be recorded, as a sentence; empty when it can.
    [[nodiscard]] QString problem() const;
    void record();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildKeys(QGridLayout& grid);
    void addDial(QGridLayout& grid);
    void press(const QString& key);
    void erase();
    void clearFinding();
    void updateWords();
    [[nodiscard]] FindingKey key() const { return {item_.id, side_}; }
    /// The stored number for what is typed, rounded to the scale's step; none when it is no number.
    [[nodiscard]] std::optional<double> number() const;

    VisitSession& session_;
    const Item& item_;
    Side side_;
    LengthUnit length_;
    ShownUnit unit_;
    QString typed_;
    bool fresh_ = true;         ///< the first key replaces what stood
    AngleDial* dial_ = nullptr; ///< none where the measure is no angle
    QLabel* value_ = nullptr;
    QLabel* hint_ = nullptr;
    PlainButton* record_ = nullptr;
};

} // namespace rhizograph::app
