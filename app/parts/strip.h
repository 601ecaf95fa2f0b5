#pragma once

#include <QWidget>

class QBoxLayout;
class QHBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// The strip across the top of a screen: what stands on the left is the screen's, at the right is who is
/// signed in, the lock and the menu. Where both do not fit beside one another they stand in two rows.
class Strip : public QWidget {
    Q_OBJECT

public:
    explicit Strip(QWidget* parent = nullptr);

    /// Where a screen puts its own parts, from the left; a stretch of its own pushes parts to the right.
    [[nodiscard]] QHBoxLayout& content() { return *content_; }
    /// What stands before who is signed in.
    void addTool(QWidget* tool);
    /// Lays out for this width; the height follows.
    void fit(int width);
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
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    QBoxLayout* both_;
    QHBoxLayout* content_;
    QHBoxLayout* tools_;
    int ownTools_ = 0;
    bool stacked_ = false;
    Label* user_;
    PlainButton* menu_;
};

} // namespace rhizograph::app
