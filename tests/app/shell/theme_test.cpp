#include "shell/theme.h"

#include <cmath>
#include <gtest/gtest.h>
#include <QImage>
#include <QPainter>

namespace rhizograph::app {
namespace {

/// Relative luminance and contrast ratio as defined by the Web Content Accessibility Guidelines 2.1 (W3C,
/// 2018).
double luminance(const QColor& color) {
    const auto linear = [](double value) {
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double lighter = std::max(luminance(a), luminance(b));
    const double darker = std::min(luminance(a), luminance(b));
    return (lighter + 0.05) / (darker + 0.05);
}

class ThemeContrast : public testing::TestWithParam<ThemeName> {};

TEST_P(ThemeContrast, TextReachesFourAndAHalfToOneOnEveryGroundItStandsOn) {
    const Theme& t = Theme::named(GetParam());
    const std::vector<std::pair<QColor, QColor>> pairs = {
        {t.ink, t.paper},       {t.ink, t.raised},     {t.quiet, t.paper},     {t.quiet, t.raised},
        {t.onSpruce, t.spruce}, {t.ink, t.spruceTint}, {t.ochreInk, t.raised}, {t.ink, t.ochreTint},
        {t.onBrick, t.brick},   {t.ink, t.brickTint},  {t.ink, t.plumTint},    {t.onRedbar, t.redbar},
        {t.redbar, t.onRedbar}, {t.spruce, t.raised},  {t.brick, t.raised}};
    for (const auto& [text, ground] : pairs)
        EXPECT_GE(contrast(text, ground), 4.5)
            << text.name().toStdString() << " on " << ground.name().toStdString();
}

TEST_P(ThemeContrast, OutlinesOfWhatCanBePressedReachThreeToOne) {
    const Theme& t = Theme::named(GetParam());
    for (const QColor& outline : {t.edge, t.spruce, t.ochre, t.brick, t.plum})
        EXPECT_GE(contrast(outline, t.raised), 3.0) << outline.name().toStdString();
}

TEST_P(ThemeContrast, LooksDifferInPatternNotOnlyInColor) {
    const Theme& t = Theme::named(GetParam());
    const auto grayLevels = [&](Look look) {
        QImage image(40, 40, QImage::Format_ARGB32_Premultiplied);
        image.fill(t.raised);
        QPainter painter(&image);
        painter.fillRect(image.rect(), hatch(t, look));
        painter.end();
        int lowest = 255;
        int highest = 0;
        for (int y = 0; y < 40; ++y)
            for (int x = 0; x < 40; ++x) {
                lowest = std::min(lowest, qGray(image.pixel(x, y)));
                highest = std::max(highest, qGray(image.pixel(x, y)));
            }
        return highest - lowest;
    };
    EXPECT_EQ(grayLevels(Look::normal), 0);
    EXPECT_EQ(grayLevels(Look::marked), 0);
    EXPECT_GT(grayLevels(Look::reduced), 30);
    EXPECT_GT(grayLevels(Look::heightened), 30);
}

INSTANTIATE_TEST_SUITE_P(All, ThemeContrast,
                         testing::Values(ThemeName::light, ThemeName::dark, ThemeName::highContrast));

} // namespace
} // namespace rhizograph::app
