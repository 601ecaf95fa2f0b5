#include "parts/cells.h"

#include <map>
#include <QAccessibleWidget>
#include <QWidget>

namespace rhizograph::app {
namespace {

CellHost* hostOf(QObject* object) {
    return dynamic_cast<CellHost*>(object);
}

/// One cell as assistive programs see it; lives as long as the interface of its host.
class CellInterface final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    CellInterface(QWidget* widget, int index) : widget_(widget), index_(index) {}

    [[nodiscard]] bool isValid() const override { return index_ < host().cellCount(); }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QWindow* window() const override { return widget_->window()->windowHandle(); }
    [[nodiscard]] QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(widget_);
    }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QAccessible::Role role() const override {
        return isValid() ? host().cell(index_).role : QAccessible::NoRole;
    }
    [[nodiscard]] QRect rect() const override {
        if (!isValid()) {
            return {};
        }
        const QRect local = host().cell(index_).rect;
        return {widget_->mapToGlobal(local.topLeft()), local.size()};
    }
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        if (!isValid()) {
            return {};
        }
        const Cell cell = host().cell(index_);
        return kind == QAccessible::Name          ? cell.name
               : kind == QAccessible::Description ? cell.description
                                                  : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        const Cell cell = host().cell(index_);
        state.focusable = true;
        state.focused = widget_->hasFocus() && host().focusedCell() == index_;
        state.disabled = !cell.enabled || !widget_->isEnabled();
        state.checkable = cell.role == QAccessible::CheckBox || cell.role == QAccessible::RadioButton;
        state.checked = cell.checked;
        state.invisible = !widget_->isVisible();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }
    [[nodiscard]] QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& action) override {
        if (!isValid()) {
            return;
        }
        if (action == pressAction()) {
            host().pressCell(index_);
        } else if (action == setFocusAction()) {
            widget_->setFocus();
            host().focusCell(index_);
        }
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }
    [[nodiscard]] int index() const { return index_; }

private:
    [[nodiscard]] CellHost& host() const { return *hostOf(widget_); }

    QWidget* widget_;
    int index_;
};

class CellHostInterface final : public QAccessibleWidget {
public:
    explicit CellHostInterface(QWidget* widget) : QAccessibleWidget(widget, QAccessible::Grouping) {}
    ~CellHostInterface() override {
        for (const auto& [index, id] : children_) {
            QAccessible::deleteAccessibleInterface(id);
        }
    }
    CellHostInterface(const CellHostInterface&) = delete;
    CellHostInterface& operator=(const CellHostInterface&) = delete;

    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name && host() != nullptr ? host()->hostName()
                                                              : QAccessibleWidget::text(kind);
    }
    [[nodiscard]] int childCount() const override { return host() == nullptr ? 0 : host()->cellCount(); }
    [[nodiscard]] QAccessibleInterface* child(int index) const override {
        if (index < 0 || index >= childCount()) {
            return nullptr;
        }
        auto found = children_.find(index);
        if (found == children_.end()) {
            // Ownership passes to Qt's registry; deleteAccessibleInterface gives it back in the destructor.
            auto made = std::make_unique<CellInterface>(widget(), index);
            found = children_.emplace(index, QAccessible::registerAccessibleInterface(made.release())).first;
        }
        return QAccessible::accessibleInterface(found->second);
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
        const auto* cell = dynamic_cast<const CellInterface*>(child);
        return cell == nullptr ? -1 : cell->index();
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        return host() == nullptr ? nullptr : child(host()->cellAt(widget()->mapFromGlobal(QPoint(x, y))));
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override {
        return host() != nullptr && widget()->hasFocus() ? child(host()->focusedCell()) : nullptr;
    }

private:
    /// Null while the widget is being taken down.
    [[nodiscard]] CellHost* host() const { return hostOf(widget()); }

    mutable std::map<int, QAccessible::Id> children_;
};

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    return widget != nullptr && hostOf(widget) != nullptr
               ? std::make_unique<CellHostInterface>(widget).release()
               : nullptr;
}

} // namespace

void installCellAccess() {
    QAccessible::installFactory(makeInterface);
}

void announceCell(QWidget* host, int index, QAccessible::Event event) {
    if (!QAccessible::isActive() || index < 0) {
        return;
    }
    QAccessibleEvent change(host, event);
    change.setChild(index);
    QAccessible::updateAccessibility(&change);
}

} // namespace rhizograph::app
