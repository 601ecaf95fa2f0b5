#pragma once

#include <QPointer>
#include <QWidget>
#include <vector>

namespace rhizograph::app {

class Label;
class PlainButton;

/// A walk of about a minute over the open visit: one part after another stands out while a few words say what
/// it is for. Nothing can be recorded meanwhile; Escape or Skip ends it.
class Tour : public QWidget {
    Q_OBJECT

public:
    struct Stop {
        QPointer<QWidget> part; ///< none: the words stand alone
        QString title;
        QString words;
    };

    /// Covers its parent from the first stop on.
    Tour(std::vector<Stop> stops, QWidget* parent);

    [[nodiscard]] std::size_t place() const { return place_; }
    [[nodiscard]] std::size_t length() const { return stops_.size(); }

signals:
    void ended();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void go(std::size_t place);
    void next();
    void end();
    void arrange();
    [[nodiscard]] QRect shownPart() const;

    std::vector<Stop> stops_;
    std::size_t place_ = 0;
    QWidget* sheet_ = nullptr;
    Label* title_ = nullptr;
    Label* words_ = nullptr;
    Label* count_ = nullptr;
    PlainButton* back_ = nullptr;
    PlainButton* next_ = nullptr;
};

class VisitPage;

/// What a newcomer needs to know about the open visit.
[[nodiscard]] std::vector<Tour::Stop> visitStops(VisitPage& page);

} // namespace rhizograph::app
