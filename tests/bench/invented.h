#pragma once

#include "record/store.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace rhizograph::bench {

/// How large an invented clinic is to be.
struct Size {
    int patients = 1000;
    int visits = 10'000;
    int findings = 40; ///< events a visit, at most mostFindings
};
constexpr int mostFindings = 72;

constexpr const char* passphrase = "correct horse";
constexpr const char* administrator = "Ada Thornfield";
/// The patient who has that many visits, for the trend.
constexpr int longHistory = 40;
constexpr const char* longHistoryName = "Evergreen Longwalker";

/// Makes a clinic file of invented people through the record itself: every row is sealed and chained as in
/// use. Many changes share one commit, so that it takes minutes and not days. Nine visits in ten are signed.
/// `progress` is told how many visits there are, now and then. The passphrases cost nothing to try. Throws
/// std::runtime_error.
void inventClinic(
    const std::filesystem::path& file, const Size& size,
    const std::function<void(int)>& progress = [](int) {});

/// An invented name; the same for the same number.
[[nodiscard]] std::string inventedName(int number);

/// Opens such a clinic and signs the administrator in.
[[nodiscard]] std::unique_ptr<Store> openedClinic(const std::filesystem::path& file);

/// The value, or a std::runtime_error with the problems.
template <class T> T need(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}
inline void need(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

} // namespace rhizograph::bench
