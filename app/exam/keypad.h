#pragma once

#include "exam/examoptions.h"
#include "shell/visitsession.h"

#include <QFrame>

class QLabel;

namespace rhizograph::app {

class PlainButton;

/// Number keys for one measure. Nothing is recorded before "Record", and nothing outside the scale's range.
class Keypad : public QFrame {
    Q_OBJECT

public:
    Keypad(VisitSession& session, const Item& item, Side side, LengthUnit length, QWidget* parent);

    void openAt(const QRect& place);
    /// As if these keys had been pressed: digits, a decimal point, a minus.
    void type(const QString& keys);
    [[nodiscard]] const QString& typed() const { return typed_; }
    /// Why what is typed cannot be recorded, as a sentence; empty when it can.
    [[nodiscard]] QString problem() const;
    void record();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
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
    bool fresh_ = true; ///< the first key replaces what stood
    QLabel* value_ = nullptr;
    QLabel* hint_ = nullptr;
    PlainButton* record_ = nullptr;
};

} // namespace rhizograph::app
