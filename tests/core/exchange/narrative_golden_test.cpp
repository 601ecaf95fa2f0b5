// Narratives written by hand from the findings of published and textbook cases and of invented visits, before
// the program wrote them. The wording is common practice, no source: an examination as clinicians dictate it.

#include "base/json.h"
#include "exchange/examfile.h"
#include "exchange/papers.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <optional>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

const fs::path kCases = fs::path{RHIZOGRAPH_TEST_DATA} / "cases";

const fs::path kHere = fs::path{RHIZOGRAPH_TEST_DATA} / "core" / "exchange";

struct Golden {
    std::string name;
    fs::path exam;
    fs::path previous;
    Units units = Units::metric;
    std::optional<VisitPapers> papers;
    std::map<std::string, NarrativeSection> sections;
};

/// What stands between bars.
std::vector<std::string> partsOf(const std::string& text) {
    std::vector<std::string> out;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(" | ", at), text.size());
        out.push_back(text.substr(at, end - at));
        at = end + 3;
    }
    return out;
}

/// One line of what people wrote; `changed` holds the section, the words and who.
void readPapers(Golden& golden, const std::string& kind, const std::string& text) {
    VisitPapers& papers = golden.papers ? *golden.papers : golden.papers.emplace();
    const auto part = partsOf(text);
    if (kind == "plan")
        papers.plan = text;
    else if (kind == "signed")
        papers.signature = Signature{part.at(0), part.at(1), {}};
    else if (kind == "addendum")
        papers.addenda.push_back({part.at(0), part.at(1), part.at(2)});
    else if (kind == "acknowledged")
        papers.acknowledgements.push_back({part.at(0), part.at(1), part.at(2), part.at(3)});
    else
        papers.notes.push_back({noteOf(part.at(0), {part.at(1), "other words", {}}), part.at(2), {}});
}

/// "[section]" opens a section; "+ " its positives, "= " the rest, "- " what was not examined, which continue
/// on indented lines. "case: " is one of the cases, "exam: " and "previous: " are written for these
/// narratives.
Golden readGolden(const fs::path& path) {
    Golden out;
    out.name = path.stem().string();
    std::ifstream file{path};
    std::string* open = nullptr;
    NarrativeSection* section = nullptr;
    for (std::string line; std::getline(file, line);) {
        const std::size_t colon = line.find(": ");
        const std::string key = section == nullptr ? line.substr(0, colon) : std::string{};
        if (line.rfind('[', 0) == 0)
            section = &out.sections[line.substr(1, line.size() - 2)];
        else if (key == "case")
            out.exam = kCases / line.substr(colon + 2);
        else if (key == "exam")
            out.exam = kHere / "exams" / line.substr(colon + 2);
        else if (key == "previous")
            out.previous = kHere / "exams" / line.substr(colon + 2);
        else if (line == "units: customary")
            out.units = Units::customary;
        else if (!key.empty())
            readPapers(out, key, line.substr(colon + 2));
        else if (line.rfind("  ", 0) == 0)
            *open += ' ' + line.substr(2);
        else if (!line.empty()) {
            open = line[0] == '+'   ? &section->positives
                   : line[0] == '=' ? &section->rest
                                    : &section->notExamined;
            *open = line.substr(2);
        }
    }
    return out;
}

/// The sections by name; a second one of the same name is "name 2".
std::map<std::string, NarrativeSection> byName(const Narrative& narrative) {
    std::map<std::string, NarrativeSection> out;
    std::map<std::string, int> count;
    for (const NarrativeSection& section : narrative.sections) {
        const int number = ++count[section.id];
        out[number == 1 ? section.id : section.id + " " + std::to_string(number)] = section;
    }
    return out;
}

class NarrativeGolden : public ::testing::TestWithParam<fs::path> {};

TEST_P(NarrativeGolden, SaysWhatAClinicianWouldWrite) {
    const Golden golden = readGolden(GetParam());
    const auto exam = readExamFile(golden.exam, knowledge().catalogue());
    ASSERT_TRUE(exam.ok()) << exam.problems().front().text();
    std::optional<Exam> before;
    if (!golden.previous.empty()) before = *readExamFile(golden.previous, knowledge().catalogue());
    const Exam* previous = before ? &*before : nullptr;
    const Assessment assessment = assess(*exam, knowledge(), previous);
    Narrative narrative = narrate(*exam, assessment, knowledge(), previous, golden.units);
    if (golden.papers) addPapers(narrative, *golden.papers, assessment, knowledge(), utcMoment);
    auto told = byName(narrative);
    for (const auto& [id, expected] : golden.sections) {
        EXPECT_EQ(told[id].positives, expected.positives) << id;
        if (id != "red_signs" || golden.papers) {
            EXPECT_EQ(told[id].rest, expected.rest) << id;
        }
        if (!expected.notExamined.empty()) {
            EXPECT_EQ(told[id].notExamined, expected.notExamined) << id;
        }
    }
    for (const auto& [id, section] : told) {
        if (golden.sections.contains(id) || id == "impression" || id == "red_signs") continue;
        EXPECT_EQ(section.positives + section.rest, "") << id << " says something of what was not examined";
    }
}

std::vector<fs::path> goldens() {
    std::vector<fs::path> out;
    for (const auto& entry : fs::directory_iterator(kHere / "golden"))
        out.push_back(entry.path());
    std::sort(out.begin(), out.end());
    return out;
}

INSTANTIATE_TEST_SUITE_P(Cases, NarrativeGolden, ::testing::ValuesIn(goldens()), [](const auto& each) {
    std::string name = each.param.stem().string();
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

Exam caseExam(const std::string& file) {
    auto exam = readExamFile(kCases / file, knowledge().catalogue());
    if (!exam) throw std::runtime_error(exam.problems().front().text());
    return std::move(exam).value();
}

const NarrativeSection* sectionOf(const Narrative& narrative, const std::string& id) {
    for (const NarrativeSection& section : narrative.sections)
        if (section.id == id) return &section;
    return nullptr;
}

TEST(NarrativeImpression, NamesTheSiteItsReasonsAndTheLevelThatWouldFit) {
    const Exam exam = caseExam("textbook/root-L5.json");
    const Narrative narrative = narrate(exam, assess(exam, knowledge()), knowledge());
    const NarrativeSection* impression = sectionOf(narrative, "impression");
    ASSERT_NE(impression, nullptr);
    EXPECT_EQ(impression->positives.rfind("Most in keeping with: left L5 root (strong support, ", 0), 0U);
    EXPECT_NE(impression->rest.find("Speaks for it: "), std::string::npos);
    EXPECT_NE(impression->rest.find("A paracentral disc lesion at L4-L5 would fit."), std::string::npos);
}

TEST(NarrativeImpression, OffersNoSiteWhereNothingWasFound) {
    const Narrative narrative = narrate(Exam{}, assess(Exam{}, knowledge()), knowledge());
    const NarrativeSection* impression = sectionOf(narrative, "impression");
    ASSERT_NE(impression, nullptr);
    EXPECT_EQ(impression->positives, "");
    EXPECT_EQ(impression->rest, "No finding bears on a site yet; no site is offered.");
    const NarrativeSection* warnings = sectionOf(narrative, "red_signs");
    ASSERT_NE(warnings, nullptr);
    EXPECT_EQ(warnings->positives + warnings->rest, "")
        << "nothing was asked, so nothing may be said of warning signs";
    EXPECT_NE(warnings->notExamined.find("bladder"), std::string::npos)
        << "what was not asked is said to be so";
    for (const NarrativeSection& section : narrative.sections)
        if (section.id != "impression") {
            EXPECT_EQ(section.positives + section.rest, "") << section.id;
        }
}

TEST(NarrativeText, StandsUnderEveryImpressionThatItIsNoDiagnosis) {
    const Exam exam = caseExam("textbook/cauda-equina.json");
    const std::string text = asText(narrate(exam, assess(exam, knowledge()), knowledge()));
    EXPECT_NE(text.find("not a diagnosis"), std::string::npos);
    EXPECT_NE(text.find("EMERGENCY: "), std::string::npos);
    EXPECT_EQ(text.back(), '\n');
}

TEST(NarrativeInShort, KeepsEveryPositiveAndNamesWhereTheRestIs) {
    const Exam exam = caseExam("textbook/root-L5.json");
    const Narrative whole = narrate(exam, assess(exam, knowledge()), knowledge());
    const Narrative brief = inShort(whole, knowledge(), {"tension"});
    for (const NarrativeSection& section : whole.sections) {
        const NarrativeSection* kept = sectionOf(brief, section.id);
        if (section.positives.empty()) continue;
        ASSERT_NE(kept, nullptr) << section.id;
        EXPECT_EQ(kept->positives, section.positives);
    }
    EXPECT_EQ(sectionOf(brief, "tension")->rest, sectionOf(whole, "tension")->rest);
    EXPECT_EQ(sectionOf(brief, "strength")->rest, "");
    EXPECT_EQ(sectionOf(brief, "vessels"), nullptr);
    EXPECT_EQ(sectionOf(brief, "red_signs")->notExamined, sectionOf(whole, "red_signs")->notExamined);
    const NarrativeSection* rest = sectionOf(brief, "elsewhere");
    ASSERT_NE(rest, nullptr);
    EXPECT_EQ(
        rest->rest,
        "Other findings, none judged abnormal, are in the full form: history; warning questions; gait; "
        "strength; reflexes and tone; sensation; vessels and girths; abdomen, perineum, trunk and arms.");
    EXPECT_EQ(rest->notExamined.rfind("Not or not wholly examined: ", 0), 0U);
    EXPECT_LT(asText(brief).size(), asText(whole).size());
}

TEST(NarrativeText, IsNoWiderThanAPage) {
    const std::string text = [&] {
        const Exam exam = caseExam("textbook/cauda-equina.json");
        return asText(narrate(exam, assess(exam, knowledge()), knowledge()));
    }();
    std::size_t columns = 0;
    for (const char byte : text) {
        if (byte == '\n')
            columns = 0;
        else if ((static_cast<unsigned char>(byte) & 0xC0U) != 0x80U)
            ++columns;
        ASSERT_LE(columns, 78U);
    }
}

TEST(NarrativeText, KeepsARemarkWithItsFinding) {
    Exam exam;
    exam.set({ItemId{"reflex.ankle"}, Side::left}, {Value::token("0"), false, "old tendon repair"});
    exam.set({ItemId{"reflex.ankle"}, Side::right}, {Value::token("2"), false, ""});
    exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::token("0"), false, ""});
    exam.set({ItemId{"reflex.knee"}, Side::right}, {Value::token("2"), false, ""});
    const Narrative narrative = narrate(exam, assess(exam, knowledge()), knowledge());
    EXPECT_EQ(sectionOf(narrative, "reflexes")->positives,
              "Left knee reflex absent (0) (right 2+). Left ankle reflex absent (0) (right 2+) (note: old "
              "tendon repair).");
}

Exam findings(std::initializer_list<std::pair<FindingKey, Value>> list) {
    Exam exam;
    for (const auto& [key, value] : list)
        exam.set(key, {value, false, {}});
    return exam;
}

TEST(NarrativeComparison, SaysWhatGotWorseFirstAndNamesWhatWasLostFromSight) {
    const FindingKey toe{ItemId{"strength.great_toe_extension"}, Side::left};
    const FindingKey ankle{ItemId{"reflex.ankle"}, Side::left};
    const FindingKey heel{ItemId{"gait.heel_walk"}, Side::left};
    const FindingKey pain{ItemId{"pain.back"}, Side::none};
    const FindingKey shin{ItemId{"touch.outer_shin"}, Side::left};
    Exam before = findings({{toe, Value::token("4")},
                            {ankle, Value::token("2")},
                            {heel, Value::token("difficult")},
                            {pain, Value::number(7)},
                            {shin, Value::token("reduced")}});
    before.date = "2026-01-05";
    const Exam now = findings({{toe, Value::token("2")},
                               {ankle, Value::token("0")},
                               {pain, Value::number(4)},
                               {shin, Value::token("normal")}});
    const Narrative narrative = narrate(now, assess(now, knowledge(), &before), knowledge(), &before);
    const NarrativeSection* section = sectionOf(narrative, "comparison");
    ASSERT_NE(section, nullptr);
    EXPECT_EQ(section->title, "Compared with the visit of 2026-01-05");
    EXPECT_EQ(section->positives, "Worse: great-toe extension on the left 4/5 → 2/5. "
                                  "New: ankle reflex on the left 2+ → absent (0).");
    EXPECT_EQ(section->rest, "Better: back pain now 7/10 → 4/10. "
                             "Resolved: light touch over the outer shin on the left reduced → normal.");
    EXPECT_EQ(section->notExamined,
              "Not comparable: heel walking on the left done with difficulty → not examined.");
}

TEST(NarrativeComparison, DoesNotCallUnchangedWhatCannotBeCompared) {
    const Exam before = findings({{{ItemId{"reflex.ankle"}, Side::left}, Value::token("0")}});
    const Exam now = findings({{{ItemId{"reflex.knee"}, Side::left}, Value::token("2")}});
    const Narrative narrative = narrate(now, assess(now, knowledge(), &before), knowledge(), &before);
    const NarrativeSection* section = sectionOf(narrative, "comparison");
    ASSERT_NE(section, nullptr);
    EXPECT_EQ(section->positives + section->rest, "");
    EXPECT_EQ(section->notExamined, "Not comparable: ankle reflex on the left absent (0) → not examined.");
}

} // namespace
} // namespace rhizograph
