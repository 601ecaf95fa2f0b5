#include "app/language/tsfile.h"
#include "everyscreen.h"
#include "support/textrecorder.h"

#include "figures/figurecanvas.h"
#include "summary/pagepreview.h"
#include "window/redsignbar.h"

#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace rhizograph::app::testing {
namespace {

/// One text with the widget it stands on, in the coordinates of the window.
struct Placed {
    DrawnText drawn;
    const QWidget* widget;
    QRectF box; ///< what can be seen of it
};

std::string describe(const Placed& placed) {
    return std::string(placed.widget->metaObject()->className()) + " \"" + placed.drawn.text.toStdString() +
           "\"";
}

/// The page shows paper, smaller than life; the figures place their words around the drawing by themselves
/// and are looked at by their own tests; the red-sign bar shortens a sentence that stands in full in the
/// panel.
bool apart(const QWidget& widget) {
    return dynamic_cast<const PagePreview*>(&widget) != nullptr;
}

std::vector<Placed> textsOn(QWidget& screen) {
    std::vector<Placed> out;
    for (QWidget* widget : screen.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&screen) || apart(*widget)) continue;
        const QRegion visible = widget->visibleRegion();
        if (visible.isEmpty()) continue;
        const QPoint corner = widget->mapTo(&screen, QPoint(0, 0));
        for (DrawnText& text : textsOf(*widget)) {
            const QRectF seen = text.box & QRectF(visible.boundingRect());
            if (seen.isEmpty()) continue; // scrolled away
            out.push_back({std::move(text), widget, seen.translated(corner)});
        }
    }
    return out;
}

/// How much of the letters may pass an edge: side bearings and rounding, in px.
constexpr qreal slack = 2;

class Reader {
public:
    void read(QWidget& screen, const std::string& where) {
        const std::vector<Placed> texts = textsOn(screen);
        seen += static_cast<int>(texts.size());
        for (const Placed& each : texts) {
            whole(each, where);
            if (foreign.contains(each.drawn.text))
                faults.insert(where + ": is not translated: " + describe(each));
        }
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = i + 1; j < texts.size(); ++j)
                apartFrom(texts[i], texts[j], where);
    }

    std::set<QString> foreign;
    std::set<std::string> faults;
    int seen = 0;

private:
    void whole(const Placed& each, const std::string& where) {
        const QRectF room = QRectF(each.widget->rect()).adjusted(-slack, -slack, slack, slack);
        if (!room.contains(each.drawn.box)) faults.insert(where + ": passes its edge: " + describe(each));
        const QRectF clip = each.drawn.clip.adjusted(-slack, -slack, slack, slack);
        if (!each.drawn.clip.isEmpty() && !clip.contains(each.drawn.box & QRectF(each.widget->rect())) &&
            each.drawn.clip.intersects(each.drawn.box))
            faults.insert(where + ": is cut: " + describe(each));
        const bool shortened = each.drawn.text.endsWith(QChar(0x2026)) && !each.drawn.text.endsWith(u" …");
        if (shortened && dynamic_cast<const RedSignBar*>(each.widget) == nullptr)
            faults.insert(where + ": is shortened: " + describe(each));
    }
    void apartFrom(const Placed& one, const Placed& other, const std::string& where) {
        const QRectF shared = one.box & other.box;
        // Ascent and descent hold room that letters seldom use: lines may touch there.
        const qreal line = std::min(one.box.height(), other.box.height());
        if (shared.width() <= slack || shared.height() <= line * 0.3) return;
        faults.insert(where + ": overlap: " + describe(one) + " and " + describe(other));
    }
};

std::string list(const std::set<std::string>& faults) {
    std::string out;
    int count = 0;
    for (const std::string& fault : faults)
        if (++count <= 60) out += "\n  " + fault;
    return out + (count > 60 ? "\n  …" : "");
}

/// English texts that read otherwise in this language: they must not be on its screens.
std::set<QString> foreignTexts(Language language) {
    std::set<QString> foreign, own;
    if (language == Language::english) return {};
    for (const char* part : {"screens", "medicine"})
        for (const Message& message :
             messagesOf(QStringLiteral(RHIZOGRAPH_TEST_DATA "/../translations/%1_%2.ts")
                            .arg(part, codeOf(language)))) {
            own.insert(message.translation);
            if (message.translation != message.source) foreign.insert(message.source);
        }
    for (const QString& word : own)
        foreign.erase(word);
    return foreign;
}

/// The strip over an open visit shortens a long name at the largest text: the room is that of two buttons.
bool atHome(const std::string& screen) {
    return !screen.starts_with("visit page") && screen != "impression turned";
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
                [&](QWidget& screen, const std::string& name) {
                    // Comparison and course are laid out for English words and 100 % text.
                    const bool tables = name == "visit page 5.0" || name == "visit page 6.0";
                    const bool asked = setting.percent < 200 || atHome(name);
                    if (asked &&
                        (!tables || (setting.language == Language::english && setting.percent == 100)))
                        reader.read(screen, name);
                });
    std::printf("[ words ] %s, %d %%, %d wide: %d texts\n", qPrintable(codeOf(setting.language)),
                setting.percent, setting.size.width(), reader.seen);
    EXPECT_GT(reader.seen, setting.percent < 200 ? 500 : 100);
    EXPECT_TRUE(reader.faults.empty()) << list(reader.faults);
}

INSTANTIATE_TEST_SUITE_P(OnAWideScreen, Words,
                         ::testing::Values(Setting{Language::english, 100, QSize(1280, 800)}));
INSTANTIATE_TEST_SUITE_P(Upright, Words,
                         ::testing::Values(Setting{Language::english, 130, QSize(800, 1280)},
                                           Setting{Language::english, 150, QSize(800, 1280)},
                                           Setting{Language::english, 200, QSize(800, 1280)},
                                           Setting{Language::german, 130, QSize(800, 1280)}));

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
    std::set<std::string> faults;
    double least = 21;
    int seen = 0;
    everyScreen(QSize(1280, 800), {GetParam(), 100, false, Language::english},
                [&](QWidget& screen, const std::string& where) {
                    const QImage image = screen.grab().toImage();
                    for (const Placed& each : textsOn(screen)) {
                        const double ratio = contrast(each.drawn.color, groundOf(image, each.box));
                        ++seen;
                        least = std::min(least, ratio);
                        if (ratio < 4.5)
                            faults.insert(where + ": " + std::to_string(ratio) + " " + describe(each));
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
