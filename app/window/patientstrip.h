#pragma once

#include "parts/strip.h"

#include <QAbstractButton>

namespace rhizograph::app {

class Label;
class PlainButton;
class VisitSession;

/// Tells whether everything tapped is on disk. Can be pressed where something is wrong.
class SavedMark : public QAbstractButton {
    Q_OBJECT

public:
    enum class State { saved, saving, failing, readOnly };

    explicit SavedMark(QWidget* parent = nullptr);
    void set(State state, const QString& text);
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    State state_ = State::saved;
};

/// Who is examined, whether it is saved, undo and redo.
class PatientStrip : public Strip {
    Q_OBJECT

public:
    explicit PatientStrip(VisitSession& session, QWidget* parent = nullptr);

    [[nodiscard]] SavedMark& savedMark() { return *saved_; }
    /// Narrow screens leave out the record number and who is signed in.
    void setNarrow(bool narrow);
    /// What moves the visit on ("Hand over"); hidden when empty.
    void setHandOver(const QString& text);

signals:
    void backWanted();
    void handOverWanted();
    void savedPressed();

private:
    void nameParts();
    void refresh();

    VisitSession& session_;
    bool narrow_ = false;
    Label* record_;
    Label* visit_;
    PlainButton* handOver_;
    SavedMark* saved_;
    PlainButton* undo_;
    PlainButton* redo_;
};

} // namespace rhizograph::app
