#include "core/nutrition/what_if.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace nettare {

namespace {

/// Factors that are looked at first: dense near none, where most recipes are.
constexpr int kTriedSteps = 48;
constexpr int kHalvings = 40;
constexpr int kFactorDigits = 4;
constexpr double kNextToNothing = 1e-6;

double factorAt(int step) {
    const double part = static_cast<double>(step) / kTriedSteps;
    return kMostTimes * part * part;
}

/// The end of an interval that decides about a target; infinite where it is open.
double endThatCounts(const TargetEntry& target, const FigureInterval& interval) {
    if (target.atLeast) return interval.low;
    return interval.high.value_or(std::numeric_limits<double>::infinity());
}

bool keepsTo(const TargetEntry& target, double end) {
    return target.atLeast ? end >= target.atLeast->value() : end <= target.atMost->value();
}

/// One line of a dossier with any factor.
class TriedLine {
public:
    TriedLine(Dossier dossier, std::vector<Composition> compositions, const TargetEntry& target,
              std::size_t line, Meaning meaning)
        : dossier_{std::move(dossier)},
          compositions_{std::move(compositions)},
          target_{target},
          line_{line},
          base_{dossier_.main().lines[line].tried},
          meaning_{meaning} {}

    Result<FigureInterval> with(double factor) {
        dossier_.recipes.front().lines[line_].tried = base_ * factor;
        auto cooked = cook(dossier_, std::move(compositions_), meaning_);
        if (!cooked) {
            compositions_ = *compositionsOf(dossier_);
            return fail(cooked.error());
        }
        const auto figures = figuresPer(target_.per, dossier_, *cooked);
        compositions_ = std::move(cooked->compositions);
        if (!figures) return fail(figures.error());
        return intervalOf((*figures)[target_.component]);
    }

    /// Nothing where there are no figures: more left over than there is.
    std::optional<double> end(double factor) {
        const auto interval = with(factor);
        if (!interval) return std::nullopt;
        return endThatCounts(target_, *interval);
    }
    bool meets(double factor) {
        const auto found = end(factor);
        return found && keepsTo(target_, *found);
    }

    [[nodiscard]] const TargetEntry& target() const { return target_; }
    [[nodiscard]] const Dossier& dossier() const { return dossier_; }
    [[nodiscard]] const Line& line() const { return dossier_.main().lines[line_]; }

private:
    Dossier dossier_;
    std::vector<Composition> compositions_;  ///< moved through every cook
    const TargetEntry& target_;
    std::size_t line_;
    double base_;
    Meaning meaning_;
};

std::string endText(const ComponentFacts& facts, double end) {
    if (std::isinf(end)) return "∞";
    return roundedToStep(Decimal::fromDouble(end), Decimal{1, -facts.decimals}).text();
}

Error outOfReach(const TriedLine& tried, const std::vector<std::optional<double>>& ends) {
    double least = std::numeric_limits<double>::infinity();
    double most = 0;
    for (const auto& end : ends) {
        if (!end) continue;
        least = std::min(least, *end);
        most = std::max(most, *end);
    }
    const ComponentFacts& facts = factsOf(tried.target().component);
    Error error{ErrorCode::TargetOutOfReach};
    error.file = tried.dossier().main().file;
    return error.at(tried.line().pointer)
        .with("least", endText(facts, least))
        .with("most", endText(facts, most))
        .with("unit", facts.unit)
        .with("line", tried.line().name);
}

/// Two factors between which the target comes to be met, or ceases to be.
struct Crossing {
    double met = 0, notMet = 0;
};

/// For a ceiling the last one beyond which it is not met, for a floor the first one from which it
/// is; else the one at which more of the line comes to meet a ceiling or ceases to meet a floor.
std::optional<Crossing> crossingOf(const TargetEntry& target, const std::vector<bool>& met) {
    std::optional<Crossing> rising;
    std::optional<Crossing> falling;
    for (int step = 0; step < kTriedSteps; ++step) {
        const auto at = static_cast<std::size_t>(step);
        if (met[at] == met[at + 1]) continue;
        const Crossing found = met[at] ? Crossing{factorAt(step), factorAt(step + 1)}
                                       : Crossing{factorAt(step + 1), factorAt(step)};
        const bool rises = met[at] == target.atMost.has_value();
        auto& kept = rises ? rising : falling;
        if (!kept || rises == target.atMost.has_value()) kept = found;
    }
    return rising ? rising : falling;
}

/// Four digits, towards the side on which the target is met.
double safeFactor(TriedLine& tried, const Crossing& crossing) {
    const double exact = crossing.met;
    if (exact < kNextToNothing && tried.meets(0)) return 0;
    const int magnitude = static_cast<int>(std::floor(std::log10(exact)));
    const Decimal step{1, magnitude + 1 - kFactorDigits};
    const auto side = crossing.met < crossing.notMet ? Direction::Floor : Direction::Ceiling;
    const double rounded = steppedTo(Decimal::fromDouble(exact), step, side).value();
    return tried.meets(rounded) ? rounded : exact;
}

double bisected(TriedLine& tried, Crossing crossing) {
    for (int halving = 0; halving < kHalvings; ++halving) {
        const double middle = (crossing.met + crossing.notMet) / 2;
        (tried.meets(middle) ? crossing.met : crossing.notMet) = middle;
    }
    return safeFactor(tried, crossing);
}

}  // namespace

Dossier withChanges(const Dossier& dossier, const std::vector<ChangedLine>& changes) {
    Dossier changed = dossier;
    for (const ChangedLine& change : changes)
        changed.recipes.front().lines[change.line].tried *= change.factor;
    return changed;
}

Result<SolvedAmount> solvedAmount(const Dossier& dossier, const TargetEntry& target,
                                  std::size_t line, const std::vector<ChangedLine>& changes,
                                  Meaning meaning) {
    std::vector<ChangedLine> others = changes;
    std::erase_if(others, [&](const ChangedLine& change) { return change.line == line; });
    auto compositions = compositionsOf(dossier);
    if (!compositions) return fail(compositions.error());
    TriedLine tried{withChanges(dossier, others), std::move(*compositions), target, line, meaning};
    if (const auto now = tried.with(1); !now) return fail(now.error());
    std::vector<std::optional<double>> ends;
    std::vector<bool> met;
    for (int step = 0; step <= kTriedSteps; ++step) {
        ends.push_back(tried.end(factorAt(step)));
        met.push_back(ends.back() && keepsTo(target, *ends.back()));
    }
    if (std::ranges::find(met, true) == met.end()) return fail(outOfReach(tried, ends));
    const auto crossing = crossingOf(target, met);
    // Whatever there is of the line meets it.
    const double anyAmount = target.atMost ? kMostTimes : 0;
    const double factor = crossing ? bisected(tried, *crossing) : anyAmount;
    const auto interval = tried.with(factor);
    if (!interval) return fail(interval.error());
    return SolvedAmount{factor, *interval};
}

}  // namespace nettare
