#pragma once

#include <QWidget>

class QHBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// The strip across the top of a screen: what stands on the left is the screen's, at the right is who is
/// signed in, the lock and the menu.
class Strip : public QWidget {
    Q_OBJECT

public:
    explicit Strip(QWidget* parent = nullptr);

    /// Where a screen puts its own parts, from the left; a stretch of its own pushes parts to the right.
    [[nodiscard]] QHBoxLayout& content() { return *content_; }
    void setUser(const QString& name);
    void setUserShown(bool shown);
    [[nodiscard]] PlainButton& menuButton() { return *menu_; }
    /// A hairline between two parts.
    static QWidget* divider(QWidget* parent);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void lockWanted();
    void menuWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QHBoxLayout* content_;
    Label* user_;
    PlainButton* menu_;
};

} // namespace rhizograph::app
