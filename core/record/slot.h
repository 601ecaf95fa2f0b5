#pragma once

#include "record/seal.h"

#include <optional>
#include <string>

namespace rhizograph {

struct KeyCost;

/// A user's way in: the clinic's data key wrapped with a key made from the passphrase.
struct KeySlot {
    Derivation derivation;
    Bytes wrapped;

    static KeySlot made(const SecretKey& data, const std::string& user, const std::string& passphrase,
                        const KeyCost& cost);
    /// The data key; nothing when the passphrase is wrong or the slot damaged, which cannot be told apart.
    [[nodiscard]] std::optional<SecretKey> unwrapped(const std::string& user,
                                                     const std::string& passphrase) const;
};

} // namespace rhizograph
