#pragma once

#include "catalogue/howto.h"
#include "shell/visitsession.h"

#include <QMenu>

namespace rhizograph::app {

/// What else can be said about an item: not testable with a reason, a note, clear; and what it was before.
/// For a sided item opened at its name, both sides are offered. In a visit that is only read, nothing is
/// changed.
class RowMenu : public QMenu {
    Q_OBJECT

public:
    /// `howTo` may be null.
    RowMenu(VisitSession& session, const Item& item, Side side, const HowTo* howTo, QWidget* parent);

private:
    void addSide(Side side, bool named);
    void addPast(Side side, bool named);
    [[nodiscard]] static QString titled(const QString& text, Side side, bool named);
    void setNotTestable(const std::vector<Side>& sides, const std::string& reason);
    void addReasons(const QString& title, const std::vector<Side>& sides);

    VisitSession& session_;
    const Item& item_;
};

} // namespace rhizograph::app
