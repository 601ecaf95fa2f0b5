#pragma once

#include "catalogue/catalogue.h"
#include "exam/exam.h"

#include <QFrame>
#include <vector>

class QLineEdit;
class QListWidget;

namespace rhizograph::app {

/// Items whose name, card or step holds every word typed (case ignored); names that begin with the text come
/// first, else the order of the examination. At most `limit`.
[[nodiscard]] std::vector<const Item*> itemsNamed(const Catalogue& catalogue, const QString& text,
                                                  int limit = 12);

/// A popup that finds an item of any step by name.
class ItemSearch : public QFrame {
    Q_OBJECT

public:
    ItemSearch(const Catalogue& catalogue, QWidget* parent);
    /// Under this place of the parent.
    void openAt(const QRect& place);
    [[nodiscard]] QLineEdit* edit() const { return edit_; }

signals:
    /// For a sided item the patient's right: the place to begin.
    void chosen(const rhizograph::FindingKey& key);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void find(const QString& text);
    void choose();

    const Catalogue& catalogue_;
    std::vector<const Item*> found_;
    QLineEdit* edit_ = nullptr;
    QListWidget* list_ = nullptr;
};

} // namespace rhizograph::app
