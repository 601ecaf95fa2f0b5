#include "exchange/csv.h"

namespace rhizograph {

std::string csvField(std::string_view text) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string{text};
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

std::string csvText(std::string_view text) {
    const bool formula =
        !text.empty() && std::string_view{"=+-@\t\r"}.find(text.front()) != std::string_view::npos;
    return csvField(formula ? std::string{"'"}.append(text) : std::string{text});
}

std::string csvRow(std::initializer_list<std::string> fields) {
    std::string out;
    bool first = true;
    for (const std::string& field : fields) {
        if (!first) out += ',';
        first = false;
        out += field;
    }
    return out + "\r\n";
}

} // namespace rhizograph
