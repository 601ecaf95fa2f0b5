#pragma once

#include "shell/visitsession.h"

#include <QFrame>

class QPlainTextEdit;

namespace rhizograph::app {

/// A remark on one finding. Closing keeps what was written; Escape leaves it as it was.
class NoteEditor : public QFrame {
    Q_OBJECT

public:
    static NoteEditor* open(VisitSession& session, const Item& item, Side side, QWidget* over);
    NoteEditor(VisitSession& session, const Item& item, Side side, QWidget* parent);

    [[nodiscard]] QPlainTextEdit* edit() const { return edit_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void keep();

    VisitSession& session_;
    const Item& item_;
    Side side_;
    bool discarded_ = false;
    QPlainTextEdit* edit_ = nullptr;
};

} // namespace rhizograph::app
