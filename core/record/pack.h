#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

using Bytes = std::vector<unsigned char>;

[[nodiscard]] inline Bytes bytesOf(std::string_view text) {
    return {text.begin(), text.end()};
}
[[nodiscard]] inline std::string textOf(const Bytes& bytes) {
    return {bytes.begin(), bytes.end()};
}

/// Two small hex digits a byte.
[[nodiscard]] std::string hexText(const Bytes& bytes);

/// Puts values one after another so that no two different lists of values give the same bytes
/// (texts carry their length). Numbers are little-endian.
class Packer {
public:
    Packer() { packed_.reserve(kUsualSize); }
    Packer& number(std::int64_t value);
    Packer& real(double value);
    Packer& text(std::string_view value);
    Packer& bytes(const Bytes& value);
    [[nodiscard]] const std::string& packed() const { return packed_; }

private:
    static constexpr std::size_t kUsualSize = 240; ///< most of what is packed is shorter
    std::string packed_;
};

/// Reads what a Packer wrote. Throws RecordError (damaged) when there is less than asked for.
class Unpacker {
public:
    explicit Unpacker(std::string_view bytes) : rest_(bytes) {}
    [[nodiscard]] std::int64_t number();
    [[nodiscard]] double real();
    [[nodiscard]] std::string text();
    /// A count of things to follow, each of which takes at least a byte: never more than what is left.
    [[nodiscard]] std::size_t count();
    [[nodiscard]] bool atEnd() const { return rest_.empty(); }

private:
    std::string_view take(std::size_t size);
    std::string_view rest_;
};

} // namespace rhizograph
