#pragma once

#include "shell/visitsession.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QPlainTextEdit;

namespace rhizograph::app {

/// An item answered in free words. What is typed is recorded when the typing pauses and when the field is
/// left.
class TextRow : public QWidget {
    Q_OBJECT

public:
    TextRow(VisitSession& session, const Item& item, QWidget* parent = nullptr);

    [[nodiscard]] const Item& item() const { return item_; }
    void refresh();
    void goTo();
    [[nodiscard]] QPlainTextEdit* edit() const { return edit_; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void keep();
    void fitHeight();
    [[nodiscard]] FindingKey key() const { return {item_.id, Side::none}; }

    VisitSession& session_;
    const Item& item_;
    QLabel* label_ = nullptr;
    QPlainTextEdit* edit_ = nullptr;
    QTimer pause_;
};

} // namespace rhizograph::app
