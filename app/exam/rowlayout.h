#pragma once

#include "exam/exam.h"
#include "exam/examoptions.h"

#include <optional>
#include <QFont>
#include <QRectF>
#include <QString>
#include <vector>

namespace rhizograph::app {

/// One pressable part of a row.
struct RowCell {
    enum class Kind {
        value,       ///< records its value
        fold,        ///< stands for the outermost grades and opens them
        field,       ///< a measure: opens the keypad
        notTestable, ///< covers the side; a press gives the grades back
        label,       ///< the item's name: opens the menu
    };

    Kind kind = Kind::value;
    Side side = Side::none;
    std::optional<Value> value;
    QString text;
    QRectF rect;
};

struct RowLayout {
    std::vector<RowCell> cells;      ///< in reading order from the left; the label's cell last
    std::vector<std::string> folded; ///< tokens behind the fold, lowest first
    QRectF label;
    QRectF note;      ///< room for the note's words (unpaired rows) or its glyph (paired)
    QRectF rightHead; ///< "Right" and "Left" over the buttons; empty where not asked for
    QRectF leftHead;
    bool labelAbove = false;
    int height = 0;
};

/// What a row shows, as far as its shape depends on it.
struct RowContent {
    const Item* item = nullptr;
    const Exam* exam = nullptr;
    const Exam* previous = nullptr; ///< may be null
    ExamOptions options;
};

struct RowFrame {
    int width = 0;
    qreal scale = 1;          ///< of the text
    QFont font;               ///< 16 px at scale 1
    bool heads = false;       ///< names the sides above the buttons
    bool rightToLeft = false; ///< moves the parts of unpaired rows; a side never changes its place
};

/// Width of one side's block of buttons in a card of this width; all paired rows of a card and the heads
/// above them share it, so that columns line up.
[[nodiscard]] qreal sideWidth(int width, qreal scale);
/// Whether labels stand between the sides at all, or above them because the card is too narrow for the text.
[[nodiscard]] bool labelsBetween(int width, qreal scale);

/// Paired: the patient's right on the left half, both sides mirror images, normal next to the label.
/// Unpaired: label at the start, buttons at the end, below the label where they do not fit beside it.
[[nodiscard]] RowLayout layOutRow(const RowContent& content, const RowFrame& frame);

} // namespace rhizograph::app
