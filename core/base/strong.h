#pragma once

#include <string> // first: Qt's moc cannot read <compare> before a header that sets the library up

#include <compare>
#include <functional>
#include <utility>

namespace rhizograph {

/// A string that means one thing: ids of different kinds cannot be mixed up. `Tag` is never defined.
template <class Tag> class Id {
public:
    Id() = default;
    explicit Id(std::string text) : text_(std::move(text)) {}
    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] bool empty() const { return text_.empty(); }
    auto operator<=>(const Id&) const = default;
    bool operator==(const Id&) const = default;

private:
    std::string text_;
};

using ItemId = Id<struct ItemTag>;
using StepId = Id<struct StepTag>;
using GroupId = Id<struct GroupTag>;
using SiteId = Id<struct SiteTag>;

} // namespace rhizograph

template <class Tag> struct std::hash<rhizograph::Id<Tag>> {
    std::size_t operator()(const rhizograph::Id<Tag>& id) const noexcept {
        return std::hash<std::string>{}(id.text());
    }
};
