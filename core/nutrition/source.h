#pragma once

#include <compare>
#include <cstdint>
#include <limits>
#include <string>

#include "core/recipe/dossier.h"

namespace nettare {

/// Why a figure may be off: what kind of thing is uncertain. The two numbers of a key say which
/// one.
enum class SourceKind : std::uint8_t {
    Rounding,        ///< of one indication; first = indication
    VesselTare,      ///< rounding of a vessel's known tare; first = vessel
    Calibration,     ///< of a scale; first = scale
    SeriesMean,      ///< first = series
    SeriesScatter,   ///< the pieces of this line; first = series, second = line
    RatioMean,       ///< first = series
    RatioScatter,    ///< first = series, second = line
    PackContent,     ///< last digit of a declared content; second = line
    PackDeclared,    ///< deviation of a content from its declaration; second = line
    LabelServing,    ///< rounding of the serving grams; first = food
    MeasureMean,     ///< mean of a table measure; first = food, second = measure
    MeasureScatter,  ///< the pieces of this line; first = food, second = line
    MeasureAssumed,  ///< assumed spread of a table measure; first = food, second = measure
    SizeNotSaid,     ///< several measures fit; first = food, second = line
    Filling,         ///< of a spoon or cup; second = line
    VagueUnit,       ///< what a pinch is; second = line
    DensityStated,   ///< first = food, second = first line that states this one
    AmountRange,     ///< "2-3"; second = line
    Written,         ///< last digit of a weight as written; second = line
    Assumed,         ///< grams assumed by the cook; second = line
    Refuse,          ///< last digit of the table's refuse; first = food
    YieldStated,     ///< factor between two states; second = line
    ResidueMakeup,   ///< what an unknown residue is made of; second = residue
    Composition,     ///< first = food, second = component: table, label or stated value
    Pinch,           ///< how much a pinch is; one for all lines to taste
    OptionalLine,    ///< counted between none and all; second = line
    PiecesRange,     ///< "makes 4-6"; first = recipe
    Declaration,  ///< deviation of a product from its declaration; first = food, second = component
};

/// Identity of a source. A source used twice is correlated with itself. Lines and residues are
/// numbered over all recipes of a dossier (`recipe` x 65536 + index).
struct SourceKey {
    SourceKind kind{};
    std::uint32_t first = 0;
    std::uint32_t second = 0;

    friend auto operator<=>(const SourceKey&, const SourceKey&) = default;
};

/// A source: its standard uncertainty in its own unit, and how well that is known.
struct Source {
    SourceKey key;
    double u = 0;
    double freedom = std::numeric_limits<double>::infinity();
    /// Sources that share one estimated s enter Welch-Satterthwaite as one term: their common pool,
    /// the key of that s; by default the key itself.
    SourceKey pool;
};

/// A source that stands for itself.
[[nodiscard]] inline Source ownSource(SourceKey key, double u,
                                      double freedom = std::numeric_limits<double>::infinity()) {
    return {key, u, freedom, key};
}

/// Standard uncertainty of a rectangle of that full width (JCGM 100:2008, 4.3.7).
[[nodiscard]] double rectangular(double fullWidth);

/// A name that does not depend on the order of anything in the document: "rounding of i-oil-gross".
[[nodiscard]] std::string nameOf(const Source& source, const Dossier& dossier);

/// Number of a line or residue among all recipes of a dossier.
[[nodiscard]] constexpr std::uint32_t numberOf(std::size_t recipe, std::size_t index) {
    return static_cast<std::uint32_t>(recipe * 65536 + index);
}

}  // namespace nettare
