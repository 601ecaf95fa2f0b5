#include "reasoning/knowledge.h"

#include "base/json.h"
#include "reasoning/localizer.h"
#include "reasoning/phrases.h"
#include "reasoning/rulebook.h"
#include "reasoning/urgent.h"

#include <algorithm>
#include <array>
#include <future>
#include <sodium.h>

namespace rhizograph {
namespace {

constexpr std::size_t kNextTests = 5;

/// Hash over names and contents of all knowledge files, in the order of their names.
Result<std::string> versionOf(const std::filesystem::path& directory) {
    std::error_code error;
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(directory, error))
        if (entry.path().extension() == ".json") files.push_back(entry.path());
    if (error) return Problem{directory.string(), "", "cannot be listed: " + error.message()};
    std::sort(files.begin(), files.end());
    crypto_generichash_state state;
    crypto_generichash_init(&state, nullptr, 0, 16);
    for (const auto& file : files) {
        auto text = readTextFile(file);
        if (!text) return text.problems();
        const std::string name = file.filename().string() + '\n';
        crypto_generichash_update(&state, reinterpret_cast<const unsigned char*>(name.data()), name.size());
        crypto_generichash_update(&state, reinterpret_cast<const unsigned char*>(text->data()), text->size());
    }
    std::array<unsigned char, 16> hash{};
    crypto_generichash_final(&state, hash.data(), hash.size());
    std::array<char, 33> hex{};
    sodium_bin2hex(hex.data(), hex.size(), hash.data(), hash.size());
    return std::string{hex.data()};
}

} // namespace

Result<Knowledge> Knowledge::load(const std::filesystem::path& directory) {
    Knowledge knowledge;
    auto catalogue = loadCatalogue(directory / "catalogue.json");
    if (!catalogue) return catalogue.problems();
    knowledge.catalogue_ = std::make_shared<const Catalogue>(std::move(catalogue).value());
    // The localization takes as long to load as all the rest: do both at once.
    const Catalogue& items = *knowledge.catalogue_;
    auto loading = std::async(std::launch::async, [&] { return Localizer::load(directory, items); });
    auto rules = RuleBook::load(directory, items);
    auto phrases = PhraseBook::load(directory / "phrases.json", items);
    auto thresholds = Thresholds::load(directory / "thresholds.json", items);
    auto eventKinds = loadEventKinds(directory / "events.json");
    auto version = versionOf(directory);
    auto localizer = loading.get();
    if (!localizer) return localizer.problems();
    knowledge.localizer_ = *localizer;
    if (!rules) return rules.problems();
    knowledge.rules_ = std::make_shared<const RuleBook>(std::move(rules).value());
    Vocabulary vocabulary;
    vocabulary.catalogue = knowledge.catalogue_.get();
    vocabulary.sites = (*localizer)->siteNames();
    vocabulary.assessment = true;
    auto urgent = UrgentQuestions::load(directory / "observation.json", vocabulary);
    if (!urgent) return urgent.problems();
    knowledge.urgent_ = std::make_shared<const UrgentQuestions>(std::move(urgent).value());
    if (!phrases) return phrases.problems();
    knowledge.phrases_ = std::make_shared<const PhraseBook>(std::move(phrases).value());
    if (!thresholds) return thresholds.problems();
    knowledge.thresholds_ = std::make_shared<const Thresholds>(std::move(thresholds).value());
    if (!eventKinds) return eventKinds.problems();
    knowledge.eventKinds_ = std::make_shared<const std::vector<EventKind>>(std::move(eventKinds).value());
    RegionAreas areas;
    const auto figures = directory.parent_path() / "figures" / "areas.json";
    if (std::error_code error; std::filesystem::exists(figures, error)) {
        auto read = loadRegionAreas(figures);
        if (!read) return read.problems();
        areas = std::move(read).value();
    }
    knowledge.areas_ = std::make_shared<const RegionAreas>(std::move(areas));
    if (!version) return version.problems();
    knowledge.version_ = *version;
    return knowledge;
}

std::string Knowledge::siteLabel(const SiteId& site) const {
    const std::string* label = localizer_->label(site);
    return label == nullptr ? site.text() : *label;
}

namespace {

/// Open red-sign questions first, then what would part the leading sites best.
std::vector<NextTest> nextTests(const Exam& exam, const Knowledge& knowledge, const Assessment& assessment) {
    std::vector<NextTest> ranked = knowledge.localizer().nextTests(exam);
    const auto gainOf = [&](const FindingKey& key) {
        for (const NextTest& test : ranked)
            if (test.test == key) return test.gainBits;
        return 0.0;
    };
    std::vector<NextTest> out;
    for (const FindingKey& key : knowledge.urgentQuestions().open(exam, assessment))
        if (out.size() < kNextTests) out.push_back({key, gainOf(key), {}, true});
    for (const NextTest& test : ranked) {
        if (out.size() >= kNextTests) break;
        const bool asked =
            std::any_of(out.begin(), out.end(), [&](const NextTest& t) { return t.test == test.test; });
        if (!asked) out.push_back(test);
    }
    std::vector<SiteId> leading;
    for (const SiteResult& site : assessment.localization)
        if (leading.size() < 2) leading.push_back(site.site);
    for (NextTest& test : out)
        test.separates = leading;
    return out;
}

} // namespace

Assessment assess(const Exam& exam, const Knowledge& knowledge, const Exam* previous) {
    Assessment assessment;
    assessment.knowledgeVersion = knowledge.version();
    knowledge.localizer().localize(exam, assessment);
    const RuleBook& rules = knowledge.rules();
    assessment.screens = rules.screens(exam);
    assessment.redSigns = rules.redSigns(exam, previous);
    assessment.notAsked = rules.notAsked(exam);
    assessment.consistency = rules.consistency(exam);
    assessment.behavioralGroups = rules.behavioralGroups(exam);
    assessment.nextTests = nextTests(exam, knowledge, assessment);
    assessment.workup = rules.workup(exam, assessment);
    assessment.codes = rules.codes(exam, assessment);
    return assessment;
}

} // namespace rhizograph
