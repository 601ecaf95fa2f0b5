#pragma once

#include "exchange/fhir.h"

namespace rhizograph::fhir {

/// {"coding":[{"system":…,"code":…,"display":…}]}; no display where it is empty.
[[nodiscard]] nlohmann::ordered_json coding(const std::string& system, const std::string& code,
                                            const std::string& display = {});
[[nodiscard]] nlohmann::ordered_json oneCoding(const std::string& system, const std::string& code,
                                               const std::string& display = {});
[[nodiscard]] nlohmann::ordered_json reference(const std::string& url);

/// Code of a token in our value system: the scale's name, or the item where the scale is its own, and the
/// token.
[[nodiscard]] std::string valueCode(const Item& item, const std::string& token);
/// Code of a body site: the skin region, or the item, and the side.
[[nodiscard]] std::string siteCode(const Item& item, Side side);

/// One finding as an Observation; `about` holds subject and encounter.
[[nodiscard]] nlohmann::ordered_json observation(const Item& item, Side side, const Finding& finding,
                                                 const std::string& date, const nlohmann::ordered_json& about,
                                                 const FhirCodes& codes);

} // namespace rhizograph::fhir
