#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/food/component.h"
#include "core/support/result.h"

namespace nettare {

// USDA Table of Nutrient Retention Factors, Release 6 (December 2007), which the program carries:
// 270 codes of food and cooking, 26 nutrients, 6,994 factors. The published file lost 26 more, and
// what it lost is unknown: never 0, and never 100 because a neighbour has it.

/// A nutrient that the table has factors for.
struct RetainedNutrient {
    int number;                          ///< as published: 301
    std::string_view name;               ///< as published: "Calcium, Ca"
    std::optional<Component> component;  ///< where one of ours is the same: 17 of 26
};

inline constexpr std::size_t kRetainedNutrientCount = 26;

/// All of them, by number.
[[nodiscard]] const std::array<RetainedNutrient, kRetainedNutrientCount>& retainedNutrients();

/// True where the table has factors for that component. Others have none published: what cooking
/// leaves of them the table does not say.
[[nodiscard]] bool hasRetentionFactors(Component component);

/// What a food keeps of each nutrient when it is cooked in one way.
struct RetentionFactors {
    std::string code;         ///< four digits: "0001"
    std::string foodGroup;    ///< four digits, a food group of USDA SR: "0100"
    std::string description;  ///< as published: "CHEESE,BAKED"
    /// Percent of the nutrient kept, in the order of retainedNutrients(); nothing where the
    /// published file lost the factor.
    std::array<std::optional<int>, kRetainedNutrientCount> percentKept;

    /// Percent kept of a component; nothing where it is unknown, or hasRetentionFactors() is false.
    [[nodiscard]] std::optional<int> percentOf(Component component) const;
    /// Percent kept by published nutrient number, for those that are no component of ours: food
    /// folate is 432, folic acid 431. Nothing where it is unknown or the table has no such
    /// nutrient.
    [[nodiscard]] std::optional<int> percentOfNutrient(int number) const;
};

/// Retention factors by code.
class RetentionTable {
public:
    RetentionTable() = default;
    /// Reads the form of resources/retention/factors.txt: a percent from 0 to 100 or "-" a
    /// nutrient, codes rising. WrongFormat otherwise, with the line, "expected" and "found".
    [[nodiscard]] static Result<RetentionTable> read(std::string_view text);

    /// All codes, rising.
    [[nodiscard]] const std::vector<RetentionFactors>& all() const { return factors_; }
    /// Those of a code of four digits; null if there is none.
    [[nodiscard]] const RetentionFactors* find(std::string_view code) const;

private:
    std::vector<RetentionFactors> factors_;
};

/// The published table, read at its first use. Were its text broken, which tests refuse, it would
/// have no codes, and nothing would be taken as kept.
[[nodiscard]] const RetentionTable& retentionTable();

}  // namespace nettare
