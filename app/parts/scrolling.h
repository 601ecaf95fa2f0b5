#pragma once

class QLabel;
class QWidget;

namespace rhizograph::app {

/// A widget that fills the page and scrolls up and down where the screen is too low for what stands on it;
/// the caller gives it a layout. The page itself must not have one yet.
[[nodiscard]] QWidget* scrolledInside(QWidget& page);

/// Breaks the label into lines where it is wider than this room, in px; else it keeps to one.
void wrapWithin(QLabel& label, int room);

} // namespace rhizograph::app
