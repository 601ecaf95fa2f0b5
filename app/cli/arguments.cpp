#include "cli/arguments.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

class Reader {
public:
    Reader(const std::vector<std::string>& words, const Syntax& syntax) : words_(words), syntax_(syntax) {}

    Result<Arguments> read() {
        bool onlyPlain = false;
        while (at_ < words_.size()) {
            const std::string& word = words_[at_++];
            if (onlyPlain || word.size() < 2 || word[0] != '-')
                arguments_.files.push_back(word);
            else if (word == "--")
                onlyPlain = true;
            else
                readOption(word);
        }
        const std::size_t given = arguments_.files.size();
        if (given < syntax_.files || given > syntax_.files + syntax_.more)
            fail(fmt::format("takes {}{} file{}, {} given", syntax_.more > 0 ? "at least " : "",
                             syntax_.files, syntax_.files == 1 ? "" : "s", given));
        if (!problems_.empty()) return problems_;
        return arguments_;
    }

private:
    void readOption(const std::string& word) {
        const std::size_t equals = word.find('=');
        const std::string name = word.substr(0, equals);
        const auto& known = syntax_.options;
        if (std::find(known.begin(), known.end(), name) == known.end()) return fail("unknown option " + name);
        std::string value;
        if (equals != std::string::npos)
            value = word.substr(equals + 1);
        else if (at_ < words_.size())
            value = words_[at_++];
        if (value.empty()) return fail("option " + name + " needs a value");
        if (!arguments_.options.emplace(name, value).second) fail("option " + name + " is given twice");
    }

    void fail(const std::string& reason) { problems_.push_back({"", "", reason}); }

    const std::vector<std::string>& words_;
    const Syntax& syntax_;
    std::size_t at_ = 0;
    Arguments arguments_;
    Problems problems_;
};

} // namespace

std::optional<std::string> Arguments::option(const std::string& name) const {
    const auto found = options.find(name);
    return found == options.end() ? std::nullopt : std::optional{found->second};
}

Result<Arguments> parseArguments(const std::vector<std::string>& words, const Syntax& syntax) {
    return Reader{words, syntax}.read();
}

} // namespace rhizograph::cli
