#include "exam/exam.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace rhizograph {
namespace {

/// A token with its side words exchanged: "right_high" <-> "left_high", "to_right" <-> "to_left".
std::string mirroredToken(const std::string& token) {
    std::string out;
    std::size_t start = 0;
    while (start <= token.size()) {
        const std::size_t end = std::min(token.find('_', start), token.size());
        std::string word = token.substr(start, end - start);
        if (word == "left")
            word = "right";
        else if (word == "right")
            word = "left";
        if (start > 0) out += '_';
        out += word;
        start = end + 1;
    }
    return out;
}

std::string listedTokens(const Scale& scale) {
    std::string out;
    for (const ScaleValue& value : scale.values)
        out += (out.empty() ? "" : ", ") + value.token;
    return out;
}

std::optional<std::string> checkSide(const Item& item, Side side) {
    if (item.sided && side != Side::left && side != Side::right) return "needs a side, left or right";
    if (!item.sided && side != Side::none) return "takes no side";
    return std::nullopt;
}

std::optional<std::string> checkNumber(const Scale& scale, double number) {
    if (!std::isfinite(number)) return "is not a finite number";
    if (number < scale.minimum || number > scale.maximum)
        return fmt::format("{} is outside {} to {} {}", number, scale.minimum, scale.maximum, scale.unit);
    return std::nullopt;
}

} // namespace

const Finding* Exam::find(const FindingKey& key) const {
    const auto found = findings_.find(key);
    return found == findings_.end() ? nullptr : &found->second;
}

const Finding* Exam::find(std::string_view item, Side side) const {
    return find(FindingKey{ItemId{std::string{item}}, side});
}

Exam Exam::mirrored() const {
    Exam out;
    out.subject = subject;
    out.date = date;
    for (const auto& [key, finding] : findings_) {
        Finding copy = finding;
        if (copy.value.kind() == Value::Kind::token)
            copy.value = Value::token(mirroredToken(copy.value.word()));
        out.set({key.item, rhizograph::mirrored(key.side)}, std::move(copy));
    }
    return out;
}

std::optional<std::string> check(const Catalogue& catalogue, const FindingKey& key, const Value& value) {
    const Item* item = catalogue.find(key.item);
    if (item == nullptr) return "no such item";
    if (auto wrong = checkSide(*item, key.side)) return wrong;
    const Scale& scale = item->scale;
    switch (value.kind()) {
    case Value::Kind::notTestable: {
        const auto& reasons = catalogue.notTestableReasons();
        if (std::find(reasons.begin(), reasons.end(), value.word()) == reasons.end())
            return "\"" + value.word() + "\" is not a reason for not testable";
        return std::nullopt;
    }
    case Value::Kind::number:
        if (!scale.numeric()) return "takes no number";
        return checkNumber(scale, value.number());
    case Value::Kind::text:
        if (scale.kind != Scale::Kind::text) return "takes no free text";
        return std::nullopt;
    case Value::Kind::token:
        break;
    }
    if (scale.numeric()) return "takes a number";
    if (scale.kind == Scale::Kind::text) return std::nullopt;
    if (!scale.index(value.word()))
        return "\"" + value.word() + "\" is not on its scale (" + listedTokens(scale) + ")";
    return std::nullopt;
}

} // namespace rhizograph
