// cases_report [--verbose] [--calibration] [--curve] [--table] [--floors FILE] [--knowledge FOLDER]
// [NAME=FOLDER...] Runs published cases through the engine and says how they came out; with --floors, fails
// below them.
// --table prints rank and probability of the true site of every localizable case, for fitting;
// --knowledge tries other knowledge files.
#include "base/json.h"
#include "casesreport/curve.h"
#include "casesreport/score.h"
#include "casesreport/vote.h"

#include <cmath>
#include <cstdio>
#include <exception>
#include <fmt/format.h>
#include <map>
#include <stdexcept>

namespace {

using namespace rhizograph;
using namespace rhizograph::casesreport;

struct Options {
    bool verbose = false;
    bool calibration = false;
    std::string floors;
    std::string knowledge = RHIZOGRAPH_RESOURCES "/knowledge";
    bool table = false;
    bool curve = false;
    std::vector<std::pair<std::string, std::string>> sets; ///< name and folder
};

Options readOptions(int argc, char* argv[]) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--verbose")
            options.verbose = true;
        else if (word == "--calibration")
            options.calibration = true;
        else if (word == "--floors" && i + 1 < argc)
            options.floors = argv[++i];
        else if (word == "--knowledge" && i + 1 < argc)
            options.knowledge = argv[++i];
        else if (word == "--curve")
            options.curve = true;
        else if (word == "--table")
            options.table = true;
        else if (word.rfind("--", 0) == 0)
            throw std::runtime_error("unknown option " + word);
        else if (const auto equals = word.find('='); equals != std::string::npos)
            options.sets.emplace_back(word.substr(0, equals), word.substr(equals + 1));
        else
            options.sets.emplace_back(word, word);
    }
    if (options.sets.empty())
        options.sets = {{"published", RHIZOGRAPH_TEST_DATA "/cases"},
                        {"textbook", RHIZOGRAPH_TEST_DATA "/cases/textbook"}};
    return options;
}

/// What floors.json may hold a floor (or for false alarms a ceiling) for.
std::map<std::string, double> figures(const Summary& s) {
    return {{"first", s.first},
            {"three", s.three},
            {"side", s.sideRight},
            {"red", s.redRaised},
            {"screens", s.screensRaised},
            {"log", s.meanLog},
            {"false_alarms", -s.falseAlarms},
            {"sure_wrong", -s.sureWrong},
            {"cases", s.cases}};
}

/// Prints every figure of this set that is below its floor; true when none is.
bool holdsFloors(const std::string& file, const std::string& set, const Summary& summary) {
    const auto document = readJsonFile(file);
    if (!document) throw std::runtime_error(document.problems().front().text());
    Problems problems;
    const JsonNode floors = JsonNode{*document, file, problems}.at(set);
    const auto reached = figures(summary);
    bool holds = true;
    for (const auto& [figure, node] : floors.members()) {
        const bool ceiling = figure == "false_alarms" || figure == "sure_wrong";
        const double floor = ceiling ? -node.number() : node.number();
        if (reached.at(figure) >= floor) continue;
        holds = false;
        fmt::print("BELOW ITS FLOOR: {} {} is {}, {} {}\n", set, figure, std::abs(reached.at(figure)),
                   ceiling ? "at most" : "at least", node.number());
    }
    if (!problems.empty()) throw std::runtime_error(problems.front().text());
    return holds;
}

/// How the baseline does on the same cases.
std::string voteLine(const std::vector<CaseScore>& scores, const TextbookVote& vote) {
    int first = 0, three = 0, localizable = 0;
    for (const CaseScore& score : scores) {
        if (!score.given->localizable) continue;
        const std::size_t rank = vote.rankOfTruth(*score.given);
        ++localizable;
        first += rank == 1;
        three += rank >= 1 && rank <= 3;
    }
    return fmt::format("textbook vote: first {}/{} three {}/{}", first, localizable, three, localizable);
}

int report(const Options& options) {
    const auto knowledge = Knowledge::load(options.knowledge);
    if (!knowledge) throw std::runtime_error(knowledge.problems().front().text());
    bool holds = true;
    std::string last;
    for (const auto& [name, folder] : options.sets) {
        const std::vector<Case> cases = readCases(folder, knowledge->catalogue());
        std::vector<CaseScore> scores;
        for (const Case& given : cases)
            scores.push_back(options.table ? localizationScore(given, *knowledge) : score(given, *knowledge));
        if (options.table) {
            for (const CaseScore& one : scores)
                if (one.given->localizable) fmt::print("{}", row(one));
            continue;
        }
        fmt::print("== {}: {} cases{}\n", name, cases.size(), options.verbose ? "" : ", misses:");
        for (const CaseScore& one : scores)
            if (options.verbose || (one.given->localizable && one.rank != 1) || !one.redMissed.empty() ||
                !one.falseAlarms.empty() || !one.screensMissed.empty())
                fmt::print("{}\n", line(one));
        if (options.calibration) fmt::print("{}", calibration(scores));
        if (options.curve) fmt::print("{}", curve(reveal(cases, *knowledge)));
        fmt::print("{}\n", voteLine(scores, TextbookVote{RHIZOGRAPH_TEST_DATA "/casesreport/vote.json",
                                                         knowledge->catalogue()}));
        const Summary summary = summarize(scores);
        if (!options.floors.empty()) holds = holdsFloors(options.floors, name, summary) && holds;
        last += (last.empty() ? "" : " | ") + name + ": " + line(summary);
    }
    fmt::print("{}\n", last);
    return holds ? 0 : 1;
}

} // namespace

int main(int argc, char* argv[]) {
    try {
        return report(readOptions(argc, argv));
    } catch (const std::exception& error) {
        fmt::print(stderr, "cases_report: {}\n", error.what());
        return 2;
    }
}
