#pragma once

#include "record/store.h"

#include <QWidget>

class QLineEdit;
class QTableWidget;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Who did what and when, the newest first; typing narrows it down.
class AuditPage : public QWidget {
    Q_OBJECT

public:
    explicit AuditPage(QWidget* parent = nullptr);

    /// Reads the newest entries; the reason when they cannot be read.
    Outcome show(Store& store);
    /// Names of patients stand here: gone when the screen is locked.
    void clear();
    [[nodiscard]] QTableWidget& table() { return *table_; }
    [[nodiscard]] QLineEdit& searchField() { return *search_; }

signals:
    void back();

protected:
    void changeEvent(QEvent* event) override;

private:
    void build();
    void fit();
    void narrow();
    Outcome read();

    Store* store_ = nullptr;
    int limit_ = 0;
    QLineEdit* search_;
    QTableWidget* table_;
    Label* count_;
    PlainButton* more_;
};

} // namespace rhizograph::app
