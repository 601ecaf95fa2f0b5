#include "window/pages.h"

#include "compare/comparepage.h"
#include "compare/trendpage.h"
#include "exam/steppage.h"
#include "figures/skinfigure.h"
#include "language/language.h"
#include "parts/findingwords.h"
#include "reasoning/territory.h"
#include "shell/visitsession.h"
#include "summary/summarypage.h"

#include <algorithm>
#include <QCoreApplication>

namespace rhizograph::app {
namespace {

WorkPage stepPage(VisitSession& session, const std::shared_ptr<const FigureArt>& art,
                  const ExamOptions& options, const Step& step) {
    WorkPage page;
    page.step = step.id.text();
    page.label = medical(step.label);
    page.make = [&session, art, options, id = step.id.text()](QWidget* parent) -> QWidget* {
        auto* made = new StepPage(session, art, id, parent);
        made->setOptions(options);
        if (SkinFigure* skin = made->skin())
            skin->setTerritories([&session] { return territories(session); });
        return made;
    };
    page.goTo = [](QWidget& made, const FindingKey& key) { static_cast<StepPage&>(made).goTo(key); };
    return page;
}

} // namespace

Territory territoryOf(const VisitSession& session, const SiteId& site, Side side) {
    const Knowledge& knowledge = session.knowledge();
    Territory out{medical(knowledge.siteLabel(site)), {}};
    if (side == Side::right || side == Side::left) out.name = withSide(out.name, side);
    for (const Side each : {Side::right, Side::left})
        if (side == each || side == Side::both)
            for (const std::string& region : rhizograph::territory(knowledge, site))
                out.regions.push_back({region, each});
    return out;
}

std::vector<Territory> territories(const VisitSession& session) {
    std::vector<Territory> out;
    for (const SiteResult& result : session.assessment().localization) {
        Territory territory = territoryOf(session, result.site, result.side);
        if (!territory.regions.empty()) out.push_back(std::move(territory));
    }
    return out;
}

std::vector<WorkPage> workPages(VisitSession& session, Store& store,
                                const std::shared_ptr<const FigureArt>& art, const ExamOptions& options,
                                const std::vector<StepId>& steps, const std::function<void()>& sign) {
    std::vector<WorkPage> pages;
    for (const StepId& id : steps)
        for (const Step& step : session.catalogue().steps())
            if (step.id == id) pages.push_back(stepPage(session, art, options, step));
    WorkPage compare;
    compare.label = QCoreApplication::translate("rhizograph::window", "Compare");
    compare.glyph = Glyph::sides;
    compare.wide = true;
    compare.make = [&session, &store, art](QWidget* parent) -> QWidget* {
        return new ComparePage(session, store, art, parent);
    };
    pages.push_back(std::move(compare));
    WorkPage trend;
    trend.label = QCoreApplication::translate("rhizograph::window", "Trend");
    trend.glyph = Glyph::trend;
    trend.wide = true;
    trend.make = [&session, &store](QWidget* parent) -> QWidget* {
        return new TrendPage(session, store, parent);
    };
    pages.push_back(std::move(trend));
    WorkPage summary;
    summary.label = QCoreApplication::translate("rhizograph::window", "Summary");
    summary.glyph = Glyph::page;
    summary.wide = true;
    summary.make = [&session, &store, art, sign](QWidget* parent) -> QWidget* {
        auto* made = new SummaryPage(session, store, art, parent);
        QObject::connect(made, &SummaryPage::signRequested, made, sign);
        return made;
    };
    pages.push_back(std::move(summary));
    return pages;
}

} // namespace rhizograph::app
