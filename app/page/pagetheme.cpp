#include "page/pagetheme.h"

namespace rhizograph::app {
namespace {

Theme makePageTheme() {
    const QColor white(0xFF, 0xFF, 0xFF);
    Theme theme;
    theme.paper = theme.raised = theme.skin = white;
    theme.sunk = QColor(0xE4E0D6);
    theme.line = QColor(0xC4BEB0), theme.edge = QColor(0x7A7466);
    theme.ink = QColor(0x141C1B), theme.quiet = QColor(0x4E5957);
    theme.spruce = QColor(0x1F5F56), theme.onSpruce = white, theme.spruceTint = QColor(0xE1ECE7);
    theme.ochre = QColor(0x9A6210), theme.ochreInk = QColor(0x7A4E0C), theme.ochreTint = QColor(0xFAF0DC);
    theme.brick = QColor(0x8E2A20), theme.onBrick = white, theme.brickTint = QColor(0xF5DFDA);
    theme.plum = QColor(0x553667), theme.plumTint = QColor(0xF0E9F4);
    theme.redbar = theme.brick, theme.onRedbar = white;
    theme.region = QColor(0x857A61);
    return theme;
}

} // namespace

const Theme& pageTheme() {
    static const Theme theme = makePageTheme();
    return theme;
}

} // namespace rhizograph::app
