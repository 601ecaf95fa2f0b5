#pragma once

#include "impression/impressionrows.h"

#include <QWidget>

class QLabel;
class QScrollArea;

namespace rhizograph::app {

class ImpressionBar;
class ImpressionFold;
class ImpressionHead;
class ImpressionList;
class VisitSession;

/// The impression of the open visit, beside the work and always alive.
///
/// Landscape: open (328 to 420 wide) or folded to 56. Portrait: a bar of 64, or the whole panel as a sheet,
/// whose height the window gives. The panel never covers anything by itself.
class ImpressionPanel : public QWidget {
    Q_OBJECT

public:
    explicit ImpressionPanel(VisitSession& session, QWidget* parent = nullptr);

    [[nodiscard]] int barHeight() const; ///< of the folded form on upright screens, px
    [[nodiscard]] bool folded() const { return folded_; }
    void setFolded(bool folded);
    [[nodiscard]] bool portrait() const { return portrait_; }
    void setPortrait(bool portrait);

    [[nodiscard]] ImpressionList& list() { return *list_; }
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void goToItem(const rhizograph::FindingKey& key);
    /// A site was pressed: its reasons show now, and its skin may be ghosted over the figures.
    void siteChosen(const rhizograph::SiteId& site, rhizograph::Side side);
    void foldedChanged(bool folded);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void refresh();
    void choose(const SiteId& site, Side side);
    void toggleReasons();
    void arrange();
    void setFonts();

    VisitSession& session_;
    ImpressionView view_;
    bool folded_ = false;
    bool portrait_ = false;
    ImpressionHead* head_ = nullptr;
    ImpressionList* list_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    QLabel* caution_ = nullptr;
    ImpressionFold* fold_ = nullptr;
    ImpressionBar* bar_ = nullptr;
};

} // namespace rhizograph::app
