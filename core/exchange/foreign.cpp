#include "exchange/foreign.h"

#include "base/date.h"
#include "base/json.h"
#include "exchange/fhirnames.h"
#include "exchange/fhirreading.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <set>

namespace rhizograph {
namespace {

using namespace fhir;
using nlohmann::json;

constexpr std::size_t kMostListed = 500; ///< things not taken; the rest is counted
const std::set<std::string> kIcd10{"http://hl7.org/fhir/sid/icd-10", "http://hl7.org/fhir/sid/icd-10-cm"};
const std::set<std::string> kNotTrue{"refuted", "entered-in-error", "unconfirmed", "differential",
                                     "provisional"};
const std::set<std::string> kOver{"inactive", "remission", "resolved"};

/// Another system's JSON: nothing in it is taken for granted.
std::string textAt(const json& node, const char* key) {
    const auto found = node.is_object() ? node.find(key) : node.end();
    return node.is_object() && found != node.end() && found->is_string() ? found->get<std::string>()
                                                                         : std::string{};
}

const json& partAt(const json& node, const char* key) {
    static const json none;
    if (!node.is_object()) return none;
    const auto found = node.find(key);
    return found == node.end() ? none : *found;
}

/// Elements of a list; none where it is no list.
const json& listAt(const json& node, const char* key) {
    static const json none = json::array();
    const json& part = partAt(node, key);
    return part.is_array() ? part : none;
}

bool hasCode(const json& concepts, const std::set<std::string>& codes) {
    const json& list = listAt(concepts, "coding");
    return std::any_of(list.begin(), list.end(),
                       [&](const json& each) { return codes.contains(textAt(each, "code")); });
}

/// What a resource calls itself, for the list of what was not taken.
std::string called(const json& resource) {
    const json& code = partAt(resource, "code");
    std::string out = textAt(code, "text");
    for (const json& each : listAt(code, "coding")) {
        if (out.empty()) out = textAt(each, "display");
        if (out.empty()) out = textAt(each, "code");
    }
    return textAt(resource, "resourceType") + (out.empty() ? "" : " \"" + out + "\"");
}

class IntakeReader {
public:
    IntakeReader(const Catalogue& catalogue, const FhirCodes& codes, const std::string& day)
        : catalogue_(catalogue), codes_(codes), day_(day) {
        out_.exam.date = day;
    }

    void read(const json& resource) {
        const std::string type = textAt(resource, "resourceType");
        if (type == "Bundle") {
            for (const json& entry : listAt(resource, "entry"))
                read(partAt(entry, "resource"));
        } else if (type == "Patient") {
            ++patients_;
            readPatient(resource);
        } else if (type == "Condition") {
            readCondition(resource);
        } else if (type == "Observation") {
            readObservation(resource);
        } else {
            leave(called(resource), "this kind of resource fills no question of the intake");
        }
    }

    [[nodiscard]] int patients() const { return patients_; }
    [[nodiscard]] bool anything() const {
        return patients_ > 0 || !out_.notTaken.empty() || !out_.exam.findings().empty();
    }

    ForeignIntake finish() {
        if (left_ > kMostListed) out_.notTaken.push_back(fmt::format("and {} more", left_ - kMostListed));
        out_.exam.subject.sex = out_.identity.sex;
        out_.exam.subject.age = ageOn(out_.identity.birthDate, day_);
        return std::move(out_);
    }

private:
    void leave(const std::string& what, const std::string& why) {
        if (++left_ <= kMostListed) out_.notTaken.push_back((what.empty() ? "a part" : what) + ": " + why);
    }

    void readPatient(const json& node) {
        readName(node);
        const std::string sex = textAt(node, "gender");
        if (sex == "female" || sex == "male" || sex == "other")
            out_.identity.sex = sex;
        else if (!sex.empty() && sex != "unknown")
            leave("gender \"" + sex + "\"", "is none of female, male, other");
        const std::string born = textAt(node, "birthDate");
        if (!born.empty() && dateFrom(born) && born <= day_)
            out_.identity.birthDate = born;
        else if (!born.empty())
            leave("birth date \"" + born + "\"", "is no full calendar date up to today");
        for (const json& each : listAt(node, "identifier")) {
            const std::string number = textAt(each, "value");
            if (!number.empty())
                leave("identifier " + number,
                      "another system's numbers are not ours; write it in by hand if it is");
        }
        for (const char* part : {"telecom", "address", "contact", "photo", "communication"})
            if (!partAt(node, part).is_null())
                leave(std::string{"the patient's "} + part, "has no place here");
    }

    void readName(const json& node) {
        const json& names = listAt(node, "name");
        for (const json& each : names) {
            std::string whole = textAt(each, "text");
            if (whole.empty()) {
                for (const json& given : listAt(each, "given"))
                    if (given.is_string()) whole += (whole.empty() ? "" : " ") + given.get<std::string>();
                const std::string family = textAt(each, "family");
                whole += (whole.empty() || family.empty() ? "" : " ") + family;
            }
            if (whole.empty()) continue;
            if (out_.identity.name.empty() || textAt(each, "use") == "official")
                std::swap(out_.identity.name, whole);
            if (!whole.empty()) leave("the name " + whole, "a patient has one name here");
        }
    }

    void readCondition(const json& node) {
        const json& verified = partAt(node, "verificationStatus");
        if (hasCode(verified, kNotTrue)) return leave(called(node), "is not confirmed");
        const bool over = hasCode(partAt(node, "clinicalStatus"), kOver);
        for (const json& each : listAt(partAt(node, "code"), "coding")) {
            if (!kIcd10.contains(textAt(each, "system"))) continue;
            const std::string code = textAt(each, "code");
            for (const ForeignCondition& known : codes_.conditions) {
                if (std::none_of(known.prefixes.begin(), known.prefixes.end(),
                                 [&](const std::string& prefix) { return code.starts_with(prefix); }))
                    continue;
                if (over) return leave(called(node), "is over; ask when it was");
                answer(known.item, Value::token(known.value), called(node) + ", " + code);
                return;
            }
        }
        leave(called(node), "answers no question of the intake");
    }

    void readObservation(const json& node) {
        const std::string status = textAt(node, "status");
        if (status != "final" && status != "amended" && status != "corrected")
            return leave(called(node), "its status is \"" + status + "\", not final");
        std::string date = textAt(node, "effectiveDateTime");
        if (date.empty()) date = textAt(partAt(node, "effectivePeriod"), "start");
        if (date.empty()) date = textAt(node, "effectiveInstant");
        date = date.substr(0, 10);
        bool used = measure(node, node, date);
        for (const json& component : listAt(node, "component"))
            used = measure(component, node, date) || used;
        if (!used) leave(called(node), "answers no question of the intake");
    }

    /// True when the code is known, whether or not the value could be taken.
    bool measure(const json& part, const json& whole, const std::string& date) {
        for (const json& each : listAt(partAt(part, "code"), "coding")) {
            if (textAt(each, "system") != loinc) continue;
            const auto known = codes_.measures.find(textAt(each, "code"));
            if (known == codes_.measures.end()) continue;
            take(part, known->second, called(whole), date);
            return true;
        }
        return false;
    }

    void take(const json& part, const ForeignMeasure& known, const std::string& what,
              const std::string& date) {
        const auto age = daysBetween(date, day_);
        if (!age) return leave(what, "says no full date of measuring");
        if (*age < 0) return leave(what, "was measured after today, on " + date);
        if (*age > known.days) return leave(what, fmt::format("is too old, of {}: measure again", date));
        const Item* item = catalogue_.find(known.item);
        const auto number = numberOf(part, *item);
        if (!number)
            return leave(what, "its value or unit is not one that can be taken as \"" + item->label + "\"");
        // The newest counts, and none is taken twice.
        if (const auto before = taken_.find(known.item); before != taken_.end() && before->second >= date)
            return leave(what, "a newer one was taken, or one of the same day");
        const double steps = std::round(*number / item->scale.step);
        const double scale = std::pow(10, item->scale.decimals());
        const Value value = Value::number(std::round(steps * item->scale.step * scale) / scale);
        if (answer(known.item, value, date + (known.remark.empty() ? "" : "; " + known.remark)))
            taken_[known.item] = date;
    }

    [[nodiscard]] std::optional<double> numberOf(const json& part, const Item& item) const {
        const json& whole = partAt(part, "valueInteger");
        const json& quantity = partAt(part, "valueQuantity");
        if (whole.is_number())
            return item.scale.unit == "0-10" || item.scale.unit == "%" ? std::optional{whole.get<double>()}
                                                                       : std::nullopt;
        const json& value = partAt(quantity, "value");
        if (!value.is_number() || textAt(quantity, "comparator") != "") return std::nullopt;
        std::string unit = textAt(quantity, "code");
        if (unit.empty() || textAt(quantity, "system") != ucum) return std::nullopt;
        if (const auto own = codes_.ucum.find(item.scale.unit);
            own != codes_.ucum.end() && own->second == unit)
            return value.get<double>();
        if (const auto others = codes_.units.find(item.scale.unit); others != codes_.units.end())
            for (const ForeignUnit& other : others->second)
                if (other.from == unit) return value.get<double>() * other.factor + other.offset;
        return std::nullopt;
    }

    /// Sets an answer unless the catalogue refuses it.
    bool answer(const std::string& item, const Value& value, const std::string& from) {
        const FindingKey key{ItemId{item}, Side::none};
        if (const auto wrong = check(catalogue_, key, value)) {
            leave(from, *wrong);
            return false;
        }
        out_.exam.set(key, {value, false, "from another record: " + from});
        return true;
    }

    const Catalogue& catalogue_;
    const FhirCodes& codes_;
    std::string day_;
    ForeignIntake out_;
    std::map<std::string, std::string> taken_; ///< item -> date
    std::size_t left_ = 0;
    int patients_ = 0;
};

} // namespace

bool writtenHere(std::string_view text) {
    return text.find(deviceSystem) != std::string_view::npos;
}

Result<ForeignIntake> intakeFromFhir(std::string_view text, const std::string& name,
                                     const Catalogue& catalogue, const FhirCodes& codes,
                                     const std::string& day) {
    const auto parsed = parseJson(text, name);
    if (!parsed) return parsed.problems();
    IntakeReader reader{catalogue, codes, day};
    if (textAt(*parsed, "resourceType").empty()) return Problem{name, "/resourceType", "is no FHIR resource"};
    reader.read(*parsed);
    if (reader.patients() > 1)
        return Problem{name, "", fmt::format("holds {} patients: an intake is of one", reader.patients())};
    if (!reader.anything()) return Problem{name, "", "holds no resource"};
    return reader.finish();
}

Result<Patient> addIntake(Store& store, const Identity& identity, const Exam& exam,
                          const std::optional<PatientId>& into) {
    Result<Patient> patient = Problem{"", "", "names nobody: say which patient of this clinic it belongs to"};
    const Outcome written = store.together([&]() -> Outcome {
        patient = into ? store.patient(*into) : identity.name.empty() ? patient : store.addPatient(identity);
        if (!patient) return patient.problems();
        const Identity& here = patient->identity;
        if (into && ((!identity.birthDate.empty() && identity.birthDate != here.birthDate) ||
                     (!identity.sex.empty() && identity.sex != here.sex)))
            return Problem{"", "", "birth date or sex do not go with this patient"};
        const auto visit = store.addVisit(patient->id, exam.date);
        if (!visit) return visit.problems();
        std::vector<FindingChange> changes;
        for (const auto& [key, finding] : exam.findings())
            changes.push_back({key, finding});
        if (!changes.empty())
            if (const Outcome recorded = store.record(visit->id, changes); !recorded) return recorded;
        return store.log(AuditAction::imported, patient->id.text(),
                         fmt::format("an intake with {} answers", changes.size()));
    });
    if (!written) return written.problems();
    return patient;
}

} // namespace rhizograph
