#pragma once

#include "figures/figurepainter.h"

#include <memory>
#include <QWidget>

namespace rhizograph::app {

/// Pictures of the skin side by side, each with its name above and Right and Left below.
class FigurePair : public QWidget {
    Q_OBJECT

public:
    struct Picture {
        QString title;
        FigureView view = FigureView::front;
        MarkOf marks;
    };

    explicit FigurePair(std::shared_ptr<const FigureArt> art, QWidget* parent = nullptr);
    void setPictures(std::vector<Picture> pictures);
    [[nodiscard]] QSize sizeHint() const override { return {404, 560}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 260}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintPicture(QPainter& painter, const Picture& picture, const QRectF& cell) const;

    std::shared_ptr<const FigureArt> art_;
    std::vector<Picture> pictures_;
};

} // namespace rhizograph::app
