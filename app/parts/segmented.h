#pragma once

#include "parts/cells.h"
#include "shell/theme.h"

#include <QStringList>
#include <QWidget>

namespace rhizograph::app {

/// One of several words is chosen; they stand side by side in one frame.
class Segmented : public QWidget, public CellHost {
    Q_OBJECT

public:
    Segmented(const QString& name, const QStringList& words, QWidget* parent = nullptr);

    [[nodiscard]] int chosen() const { return chosen_; }
    void choose(int index);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Breaks into rows where the width ends.
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QString hostName() const override { return name_; }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(words_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return chosen_; }
    void focusCell(int index) override { choose(index); }
    void pressCell(int index) override { choose(index); }

signals:
    void chosenChanged(int index);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QRectF place(int index, int width) const;
    [[nodiscard]] int rows(int width) const;
    [[nodiscard]] QRectF shape(int index) const;
    /// A press on the frame counts too.
    [[nodiscard]] QRect pressArea(int index) const;
    [[nodiscard]] qreal wordWidth(int index) const;

    QString name_;
    QStringList words_;
    int chosen_ = 0;
};

} // namespace rhizograph::app
