#include "reasoning/urgent.h"

namespace rhizograph {

Result<UrgentQuestions> UrgentQuestions::load(const std::filesystem::path& file,
                                              const Vocabulary& vocabulary) {
    auto json = readJsonFile(file);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode node = JsonNode{*json, file.string(), problems}.at("urgent_questions");
    UrgentQuestions questions;
    questions.when_ = Condition::parse(node.at("when"), vocabulary);
    for (const JsonNode& asked : node.at("ask").items()) {
        const Item* item = vocabulary.catalogue->find(asked.string());
        if (item == nullptr)
            asked.fail("no such item in the catalogue");
        else if (!item->sided)
            questions.ask_.push_back({item->id, Side::none});
        else
            for (const Side side : {Side::left, Side::right})
                questions.ask_.push_back({item->id, side});
    }
    if (!problems.empty()) return problems;
    return questions;
}

std::vector<FindingKey> UrgentQuestions::open(const Exam& exam, const Assessment& assessment) const {
    Circumstances circumstances;
    circumstances.exam = &exam;
    circumstances.assessment = &assessment;
    std::vector<FindingKey> out;
    if (!when_.evaluate(circumstances).holds()) return out;
    for (const FindingKey& key : ask_)
        if (exam.find(key) == nullptr) out.push_back(key);
    return out;
}

} // namespace rhizograph
