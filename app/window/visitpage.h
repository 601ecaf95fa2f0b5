#pragma once

#include "window/rail.h"
#include "window/workpage.h"

#include <QWidget>
#include <vector>

class QStackedWidget;

namespace rhizograph::app {

class Finder;
class ImpressionPanel;
class NoticeBar;
class PatientStrip;
class QueuedRecord;
class RedSignBar;
class VisitSession;

/// The open visit: strip, red-sign bar, rail, work and impression, arranged for wide and for upright screens.
class VisitPage : public QWidget {
    Q_OBJECT

public:
    /// `record` may be null: nothing is stored then. Both outlive the page.
    VisitPage(VisitSession& session, QueuedRecord* record, std::vector<WorkPage> pages,
              QWidget* parent = nullptr);

    [[nodiscard]] VisitSession& session() { return session_; }
    [[nodiscard]] PatientStrip& strip() { return *strip_; }
    [[nodiscard]] Rail& rail() { return *rail_; }
    [[nodiscard]] RedSignBar& redSignBar() { return *redSigns_; }
    [[nodiscard]] ImpressionPanel& impression() { return *impression_; }
    [[nodiscard]] Finder& finder() { return *finder_; }
    [[nodiscard]] NoticeBar& saveNotice() { return *saveNotice_; }
    [[nodiscard]] int pageIndex() const { return current_; }
    [[nodiscard]] int pageCount() const { return static_cast<int>(pages_.size()); }
    /// The page, made now if it was not yet.
    [[nodiscard]] QWidget& page(int index);
    void showPage(int index);
    void goTo(const FindingKey& key);
    void openFinder();
    void notice(const QString& text);      ///< one line over the work, until it is closed
    [[nodiscard]] QString noticed() const; ///< the line that shows; empty when none does
    /// A line that stays, with a way back to where this visit was opened from.
    void offerWayBack(const QString& text);
    [[nodiscard]] bool upright() const { return upright_; }

signals:
    void pageShown(int index);
    void pageMade(QWidget* page);
    void saveCopyWanted();
    void wayBackWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Held {
        WorkPage page;
        QWidget* widget = nullptr;
    };
    void build();
    void connectRecord();
    void refreshRail();
    void showSaved();
    void showSaveFailure(const QString& reason);
    void arrange();
    void keepUnderFinger(int moved);
    int placeTop();
    void placeUpright(int top);
    void placeWide(int top);

    VisitSession& session_;
    QueuedRecord* record_;
    std::vector<Held> pages_;
    int current_ = -1;
    bool upright_ = false;
    PatientStrip* strip_ = nullptr;
    NoticeBar* saveNotice_ = nullptr;
    NoticeBar* notice_ = nullptr;
    NoticeBar* wayBack_ = nullptr;
    RedSignBar* redSigns_ = nullptr;
    Rail* rail_ = nullptr;
    QStackedWidget* work_ = nullptr;
    ImpressionPanel* impression_ = nullptr;
    Finder* finder_ = nullptr;
};

} // namespace rhizograph::app
