#include "art.h"
#include "support/textrecorder.h"
#include "visit.h"

#include "figures/paindrawing.h"
#include "figures/skinfigure.h"

#include <gtest/gtest.h>
#include <random>

namespace rhizograph::app {
namespace {

constexpr int presses = 250;

/// Presses random places of the figures, front, back, feet and saddle, and reads the words a person reads
/// there: what is recorded must be on the side the nearest of them names.
class CanvasSides : public ::testing::TestWithParam<std::tuple<Qt::LayoutDirection, QSize>> {
protected:
    CanvasSides() { QApplication::setLayoutDirection(std::get<0>(GetParam())); }
    ~CanvasSides() override { QApplication::setLayoutDirection(Qt::LeftToRight); }

    struct Word {
        QString text;
        QPointF middle;
    };

    static std::vector<Word> sideWords(QWidget& canvas) {
        std::vector<Word> out;
        for (const auto& drawn : rhizograph::app::testing::textsOf(canvas))
            if (drawn.text == "Right" || drawn.text == "Left")
                out.push_back({drawn.text, drawn.box.center()});
        return out;
    }

    /// The side named under the figure at this place; none where no figure stands.
    static std::optional<Side> sideReadAt(const FigureCanvas& canvas, const std::vector<Word>& words,
                                          const QPointF& place) {
        for (const FigurePanel& panel : canvas.figureLayout().panels) {
            if (!panel.target.contains(place)) continue;
            const Word* nearest = nullptr;
            const auto away = [&](const Word& word) {
                const qreal down = std::abs(word.middle.y() - panel.target.bottom());
                return std::abs(word.middle.x() - place.x()) + 10 * down;
            };
            for (const Word& word : words)
                if (nearest == nullptr || away(word) < away(*nearest)) nearest = &word;
            if (nearest == nullptr) return std::nullopt;
            return nearest->text == "Right" ? Side::right : Side::left;
        }
        return std::nullopt;
    }

    void pressEverywhere(VisitSession& session, FigureCanvas& canvas, const char* what) {
        const std::vector<Word> words = sideWords(canvas);
        ASSERT_GE(words.size(), 4u);
        std::mt19937 random(4711);
        std::uniform_real_distribution<double> share(0, 1);
        int recorded = 0, wrong = 0;
        for (int i = 0; i < 20 * presses && recorded < presses; ++i) {
            const QPointF place(share(random) * canvas.width(), share(random) * canvas.height());
            const auto side = sideReadAt(canvas, words, place);
            if (!side) continue;
            press(canvas, place);
            const std::vector<FindingKey> keys = keysNow(session);
            if (keys.empty()) continue;
            ++recorded;
            ASSERT_EQ(keys.size(), 1u);
            wrong += keys.front().side == *side ? 0 : 1;
            EXPECT_EQ(keys.front().side, *side)
                << keys.front().item.text() << " at " << place.x() << ", " << place.y();
            session.change({}, {{keys.front(), std::nullopt}});
        }
        std::printf("[ sides ] %s: %d presses on regions, %d on the wrong side\n", what, recorded, wrong);
        EXPECT_EQ(recorded, presses);
    }

private:
    static std::vector<FindingKey> keysNow(const VisitSession& session) {
        std::vector<FindingKey> out;
        for (const auto& [key, finding] : session.exam().findings())
            out.push_back(key);
        return out;
    }
};

TEST_P(CanvasSides, OfTheSkinFigureAreThoseThatAreWrittenUnderIt) {
    VisitSession session(knowledge(), {}, nullptr);
    SkinFigure figure(session, figures());
    figure.resize(std::get<1>(GetParam()));
    figure.show();
    QApplication::processEvents();
    pressEverywhere(session, figure.canvas(), "skin figure");
}

TEST_P(CanvasSides, OfThePainDrawingAreThoseThatAreWrittenUnderIt) {
    VisitSession session(knowledge(), {}, nullptr);
    PainDrawing drawing(session, figures());
    drawing.resize(std::get<1>(GetParam()));
    drawing.show();
    QApplication::processEvents();
    pressEverywhere(session, drawing.canvas(), "pain drawing");
}

INSTANTIATE_TEST_SUITE_P(InBothDirections, CanvasSides,
                         ::testing::Combine(::testing::Values(Qt::LeftToRight, Qt::RightToLeft),
                                            ::testing::Values(QSize(848, 700), QSize(760, 1000))),
                         [](const auto& each) {
                             return std::string(std::get<0>(each.param) == Qt::LeftToRight ? "LeftToRight"
                                                                                           : "RightToLeft") +
                                    (std::get<1>(each.param).width() > 800 ? "Wide" : "Upright");
                         });

} // namespace
} // namespace rhizograph::app
