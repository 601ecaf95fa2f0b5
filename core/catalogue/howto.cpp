#include "catalogue/howto.h"

#include "base/json.h"

namespace rhizograph {
namespace {

std::string words(const JsonNode& node) {
    const std::string text = node.string();
    if (text.empty()) node.fail("is empty");
    return text;
}

} // namespace

Result<HowTos> HowTos::load(const std::filesystem::path& file, const Catalogue& catalogue) {
    auto text = readTextFile(file);
    if (!text) return text.problems();
    return parse(*text, file.string(), catalogue);
}

Result<HowTos> HowTos::parse(std::string_view text, const std::string& name, const Catalogue& catalogue) {
    auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, name, problems};
    root.onlyKeys({"format", "version", "about", "entries"});
    if (root.at("format").string() != "rhizograph.howto") root.fail("format is not rhizograph.howto");
    if (root.at("version").integer() != 1) root.fail("version is not 1");
    HowTos out;
    for (const JsonNode& node : root.at("entries").items()) {
        node.onlyKeys({"item", "how", "counts", "source"});
        const ItemId item{node.at("item").string()};
        if (catalogue.find(item) == nullptr) node.at("item").fail("no such item");
        HowTo entry{words(node.at("how")), words(node.at("counts")), words(node.at("source"))};
        if (!out.entries_.emplace(item, std::move(entry)).second) node.at("item").fail("item named twice");
    }
    if (!problems.empty()) return problems;
    return out;
}

const HowTo* HowTos::find(const ItemId& item) const {
    const auto found = entries_.find(item);
    return found == entries_.end() ? nullptr : &found->second;
}

} // namespace rhizograph
