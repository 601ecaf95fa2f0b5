#pragma once

#include "exam/exam.h"
#include "parts/button.h"

#include <functional>
#include <QString>
#include <string>
#include <vector>

class QWidget;

namespace rhizograph::app {

class VisitSession;

/// One page of the work area, made when it is first shown.
struct WorkPage {
    std::string step; ///< the catalogue's step, or empty for another page
    QString label;
    Glyph glyph = Glyph::none; ///< for other pages
    /// Whether the page has the whole width, without the impression beside it.
    bool wide = false;
    std::function<QWidget*(QWidget* parent)> make;
    /// Turns to an item of the page; may be empty where the page has no items.
    std::function<void(QWidget& page, const FindingKey& key)> goTo;
};

} // namespace rhizograph::app
