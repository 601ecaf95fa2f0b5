#include "reasoning/factor.h"

#include <algorithm>

namespace rhizograph {

std::vector<double> Factor::probabilities(const FeatureTable& table, std::span<const int> values,
                                          const Setting& setting) const {
    std::vector<double> out;
    out.reserve(table.size());
    for (std::size_t c = 0; c < table.size(); ++c)
        out.push_back(probability(table.row(c), values, setting));
    return out;
}

std::vector<std::vector<double>> Factor::probabilitiesOf(const FeatureTable& table, const Readings& readings,
                                                         const Setting& setting) const {
    std::vector<std::vector<double>> out;
    out.reserve(readings.size());
    for (const std::vector<int>& values : readings)
        out.push_back(probabilities(table, values, setting));
    return out;
}

std::vector<std::vector<double>> Factor::withoutEach(const FeatureTable& table, std::span<const int> values,
                                                     const Setting& setting) const {
    std::vector<int> fewer(values.begin(), values.end());
    std::vector<std::vector<double>> out(values.size());
    for (std::size_t slot = 0; slot < values.size(); ++slot) {
        if (values[slot] == kUnread) continue;
        fewer[slot] = kUnread;
        out[slot] = probabilities(table, fewer, setting);
        fewer[slot] = values[slot];
    }
    return out;
}

std::vector<std::vector<double>> Factor::slotProbabilities(const FeatureTable& table,
                                                           std::span<const int> values, std::size_t slot,
                                                           const Setting& setting) const {
    Readings readings(slots_[slot].values, {values.begin(), values.end()});
    for (std::size_t v = 0; v < readings.size(); ++v)
        readings[v][slot] = static_cast<int>(v);
    return probabilitiesOf(table, readings, setting);
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
