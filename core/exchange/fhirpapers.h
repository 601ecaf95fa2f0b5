#pragma once

#include "exchange/fhir.h"

#include <functional>

namespace rhizograph::fhir {

/// The person; without a name only a fresh random identifier and the sex.
[[nodiscard]] nlohmann::ordered_json patientResource(const Identity& identity, const std::string& sex);

/// This program, and the knowledge it reasons with; `signedWith` is empty where nothing is signed.
[[nodiscard]] nlohmann::ordered_json deviceResource(const std::string& programVersion,
                                                    const std::string& knowledgeVersion,
                                                    const std::string& signedWith = {});

/// Writes what people wrote and answered for into a document, and the people.
class PapersResources {
public:
    /// `add` puts a resource into the document and yields its address; `about` is subject and encounter.
    PapersResources(std::function<std::string(nlohmann::ordered_json)> add,
                    std::function<nlohmann::ordered_json()> about)
        : add_(std::move(add)), about_(std::move(about)) {}

    /// The address of a person, who is in the document once.
    std::string practitioner(const std::string& name);
    /// Says where the Flag of a red sign stands; `code` is its code.
    void flagged(const std::string& code, const std::string& url) { flags_[code] = url; }
    void write(const VisitPapers& papers, const std::string& composition);
    [[nodiscard]] nlohmann::ordered_json attester(const Signature& signature);
    /// Resources for sections of the narrative: section and address.
    [[nodiscard]] const std::vector<std::pair<std::string, std::string>>& entries() const { return entries_; }

private:
    void writeTexts(const std::vector<AuthoredText>& texts, const char* code, const char* section);
    void writeAnswer(const RedSignAcknowledgement& given);

    std::function<std::string(nlohmann::ordered_json)> add_;
    std::function<nlohmann::ordered_json()> about_;
    std::map<std::string, std::string> people_;
    std::map<std::string, std::string> flags_;
    std::vector<std::pair<std::string, std::string>> entries_;
};

} // namespace rhizograph::fhir
