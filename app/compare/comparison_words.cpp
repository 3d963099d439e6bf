#include "app/compare/comparison_words.h"

#include "app/compare/row_words.h"
#include "app/compare/step_words.h"

#include "core/publish/comparison.h"

namespace nettare {

namespace {

ComparedState stateOf(const Evaluation& evaluation) {
    return {evaluation.document, evaluation.dossier, evaluation.cooked};
}

}  // namespace

Result<ComparisonWords> comparisonWords(const Evaluation& left, const Evaluation& right,
                                        const StateNames& states) {
    const auto comparison = compared(stateOf(left), stateOf(right));
    if (!comparison) return fail(comparison.error());
    return ComparisonWords{rowWords(*comparison), cardWords(*comparison, states),
                           stepWords(comparison->method)};
}

}  // namespace nettare
