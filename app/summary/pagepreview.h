#pragma once

#include "page/pagedocument.h"
#include "parts/cells.h"

#include <QPixmap>
#include <QWidget>

namespace rhizograph::app {

/// The pages as they will print, one below the other, as wide as the widget. Every section is a part that can
/// be pressed.
class PagePreview : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit PagePreview(QWidget* parent = nullptr);

    void setDocument(std::shared_ptr<const PageDocument> document);
    [[nodiscard]] const PageDocument* document() const { return document_.get(); }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, heightForWidth(200)}; }

    [[nodiscard]] QString hostName() const override;
    [[nodiscard]] int cellCount() const override;
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void sectionPressed(const QString& section);
    void focusMoved(const QRect& rect);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QRectF sheet(int page) const; ///< in widget coordinates
    [[nodiscard]] qreal scale() const;
    [[nodiscard]] const QPixmap& picture(int page);
    [[nodiscard]] QString spoken(const QString& section) const;

    std::shared_ptr<const PageDocument> document_;
    std::vector<QPixmap> pictures_; ///< painted when first seen
    int picturesWidth_ = 0;
    int focus_ = -1;
    int hover_ = -1;
};

} // namespace rhizograph::app
