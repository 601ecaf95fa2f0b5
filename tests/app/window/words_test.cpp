#include "app/language/tsfile.h"
#include "everyscreen.h"
#include "support/textrecorder.h"

#include "summary/pagepreview.h"
#include "summary/wordseditor.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QHeaderView>
#include <QScrollBar>
#include <set>

namespace rhizograph::app::testing {
namespace {

/// One text with the widget it stands on, in the coordinates of the window.
struct Placed {
    DrawnText drawn;
    const QWidget* widget;
    const QWidget* viewport; ///< it scrolls with; null where it stays
    QRectF box;
    QRectF seen;  ///< the part on the screen now
    QRectF reach; ///< where in its widget a text can be brought to sight, in the widget's coordinates
};

std::string describe(const Placed& placed) {
    return std::string(placed.widget->metaObject()->className()) + " \"" + placed.drawn.text.toStdString() +
           "\"";
}

/// The page shows paper, smaller than life; the figures place their words around the drawing by themselves
/// and are looked at by their own tests.
bool apart(const QWidget& widget) {
    return dynamic_cast<const PagePreview*>(&widget) != nullptr;
}

/// What scrolls with this widget; none where it stays in place.
const QWidget* viewportOf(const QWidget& widget) {
    for (const QWidget* up = &widget; up != nullptr && !up->isWindow(); up = up->parentWidget())
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(up->parentWidget());
            area != nullptr && area->viewport() == up)
            return up;
    return nullptr;
}

/// What can be seen of the widget, in its own coordinates, by scrolling up and down; sideways nothing
/// scrolls but what shows that it does.
QRectF reachOf(const QWidget& widget) {
    constexpr int far = 100'000;
    QRect reach = widget.rect();
    int across = 0; // what has scrolled is limited by nothing further up
    int along = 0;
    for (const QWidget* up = &widget; up != nullptr; up = up->isWindow() ? nullptr : up->parentWidget()) {
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(up->parentWidget());
            area != nullptr && area->viewport() == up) {
            if (area->verticalScrollBar()->maximum() > 0) along = far;
            // The heads of a table go along with its columns.
            const auto* table = qobject_cast<const QHeaderView*>(area) != nullptr
                                    ? qobject_cast<const QAbstractScrollArea*>(area->parentWidget())
                                    : area;
            if (table->horizontalScrollBar()->maximum() > 0 &&
                table->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff)
                across = far;
            // An item view or a text field draws on the viewport itself.
            if (up == &widget) reach.adjust(-across, -along, across, along);
        }
        reach &= QRect(widget.mapFrom(up, QPoint(0, 0)), up->size()).adjusted(-across, -along, across, along);
    }
    return reach;
}

/// The texts of a screen, those below the edge of a scrolled area too.
std::vector<Placed> textsOn(QWidget& screen) {
    std::vector<Placed> out;
    for (QWidget* widget : screen.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&screen) || apart(*widget)) continue;
        const QPoint corner = widget->mapTo(&screen, QPoint(0, 0));
        const QRectF seen = QRectF(widget->visibleRegion().boundingRect()).translated(corner);
        const QRectF reach = reachOf(*widget);
        const QWidget* viewport = viewportOf(*widget);
        for (DrawnText& text : textsOf(*widget)) {
            const QRectF box = text.box.translated(corner);
            out.push_back({std::move(text), widget, viewport, box, box & seen, reach});
        }
    }
    return out;
}

/// How much of the letters may pass an edge: side bearings and rounding, in px.
constexpr qreal slack = 2;

/// One line that is made to be shortened, and says the whole of it when pointed at or to who listens.
bool mayShorten(const Placed& each) {
    QStringList ends = each.drawn.text.split(QChar(0x2026));
    const auto whole = [&](const QString& text) {
        return text.size() >= each.drawn.text.size() && text.contains(ends.first()) &&
               text.contains(ends.last());
    };
    if (whole(each.widget->toolTip())) return true;
    const QPoint at = each.drawn.box.center().toPoint();
    if (const auto* view = qobject_cast<const QAbstractItemView*>(each.widget->parentWidget()))
        return whole(view->indexAt(at).data(Qt::ToolTipRole).toString());
    const auto* host = dynamic_cast<const CellHost*>(each.widget);
    const int cell = host != nullptr ? host->cellAt(at) : -1;
    return cell >= 0 && whole(host->cell(cell).name);
}

/// The nearest sheet this widget belongs to, which covers what lies below it.
const QWidget* sheetOf(const QWidget& widget) {
    for (const QWidget* up = &widget; up != nullptr; up = up->parentWidget())
        if (dynamic_cast<const ImpressionPanel*>(up) != nullptr ||
            dynamic_cast<const Finder*>(up) != nullptr || dynamic_cast<const Tour*>(up) != nullptr)
            return up;
    return nullptr;
}

/// Every fault once, with how many screens have it and the first of them.
using Faults = std::map<std::string, std::set<std::string>>;

std::string list(const Faults& faults) {
    std::string out;
    int count = 0;
    for (const auto& [fault, screens] : faults)
        if (++count <= 150)
            out += "\n  " + fault + ", on " + std::to_string(screens.size()) + ": " + *screens.begin();
    return out + (count > 150 ? "\n  …" : "");
}

template <class Part> bool within(const QWidget& widget) {
    for (const QWidget* up = &widget; up != nullptr; up = up->parentWidget())
        if (dynamic_cast<const Part*>(up) != nullptr) return true;
    return false;
}

class Reader {
public:
    void read(QWidget& screen, const std::string& where) {
        const std::vector<Placed> texts = textsOn(screen);
        seen += static_cast<int>(texts.size());
        for (const Placed& each : texts) {
            whole(each, where);
            // The chart's page stays English, and so do its heads while words are edited.
            if (foreign.contains(each.drawn.text) && !within<WordsEditor>(*each.widget))
                faults["is not translated: " + describe(each)].insert(where);
        }
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = i + 1; j < texts.size(); ++j)
                apartFrom(texts[i], texts[j], where);
    }

    std::set<QString> foreign;
    Faults faults;
    int seen = 0;

private:
    void whole(const Placed& each, const std::string& where) {
        const QRectF room = each.reach.adjusted(-slack, -slack, slack, slack);
        if (!room.contains(each.drawn.box)) faults["passes its edge: " + describe(each)].insert(where);
        const QRectF clip = each.drawn.clip.adjusted(-slack, -slack, slack, slack);
        const bool below =
            each.reach.contains(each.drawn.box) && !QRectF(each.widget->rect()).contains(each.drawn.box);
        if (!below && !each.drawn.clip.isEmpty() &&
            !clip.contains(each.drawn.box & QRectF(each.widget->rect())) &&
            each.drawn.clip.intersects(each.drawn.box))
            faults["is cut: " + describe(each)].insert(where);
        if (each.drawn.text == QChar(0x2026)) return; // the end of a broken "Choose …"
        const bool shortened = each.drawn.text.contains(QChar(0x2026)) && !each.drawn.text.endsWith(u" …") &&
                               !each.drawn.text.endsWith(u"...");
        if (shortened && !mayShorten(each)) faults["is shortened: " + describe(each)].insert(where);
    }
    void apartFrom(const Placed& one, const Placed& other, const std::string& where) {
        // Words in two colors are drawn in both, each clipped to its part.
        if (one.widget == other.widget && one.drawn.text == other.drawn.text && one.box == other.box) return;
        // What scrolls together is compared as a whole, the rest where it can be seen.
        const bool together = one.viewport == other.viewport;
        if (!together && sheetOf(*one.widget) != sheetOf(*other.widget)) return;
        const QRectF first = together ? one.box : one.seen;
        const QRectF second = together ? other.box : other.seen;
        const QRectF shared = first & second;
        // Ascent and descent hold room that letters seldom use: lines may touch there.
        const qreal line = std::min(first.height(), second.height());
        if (shared.width() <= slack || shared.height() <= line * 0.3) return;
        faults["overlap: " + describe(one) + " and " + describe(other)].insert(where);
    }
};

/// English texts that read otherwise in this language: they must not be on its screens.
std::set<QString> foreignTexts(Language language) {
    std::set<QString> foreign, own;
    if (language == Language::english) return {};
    for (const char* part : {"screens", "medicine"})
        for (const Message& message :
             messagesOf(QStringLiteral(RHIZOGRAPH_TEST_DATA "/../resources/translations/%1_%2.ts")
                            .arg(part, codeOf(language)))) {
            own.insert(message.translation);
            if (message.translation != message.source) foreign.insert(message.source);
        }
    for (const QString& word : own)
        foreign.erase(word);
    return foreign;
}

struct Setting {
    Language language;
    int percent;
    QSize size;
};

class Words : public ::testing::TestWithParam<Setting> {
protected:
    void TearDown() override { apply({ThemeName::light, 100, false, Language::english}); }
};

TEST_P(Words, AreWholeAndDoNotOverlapOnAnyScreen) {
    const Setting& setting = GetParam();
    Reader reader;
    reader.foreign = foreignTexts(setting.language);
    everyScreen(setting.size, {ThemeName::light, setting.percent, false, setting.language},
                [&](QWidget& screen, const std::string& name) { reader.read(screen, name); });
    std::printf("[ words ] %s, %d %%, %d wide: %d texts checked, %zu failed\n",
                qPrintable(codeOf(setting.language)), setting.percent, setting.size.width(), reader.seen,
                reader.faults.size());
    EXPECT_GT(reader.seen, 500);
    EXPECT_TRUE(reader.faults.empty()) << list(reader.faults);
}

std::vector<Setting> settings() {
    std::vector<Setting> out;
    for (const Language language : languages) {
        // Sanitizers make the walk slow: the largest text finds most of what is cut.
#ifdef __SANITIZE_ADDRESS__
        const auto percents = {200};
#else
        const auto percents = {100, 150, 200};
#endif
        for (const int percent : percents)
            for (const QSize& size : {QSize(1280, 800), QSize(800, 1280)})
                out.push_back({language, percent, size});
    }
    return out;
}

INSTANTIATE_TEST_SUITE_P(InEveryLanguageAndSize, Words, ::testing::ValuesIn(settings()),
                         [](const auto& test) {
                             const Setting& setting = test.param;
                             return codeOf(setting.language).toStdString() + "At" +
                                    std::to_string(setting.percent) +
                                    (setting.size.width() < setting.size.height() ? "Upright" : "Wide");
                         });

/// Relative luminance and contrast as WCAG 2.2 define them (W3C, 2023).
double luminance(const QColor& color) {
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

/// The color most of the ground around the letters has.
QColor groundOf(const QImage& image, const QRectF& box) {
    std::map<QRgb, int> counts;
    const QRect room = box.toAlignedRect() & image.rect();
    for (int y = room.top(); y <= room.bottom(); ++y)
        for (int x = room.left(); x <= room.right(); ++x)
            ++counts[image.pixel(x, y)];
    QRgb most = 0;
    int times = 0;
    for (const auto& [color, count] : counts)
        if (count > times) most = color, times = count;
    return QColor(most);
}

class Contrast : public ::testing::TestWithParam<ThemeName> {
protected:
    void TearDown() override { apply({ThemeName::light, 100, false, Language::english}); }
};

TEST_P(Contrast, OfEveryTextAndItsGroundOnEveryScreenIsFourAndAHalfToOne) {
    Faults faults;
    double least = 21;
    int seen = 0;
    everyScreen(QSize(1280, 800), {GetParam(), 100, false, Language::english},
                [&](QWidget& screen, const std::string& where) {
                    const QImage image = screen.grab().toImage();
                    for (const Placed& each : textsOn(screen)) {
                        // What cannot be pressed now is exempt (WCAG 2.2, success criterion 1.4.3).
                        if (each.seen.isEmpty() || !each.widget->isEnabled()) continue;
                        const double ratio = contrast(each.drawn.color, groundOf(image, each.seen));
                        ++seen;
                        least = std::min(least, ratio);
                        if (ratio < 4.5) faults[std::to_string(ratio) + " " + describe(each)].insert(where);
                    }
                });
    std::printf("[ contrast ] %d texts, least %.2f:1\n", seen, least);
    EXPECT_GT(seen, 500);
    EXPECT_TRUE(faults.empty()) << list(faults);
}

INSTANTIATE_TEST_SUITE_P(InEveryTheme, Contrast,
                         ::testing::Values(ThemeName::light, ThemeName::dark, ThemeName::highContrast));

} // namespace
} // namespace rhizograph::app::testing
