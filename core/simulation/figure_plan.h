#pragma once

#include <optional>
#include <vector>

#include "core/nutrition/figures.h"

namespace nettare {

/// One figure as a function of its sources: what a simulation draws and how the draws become the
/// figure. Sums move with the sources in proportion (grams of a line stay the first order that
/// LinearForm is); all that is multiplied or divided after them is not linear.
///
/// figure = (sum over products of grams x per gram / serving, plus plain) x factor / divisor x
/// share + shift
struct FigurePlan {
    /// A sum that a source moves by so much per unit.
    struct Target {
        std::size_t sum;
        double sensitivity;
    };
    /// Drawn once a trial, whatever it moves.
    struct DrawnSource {
        Source source;                      ///< its u is that of the meaning
        std::optional<std::size_t> pool{};  ///< whose estimated s it shares
        std::vector<Target> targets{};
    };
    /// Grams of a food or residue times what a gram of it holds; of a label, printed / serving.
    struct Product {
        std::size_t grams, perGram;
        std::optional<std::size_t> serving{};
    };

    std::vector<double> sums;  ///< their values where no source deviates
    std::vector<DrawnSource> sources;
    std::vector<double> pools;  ///< degrees of freedom of each estimated s
    std::vector<Product> products;
    std::optional<std::size_t> plain{};  ///< water that came or went
    bool neverNegative = false;          ///< no more water goes than there is
    double factor = 1;
    std::optional<std::size_t> divisor{};  ///< pieces, or a weight
    std::optional<std::size_t> share{};    ///< of any one piece
    double shift = 0;                      ///< to the figure, where it is cut at zero
};

/// The plan of one component of figures, for their basis and meaning.
[[nodiscard]] FigurePlan planOf(Component component, const Figures& figures, const Dossier& dossier,
                                const Cooked& cooked);

}  // namespace nettare
