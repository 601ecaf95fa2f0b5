// Whatever was examined, the words say no more and no less. Every item, value and set of regions gets a mark
// of its own in place of its name, so that each sentence can be traced back to the findings it speaks of.

#include "base/json.h"
#include "exchange/narrative.h"

#include "randomexam.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using rhizograph::testing::RandomExams;

/// The knowledge with marked names: "<item>" for an item, "<item=token>" for words of a value that stand for
/// the item,
/// "<set:family:n>" for a set.
class MarkedKnowledge {
public:
    MarkedKnowledge() {
        std::string pattern = (fs::temp_directory_path() / "marked.XXXXXX").string();
        folder_ = ::mkdtemp(pattern.data());
        for (const auto& entry : fs::directory_iterator(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge"))
            fs::copy(entry.path(), folder_ / entry.path().filename());
        auto phrases = nlohmann::ordered_json::parse(std::ifstream{folder_ / "phrases.json"});
        const auto catalogue = loadCatalogue(folder_ / "catalogue.json");
        markItems(phrases, *catalogue);
        markSets(phrases);
        std::ofstream{folder_ / "phrases.json"} << phrases;
        auto loaded = Knowledge::load(folder_);
        if (!loaded) throw std::runtime_error(loaded.problems().front().text());
        knowledge_ = std::move(loaded).value();
        readSets();
    }
    ~MarkedKnowledge() { fs::remove_all(folder_); }

    [[nodiscard]] const Knowledge& get() const { return *knowledge_; }
    /// The items a mark stands for.
    [[nodiscard]] std::vector<std::string> items(const std::string& mark) const {
        if (const auto set = sets_.find(mark); set != sets_.end()) return set->second;
        return {mark.substr(0, mark.find('='))};
    }

private:
    static void markItems(nlohmann::ordered_json& phrases, const Catalogue& catalogue) {
        for (const Item& item : catalogue.items()) {
            auto& entry = phrases["items"][item.id.text()];
            entry["name"] = "<" + item.id.text() + ">";
            entry["plural"] = "<" + item.id.text() + ">";
            if (entry.contains("values"))
                for (auto& [token, words] : entry["values"].items())
                    words = "<" + item.id.text() + "=" + token + ">";
        }
    }

    static void markSets(nlohmann::ordered_json& phrases) {
        nlohmann::ordered_json marked;
        for (const auto& [name, regions] : phrases["region_sets"].items())
            marked["<set " + std::to_string(marked.size()) + ">"] = regions;
        phrases["region_sets"] = marked;
    }

    void readSets() {
        for (const PhraseFamily& family : knowledge_->phrases().families())
            for (const PhraseSet& set : family.sets)
                for (const ItemId& id : set.items)
                    sets_[family.whole + " " + set.name.substr(1, set.name.size() - 2)].push_back(id.text());
    }

    fs::path folder_;
    std::optional<Knowledge> knowledge_;
    std::map<std::string, std::vector<std::string>> sets_;
};

/// Sentences, taken apart at full stops outside numbers.
std::vector<std::string> sentences(const std::string& paragraph) {
    std::vector<std::string> out;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < paragraph.size(); ++i)
        if (paragraph[i] == '.' && (i + 1 == paragraph.size() || paragraph[i + 1] == ' ')) {
            out.push_back(paragraph.substr(begin, i - begin));
            begin = i + 2;
        }
    return out;
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

/// What stands between < and >.
std::vector<std::string> marksOf(const std::string& text) {
    std::vector<std::string> out;
    for (std::size_t open = text.find('<'); open != std::string::npos; open = text.find('<', open + 1))
        out.push_back(text.substr(open + 1, text.find('>', open) - open - 1));
    return out;
}

/// The items a sentence speaks of. A set of regions stands for the items of the way of testing that the
/// sentence names.
std::set<std::string> marksIn(const std::string& text, const MarkedKnowledge& marked) {
    std::set<std::string> out;
    for (std::string mark : marksOf(text)) {
        if (mark.rfind("set ", 0) == 0)
            mark = (lower(text).find("pinprick") == 0 ? "pinprick " : "light touch ") + mark;
        for (const std::string& item : marked.items(mark))
            out.insert(item);
    }
    return out;
}

/// Which sides a sentence claims, read from its words outside brackets.
std::set<Side> sidesClaimed(const std::string& text, const Item& item) {
    if (!item.sided) return {Side::none};
    for (const char* both : {"both sides", "either side", "symmetric"})
        if (text.find(both) != std::string::npos) return {Side::left, Side::right};
    std::set<Side> out;
    std::istringstream words{lower(text)};
    for (std::string word; words >> word;) {
        word.erase(std::remove_if(word.begin(), word.end(), [](unsigned char c) { return std::ispunct(c); }),
                   word.end());
        if (word == "left") out.insert(Side::left);
        if (word == "right") out.insert(Side::right);
    }
    return out;
}

std::string withoutBrackets(const std::string& text) {
    std::string out;
    int depth = 0;
    for (const char c : text) {
        if (c == '(')
            ++depth;
        else if (c == ')')
            --depth;
        else if (depth == 0)
            out += c;
    }
    return out;
}

class NarrativeProperty : public ::testing::Test {
protected:
    static const MarkedKnowledge& marked() {
        static const MarkedKnowledge knowledge;
        return knowledge;
    }
    static const Catalogue& catalogue() { return marked().get().catalogue(); }

    static const NarrativeSection* find(const Narrative& narrative, const std::string& id) {
        for (const NarrativeSection& section : narrative.sections)
            if (section.id == id) return &section;
        return nullptr;
    }
};

TEST_F(NarrativeProperty, NoSentenceSpeaksOfWhatWasNotExaminedAndNoNormalOneOfWhatWasNotNormal) {
    RandomExams exams{catalogue(), 20260302};
    int sentencesSeen = 0;
    for (int round = 0; round < 600; ++round) {
        const Exam exam = exams.next();
        const Narrative narrative = narrate(exam, Assessment{}, marked().get());
        for (const NarrativeSection& section : narrative.sections)
            for (const auto& [paragraph, positive] :
                 {std::pair{section.positives, true}, std::pair{section.rest, false}})
                for (const std::string& said : sentences(paragraph))
                    for (const std::string& id : marksIn(said, marked())) {
                        ++sentencesSeen;
                        const Item* item = catalogue().find(id);
                        ASSERT_NE(item, nullptr) << said;
                        const auto sides = sidesClaimed(withoutBrackets(said), *item);
                        ASSERT_FALSE(sides.empty()) << "names no side: " << said;
                        for (const Side side : sides) {
                            const Finding* finding = exam.find({item->id, side});
                            ASSERT_NE(finding, nullptr) << name(side) << " was not examined: " << said;
                            ASSERT_TRUE(finding->value.testable()) << said;
                            const Look look = lookOf(item->scale, finding->value);
                            const bool judgedAbnormal = look != Look::normal && look != Look::plain;
                            ASSERT_EQ(judgedAbnormal, positive) << said;
                        }
                    }
    }
    EXPECT_GT(sentencesSeen, 20000);
}

TEST_F(NarrativeProperty, EveryAbnormalFindingIsAmongThePositivesOfItsSection) {
    RandomExams exams{catalogue(), 4711};
    int checked = 0;
    for (int round = 0; round < 600; ++round) {
        const Exam exam = exams.next();
        const Narrative narrative = narrate(exam, Assessment{}, marked().get());
        for (const auto& [key, finding] : exam.findings()) {
            const Item* item = catalogue().find(key.item);
            const Look look = lookOf(item->scale, finding.value);
            if (look == Look::normal || look == Look::plain) continue;
            const PhraseFamily& family =
                marked().get().phrases().families()[marked().get().phrases().item(item->id).family];
            const NarrativeSection* section =
                find(narrative, marked().get().phrases().sections()[family.section].id);
            ASSERT_NE(section, nullptr);
            bool told = false;
            for (const std::string& said : sentences(section->positives))
                told = told || (marksIn(said, marked()).contains(key.item.text()) &&
                                sidesClaimed(withoutBrackets(said), *item).contains(key.side));
            ASSERT_TRUE(told) << key.item.text() << " " << name(key.side)
                              << " is not in: " << section->positives;
            ++checked;
        }
    }
    EXPECT_GT(checked, 10000);
}

TEST_F(NarrativeProperty, WhatCouldNotBeTestedIsSaidToBeNotTestable) {
    RandomExams exams{catalogue(), 99};
    int checked = 0;
    for (int round = 0; round < 200; ++round) {
        const Exam exam = exams.next();
        const Narrative narrative = narrate(exam, Assessment{}, marked().get());
        std::string all;
        for (const NarrativeSection& section : narrative.sections)
            all += section.notExamined + "\n";
        for (const auto& [key, finding] : exam.findings()) {
            if (finding.value.testable()) continue;
            ++checked;
            EXPECT_NE(all.find("<" + key.item.text() + ">"), std::string::npos) << key.item.text();
        }
    }
    EXPECT_GT(checked, 500);
}

TEST_F(NarrativeProperty, TheReasonsOfAnImpressionAreFindingsOfTheExam) {
    RandomExams exams{catalogue(), 7};
    for (int round = 0; round < 40; ++round) {
        const Exam exam = exams.next();
        const Narrative narrative = narrate(exam, assess(exam, marked().get()), marked().get());
        for (const char* id : {"red_signs", "impression"}) {
            const NarrativeSection* section = find(narrative, id);
            if (section == nullptr) continue;
            for (const std::string& mark : marksOf(section->positives + section->rest)) {
                if (mark.rfind("set ", 0) == 0) continue;
                const ItemId item{mark.substr(0, mark.find('='))};
                EXPECT_TRUE(exam.find({item, Side::none}) || exam.find({item, Side::left}) ||
                            exam.find({item, Side::right}))
                    << item.text();
            }
        }
    }
}

} // namespace
} // namespace rhizograph
