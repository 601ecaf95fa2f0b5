#pragma once

#include "record/pack.h"

#include <array>
#include <memory>
#include <string>
#include <string_view>

namespace rhizograph {

/// 32 secret bytes in memory that is locked, kept out of core dumps and wiped on release.
class SecretKey {
public:
    static constexpr std::size_t size = 32;
    static SecretKey random();
    /// Throws RecordError when `bytes` has another length.
    static SecretKey from(const Bytes& bytes);
    /// A key for one purpose only, from which neither this one nor its siblings can be told.
    [[nodiscard]] SecretKey derived(std::uint64_t purpose) const;
    [[nodiscard]] const unsigned char* data() const { return bytes_.get(); }
    [[nodiscard]] unsigned char* data() { return bytes_.get(); }
    SecretKey();

private:
    struct Release {
        void operator()(unsigned char* bytes) const;
    };
    std::unique_ptr<unsigned char[], Release> bytes_;
};

/// The salt and the price of trying a passphrase.
struct Derivation {
    Bytes salt;
    std::uint64_t operations = 0;
    std::uint64_t memoryBytes = 0;
};

[[nodiscard]] Bytes randomSalt();
/// 32 random hex digits.
[[nodiscard]] std::string randomId();

/// Argon2id. Throws RecordError when the machine cannot give the memory or the stored figures make no sense.
[[nodiscard]] SecretKey keyFromPassphrase(std::string_view passphrase, const Derivation& derivation);

/// XChaCha20-Poly1305 with a random nonce in front; `context` says what and whose it is and must be the same
/// to open.
[[nodiscard]] Bytes seal(const SecretKey& key, std::string_view plain, std::string_view context);
/// Throws RecordError (damaged) when key, context or bytes are not those of sealing.
[[nodiscard]] std::string open(const SecretKey& key, const Bytes& sealed, std::string_view context);

using Mac = Bytes; ///< 32 bytes
/// Keyed BLAKE2b.
[[nodiscard]] Mac keyedHash(const SecretKey& key, std::string_view message);
/// Takes the same time whatever differs.
[[nodiscard]] bool sameMac(const Mac& left, const Mac& right);

} // namespace rhizograph
