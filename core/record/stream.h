#pragma once

#include "record/seal.h"

#include <functional>
#include <string>
#include <string_view>

namespace rhizograph {

/// Seals a long content piece by piece (XChaCha20-Poly1305 secretstream): no piece can be changed, left out,
/// moved or cut off the end. `context` goes with the first piece and must be the same to open.
class StreamSealer {
public:
    static constexpr std::size_t pieceSize = 64U << 10U;
    /// What a sealed piece is longer than its content.
    static constexpr std::size_t growth = 17;
    static constexpr std::size_t beginningSize = 24;

    StreamSealer(const SecretKey& key, std::string context);
    ~StreamSealer();
    StreamSealer(const StreamSealer&) = delete;
    StreamSealer& operator=(const StreamSealer&) = delete;
    /// Stands before the first piece.
    [[nodiscard]] std::string beginning() const;
    [[nodiscard]] std::string sealed(std::string_view piece, bool last);

private:
    struct State;
    std::unique_ptr<State> state_;
};

class StreamOpener {
public:
    StreamOpener(const SecretKey& key, std::string_view beginning, std::string context);
    ~StreamOpener();
    StreamOpener(const StreamOpener&) = delete;
    StreamOpener& operator=(const StreamOpener&) = delete;
    /// Throws RecordError (damaged) when the piece is not the one that was sealed at this place. `last` tells
    /// whether it was the last.
    [[nodiscard]] std::string opened(std::string_view piece, bool& last);

private:
    struct State;
    std::unique_ptr<State> state_;
};

/// BLAKE2b without a key of what is handed to it in pieces.
class Digest {
public:
    Digest();
    ~Digest();
    Digest(const Digest&) = delete;
    Digest& operator=(const Digest&) = delete;
    void add(std::string_view bytes);
    [[nodiscard]] Bytes finished();

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace rhizograph
