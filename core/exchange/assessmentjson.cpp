#include "exchange/assessmentjson.h"

namespace rhizograph {
namespace {

using nlohmann::ordered_json;

const char* word(Support support) {
    switch (support) {
    case Support::strong:
        return "strong";
    case Support::moderate:
        return "moderate";
    case Support::weak:
        return "weak";
    case Support::none:
        break;
    }
    return "none";
}

const char* word(FitVerdict verdict) {
    switch (verdict) {
    case FitVerdict::partly:
        return "partly";
    case FitVerdict::poor:
        return "poor";
    case FitVerdict::fits:
        break;
    }
    return "fits";
}

const char* word(ScreenVerdict verdict) {
    switch (verdict) {
    case ScreenVerdict::low:
        return "low";
    case ScreenVerdict::raised:
        return "raised";
    case ScreenVerdict::high:
        return "high";
    case ScreenVerdict::notExamined:
        break;
    }
    return "not_examined";
}

const char* word(Urgency urgency) {
    switch (urgency) {
    case Urgency::urgent:
        return "urgent";
    case Urgency::emergency:
        return "emergency";
    case Urgency::note:
        break;
    }
    return "note";
}

/// A list of whatever `convert` makes of each element.
template <class List, class Convert> ordered_json listOf(const List& list, Convert convert) {
    ordered_json out = ordered_json::array();
    for (const auto& element : list)
        out.push_back(convert(element));
    return out;
}

/// Sets "side" for what has one; a missing side means the thing has none.
void putSide(ordered_json& out, Side side) {
    if (side != Side::none) out["side"] = name(side);
}

ordered_json keyJson(const FindingKey& key) {
    ordered_json out{{"item", key.item.text()}};
    putSide(out, key.side);
    return out;
}

ordered_json keysJson(const std::vector<FindingKey>& keys) {
    return listOf(keys, keyJson);
}

ordered_json reasonJson(const Reason& reason) {
    ordered_json out = keyJson(reason.finding);
    out["decibans"] = reason.decibans;
    return out;
}

ordered_json siteJson(const SiteResult& result) {
    ordered_json out{{"site", result.site.text()}};
    putSide(out, result.side);
    out["probability"] = result.probability;
    out["support"] = word(result.support);
    out["for"] = listOf(result.speaksFor, reasonJson);
    out["against"] = listOf(result.speaksAgainst, reasonJson);
    return out;
}

ordered_json fitJson(const Fit& fit) {
    ordered_json out{{"verdict", word(fit.verdict)}, {"z", fit.z}};
    out["worst"] = listOf(fit.worst, [](const FitWorst& worst) {
        return ordered_json{{"findings", keysJson(worst.findings)}, {"surprise", worst.surprise}};
    });
    return out;
}

ordered_json screenJson(const ScreenResult& screen) {
    ordered_json out{{"id", screen.id}};
    putSide(out, screen.side);
    out["label"] = screen.label;
    out["probability"] = screen.probability;
    out["verdict"] = word(screen.verdict);
    out["because"] = keysJson(screen.because);
    return out;
}

ordered_json redSignJson(const RedSign& sign) {
    ordered_json out{{"id", sign.id}, {"urgency", word(sign.urgency)}};
    out["due"] = sign.due;
    out["sentence"] = sign.sentence;
    out["action"] = sign.action;
    out["because"] = keysJson(sign.because);
    out["source"] = sign.source;
    return out;
}

ordered_json consistencyJson(const ConsistencyNote& note) {
    ordered_json out{{"id", note.id}};
    putSide(out, note.side);
    out["sentence"] = note.sentence;
    out["because"] = keysJson(note.because);
    out["source"] = note.source;
    return out;
}

ordered_json nextTestJson(const NextTest& test) {
    ordered_json out = keyJson(test.test);
    out["gain_bits"] = test.gainBits;
    out["separates"] = listOf(test.separates, [](const SiteId& site) { return site.text(); });
    out["urgent"] = test.urgent;
    return out;
}

} // namespace

ordered_json assessmentToJson(const Assessment& a) {
    ordered_json out;
    out["format"] = "rhizograph.assessment";
    out["version"] = 1;
    out["localization"] = listOf(a.localization, siteJson);
    out["nothing_known"] = a.nothingKnown;
    out["fit"] = fitJson(a.fit);
    out["levels"] = listOf(a.levels, [](const Level& level) {
        return ordered_json{{"disc", level.disc}, {"zone", level.zone}, {"share", level.share}};
    });
    out["screens"] = listOf(a.screens, screenJson);
    out["red_signs"] = listOf(a.redSigns, redSignJson);
    out["not_asked"] = keysJson(a.notAsked);
    out["consistency"] = listOf(a.consistency, consistencyJson);
    out["behavioral_groups"] = a.behavioralGroups;
    out["next_tests"] = listOf(a.nextTests, nextTestJson);
    out["workup"] = listOf(a.workup, [](const WorkupNote& note) {
        return ordered_json{{"id", note.id}, {"text", note.text}, {"source", note.source}};
    });
    out["codes"] = listOf(a.codes, [](const Code& code) {
        return ordered_json{{"system", code.system}, {"code", code.code}, {"text", code.text}};
    });
    out["knowledge_version"] = a.knowledgeVersion;
    return out;
}

} // namespace rhizograph
