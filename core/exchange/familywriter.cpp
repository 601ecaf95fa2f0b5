#include "exchange/familywriter.h"

#include <algorithm>
#include <map>
#include <set>

namespace rhizograph {
namespace {

bool namesItems(const std::string& phrase) {
    return phrase.find("{names}") != std::string::npos || phrase.find("{plurals}") != std::string::npos;
}

} // namespace

FamilyWriter::FamilyWriter(const Wording& words, const Exam& exam, const PhraseFamily& family,
                           std::vector<const Item*> items)
    : words_(words), exam_(exam), family_(family), form_(words.book().form(family)),
      items_(std::move(items)) {}

void FamilyWriter::take() {
    for (const Item* item : items_)
        item->sided ? takeSided(*item) : takePlain(*item);
    std::stable_sort(clauses_.begin(), clauses_.end(),
                     [](const Clause& a, const Clause& b) { return a.kind < b.kind; });
}

FamilyWords FamilyWriter::write() {
    take();
    FamilyWords out;
    for (const Clause& clause : clauses_)
        addSentence(clause.kind <= Kind::abnormal ? out.positives : out.rest, said(clause));
    out.notTestable = notTestable_;
    findMissing(out);
    return out;
}

std::vector<FamilyWriter::Part> FamilyWriter::parts() {
    asides_ = false;
    take();
    std::vector<Part> out;
    for (const Clause& clause : clauses_)
        out.push_back({said(clause), clause.items});
    for (const std::string& words : notTestable_)
        out.push_back({lowerFirst(words_.word("not_testable")) + ": " + words, {}});
    return out;
}

FamilyWriter::Seen FamilyWriter::see(const Item& item, Side side) const {
    Seen seen;
    seen.finding = exam_.find({item.id, side});
    if (!seen.examined()) return seen;
    seen.words = words_.value(item, seen.finding->value);
    switch (lookOf(item.scale, seen.finding->value)) {
    case Look::normal:
        seen.kind = Kind::normal;
        break;
    case Look::plain:
        seen.kind = Kind::neutral;
        break;
    case Look::marked:
        seen.kind = Kind::marked;
        break;
    case Look::reduced:
    case Look::heightened:
        seen.kind = Kind::abnormal;
        break;
    }
    return seen;
}

void FamilyWriter::takePlain(const Item& item) {
    const Seen seen = see(item, Side::none);
    takeSide(item, Side::none, seen, {});
}

void FamilyWriter::takeSided(const Item& item) {
    const Seen right = see(item, Side::right);
    const Seen left = see(item, Side::left);
    const bool alike =
        right.examined() && left.examined() && right.words == left.words && right.kind == left.kind;
    const bool differ = right.examined() && left.examined() && !alike &&
                        right.positive() == left.positive() && !form_.pair.empty();
    if (alike || differ) return takeBoth(item, right, left);
    takeSide(item, Side::right, right, left);
    takeSide(item, Side::left, left, right);
}

void FamilyWriter::takeBoth(const Item& item, const Seen& right, const Seen& left) {
    Clause clause;
    clause.kind = std::min(right.kind, left.kind);
    clause.side = Side::both;
    clause.pair = right.words != left.words;
    clause.value = right.words;
    if (clause.pair) clause.other = left.words;
    for (const auto& [side, seen] : {std::pair{Side::right, &right}, std::pair{Side::left, &left}})
        if (!seen->finding->note.empty())
            clause.notes.push_back(words_.side(side) + ": " + seen->finding->note);
    add(std::move(clause), item);
}

void FamilyWriter::takeSide(const Item& item, Side side, const Seen& seen, const Seen& other) {
    if (seen.finding == nullptr) return;
    if (!seen.examined()) {
        PhraseFields fields;
        fields.text = {{"names", words_.subject({item.id, side})},
                       {"reason", words_.reason(seen.finding->value.word())}};
        std::string words = fillPhrase(words_.word("not_testable_item"), fields);
        if (!seen.finding->note.empty()) words += " – " + seen.finding->note;
        notTestable_.push_back(std::move(words));
        return;
    }
    Clause clause;
    clause.kind = seen.kind;
    clause.side = side;
    clause.value = seen.words;
    if (seen.positive() && side != Side::none) clause.other = aside(seen, other, mirrored(side));
    if (!seen.finding->note.empty()) clause.notes.push_back(seen.finding->note);
    // A normal side is told beside the abnormal one, not again by itself.
    const bool told = other.positive() && seen.kind == Kind::normal && !form_.other.empty();
    if (told && clause.notes.empty()) return;
    add(std::move(clause), item);
}

std::string FamilyWriter::aside(const Seen& seen, const Seen& other, Side otherSide) const {
    if (!asides_ || form_.other.empty()) return {};
    PhraseFields fields;
    fields.text = {{"side", words_.side(otherSide)}, {"value", other.words}};
    if (other.finding == nullptr) return fillPhrase(form_.otherUnknown, fields);
    if (!other.examined()) return words_.side(otherSide) + " " + lowerFirst(words_.word("not_testable"));
    return other.words == seen.words ? std::string{} : fillPhrase(form_.other, fields);
}

void FamilyWriter::add(Clause clause, const Item& item) {
    if (phraseOf(clause).empty()) return;
    const auto shared = std::find_if(clauses_.begin(), clauses_.end(),
                                     [&](const Clause& each) { return sharesSentence(each, clause); });
    if (shared != clauses_.end() && item.scale.listed()) {
        shared->items.push_back(&item);
        return;
    }
    clause.items.push_back(&item);
    clauses_.push_back(std::move(clause));
}

bool FamilyWriter::sharesSentence(const Clause& a, const Clause& b) const {
    return a.kind == b.kind && a.side == b.side && a.pair == b.pair && a.value == b.value &&
           a.other == b.other && a.notes.empty() && b.notes.empty() && namesItems(phraseOf(b)) &&
           a.items.front()->scale.listed();
}

const std::string& FamilyWriter::phraseOf(const Clause& clause) const {
    if (clause.pair) return form_.pair;
    const PhraseSides& sides = clause.kind == Kind::normal    ? form_.normal
                               : clause.kind == Kind::neutral ? form_.neutral
                                                              : form_.abnormal;
    if (clause.side == Side::none) return sides.plain;
    return clause.side == Side::both ? sides.both : sides.side;
}

std::vector<std::string> FamilyWriter::names(const std::vector<const Item*>& items, bool plural) const {
    std::set<ItemId> left;
    for (const Item* item : items)
        left.insert(item->id);
    std::vector<std::pair<std::size_t, std::string>> named;
    for (const PhraseSet& set : family_.sets) {
        const auto held = [&](const ItemId& id) { return left.contains(id); };
        if (set.items.empty() || !std::all_of(set.items.begin(), set.items.end(), held)) continue;
        named.emplace_back(words_.catalogue().order(set.items.front()), set.name);
        for (const ItemId& id : set.items)
            left.erase(id);
    }
    for (const ItemId& id : left) {
        const PhraseItem& item = words_.book().item(id);
        named.emplace_back(words_.catalogue().order(id), plural ? item.plural : item.name);
    }
    std::sort(named.begin(), named.end());
    std::vector<std::string> out;
    for (auto& [order, name] : named)
        out.push_back(std::move(name));
    return out;
}

std::string FamilyWriter::said(const Clause& clause) const {
    const auto single = names(clause.items, false);
    const std::string& joint = clause.kind == Kind::normal ? form_.join : words_.word("and");
    PhraseFields fields;
    fields.count = single.size();
    fields.text = {{"names", joined(single, joint)},
                   {"plurals", joined(names(clause.items, true), joint)},
                   {"value", clause.value},
                   {"side", clause.side == Side::both ? std::string{} : words_.side(clause.side)},
                   {"right", clause.value},
                   {"left", clause.other},
                   {"whole", family_.whole}};
    std::string out = fillPhrase(phraseOf(clause), fields);
    if (!clause.pair && !clause.other.empty()) out += " (" + clause.other + ")";
    if (!clause.notes.empty()) {
        PhraseFields note;
        note.text = {{"note", joined(clause.notes, words_.word("and"))}};
        out += " (" + fillPhrase(words_.word("note"), note) + ")";
    }
    return out;
}

std::string FamilyWriter::subjects(const std::vector<const Item*>& items) const {
    const auto all = names(items, false);
    PhraseFields fields;
    fields.count = all.size();
    fields.text = {{"names", joined(all, words_.word("and"))}, {"whole", family_.whole}};
    return fillPhrase(form_.subject, fields);
}

void FamilyWriter::findMissing(FamilyWords& out) const {
    std::vector<const Item*> both;
    std::vector<const Item*> right;
    std::vector<const Item*> left;
    bool everyday = false;
    for (const Item* item : items_) {
        const bool core = item->tier == Tier::core;
        everyday = everyday || core;
        const auto has = [&](Side side) { return exam_.find({item->id, side}) != nullptr; };
        if (item->sided ? has(Side::right) || has(Side::left) : has(Side::none)) out.untouched = false;
        if (!core) continue;
        if (!item->sided) {
            if (!has(Side::none)) both.push_back(item);
            continue;
        }
        if (!has(Side::right) && !has(Side::left))
            both.push_back(item);
        else if (!has(Side::right))
            right.push_back(item);
        else if (!has(Side::left))
            left.push_back(item);
    }
    if (!everyday || family_.whole.empty()) return;
    if (out.untouched)
        out.missing.push_back(family_.whole);
    else if (family_.listMissing) {
        if (!both.empty()) out.missing.push_back(subjects(both));
        if (!right.empty()) out.missing.push_back(words_.onSide(subjects(right), Side::right));
        if (!left.empty()) out.missing.push_back(words_.onSide(subjects(left), Side::left));
    }
}

std::string findingWords(const Wording& words, const Exam& exam, const std::vector<FindingKey>& keys) {
    Exam these;
    std::map<std::size_t, std::vector<const Item*>> families;
    std::map<const Item*, std::size_t> rank;
    for (const FindingKey& key : keys) {
        const Item* item = words.catalogue().find(key.item);
        const Finding* finding = exam.find(key);
        if (item == nullptr || finding == nullptr) continue;
        these.set(key, {finding->value, false, {}});
        if (rank.emplace(item, rank.size()).second)
            families[words.book().item(item->id).family].push_back(item);
    }
    std::vector<std::pair<std::size_t, std::string>> ranked;
    for (const auto& [family, items] : families)
        for (const auto& part : FamilyWriter{words, these, words.book().families()[family], items}.parts()) {
            std::size_t first = rank.size();
            for (const Item* item : part.items)
                first = std::min(first, rank.at(item));
            ranked.emplace_back(first, part.words);
        }
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::string out;
    for (const auto& [place, said] : ranked)
        out += (out.empty() ? "" : "; ") + said;
    return out;
}

} // namespace rhizograph
