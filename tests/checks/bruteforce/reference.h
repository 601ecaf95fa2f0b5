#pragma once

#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <utility>
#include <vector>

/// The localization model a second time, written from docs/engine.md and the knowledge files alone: plain,
/// slow, and without a line of the engine. It exists to disagree with the engine when either is wrong.
namespace bruteforce {

using Json = nlohmann::json;
using Row = std::vector<double>;

/// One joint hypothesis: where, which side, which variant, how uneven, how severe, how irritable.
struct Hypothesis {
    std::string site, group, side;         ///< side: left, right, both or none
    double left = 0, right = 0;            ///< scale of the lesions on each side
    std::map<std::string, double> lesions; ///< node -> factor
    double umn = 0, length = 0, areflexia = 0;
    double m = 0, s = 0; ///< motor and sensory severity
    bool irritable = false;
    double prior = 0;

    [[nodiscard]] double scale(const std::string& of) const { return of == "left" ? left : right; }
    /// A side counts as affected when the site lies there; no lesion at all counts on both, with its own
    /// rows.
    [[nodiscard]] bool affects(const std::string& of) const {
        return side == of || side == "both" || side == "none";
    }
};

struct Bundle {
    double share;
    std::set<std::string> nodes; ///< its root and every nerve it runs through
};

struct Target {
    std::vector<Bundle> supply;
    double distance = 0, pyramidal = 0, reserve = 0;
};

/// What was recorded: (item, side) -> token or number. Side is empty for items without one.
using Findings = std::map<std::pair<std::string, std::string>, Json>;
using Factor = std::function<double(const Hypothesis&)>;

class Reference {
public:
    explicit Reference(const std::string& knowledgeDirectory);

    /// Probability of every (site, side) for an exam in the exam file's form.
    [[nodiscard]] std::map<std::pair<std::string, std::string>, double> posterior(const Json& exam) const;
    [[nodiscard]] std::vector<Hypothesis> hypotheses(const Json& patient) const;
    /// One factor a group of findings, in no particular order.
    [[nodiscard]] std::vector<Factor> factors(const Json& exam) const;

    [[nodiscard]] double fibre(const Hypothesis& h, const Target& t, const std::string& side, double x) const;
    [[nodiscard]] double lengthLoss(const Hypothesis& h, const Target& t, const std::string& side,
                                    double x) const;
    [[nodiscard]] double umnRegion(const Hypothesis& h, const std::string& region,
                                   const std::string& side) const;
    [[nodiscard]] double movementLoss(const Hypothesis& h, const std::string& movement,
                                      const std::string& side) const;
    [[nodiscard]] double regionLoss(const Hypothesis& h, const std::string& region,
                                    const std::string& side) const;
    [[nodiscard]] double reflexLoss(const Hypothesis& h, const std::string& reflex,
                                    const std::string& side) const;

private:
    [[nodiscard]] double epsilon(const std::string& kind) const;
    [[nodiscard]] std::string ageBand(const Json& patient) const;
    [[nodiscard]] double worstWeighted(const Hypothesis& h, const Json& movements,
                                       const std::string& side) const;
    [[nodiscard]] Row tableRow(const Json& table, const Hypothesis& h, const std::string& side) const;
    [[nodiscard]] Row mark(const Hypothesis& h, const std::string& region, const std::string& side) const;

    void strength(const Findings& findings, std::vector<Factor>& out) const;
    void abilities(const Findings& findings, std::vector<Factor>& out) const;
    void yesByLoss(const Findings& findings, std::vector<Factor>& out) const;
    void regions(const Findings& findings, std::vector<Factor>& out) const;
    void reflexes(const Findings& findings, const Json& patient, std::vector<Factor>& out) const;
    void deep(const Findings& findings, const Json& patient, std::vector<Factor>& out) const;
    void counts(const Findings& findings, std::vector<Factor>& out) const;
    void wasting(const Findings& findings, std::vector<Factor>& out) const;
    void girth(const Findings& findings, std::vector<Factor>& out) const;
    void gait(const Findings& findings, std::vector<Factor>& out) const;
    void tables(const Findings& findings, std::vector<Factor>& out) const;
    void shared(const Findings& findings, std::vector<Factor>& out) const;
    void rash(const Findings& findings, std::vector<Factor>& out) const;
    void drawings(const Findings& findings, std::vector<Factor>& out) const;

    Json anatomy_, observation_, sites_;
    std::map<std::string, Json> scaleValues_; ///< item -> tokens of its scale
    std::map<std::string, Target> targets_;
};

/// (1 - epsilon) model + epsilon / number of joint values.
double mixed(double model, double epsilon, std::size_t jointValues);
double sigmoid(double x);
double clamp01(double x);
/// Straight lines between [x, y] pairs, level outside.
double between(const Json& points, double x);
/// Mass of a normal round `center` that falls nearest to values[index]; the ends are open.
double nearest(const Row& values, std::size_t index, double center, double sd);
std::size_t place(const Json& values, const Json& token);
std::size_t bin(const Json& limits, double number);
inline const std::vector<std::string> bothSides{"left", "right"};
inline std::string otherSide(const std::string& side) {
    return side == "left" ? "right" : "left";
}

} // namespace bruteforce
