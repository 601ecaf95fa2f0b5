#include "exchange/wording.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {

const PhraseFamily& Wording::family(const Item& item) const {
    return book().families()[book().item(item.id).family];
}

std::string Wording::side(Side side) const {
    return side == Side::none ? std::string{} : word("side." + std::string{name(side)});
}

std::string Wording::value(const Item& item, const Value& value) const {
    if (!value.testable()) return lowerFirst(word("not_testable"));
    if (value.isNumber()) {
        const PhraseUnit* unit = book().unit(item.scale.unit);
        if (unit == nullptr) return display(item.scale, value) + " " + item.scale.unit;
        PhraseFields fields;
        fields.count = value.number() == 1 ? 1 : 2;
        if (units_ == Units::metric || unit->customarySuffix.empty())
            return display(item.scale, value) + fillPhrase(unit->suffix, fields);
        return fmt::format("{:.{}f}{}", value.number() * unit->factor + unit->offset, unit->decimals,
                           unit->customarySuffix);
    }
    const auto& own = book().item(item.id).values;
    if (const auto found = own.find(value.word()); found != own.end()) return found->second;
    const auto& general = form(item).values;
    if (const auto found = general.find(value.word()); found != general.end()) return found->second;
    return value.kind() == Value::Kind::text ? value.word() : lowerFirst(display(item.scale, value));
}

std::string Wording::reason(const std::string& because) const {
    const auto& known = catalogue().notTestableReasons();
    return std::find(known.begin(), known.end(), because) == known.end() ? because
                                                                         : word("reason." + because);
}

std::string Wording::subject(const FindingKey& key) const {
    const Item* item = catalogue().find(key.item);
    if (item == nullptr) return key.item.text();
    PhraseFields fields;
    fields.text = {{"names", book().item(item->id).name}, {"whole", family(*item).whole}};
    return onSide(fillPhrase(form(*item).subject, fields), key.side);
}

std::string Wording::onSide(const std::string& what, Side side) const {
    if (side == Side::none) return what;
    PhraseFields fields;
    fields.text = {{"names", what}, {"side", this->side(side)}};
    return fillPhrase(word("on_side"), fields);
}

std::string Wording::finding(const FindingKey& key, const Value& value) const {
    const Item* item = catalogue().find(key.item);
    if (item == nullptr) return key.item.text();
    if (!value.testable()) {
        PhraseFields fields;
        fields.text = {{"names", subject(key)}, {"reason", reason(value.word())}};
        return lowerFirst(word("not_testable")) + ": " + fillPhrase(word("not_testable_item"), fields);
    }
    const Look look = lookOf(item->scale, value);
    const PhraseForm& how = form(*item);
    const PhraseSides& sides = look == Look::normal  ? how.normal
                               : look == Look::plain ? how.neutral
                                                     : how.abnormal;
    const std::string& phrase = key.side == Side::none ? sides.plain : sides.side;
    const PhraseItem& words = book().item(item->id);
    PhraseFields fields;
    fields.text = {{"names", words.name},
                   {"plurals", words.plural},
                   {"value", this->value(*item, value)},
                   {"side", side(key.side)},
                   {"whole", family(*item).whole}};
    if (!phrase.empty()) return fillPhrase(phrase, fields);
    return subject(key) + ": " + fields.text["value"];
}

std::string Wording::finding(const Exam& exam, const FindingKey& key) const {
    const Finding* found = exam.find(key);
    return found == nullptr ? subject(key) : finding(key, found->value);
}

std::string Wording::site(const SiteId& site, Side side) const {
    const std::string label = lowerFirst(knowledge_.siteLabel(site));
    if (side == Side::none || label.find(word("side.both")) != std::string::npos) return label;
    PhraseFields fields;
    fields.text = {{"site", label}};
    return fillPhrase(word("site_" + std::string{name(side)}), fields);
}

std::string joined(const std::vector<std::string>& names, const std::string& joint) {
    const std::string spaced = " " + joint + " ";
    const bool nested =
        names.size() > 1 && std::any_of(names.begin(), names.end(), [&](const std::string& each) {
            return each.find(',') != std::string::npos || each.find(spaced) != std::string::npos;
        });
    std::string out;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0)
            out += i + 1 < names.size() ? (nested ? "; " : ", ") : (nested ? "; " + joint + " " : spaced);
        out += names[i];
    }
    return out;
}

std::string sentence(std::string text) {
    text = upperFirst(std::move(text));
    if (!text.empty() && text.back() != '.' && text.back() != '!' && text.back() != '?') text += '.';
    return text;
}

void addSentence(std::string& paragraph, const std::string& text) {
    if (text.empty()) return;
    if (!paragraph.empty()) paragraph += ' ';
    paragraph += sentence(text);
}

} // namespace rhizograph
