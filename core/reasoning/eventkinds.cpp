#include "reasoning/eventkinds.h"

#include "base/json.h"

#include <set>

namespace rhizograph {

Result<std::vector<EventKind>> loadEventKinds(const std::filesystem::path& file) {
    const auto json = readJsonFile(file);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, file.string(), problems};
    root.onlyKeys({"format", "version", "note", "kinds"});
    if (root.at("format").string() != "rhizograph.events") root.fail("format is not rhizograph.events");
    std::vector<EventKind> out;
    std::set<std::string> ids;
    for (const JsonNode& node : root.at("kinds").items()) {
        node.onlyKeys({"id", "label", "awaited", "source"});
        EventKind kind{node.at("id").string(), node.at("label").string(),
                       node.has("awaited") && node.at("awaited").boolean(), node.at("source").string()};
        if (kind.id.empty() || kind.label.empty()) node.fail("needs an id and a label");
        if (!ids.insert(kind.id).second) node.at("id").fail("stands here twice");
        out.push_back(std::move(kind));
    }
    if (out.empty()) root.at("kinds").fail("is empty");
    if (!problems.empty()) return problems;
    return out;
}

} // namespace rhizograph
