#include "base/date.h"
#include "exchange/csv.h"
#include "exchange/fhir.h"

#include <fmt/format.h>

namespace rhizograph {
namespace {

const char* lookWord(Look look) {
    switch (look) {
    case Look::normal:
        return "normal";
    case Look::reduced:
    case Look::marked:
    case Look::heightened:
        return "abnormal";
    case Look::plain:
        break;
    }
    return "unjudged";
}

/// The fields of one finding, with the end of the row.
std::string fieldsOf(const Item& item, Side side, const Finding& finding, bool texts) {
    const Value& value = finding.value;
    const bool words = value.kind() == Value::Kind::text;
    const std::string said = !value.testable()  ? std::string{}
                             : words && !texts  ? std::string{}
                             : value.isNumber() ? fmt::format("{}", value.number())
                                                : csvText(value.word());
    const std::string state = !value.testable() ? "not_testable"
                              : words && !texts ? "text_left_out"
                                                : lookWord(lookOf(item.scale, value));
    return csvRow({item.id.text(), csvField(item.label), side == Side::none ? "" : std::string{name(side)},
                   said, csvField(item.scale.unit), state, value.testable() ? "" : value.word(),
                   finding.bulk ? "yes" : "no",
                   finding.note.empty() ? ""
                   : texts              ? csvText(finding.note)
                                        : "left_out"});
}

constexpr const char* kFindingHead = "item,label,side,value,unit,state,because,bulk,note\r\n";

void addRows(std::string& out, const std::string& lead, const Exam& exam, const Catalogue& catalogue,
             bool texts) {
    for (const Item& item : catalogue.items())
        for (const Side side : {Side::none, Side::right, Side::left})
            if (const Finding* finding = exam.find({item.id, side}))
                out += lead + "," + fieldsOf(item, side, *finding, texts);
}

constexpr int kOldestAlone = 89; ///< above it people are few enough to be known by it

std::string ageText(const Subject& subject, bool names) {
    if (!subject.age) return {};
    return !names && *subject.age > kOldestAlone ? "90+" : std::to_string(*subject.age);
}

} // namespace

std::string examCsv(const Exam& exam, const Catalogue& catalogue, bool texts) {
    std::string out = std::string{"visit_date,age,sex,"} + kFindingHead;
    const std::string age = ageText(exam.subject, true);
    addRows(out, exam.date + "," + age + "," + exam.subject.sex, exam, catalogue, texts);
    return out;
}

std::string recordsCsv(const std::vector<PatientRecord>& records, const Catalogue& catalogue,
                       const CsvWanted& wanted) {
    std::string out = std::string{wanted.names ? "record_number,visit_date" : "patient,day"} +
                      ",visit,age,sex," + kFindingHead;
    for (const PatientRecord& record : records) {
        const std::string who =
            wanted.names ? csvText(record.identity.recordNumber) : randomUuid().substr(0, 8);
        int number = 0;
        for (const VisitRecord& visit : record.visits) {
            const Exam& exam = visit.exam;
            const int day = daysBetween(record.visits.front().exam.date, exam.date).value_or(0);
            addRows(out,
                    fmt::format("{},{},{},{},{}", who, wanted.names ? exam.date : std::to_string(day),
                                ++number, ageText(exam.subject, wanted.names), exam.subject.sex),
                    exam, catalogue, wanted.texts);
        }
    }
    return out;
}

} // namespace rhizograph
