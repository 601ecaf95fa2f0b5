#pragma once

#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <utility>
#include <vector>

/// The localization model a second time, written from docs/engine.md and the knowledge files alone: plain,
/// and without a line of the engine. It exists to disagree with the engine when either is wrong.
namespace bruteforce {

using Json = nlohmann::json;
using Row = std::vector<double>;

struct Bundle {
    double share;
    std::set<std::string> nodes; ///< its root and every nerve it runs through
};

struct Target {
    std::size_t index = 0; ///< place of its losses in a hypothesis
    std::vector<Bundle> supply;
    double distance = 0, pyramidal = 0, reserve = 0;
    double trunkWeight = 1, reflexWeight = 0;
};

/// One joint hypothesis: where, which side, which variant, how uneven, how severe, how irritable.
struct Hypothesis {
    std::string site, reportAs, group, side; ///< side: left, right, both or none
    double left = 0, right = 0;              ///< scale of the lesions on each side
    std::map<std::string, double> lesions;   ///< node -> factor
    double umn = 0, umnSkin = 1, umnOtherSide = 0, umnReflex = 1, length = 0, areflexia = 0;
    double m = 0, s = 0; ///< motor and sensory severity
    bool irritable = false;
    double prior = 0;                              ///< of a person whose age is not known
    double priorAbove = 0, priorBelow = 0;         ///< of a person whose age is known
    double ageLimit = 0;                           ///< where the one turns into the other
    std::vector<std::pair<double, double>> losses; ///< of each target: left, right

    [[nodiscard]] double scale(const std::string& of) const { return of == "left" ? left : right; }
    /// A side counts as affected when the site lies there; a site without side counts on both.
    [[nodiscard]] bool affects(const std::string& of) const {
        return side == of || side == "both" || side == "none";
    }
    [[nodiscard]] double loss(const Target& target, const std::string& of) const {
        return of == "left" ? losses[target.index].first : losses[target.index].second;
    }
    [[nodiscard]] double priorAt(const Json& patient) const {
        if (!patient.contains("age")) return prior;
        return patient["age"].get<double>() >= ageLimit ? priorAbove : priorBelow;
    }
};

/// What was recorded: (item, side) -> token or number. Side is empty for items without one.
using Findings = std::map<std::pair<std::string, std::string>, Json>;
using Factor = std::function<double(const Hypothesis&)>;
/// Movements and what their losses are multiplied by.
using Weighted = std::vector<std::pair<const Target*, double>>;

class Reference {
public:
    explicit Reference(const std::string& knowledgeDirectory);

    /// Probability of every reported (site, side) for an exam in the exam file's form.
    [[nodiscard]] std::map<std::pair<std::string, std::string>, double> posterior(const Json& exam) const;
    [[nodiscard]] const std::vector<Hypothesis>& hypotheses() const { return hypotheses_; }
    /// One factor a group of findings, in no particular order.
    [[nodiscard]] std::vector<Factor> factors(const Json& exam) const;

private:
    void makeHypotheses();
    void makeLosses(Hypothesis& h) const;
    [[nodiscard]] std::pair<std::string, std::string> reported(const Hypothesis& h) const;

    [[nodiscard]] double fibre(const Hypothesis& h, const Target& t, const std::string& side, double x) const;
    [[nodiscard]] double lengthLoss(const Hypothesis& h, const Target& t, const std::string& side,
                                    double x) const;
    [[nodiscard]] double deepLoss(const Hypothesis& h, const std::string& side) const;
    [[nodiscard]] double felt(const Hypothesis& h, const Target& region, const std::string& side) const;
    [[nodiscard]] double reflexSeverity(const Hypothesis& h) const;
    [[nodiscard]] double lossOf(const Hypothesis& h, const std::string& kind, const Target& t,
                                const std::string& side) const;

    [[nodiscard]] double epsilon(const std::string& kind) const;
    [[nodiscard]] std::string ageBand(const Json& patient) const;
    [[nodiscard]] const Target& movement(const std::string& name) const;
    [[nodiscard]] Weighted weighted(const Json& movements) const;
    [[nodiscard]] const Json& tableRow(const Json& table, const Hypothesis& h, const std::string& side) const;
    [[nodiscard]] Row mark(const Hypothesis& h, const std::string& region, const std::string& side) const;
    [[nodiscard]] bool unreliable(const Findings& findings, const std::string& side) const;
    [[nodiscard]] std::vector<Row> baselines(const Row& base) const;

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
    std::map<std::string, std::set<std::string>> sidesOf_; ///< site -> the sides it has
    std::vector<Hypothesis> hypotheses_;
};

/// (1 - epsilon) model + epsilon / number of joint values.
double mixed(double model, double epsilon, std::size_t jointValues);
double sigmoid(double x);
double clamp01(double x);
/// Straight lines between [x, y] pairs, level outside.
using Line = std::vector<std::pair<double, double>>;
double between(const Line& points, double x);
/// Mass of a normal round `center` that falls nearest to values[index]; the ends are open.
double nearest(const Row& values, std::size_t index, double center, double sd);
std::size_t place(const Json& values, const Json& token);
std::size_t bin(const Json& limits, double number);
inline const std::vector<std::string> bothSides{"left", "right"};
inline std::string otherSide(const std::string& side) {
    return side == "left" ? "right" : "left";
}

} // namespace bruteforce
