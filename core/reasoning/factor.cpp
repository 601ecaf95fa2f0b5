#include "reasoning/factor.h"

#include <algorithm>

namespace rhizograph {

std::vector<double> Factor::probabilities(const std::vector<std::vector<double>>& features,
                                          std::span<const int> values, const Setting& setting) const {
    std::vector<double> out;
    out.reserve(features.size());
    for (const auto& each : features)
        out.push_back(probability(each, values, setting));
    return out;
}

std::vector<std::vector<double>> Factor::slotProbabilities(const std::vector<std::vector<double>>& features,
                                                           std::span<const int> values, std::size_t slot,
                                                           const Setting& setting) const {
    std::vector<int> changed(values.begin(), values.end());
    std::vector<std::vector<double>> out;
    for (std::size_t v = 0; v < slots_[slot].values; ++v) {
        changed[slot] = static_cast<int>(v);
        out.push_back(probabilities(features, changed, setting));
    }
    return out;
}

double Distinct::index(double first, double second) {
    const std::array<double, 2> value{first, second};
    const auto [found, added] = seen_.try_emplace(value, values_.size());
    if (added) values_.push_back(value);
    return static_cast<double>(found->second);
}

int readSlot(const Exam& exam, const FindingKey& key, const Scale& scale, const std::vector<double>& bins) {
    const Finding* finding = exam.find(key);
    if (finding == nullptr) return kUnread;
    const Value& value = finding->value;
    if (value.isNumber() && !bins.empty())
        return static_cast<int>(std::upper_bound(bins.begin(), bins.end(), value.number()) - bins.begin());
    if (value.kind() != Value::Kind::token) return kUnread;
    const auto index = scale.index(value.word());
    return index && *index < scale.judged() ? static_cast<int>(*index) : kUnread;
}

double mixed(double model, double epsilon, double jointValues) {
    return (1 - epsilon) * model + epsilon / jointValues;
}

} // namespace rhizograph
