#pragma once

#include <QWidget>

class QHBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// A message across the top with its ways out as buttons; stays until one of them is taken.
class NoticeBar : public QWidget {
    Q_OBJECT

public:
    explicit NoticeBar(QWidget* parent = nullptr);
    void say(const QString& text);
    [[nodiscard]] QString text() const;
    PlainButton* addWayOut(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Label* words_;
    QHBoxLayout* row_;
};

} // namespace rhizograph::app
