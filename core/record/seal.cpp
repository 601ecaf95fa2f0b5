#include "record/seal.h"

#include "record/failure.h"

#include <fmt/format.h>
#include <new>
#include <sodium.h>

namespace rhizograph {
namespace {

constexpr std::size_t nonceSize = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr std::size_t tagSize = crypto_aead_xchacha20poly1305_ietf_ABYTES;
constexpr char purposeContext[crypto_kdf_CONTEXTBYTES + 1] = "rhizorec";

void ready() {
    if (sodium_init() < 0) throw std::runtime_error("the cryptographic library cannot start");
}

const unsigned char* bytes(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

} // namespace

void SecretKey::Release::operator()(unsigned char* bytes) const {
    sodium_free(bytes);
}

SecretKey::SecretKey() {
    ready();
    bytes_.reset(static_cast<unsigned char*>(sodium_malloc(size)));
    if (bytes_ == nullptr) throw std::bad_alloc();
}

SecretKey SecretKey::random() {
    SecretKey key;
    randombytes_buf(key.data(), size);
    return key;
}

SecretKey SecretKey::from(const Bytes& bytes) {
    if (bytes.size() != size) reportDamage("A stored key has the wrong length.");
    SecretKey key;
    std::copy(bytes.begin(), bytes.end(), key.data());
    return key;
}

SecretKey SecretKey::derived(std::uint64_t purpose) const {
    SecretKey key;
    crypto_kdf_derive_from_key(key.data(), size, purpose, purposeContext, data());
    return key;
}

Bytes randomSalt() {
    ready();
    Bytes salt(crypto_pwhash_SALTBYTES);
    randombytes_buf(salt.data(), salt.size());
    return salt;
}

std::string randomId() {
    ready();
    std::array<unsigned char, 16> raw{};
    randombytes_buf(raw.data(), raw.size());
    std::string id;
    for (const unsigned char byte : raw)
        id += fmt::format("{:02x}", byte);
    return id;
}

SecretKey keyFromPassphrase(std::string_view passphrase, const Derivation& derivation) {
    SecretKey key;
    if (derivation.salt.size() != crypto_pwhash_SALTBYTES ||
        derivation.memoryBytes > (std::uint64_t{4} << 30U) || derivation.operations > 1000)
        reportDamage("The stored figures of a passphrase make no sense.");
    if (crypto_pwhash(key.data(), SecretKey::size, passphrase.data(), passphrase.size(),
                      derivation.salt.data(), derivation.operations,
                      static_cast<std::size_t>(derivation.memoryBytes), crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw RecordError(Failure::device,
                          "This computer has not enough free memory to check the passphrase. "
                          "Close other programs and try again.");
    return key;
}

Bytes seal(const SecretKey& key, std::string_view plain, std::string_view context) {
    Bytes sealed(nonceSize + plain.size() + tagSize);
    randombytes_buf(sealed.data(), nonceSize);
    crypto_aead_xchacha20poly1305_ietf_encrypt(sealed.data() + nonceSize, nullptr, bytes(plain), plain.size(),
                                               bytes(context), context.size(), nullptr, sealed.data(),
                                               key.data());
    return sealed;
}

std::string open(const SecretKey& key, const Bytes& sealed, std::string_view context) {
    constexpr auto why = "A sealed entry was changed outside the program or is damaged.";
    if (sealed.size() < nonceSize + tagSize) reportDamage(why);
    std::string plain(sealed.size() - nonceSize - tagSize, '\0');
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(
            reinterpret_cast<unsigned char*>(plain.data()), nullptr, nullptr, sealed.data() + nonceSize,
            sealed.size() - nonceSize, bytes(context), context.size(), sealed.data(), key.data()) != 0)
        reportDamage(why);
    return plain;
}

Mac keyedHash(const SecretKey& key, std::string_view message) {
    Mac mac(crypto_generichash_BYTES);
    crypto_generichash(mac.data(), mac.size(), bytes(message), message.size(), key.data(), SecretKey::size);
    return mac;
}

bool sameMac(const Mac& left, const Mac& right) {
    return left.size() == right.size() && sodium_memcmp(left.data(), right.data(), left.size()) == 0;
}

} // namespace rhizograph
