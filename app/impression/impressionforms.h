#pragma once

#include "impression/impressionrows.h"

#include <QAbstractButton>

namespace rhizograph::app {

class PlainButton;

/// The impression in a nutshell, for the head and the folded forms.
struct ImpressionDigest {
    QString site;    ///< "L5 root, left", or that none is known
    QString support; ///< "strong 86 %"; empty where no site is known
    QString percent;
    double share = 0;
    QString fit;
    int redSigns = 0;       ///< urgent or emergency
    int unacknowledged = 0; ///< of these
    QString nextTest;       ///< name of the first; empty when there is none
    std::optional<FindingKey> next;

    [[nodiscard]] QString spoken() const;
};

[[nodiscard]] ImpressionDigest digestOf(const VisitSession& session);

/// Title, fit in words and the arrow that folds the panel.
class ImpressionHead : public QWidget {
    Q_OBJECT

public:
    explicit ImpressionHead(QWidget* parent = nullptr);
    void show(const ImpressionDigest& digest);
    void setPortrait(bool portrait);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {100, sizeHint().height()}; }

signals:
    void foldPressed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] bool twoRows() const;
    [[nodiscard]] int fitHeight() const;

    QString fit_;
    PlainButton* arrow_;
};

/// The folded panel, 56 wide: site upright, standing bar, percent, diamond and count of red signs. A press
/// opens it.
class ImpressionFold : public QAbstractButton {
    Q_OBJECT

public:
    explicit ImpressionFold(QWidget* parent = nullptr);
    void show(const ImpressionDigest& digest);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ImpressionDigest digest_;
};

/// The portrait bar, 64 high: site, bar, support, the next test and an arrow that opens the sheet.
class ImpressionBar : public QWidget {
    Q_OBJECT

public:
    explicit ImpressionBar(QWidget* parent = nullptr);
    void show(const ImpressionDigest& digest);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, sizeHint().height()}; }

signals:
    void openPressed();
    void nextPressed(const rhizograph::FindingKey& key);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] bool twoRows() const;
    ImpressionDigest digest_;
    PlainButton* next_;
    PlainButton* open_;
};

} // namespace rhizograph::app
