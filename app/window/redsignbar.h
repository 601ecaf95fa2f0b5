#pragma once

#include "reasoning/assessment.h"

#include <QWidget>
#include <vector>

namespace rhizograph::app {

class HoldButton;
class VisitSession;

/// Red signs that are urgent or an emergency and were not acknowledged: the gravest first, one at a time. The
/// bar stays until somebody acknowledges by name.
class RedSignBar : public QWidget {
    Q_OBJECT

public:
    RedSignBar(VisitSession& session, bool mayAcknowledge, QWidget* parent = nullptr);

    /// Whether there is anything to show.
    [[nodiscard]] bool needed() const { return !open_.empty(); }
    void setNarrow(bool narrow);
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void neededChanged();
    void goToItem(const rhizograph::FindingKey& key);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    class LightButton;
    void refresh();
    void arrange();
    void acknowledge();
    [[nodiscard]] const RedSign& current() const { return open_.at(static_cast<std::size_t>(index_)); }
    [[nodiscard]] QString countText() const;

    VisitSession& session_;
    bool mayAcknowledge_;
    bool narrow_ = false;
    std::vector<RedSign> open_;
    int index_ = 0;
    LightButton* next_;
    LightButton* items_;
    HoldButton* acknowledge_;
};

} // namespace rhizograph::app
