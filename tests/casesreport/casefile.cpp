#include "casesreport/casefile.h"

#include "base/json.h"
#include "exchange/examfile.h"

#include <algorithm>
#include <stdexcept>

namespace rhizograph::casesreport {
namespace {

void orThrow(const Problems& problems) {
    if (!problems.empty()) throw std::runtime_error(problems.front().text());
}

std::vector<std::string> stringsAt(const JsonNode& node, const std::string& key) {
    return node.has(key) ? node.at(key).strings() : std::vector<std::string>{};
}

Case readCase(const std::filesystem::path& file, const Catalogue& catalogue) {
    const auto document = readJsonFile(file);
    if (!document) orThrow(document.problems());
    auto exam = examFromJson(*document, file.string(), catalogue);
    if (!exam) orThrow(exam.problems());
    Problems problems;
    const JsonNode root{*document, file.string(), problems};
    const JsonNode truth = root.at("truth");
    Case out;
    out.id = root.at("id").string();
    out.exam = std::move(exam).value();
    out.localizable = root.at("localisable").boolean();
    out.sites = truth.at("sites").strings();
    if (const auto side = truth.find("side"); side && side->isString()) {
        out.side = sideNamed(side->string());
        if (out.side == Side::none) out.side.reset();
    }
    out.redSigns = stringsAt(truth, "red_signs");
    out.mustNot = stringsAt(truth, "must_not");
    out.screens = stringsAt(truth, "screens");
    if (const auto source = root.find("source"); source && source->has("citation"))
        out.citation = source->at("citation").string();
    orThrow(problems);
    return out;
}

} // namespace

std::vector<Case> readCases(const std::filesystem::path& folder, const Catalogue& catalogue) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.is_regular_file() && entry.path().extension() == ".json") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<Case> cases;
    for (const auto& file : files)
        cases.push_back(readCase(file, catalogue));
    return cases;
}

} // namespace rhizograph::casesreport
