// Narratives written by hand from the findings of published and textbook cases, before the program wrote
// them. The wording is common practice, no source: an examination as clinicians dictate it.

#include "base/json.h"
#include "exchange/examfile.h"
#include "exchange/narrative.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <map>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

const fs::path kCases = fs::path{RHIZOGRAPH_TEST_DATA} / "cases";

struct Golden {
    std::string name;
    std::string examFile;
    Units units = Units::metric;
    std::map<std::string, NarrativeSection> sections;
};

/// "[section]" opens a section; "+ " its positives, "= " the rest, "- " what was not examined, which continue
/// on indented lines.
Golden readGolden(const fs::path& path) {
    Golden out;
    out.name = path.stem().string();
    std::ifstream file{path};
    std::string* open = nullptr;
    NarrativeSection* section = nullptr;
    for (std::string line; std::getline(file, line);) {
        if (line.rfind("case: ", 0) == 0)
            out.examFile = line.substr(6);
        else if (line == "units: customary")
            out.units = Units::customary;
        else if (line.rfind('[', 0) == 0)
            section = &out.sections[line.substr(1, line.size() - 2)];
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

class NarrativeGolden : public ::testing::TestWithParam<fs::path> {};

TEST_P(NarrativeGolden, SaysWhatAClinicianWouldWrite) {
    const Golden golden = readGolden(GetParam());
    const auto exam = readExamFile(kCases / golden.examFile, knowledge().catalogue());
    ASSERT_TRUE(exam.ok()) << exam.problems().front().text();
    const Narrative narrative =
        narrate(*exam, assess(*exam, knowledge()), knowledge(), nullptr, golden.units);
    std::map<std::string, NarrativeSection> told;
    for (const NarrativeSection& section : narrative.sections)
        told[section.id] = section;
    for (const auto& [id, expected] : golden.sections) {
        EXPECT_EQ(told[id].positives, expected.positives) << id;
        if (id != "red_signs") {
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
    for (const auto& entry :
         fs::directory_iterator(fs::path{RHIZOGRAPH_TEST_DATA} / "core" / "exchange" / "golden"))
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
