#pragma once

#include "catalogue/catalogue.h"

#include <QWidget>
#include <vector>

class QLineEdit;
class QListWidget;

namespace rhizograph::app {

/// Finds an item by name and leads to it. Opens over the work with `/`.
class Finder : public QWidget {
    Q_OBJECT

public:
    Finder(const Catalogue& catalogue, QWidget* parent);

    void open();
    [[nodiscard]] QLineEdit& field() { return *field_; }
    /// Items that hold every word typed in their name, their card's or their step's; names that begin so
    /// first.
    [[nodiscard]] static std::vector<const Item*> matches(const Catalogue& catalogue, const QString& text,
                                                          std::size_t most);

signals:
    void chosen(const rhizograph::ItemId& item);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int rowHeight(const QString& text) const;
    void search(const QString& text);
    void take();

    const Catalogue& catalogue_;
    QLineEdit* field_;
    QListWidget* list_;
    std::vector<const Item*> found_;
};

} // namespace rhizograph::app
