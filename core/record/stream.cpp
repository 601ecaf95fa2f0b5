#include "record/stream.h"

#include "record/failure.h"

#include <sodium.h>

namespace rhizograph {
namespace {

static_assert(StreamSealer::growth == crypto_secretstream_xchacha20poly1305_ABYTES);
static_assert(StreamSealer::beginningSize == crypto_secretstream_xchacha20poly1305_HEADERBYTES);

const unsigned char* bytes(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}
unsigned char* bytes(std::string& text) {
    return reinterpret_cast<unsigned char*>(text.data());
}

} // namespace

struct StreamSealer::State {
    crypto_secretstream_xchacha20poly1305_state stream{};
    std::string beginning = std::string(StreamSealer::beginningSize, '\0');
    std::string context;
    ~State() { sodium_memzero(&stream, sizeof stream); }
};

StreamSealer::StreamSealer(const SecretKey& key, std::string context) : state_(std::make_unique<State>()) {
    state_->context = std::move(context);
    crypto_secretstream_xchacha20poly1305_init_push(&state_->stream, bytes(state_->beginning), key.data());
}

StreamSealer::~StreamSealer() = default;

std::string StreamSealer::beginning() const {
    return state_->beginning;
}

std::string StreamSealer::sealed(std::string_view piece, bool last) {
    std::string out(piece.size() + growth, '\0');
    crypto_secretstream_xchacha20poly1305_push(&state_->stream, bytes(out), nullptr, bytes(piece),
                                               piece.size(), bytes(state_->context), state_->context.size(),
                                               last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
    state_->context.clear();
    return out;
}

struct StreamOpener::State {
    crypto_secretstream_xchacha20poly1305_state stream{};
    std::string context;
    ~State() { sodium_memzero(&stream, sizeof stream); }
};

StreamOpener::StreamOpener(const SecretKey& key, std::string_view beginning, std::string context)
    : state_(std::make_unique<State>()) {
    state_->context = std::move(context);
    if (beginning.size() != StreamSealer::beginningSize ||
        crypto_secretstream_xchacha20poly1305_init_pull(&state_->stream, bytes(beginning), key.data()) != 0)
        reportDamage("The sealed content has no proper beginning.");
}

StreamOpener::~StreamOpener() = default;

std::string StreamOpener::opened(std::string_view piece, bool& last) {
    constexpr auto why = "The sealed content is damaged or was changed.";
    if (piece.size() < StreamSealer::growth) reportDamage(why);
    std::string out(piece.size() - StreamSealer::growth, '\0');
    unsigned char tag = 0;
    if (crypto_secretstream_xchacha20poly1305_pull(&state_->stream, bytes(out), nullptr, &tag, bytes(piece),
                                                   piece.size(), bytes(state_->context),
                                                   state_->context.size()) != 0)
        reportDamage(why);
    state_->context.clear();
    last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
    return out;
}

struct Digest::State {
    crypto_generichash_state hash;
};

Digest::Digest() : state_(std::make_unique<State>()) {
    crypto_generichash_init(&state_->hash, nullptr, 0, crypto_generichash_BYTES);
}

Digest::~Digest() = default;

void Digest::add(std::string_view more) {
    crypto_generichash_update(&state_->hash, bytes(more), more.size());
}

Bytes Digest::finished() {
    Bytes out(crypto_generichash_BYTES);
    crypto_generichash_final(&state_->hash, out.data(), out.size());
    return out;
}

} // namespace rhizograph
