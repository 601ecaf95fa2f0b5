#pragma once

#include "reasoning/knowledge.h"
#include "record/store.h"

#include <filesystem>
#include <string>
#include <vector>

namespace rhizograph {

/// Someone who can sign in to a demo clinic.
struct DemoUser {
    std::string name;
    Role role = Role::clinician;
};

/// What was put into a demo clinic, for telling it to whoever opens it.
struct DemoClinic {
    std::string clinic;
    std::vector<DemoUser> users; ///< all with the one passphrase
    std::string passphrase;
    int patients = 0;
    int visits = 0;
};

/// Makes a clinic of invented patients with visits over the months before `today`, from a data file (format
/// "rhizograph.demo", version 1). Its passphrases are weak on purpose: never for real patients. Refuses an
/// existing `file`; on any failure nothing is left behind.
Result<DemoClinic> createDemoClinic(const std::filesystem::path& file, const std::filesystem::path& data,
                                    const Knowledge& knowledge, TimePoint today);

} // namespace rhizograph
