#pragma once

#include "compare/compare.h"
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
        std::map<RegionKey, Change> changes; ///< outlined: worse with a full line, better with a broken one
    };

    explicit FigurePair(std::shared_ptr<const FigureArt> art, QWidget* parent = nullptr);
    [[nodiscard]] const std::vector<Picture>& pictures() const { return pictures_; }
    void setPictures(std::vector<Picture> pictures);
    [[nodiscard]] QSize sizeHint() const override { return {404, 320}; }

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintPicture(QPainter& painter, const Picture& picture, const QRectF& cell) const;
    void paintChanges(QPainter& painter, const Picture& picture, const QTransform& place) const;

    std::shared_ptr<const FigureArt> art_;
    std::vector<Picture> pictures_;
};

/// "from the front", "from behind", "soles", "saddle".
[[nodiscard]] QString viewWords(FigureView view);

} // namespace rhizograph::app
