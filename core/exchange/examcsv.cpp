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

std::string row(const Exam& exam, const Item& item, Side side, const Finding& finding, bool texts) {
    const Value& value = finding.value;
    const bool words = value.kind() == Value::Kind::text;
    const std::string said = !value.testable()  ? std::string{}
                             : words && !texts  ? std::string{}
                             : value.isNumber() ? fmt::format("{}", value.number())
                                                : csvText(value.word());
    const std::string state = !value.testable() ? "not_testable"
                              : words && !texts ? "text_left_out"
                                                : lookWord(lookOf(item.scale, value));
    return csvRow({exam.date, exam.subject.age ? std::to_string(*exam.subject.age) : "", exam.subject.sex,
                   item.id.text(), csvField(item.label), side == Side::none ? "" : std::string{name(side)},
                   said, csvField(item.scale.unit), state, value.testable() ? "" : value.word(),
                   finding.bulk ? "yes" : "no",
                   finding.note.empty() ? ""
                   : texts              ? csvText(finding.note)
                                        : "left_out"});
}

} // namespace

std::string examCsv(const Exam& exam, const Catalogue& catalogue, bool texts) {
    std::string out = csvRow({"visit_date", "age", "sex", "item", "label", "side", "value", "unit", "state",
                              "because", "bulk", "note"});
    for (const Item& item : catalogue.items())
        for (const Side side : {Side::none, Side::right, Side::left})
            if (const Finding* finding = exam.find({item.id, side}))
                out += row(exam, item, side, *finding, texts);
    return out;
}

} // namespace rhizograph
