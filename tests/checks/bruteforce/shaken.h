#pragma once

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <string>

namespace bruteforce {

/// A copy of the knowledge with its numbers moved a little, as a next edition may move them: it shows
/// constants that do not come from the files, and rules that the numbers of today happen to hide.
class ShakenKnowledge {
public:
    using Json = nlohmann::json;

    ShakenKnowledge(const std::filesystem::path& knowledge, unsigned seed) : random_(seed) {
        namespace fs = std::filesystem;
        root_ = fs::temp_directory_path() / ("rhizograph-shaken-" + std::to_string(std::random_device{}()));
        fs::create_directories(root_);
        fs::copy(knowledge, directory(), fs::copy_options::recursive);
        const fs::path figures = knowledge.parent_path() / "figures";
        if (fs::exists(figures)) fs::copy(figures, root_ / "figures", fs::copy_options::recursive);
        for (const char* file : {"observation.json", "sites.json", "anatomy.json"})
            rewrite(directory() / file);
    }
    ~ShakenKnowledge() {
        std::error_code ignored;
        std::filesystem::remove_all(root_, ignored);
    }
    ShakenKnowledge(const ShakenKnowledge&) = delete;
    ShakenKnowledge& operator=(const ShakenKnowledge&) = delete;

    [[nodiscard]] std::filesystem::path directory() const { return root_ / "knowledge"; }
    [[nodiscard]] std::size_t changed() const { return changed_; }

private:
    void rewrite(const std::filesystem::path& file) {
        Json json;
        std::ifstream(file) >> json;
        shake(json);
        std::ofstream(file) << json;
    }

    double factor() { return std::uniform_real_distribution<double>{0.9, 1.0}(random_); }

    /// Distributions stay distributions, everything else shrinks by up to a tenth, so that what is a
    /// probability stays one; whole numbers and zeros stay.
    void shake(Json& json) {
        if (json.is_object()) {
            for (const auto& member : json.items())
                shakeMember(member.key(), member.value());
        } else if (json.is_array()) {
            if (isDistribution(json))
                shakeDistribution(json);
            else
                for (Json& value : json)
                    if (value.is_structured() && !isPoint(value)) shake(value);
        }
    }

    void shakeMember(const std::string& key, Json& value) {
        if (value.is_structured()) {
            shakeStructured(key, value);
        } else if (value.is_number_float() && value.get<double>() > 0) {
            value = value.get<double>() * factor();
            ++changed_;
        }
    }

    /// Bounds must meet, curves must rise, and grades, severities and supplies have their own rules.
    void shakeStructured(const std::string& key, Json& value) {
        for (const char* kept :
             {"grades", "severity", "supply", "age_limits", "fit", "support", "cost", "bins"})
            if (key == kept) return;
        if (key == "noise")
            shakeDistribution(value);
        else
            shake(value);
    }

    static double sum(const Json& values) {
        double total = 0;
        for (const Json& value : values)
            total += value.get<double>();
        return total;
    }
    static bool isNumbers(const Json& json) {
        return std::all_of(json.begin(), json.end(), [](const Json& value) { return value.is_number(); });
    }
    static bool isDistribution(const Json& json) {
        return json.size() > 1 && isNumbers(json) && std::abs(sum(json) - 1) < 1e-6;
    }
    /// A point of a curve.
    static bool isPoint(const Json& json) {
        return json.is_array() && json.size() == 2 && isNumbers(json) && !isDistribution(json);
    }

    void shakeDistribution(Json& values) {
        for (Json& value : values)
            value = value.get<double>() * factor();
        const double total = sum(values);
        for (Json& value : values)
            value = value.get<double>() / total;
        ++changed_;
    }

    std::filesystem::path root_;
    std::mt19937 random_;
    std::size_t changed_ = 0;
};

} // namespace bruteforce
