#pragma once

#include <memory>
#include <vector>

#include "app/session/evaluation.h"
#include "core/edit/tried_edits.h"
#include "core/nutrition/what_if.h"
#include "core/publish/compared_figures.h"

namespace nettare {

/// What figures come out with other amounts, beside those of the draft.
struct TriedFigures {
    Dossier dossier;
    Cooked cooked;
    PerComponent<FigureDifference> differences;  ///< of the basis asked for; tried less as it is
    std::vector<TargetVerdict> verdicts;
};

/// Amounts that a cook tries without touching the draft: a factor for each line.
class Trial {
public:
    /// Begins anew, with every line as it is.
    void start(std::shared_ptr<const Evaluation> evaluation);
    /// Goes on with another state of the same draft; lines keep their factors by their ids.
    void follow(std::shared_ptr<const Evaluation> evaluation);

    [[nodiscard]] const std::shared_ptr<const Evaluation>& evaluation() const { return figures_; }
    [[nodiscard]] double factor(std::size_t line) const { return factors_[line]; }
    [[nodiscard]] std::size_t lines() const { return factors_.size(); }
    /// 0 or above. `rounding` is how the amount may be rounded when it is taken over.
    void setFactor(std::size_t line, double factor, Direction rounding = Direction::Nearest);
    [[nodiscard]] std::vector<ChangedLine> changes() const;
    /// The same for the edit that takes them over.
    [[nodiscard]] std::vector<TriedAmount> amounts() const;

    /// Fails as cook() and figuresPer() do.
    [[nodiscard]] Result<TriedFigures> figures(Basis basis) const;

private:
    std::shared_ptr<const Evaluation> figures_;
    std::vector<double> factors_;
    std::vector<Direction> roundings_;  ///< of each line
};

/// "3 tbsp", "4 cloves": the amount of a line times a factor, as its unit is.
[[nodiscard]] std::string triedAmount(const Line& line, double factor);

/// The factor that a typed number means for a line: "4", "1 1/2", "4 tbsp" of "3 tbsp", "80 %".
/// Fails as readAmount(); UnitNotOfKind for another unit.
[[nodiscard]] Result<double> typedFactor(const Line& line, std::string_view typed);

}  // namespace nettare
