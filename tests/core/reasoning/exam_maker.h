#pragma once

#include "base/json.h"
#include "catalogue/catalogue.h"
#include "exam/exam.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <initializer_list>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

namespace rhizograph::testing {

inline std::filesystem::path knowledgeDirectory() {
    return std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge";
}

inline const Catalogue& catalogue() {
    static const Result<Catalogue> loaded = loadCatalogue(knowledgeDirectory() / "catalogue.json");
    return *loaded;
}

/// Builds an exam finding by finding and refuses what the catalogue does not know, so that a test cannot pass
/// by a typo.
class ExamMaker {
public:
    ExamMaker() = default;
    ExamMaker(int age, const std::string& sex) {
        exam_.subject.age = age;
        exam_.subject.sex = sex;
    }

    ExamMaker& none(const std::string& item, const std::string& token) {
        return set(item, Side::none, Value::token(token));
    }
    ExamMaker& none(const std::string& item, double number) {
        return set(item, Side::none, Value::number(number));
    }
    ExamMaker& left(const std::string& item, const std::string& token) {
        return set(item, Side::left, Value::token(token));
    }
    ExamMaker& left(const std::string& item, double number) {
        return set(item, Side::left, Value::number(number));
    }
    ExamMaker& right(const std::string& item, const std::string& token) {
        return set(item, Side::right, Value::token(token));
    }
    ExamMaker& right(const std::string& item, double number) {
        return set(item, Side::right, Value::number(number));
    }
    ExamMaker& both(const std::string& item, const std::string& token) {
        return left(item, token).right(item, token);
    }
    ExamMaker& both(const std::string& item, double number) { return left(item, number).right(item, number); }
    ExamMaker& set(const std::string& item, Side side, Value value) {
        const FindingKey key{ItemId{item}, side};
        if (const auto wrong = check(catalogue(), key, value))
            throw std::invalid_argument(item + ": " + *wrong);
        exam_.set(key, {std::move(value), false, ""});
        return *this;
    }

    operator const Exam&() const { return exam_; }
    [[nodiscard]] const Exam& exam() const { return exam_; }

private:
    Exam exam_;
};

/// A case file of tests/cases: the exam and what the report says is true.
struct CaseFile {
    std::string id;
    std::string source;
    Exam exam;
    std::vector<std::string> redSigns;
    std::vector<std::string> mustNot;
};

inline CaseFile readCase(const std::filesystem::path& path) {
    const auto json = readJsonFile(path);
    if (!json) throw std::runtime_error(path.string() + ": " + json.problems().front().text());
    CaseFile out;
    out.id = json->at("id").get<std::string>();
    if (json->at("source").is_object()) out.source = json->at("source").at("citation").get<std::string>();
    out.redSigns = json->at("truth").at("red_signs").get<std::vector<std::string>>();
    out.mustNot = json->at("truth").at("must_not").get<std::vector<std::string>>();
    const auto& patient = json->at("patient");
    if (patient.contains("age")) out.exam.subject.age = patient.at("age").get<int>();
    if (patient.contains("sex")) out.exam.subject.sex = patient.at("sex").get<std::string>();
    for (const auto& finding : json->at("findings")) {
        const FindingKey key{ItemId{finding.at("item").get<std::string>()},
                             sideNamed(finding.value("side", std::string{"none"})).value()};
        const auto& raw = finding.at("value");
        Value value = Value::token("");
        if (raw.is_number())
            value = Value::number(raw.get<double>());
        else if (raw.get<std::string>() == "not_testable")
            value = Value::notTestable(finding.at("because").get<std::string>());
        else
            value = Value::token(raw.get<std::string>());
        if (const auto wrong = check(catalogue(), key, value))
            throw std::runtime_error(out.id + " " + key.item.text() + ": " + *wrong);
        out.exam.set(key, {std::move(value), false, ""});
    }
    return out;
}

inline std::vector<CaseFile> readCases(const std::filesystem::path& directory) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(directory))
        if (entry.path().extension() == ".json") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<CaseFile> out;
    for (const auto& path : paths)
        out.push_back(readCase(path));
    return out;
}

} // namespace rhizograph::testing
