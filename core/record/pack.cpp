#include "record/pack.h"

#include "record/failure.h"

#include <array>
#include <bit>

namespace rhizograph {

std::string hexText(const Bytes& bytes) {
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    for (const unsigned char byte : bytes)
        out.append(1, digits[byte >> 4U]).append(1, digits[byte & 0x0fU]);
    return out;
}

Packer& Packer::number(std::int64_t value) {
    auto bits = static_cast<std::uint64_t>(value);
    std::array<char, 8> least{}; // least significant byte first
    for (char& byte : least) {
        byte = static_cast<char>(bits & 0xffU);
        bits >>= 8U;
    }
    packed_.append(least.data(), least.size());
    return *this;
}

Packer& Packer::real(double value) {
    return number(std::bit_cast<std::int64_t>(value));
}

Packer& Packer::text(std::string_view value) {
    number(static_cast<std::int64_t>(value.size()));
    packed_ += value;
    return *this;
}

Packer& Packer::bytes(const Bytes& value) {
    number(static_cast<std::int64_t>(value.size()));
    packed_.append(value.begin(), value.end());
    return *this;
}

std::string_view Unpacker::take(std::size_t size) {
    if (size > rest_.size()) reportDamage("A stored entry is shorter than it should be.");
    const std::string_view taken = rest_.substr(0, size);
    rest_.remove_prefix(size);
    return taken;
}

std::int64_t Unpacker::number() {
    const std::string_view bytes = take(8);
    std::uint64_t bits = 0;
    for (std::size_t i = 8; i-- > 0;)
        bits = (bits << 8U) | static_cast<unsigned char>(bytes[i]);
    return static_cast<std::int64_t>(bits);
}

double Unpacker::real() {
    return std::bit_cast<double>(number());
}

std::size_t Unpacker::count() {
    const std::int64_t value = number();
    if (value < 0 || static_cast<std::uint64_t>(value) > rest_.size())
        reportDamage("A stored entry is shorter than it should be.");
    return static_cast<std::size_t>(value);
}

std::string Unpacker::text() {
    return std::string{take(count())};
}

} // namespace rhizograph
