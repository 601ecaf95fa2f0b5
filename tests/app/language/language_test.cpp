#include "catalogue/catalogue.h"
#include "language/language.h"
#include "tsfile.h"

#include "base/json.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <QTranslator>
#include <set>

namespace rhizograph::app::testing {
namespace {

/// Every word of the medicine that a screen shows, as it stands in the files.
std::set<std::string> medicalWords() {
    const auto catalogue = loadCatalogue(RHIZOGRAPH_RESOURCES "/knowledge/catalogue.json");
    EXPECT_TRUE(catalogue.ok());
    std::set<std::string> words;
    for (const Step& step : catalogue->steps())
        words.insert(step.label);
    for (const Group& group : catalogue->groups())
        words.insert({group.label, group.page});
    for (const Item& item : catalogue->items()) {
        words.insert({item.label, item.shortLabel});
        for (const ScaleValue& value : item.scale.values)
            words.insert(value.label);
    }
    for (std::string reason : catalogue->notTestableReasons()) {
        std::ranges::replace(reason, '_', ' ');
        words.insert(reason);
    }
    const auto collect = [&](const char* file, const std::set<std::string>& keys) {
        const auto json = readJsonFile(std::string(RHIZOGRAPH_RESOURCES "/knowledge/") + file);
        EXPECT_TRUE(json.ok()) << file;
        const auto walk = [&](const auto& self, const nlohmann::json& node) -> void {
            if (node.is_object())
                for (const auto& [key, value] : node.items())
                    if (value.is_string() && keys.contains(key))
                        words.insert(value.template get<std::string>());
            for (const auto& child : node)
                if (child.is_structured()) self(self, child);
        };
        walk(walk, *json);
    };
    collect("howto.json", {"how", "counts"});
    collect("sites.json", {"label"});
    collect("screens.json", {"label"});
    collect("events.json", {"label"});
    collect("redsigns.json", {"sentence", "action"});
    collect("consistency.json", {"sentence", "behavioral_sentence"});
    words.erase("");
    return words;
}

class Languages : public ::testing::TestWithParam<Language> {
protected:
    ~Languages() override { speak(Language::english); }
};

TEST_P(Languages, HaveAWordForEveryWordOfTheMedicineOnTheScreens) {
    speak(GetParam());
    QTranslator words;
    ASSERT_TRUE(words.load(QStringLiteral(":/languages/medicine_%1.qm").arg(codeOf(GetParam()))));
    const std::set<std::string> all = medicalWords();
    std::printf("[ language ] %s: %zu words of the medicine\n", qPrintable(codeOf(GetParam())), all.size());
    EXPECT_GT(all.size(), 500u);
    for (const std::string& word : all)
        EXPECT_FALSE(words.translate("medicine", word.c_str()).isEmpty()) << word;
}

TEST_P(Languages, NameReflexesAndSignsAsClinicsDo) {
    speak(GetParam());
    const bool german = GetParam() == Language::german;
    // Common practice: the usual names in clinics of the language.
    EXPECT_EQ(medical("Knee reflex"), german ? "Patellarsehnenreflex" : "Reflejo rotuliano");
    EXPECT_EQ(medical("Ankle reflex"), german ? "Achillessehnenreflex" : "Reflejo aquíleo");
    EXPECT_TRUE(medical("Straight leg raise, supine").contains("Lasègue"));
    EXPECT_EQ(medical("Cauda equina"), german ? "Cauda equina" : "Cola de caballo");
}

TEST_P(Languages, KeepNumbersAndWordsThatHaveNoTranslation) {
    speak(GetParam());
    EXPECT_EQ(medical("37.5"), "37.5");
    EXPECT_EQ(medical(""), "");
}

INSTANTIATE_TEST_SUITE_P(BesideEnglish, Languages, ::testing::Values(Language::german, Language::spanish),
                         [](const auto& each) { return codeOf(each.param).toStdString(); });

TEST(Language, WritesNounsSmallInsideASentenceOnlyWhereTheLanguageDoes) {
    speak(Language::german);
    EXPECT_EQ(medicalInSentence("Back pain"), "Rückenschmerz");
    speak(Language::spanish);
    EXPECT_EQ(medicalInSentence("Back pain"), "dolor de espalda");
    speak(Language::english);
    EXPECT_EQ(medicalInSentence("Back pain"), "back pain");
    EXPECT_EQ(smallFirst("PROMIS"), "PROMIS");
}

TEST(Language, IsFoundByTheNameOfALocaleAndEnglishWhereUnknown) {
    EXPECT_EQ(languageNamed("de_AT"), Language::german);
    EXPECT_EQ(languageNamed("es"), Language::spanish);
    EXPECT_EQ(languageNamed("fi_FI"), Language::english);
    EXPECT_EQ(languageNamed(""), Language::english);
}

} // namespace
} // namespace rhizograph::app::testing
