#pragma once

#include "base/json.h"
#include "exchange/fhir.h"

#include <optional>

/// Parts of the reader of our own documents. Problems go into the node's list.
namespace rhizograph::fhir {

[[nodiscard]] bool isBundle(const JsonNode& node, const std::string& type);
/// Of an entry of a Bundle; empty when it has none.
[[nodiscard]] std::string resourceType(const JsonNode& entry);
/// The one code of this system in a CodeableConcept.
[[nodiscard]] std::optional<std::string> ownCode(const JsonNode& concepts, const std::string& system);
[[nodiscard]] bool isThisProgram(const JsonNode& device);

/// A whole document.
[[nodiscard]] VisitRecord readDocument(const JsonNode& root, const Catalogue& catalogue);
/// What stands in a document beside its exam.
[[nodiscard]] VisitRecord readPapers(const JsonNode& root);
/// A person as this program writes one.
[[nodiscard]] Identity readIdentity(const JsonNode& patient);

} // namespace rhizograph::fhir
