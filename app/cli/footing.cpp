#include "cli/footing.h"

#include "base/json.h"
#include "reasoning/evidence.h"

#include <algorithm>
#include <regex>

namespace rhizograph::cli {
namespace {

constexpr const char* evidenceFile = "evidence.json";

/// The name by which people know an entry; its key in the file where it has none.
std::string entryName(const nlohmann::json& entry, const std::string& key) {
    for (const char* name : {"id", "site", "item", "target"})
        if (const auto found = entry.find(name); found != entry.end() && found->is_string())
            return found->get<std::string>();
    return key;
}

bool begins(const std::string& text, const char* word) {
    return text.rfind(word, 0) == 0;
}
bool holds(const std::string& text, const char* word) {
    return text.find(word) != std::string::npos;
}

/// The footing of rows alone: as weak as the weakest of them.
Footing ofRows(const std::vector<std::string>& ids, const Evidence& evidence) {
    Footing footing = Footing::read;
    for (const std::string& id : ids) {
        const EvidenceRow* row = evidence.find(id);
        if (row == nullptr) return Footing::unstated;
        if (row->status == "from memory") footing = std::max(footing, Footing::memory);
        if (row->status == "common practice") footing = std::max(footing, Footing::practice);
    }
    return footing;
}

Footing footingOf(const std::string& source, const Evidence& evidence) {
    static const std::regex rowId{"\\b([A-Z]{2,4}-[0-9]{2,3}|N[0-9]{3})\\b"};
    std::vector<std::string> ids;
    for (auto it = std::sregex_iterator{source.begin(), source.end(), rowId}; it != std::sregex_iterator{};
         ++it)
        ids.push_back(it->str());
    const std::string words = std::regex_replace(source, rowId, "");
    const bool idsAlone =
        std::none_of(words.begin(), words.end(), [](unsigned char c) { return std::isalpha(c) != 0; });
    if (!ids.empty() && idsAlone) return ofRows(ids, evidence);
    if (begins(source, "read")) return Footing::read;
    if (begins(source, "synthesis of read rows")) return Footing::synthesis;
    if (begins(source, "definition") || begins(source, "anatomy") || begins(source, "standard") ||
        holds(source, "exact by definition"))
        return Footing::standard;
    if (begins(source, "from memory")) return Footing::memory;
    if (begins(source, "common practice")) return Footing::practice;
    if (holds(source, "read:") || !ids.empty()) return Footing::partly;
    if (holds(source, "from memory")) return Footing::memory;
    if (holds(source, "common practice")) return Footing::practice;
    return holds(source, "estimate") || begins(source, "fitted") ? Footing::estimate : Footing::unstated;
}

class Walk {
public:
    Walk(std::string file, const Evidence& evidence, std::vector<Sourced>& out)
        : file_(std::move(file)), evidence_(evidence), out_(out) {}

    void visit(const nlohmann::json& node, const std::string& place) {
        if (node.is_object()) {
            if (const auto source = node.find("source"); source != node.end() && source->is_string())
                out_.push_back({file_, place, source->get<std::string>(),
                                footingOf(source->get<std::string>(), evidence_)});
            for (const auto& [key, value] : node.items())
                descend(value, place, key);
        } else if (node.is_array()) {
            for (const nlohmann::json& value : node)
                descend(value, place, "");
        }
    }

private:
    void descend(const nlohmann::json& value, const std::string& place, const std::string& key) {
        if (!value.is_structured()) return;
        const std::string name = value.is_object() ? entryName(value, key) : key;
        visit(value, name.empty() ? place : place.empty() ? name : place + " / " + name);
    }

    std::string file_;
    const Evidence& evidence_;
    std::vector<Sourced>& out_;
};

} // namespace

std::string nameOf(Footing footing) {
    switch (footing) {
    case Footing::read:
        return "read";
    case Footing::synthesis:
        return "synthesis of read rows";
    case Footing::standard:
        return "definition, anatomy or standard";
    case Footing::partly:
        return "read in part, the rest estimate";
    case Footing::memory:
        return "from memory";
    case Footing::practice:
        return "common practice";
    case Footing::estimate:
        return "estimate";
    case Footing::unstated:
        break;
    }
    return "no footing stated";
}

Result<std::vector<Sourced>> sourcedEntries(const std::filesystem::path& knowledge) {
    auto evidence = Evidence::load(knowledge / evidenceFile);
    if (!evidence) return evidence.problems();
    std::error_code error;
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(knowledge, error))
        if (entry.path().extension() == ".json" && entry.path().filename() != evidenceFile)
            files.push_back(entry.path());
    if (error) return Problem{knowledge.string(), "", "cannot be listed: " + error.message()};
    std::sort(files.begin(), files.end());
    std::vector<Sourced> out;
    for (const auto& file : files) {
        const auto document = readJsonFile(file);
        if (!document) return document.problems();
        Walk{file.filename().string(), *evidence, out}.visit(*document, "");
    }
    return out;
}

std::map<Footing, std::size_t> countFootings(const std::vector<Sourced>& entries) {
    std::map<Footing, std::size_t> counts;
    for (const Sourced& entry : entries)
        ++counts[entry.footing];
    return counts;
}

} // namespace rhizograph::cli
