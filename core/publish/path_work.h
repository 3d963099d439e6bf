#pragma once

#include <map>

#include "core/publish/path_draft.h"

namespace nettare {

/// Which end of what is not known counts: none of it, the least it may be, the most.
enum class PathEnd { Known, Least, Most };

/// What of a recipe went where.
struct RecipeGrams {
    std::vector<LineReport> lines;
    Eaten eaten;
    std::vector<ResidueTaking> takings;
};

/// What the parts of one path look at, and share.
class PathWork {
public:
    PathWork(Component wanted, const Dossier& all, const Cooked& done)
        : component{wanted}, facts{factsOf(wanted)}, dossier{all}, cooked{done} {}

    Component component;
    const ComponentFacts& facts;
    const Dossier& dossier;
    const Cooked& cooked;
    PathEnd end = PathEnd::Known;

    [[nodiscard]] Meaning meaning() const { return cooked.meaning; }
    /// Decimals that values of the component start with, one more than its figures.
    [[nodiscard]] int decimals() const { return facts.decimals + 1; }
    [[nodiscard]] std::string unit() const { return " " + std::string{facts.unit}; }
    [[nodiscard]] const ComponentAmount& amountOf(std::size_t food) const {
        return cooked.compositions[food][component];
    }
    /// Grams of a recipe of the dossier, found once.
    [[nodiscard]] const RecipeGrams& gramsOf(std::size_t recipe);

private:
    std::map<std::size_t, RecipeGrams> grams_;
};

// Of grams.

/// Net of one reading, and of several.
[[nodiscard]] PathDraft readingDraft(const PathWork& work, std::size_t reading);
[[nodiscard]] PathDraft readingsDraft(const PathWork& work,
                                      const std::vector<std::size_t>& readings, std::string words);
/// What a residue weighs, and the finished dish less what in it is not eaten; for the recipe mean
/// those of all test cooks.
[[nodiscard]] PathDraft leftOverDraft(const PathWork& work, std::size_t recipe,
                                      std::size_t residue);
[[nodiscard]] PathDraft cookedDraft(const PathWork& work, std::size_t recipe);
/// Weight of a recipe's batch: the cooked one, else of all that is eaten of its lines.
[[nodiscard]] PathDraft wholeDraft(PathWork& work, std::size_t recipe);
[[nodiscard]] PathDraft usedDraft(PathWork& work, std::size_t recipe);

/// A way to grams before anything is brought from bought to eaten or to another state.
[[nodiscard]] PathDraft foundDraft(const PathWork& work, const Line& line, const OpenWay& way);
/// Grams of a line of a food as used.
[[nodiscard]] PathDraft foodGramsDraft(const PathWork& work, std::size_t recipe, std::size_t line,
                                       const OpenWay& way);
/// Edible grams of purchased ones, and grams in the state of the food's values.
[[nodiscard]] PathDraft edibleDraft(const PathWork& work, const Line& line, const Food& food,
                                    PathDraft purchased);
[[nodiscard]] PathDraft yieldedDraft(const PathWork& work, const Line& line, PathDraft before);
/// Grams of a line as used, as if it counted whole.
[[nodiscard]] PathDraft lineUsedDraft(PathWork& work, std::size_t recipe, std::size_t line);
/// Grams eaten of a line: as used, less what the residues took, and half of it where it is optional
/// and counts between.
[[nodiscard]] PathDraft eatenDraft(PathWork& work, std::size_t recipe, std::size_t line);

// Of the component.

/// Value of a food per 100 g, or per serving where its label gives it, with the end that counts of
/// one that is missing.
[[nodiscard]] PathDraft valueDraft(const PathWork& work, std::size_t food);
/// Grams of a food times its value; negative for what ran off.
[[nodiscard]] PathDraft contentDraft(const PathWork& work, std::size_t food, PathDraft grams,
                                     bool drip);
/// Sum of a recipe: its lines, what ran off, and of the main recipe residues of unknown make-up;
/// for water what cooking changed.
[[nodiscard]] PathDraft batchDraft(PathWork& work, std::size_t recipe);
[[nodiscard]] PathDraft lineDraft(PathWork& work, std::size_t recipe, std::size_t line);
/// What residues of unknown make-up took of the main recipe's batch, one step for each.
[[nodiscard]] std::vector<PathDraft> unknownDrafts(PathWork& work);
/// What leaves bring of the component, with its sensitivities.
[[nodiscard]] LinearForm contentOf(const PathWork& work, const Leaf& leaf);
/// What a leaf whose value is missing may bring at the end that counts; nothing where it has none.
[[nodiscard]] std::optional<double> missingPer100g(const PathWork& work, std::size_t food,
                                                   bool drip);

}  // namespace nettare
