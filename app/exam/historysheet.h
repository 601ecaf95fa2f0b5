#pragma once

#include "shell/visitsession.h"

#include <QFrame>

class QVBoxLayout;

namespace rhizograph::app {

/// A small sheet over the row: every value the finding ever had, who wrote it and when, the newest first.
class HistorySheet : public QFrame {
    Q_OBJECT

public:
    HistorySheet(const VisitSession& session, const Item& item, Side side, QWidget* parent);
    static HistorySheet* open(const VisitSession& session, const Item& item, Side side, QWidget* over);
    /// What it says, a line each.
    [[nodiscard]] const QStringList& lines() const { return lines_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void addText(const QString& text, int pixels, QFont::Weight weight, bool quiet);
    void addPast(const Result<std::vector<PastValue>>& past);
    void addValue(const FindingEvent& event);

    const Item& item_;
    QWidget* inside_;
    QVBoxLayout* column_;
    QStringList lines_;
};

} // namespace rhizograph::app
