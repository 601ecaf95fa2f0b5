#pragma once

#include <QAccessible>
#include <QRect>
#include <QString>

namespace rhizograph::app {

/// One pressable part of a widget that paints all its parts itself.
struct Cell {
    QString name;        ///< full name with side and state, e.g. "Left great toe, light touch, reduced"
    QString description; ///< what a press does; empty where the role says it
    QRect rect;          ///< in widget coordinates
    QAccessible::Role role = QAccessible::PushButton;
    bool enabled = true;
    bool checked = false;
};

/// A widget whose parts are painted, not child widgets, and that still shows each part to assistive programs.
/// The widget calls installCellAccess() in its constructor and cellsChanged() when the parts are others.
class CellHost {
public:
    virtual ~CellHost() = default;
    CellHost() = default;
    CellHost(const CellHost&) = delete;
    CellHost& operator=(const CellHost&) = delete;

    [[nodiscard]] virtual QString hostName() const = 0;
    [[nodiscard]] virtual int cellCount() const = 0;
    [[nodiscard]] virtual Cell cell(int index) const = 0;
    [[nodiscard]] virtual int cellAt(const QPoint& position) const = 0; ///< -1 outside every cell
    [[nodiscard]] virtual int focusedCell() const = 0;                  ///< -1 for none
    virtual void focusCell(int index) = 0;
    virtual void pressCell(int index) = 0;
};

/// Makes Qt show the cells of every CellHost widget. May be called any number of times.
void installCellAccess();

/// Tells assistive programs that this cell reads differently now.
void announceCell(QWidget* host, int index, QAccessible::Event event = QAccessible::NameChanged);

} // namespace rhizograph::app
