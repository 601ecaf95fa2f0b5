#include "page/pageflow.h"

#include "page/pagetheme.h"

#include <QCoreApplication>

namespace rhizograph::app {
namespace {

constexpr qreal small = 9; // points
constexpr std::size_t perRow = 3;

} // namespace

/// Small charts side by side: right a solid line with circles, left a dashed one with squares, a gap where it
/// was not examined.
void PageFlow::trends() {
    if (content_.trends.empty()) return;
    const qreal gap = millimeters(5);
    const qreal width = (right_ - column_ - gap * (perRow - 1)) / perRow;
    const qreal chart = millimeters(13);
    const PageRun key{
        QCoreApplication::translate("Page", "Course from %1 to %2. Right: solid line, circles. Left: dashed "
                                            "line, squares. A gap: not examined.")
            .arg(content_.trendDates.front(), content_.trendDates.back()),
        QFont::Normal, pageTheme().quiet};
    const PageText words({key}, small, right_ - column_);
    std::vector<PageText> titles;
    std::vector<PageText> values;
    qreal head = 0;
    qreal foot = 0;
    for (const PageTrend& trend : content_.trends) {
        titles.emplace_back(std::vector<PageRun>{{trend.title, QFont::Bold, pageTheme().ink}}, small, width);
        values.emplace_back(std::vector<PageRun>{{trend.words, QFont::Normal, pageTheme().ink}}, small,
                            width);
        head = std::max(head, titles.back().height());
        foot = std::max(foot, values.back().height());
    }
    if (words.height() + head + chart + foot + millimeters(6) > room()) newPage();
    whole(words, {column_, y_});
    y_ += words.height() + millimeters(1);
    for (std::size_t i = 0; i < content_.trends.size() && i < perRow; ++i) {
        const qreal x = column_ + static_cast<qreal>(i) * (width + gap);
        whole(titles[i], {x, y_ + head - titles[i].height()});
        const QRectF box(x, y_ + head + millimeters(1), width, chart);
        pages_.back().emplace_back(PageChart{box, i});
        whole(values[i], {x, box.bottom() + millimeters(1)});
    }
    y_ += head + chart + foot + millimeters(4);
}

} // namespace rhizograph::app
