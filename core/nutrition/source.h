#pragma once

#include <compare>
#include <cstdint>
#include <limits>
#include <string>
#include <string_view>

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
    LabelServing,    ///< rounding of the serving size; first = food
    LabelDensity,    ///< what a millilitre of its product weighs; first = food
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
    CookedMean,   ///< mean of the cooked weights of several test cooks; first = recipe
    ResidueMean,  ///< mean of what several test cooks left over; second = residue
    PieceShare,   ///< what one piece gets of the batch, relative; first = recipe
};

/// What values a source may take, for a simulation (JCGM 101:2008, 6.4).
enum class Law : std::uint8_t {
    Normal,    ///< of known standard deviation; Student's t where its freedom is finite
    Rectangle  ///< all of one interval alike, none outside
};

/// What a figure is of. The recipe mean is that of all batches made by the text; this batch is what
/// a laboratory would find in the one that was cooked: the lots of its foods scatter about their
/// means, and so do its pieces; any one piece has its own share of the batch as well.
enum class Meaning : std::uint8_t { RecipeMean, ThisBatch, AnyPiece };
/// "recipe mean", "this batch", "any one piece".
[[nodiscard]] std::string_view nameOf(Meaning meaning);

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
    Law law = Law::Normal;
    /// Of a rectangle: its middle less the value that counts; u^2 = width^2 / 12 + offset^2.
    double offset = 0;
    /// What of u is that of the recipe mean, 0 to 1; the rest is of one batch.
    double meanShare = 1;

    /// Standard uncertainty for a figure of that meaning.
    [[nodiscard]] double uFor(Meaning meaning) const {
        return meaning == Meaning::RecipeMean ? u * meanShare : u;
    }
};

/// A source that stands for itself.
[[nodiscard]] inline Source ownSource(SourceKey key, double u,
                                      double freedom = std::numeric_limits<double>::infinity()) {
    return {key, u, freedom, key};
}

/// Standard uncertainty of a rectangle of that full width (JCGM 100:2008, 4.3.7).
[[nodiscard]] double rectangular(double fullWidth);

/// A rectangle of that standard uncertainty, with its middle `offset` above the value that counts.
[[nodiscard]] inline Source rectangle(SourceKey key, double u, double offset = 0) {
    return {key, u, std::numeric_limits<double>::infinity(), key, Law::Rectangle, offset};
}

/// How pieces of one batch scatter; the recipe mean has none of it.
[[nodiscard]] inline Source scatter(SourceKey key, double u, double freedom, SourceKey pool) {
    return {key, u, freedom, pool, Law::Normal, 0, 0};
}

/// A name that does not depend on the order of anything in the document: "rounding of i-oil-gross".
[[nodiscard]] std::string nameOf(const Source& source, const Dossier& dossier);

/// Number of a line or residue among all recipes of a dossier.
[[nodiscard]] constexpr std::uint32_t numberOf(std::size_t recipe, std::size_t index) {
    return static_cast<std::uint32_t>(recipe * 65536 + index);
}

}  // namespace nettare
