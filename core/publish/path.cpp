#include "core/publish/path.h"

#include <fmt/core.h>

#include "core/publish/basis_text.h"
#include "core/publish/number_text.h"
#include "core/publish/path_work.h"

namespace nettare {

namespace {

/// " skewers" in a formula; a word with signs or digits of its own would be read as part of it.
std::string pieceUnit(Count count, const Recipe& recipe) {
    const std::string word = pieceWordFor(count, recipe);
    const bool plain = word.find_first_of("0123456789()/+,") == std::string::npos &&
                       word.find("×") == std::string::npos && word.find("−") == std::string::npos;
    return plain ? " " + word : std::string{};
}

/// The batch divided by its pieces, which may be counted as the middle of a range.
void byPieces(PathDraft& draft, const Recipe& recipe) {
    const Fraction pieces = recipe.pieces.exact();
    if (pieces.denominator() == 1)
        draft.by({recipe.pieces.value(), 0, pieceUnit(recipe.pieces, recipe)}, true);
    else
        draft.by({static_cast<double>(pieces.numerator()), 0, {}}, true)
            .by({static_cast<double>(pieces.denominator()), 0, {}});
}

/// " by 4-6 skewers, counted as 5"; empty where their number is no range.
std::string countedAsText(const Recipe& recipe) {
    if (!recipe.piecesRange) return {};
    return fmt::format(" by {} {}, counted as {}", recipe.piecesRange->text(), recipe.piecesWord,
                       writeFraction(recipe.pieces.exact()));
}

PathDraft pieceDraft(PathWork& work, PathDraft batch) {
    const Recipe& recipe = work.dossier.main();
    PathDraft piece = pathDraft(PathKind::Division, std::string{work.facts.unit},
                                "a " + recipe.pieceWord + ", the batch divided");
    piece.step.words += countedAsText(recipe);
    piece.decimals = work.decimals();
    piece.by(std::move(batch), work.unit());
    byPieces(piece, recipe);
    return piece.computed();
}

/// Per 100 g, or per portion in grams.
void byWeight(PathWork& work, PathDraft& draft, double grams) {
    draft.by(pathNumber(grams, " g"));
    draft.by(wholeDraft(work, 0), " g", true);
}

/// From the batch to the basis of the figures.
PathDraft dividedDraft(PathWork& work, const Figures& figures) {
    const Recipe& recipe = work.dossier.main();
    PathDraft batch = batchDraft(work, 0);
    PathDraft draft = pathDraft(PathKind::Figure, std::string{work.facts.unit}, {});
    const bool pieces = figures.basis == Basis::Portion && recipe.portionPieces.has_value();
    if (figures.basis == Basis::Piece) {
        draft.by(std::move(batch), work.unit());
        byPieces(draft, recipe);
    } else if (pieces) {
        draft.by(pieceDraft(work, std::move(batch)), work.unit());
        draft.byFraction(recipe.portionPieces->exact(), pieceUnit(*recipe.portionPieces, recipe));
    } else {
        draft.by(std::move(batch), work.unit());
        if (figures.basis == Basis::Hundred) byWeight(work, draft, 100);
        if (figures.basis == Basis::Portion) byWeight(work, draft, recipe.portionGrams->value());
    }
    draft.decimals = work.facts.decimals;
    return draft.computed();
}

std::string ofWhatText(const PathWork& work, const Figures& figures) {
    return fmt::format("{} {} of {}, {}", work.facts.name, basisText(figures, work.dossier.main()),
                       work.dossier.main().title, nameOf(work.meaning()));
}

/// A figure that nothing is missing of. Less than nothing counts as nothing.
PathDraft completeDraft(PathWork& work, const Figures& figures, const Figure& figure) {
    PathDraft draft = dividedDraft(work, figures);
    draft.step.words = basisText(figures, work.dossier.main()) + ", rounded once, here";
    if (const std::string range = countedAsText(work.dossier.main());
        figures.basis == Basis::Piece && !range.empty())
        draft.step.words += "; divided" + range;
    if (figure.value == 0 && draft.value < 0) {
        draft.rule = PathRule::Given;
        draft.factors.clear();
        draft.step.words += "; less than none counts as none";
    }
    draft.value = figure.value;
    return draft.within(intervalOf(figure).halfWidth, work.facts.decimals);
}

PathDraft endOfFigure(PathWork& work, const Figures& figures, PathEnd end, double value) {
    const bool least = end == PathEnd::Least;
    work.end = end;
    PathDraft draft = dividedDraft(work, figures);
    draft.step.words =
        least ? "at least: what has no data at its least" : "at most: what has no data at its most";
    draft.direction = least ? Direction::Floor : Direction::Ceiling;
    // Without a bound of what ran off there is no least but none.
    if (value == 0 && draft.value != 0) {
        draft.rule = PathRule::Given;
        draft.factors.clear();
        draft.below.clear();
        draft.step.words = least ? "at least none: no more is known" : "at most none";
    }
    draft.value = value;
    return draft;
}

/// At least and at most, each with a path of its own.
PathStep openStep(PathWork& work, const Figures& figures, const Figure& figure) {
    PathDraft draft = pathDraft(PathKind::Figure, std::string{work.facts.unit}, {});
    draft.value = figure.atLeast;
    draft.decimals = work.facts.decimals;
    draft.direction = Direction::Floor;
    draft.below.push_back(endOfFigure(work, figures, PathEnd::Least, figure.atLeast));
    if (figure.atMost)
        draft.below.push_back(endOfFigure(work, figures, PathEnd::Most, *figure.atMost));
    draft.within(intervalOf(figure).halfWidth, work.facts.decimals);
    PathStep step = settled(std::move(draft));
    step.value = "at least " + step.value;
    step.words =
        figure.atMost
            ? fmt::format("at most {} {}, ",
                          numberAt(work.facts.decimals, *figure.atMost, Direction::Ceiling),
                          work.facts.unit)
            : std::string{"no upper end, "};
    step.words += knownShareText(figure);
    return step;
}

}  // namespace

PathStep pathOf(Component component, const Figures& figures, const Dossier& dossier,
                const Cooked& cooked) {
    PathWork work{component, dossier, cooked};
    const Figure& figure = figures[component];
    PathStep step = figure.complete() ? settled(completeDraft(work, figures, figure))
                                      : openStep(work, figures, figure);
    step.more = ofWhatText(work, figures);
    return step;
}

}  // namespace nettare
