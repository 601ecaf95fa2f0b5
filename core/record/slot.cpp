#include "record/slot.h"

#include "record/failure.h"
#include "record/store.h"

namespace rhizograph {
namespace {

std::string wrapContext(const std::string& user) {
    return Packer{}.text("data key").text(user).packed();
}

} // namespace

KeySlot KeySlot::made(const SecretKey& data, const std::string& user, const std::string& passphrase,
                      const KeyCost& cost) {
    KeySlot slot{{randomSalt(), cost.operations, cost.memoryBytes}, {}};
    const SecretKey wrapping = keyFromPassphrase(passphrase, slot.derivation);
    const std::string_view plain{reinterpret_cast<const char*>(data.data()), SecretKey::size};
    slot.wrapped = seal(wrapping, plain, wrapContext(user));
    return slot;
}

std::optional<SecretKey> KeySlot::unwrapped(const std::string& user, const std::string& passphrase) const {
    const SecretKey wrapping = keyFromPassphrase(passphrase, derivation);
    try {
        return SecretKey::from(bytesOf(open(wrapping, wrapped, wrapContext(user))));
    } catch (const RecordError&) {
        return std::nullopt;
    }
}

} // namespace rhizograph
