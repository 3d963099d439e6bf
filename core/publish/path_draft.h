#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/publish/path.h"
#include "core/quantity/decimal.h"

namespace nettare {

/// One number of a formula. It may be printed with more decimals than it starts with, until the
/// formula as printed gives the value of its step.
struct PathNumber {
    double value = 0;
    int decimals = 1;  ///< to start with
    std::string unit;  ///< behind it, " g"; may be empty
    bool minus = false;
    std::optional<std::size_t> below{};  ///< the step below that it is
};

/// Numbers that are added, and multiply or divide what stands before them.
struct PathFactor {
    std::vector<PathNumber> sum;
    bool divides = false;
};

/// How a step follows from what stands below it.
enum class PathRule {
    Given,    ///< not at all
    Formula,  ///< product of its factors
    Sum       ///< of all steps below
};

/// A step before its digits are chosen.
struct PathDraft {
    PathStep step;  ///< kind, unit, words and marks; the rest is filled in
    double value = 0;
    int decimals = 1;  ///< at least
    Direction direction = Direction::Nearest;
    PathRule rule = PathRule::Given;
    bool negative = false;  ///< a minus before the formula
    std::vector<PathFactor> factors;
    std::vector<PathDraft> below;

    /// Multiplies by a number, or divides.
    PathDraft& by(PathNumber number, bool divides = false);
    /// Multiplies by a step below.
    PathDraft& by(PathDraft step, std::string unit, bool divides = false);
    /// Multiplies by an exact fraction, as a decimal where it ends and else as a quotient.
    PathDraft& byFraction(Fraction fraction, const std::string& unit = {});
    /// The same of a number that is a fraction of small parts or not.
    PathDraft& byRatio(double ratio, const std::string& unit = {}, int decimals = 3);
    /// Adds all steps below.
    PathDraft& add(PathDraft step);
    /// Sets the value to what the formula or the sum gives.
    PathDraft& computed();
    /// Notes a 95 % half-width with the decimals that the step has so far, at least as many.
    PathDraft& within(double halfWidth, int leastDecimals);
};

/// A step of that kind with nothing in it yet.
[[nodiscard]] PathDraft pathDraft(PathKind kind, std::string unit, std::string words);

/// A number that prints with its own decimals, at most six; else with `decimals` to start with.
[[nodiscard]] PathNumber pathNumber(double value, std::string unit = {}, int decimals = 1);

/// 95 % half-width of a form for that meaning.
[[nodiscard]] double pathHalfWidth(const LinearForm& form, Meaning meaning);

/// A step with the least decimals for which every formula below it, as printed, gives its value to
/// the last digit.
[[nodiscard]] PathStep settled(PathDraft draft);

}  // namespace nettare
