#include "app/trial/trial.h"

#include <algorithm>

#include "core/food/piece_word.h"
#include "core/publish/measure_text.h"
#include "core/support/text.h"

namespace nettare {

void Trial::start(std::shared_ptr<const Evaluation> evaluation) {
    figures_ = std::move(evaluation);
    factors_.assign(figures_ ? figures_->dossier.main().lines.size() : 0, 1.0);
    roundings_.assign(factors_.size(), Direction::Nearest);
}

void Trial::follow(std::shared_ptr<const Evaluation> evaluation) {
    if (!figures_ || !evaluation) return start(std::move(evaluation));
    std::vector<double> factors;
    std::vector<Direction> roundings;
    const auto& before = figures_->dossier.main().lines;
    for (const Line& line : evaluation->dossier.main().lines) {
        const auto same = std::ranges::find(before, line.id, &Line::id);
        const auto at = static_cast<std::size_t>(same - before.begin());
        factors.push_back(same == before.end() ? 1 : factors_[at]);
        roundings.push_back(same == before.end() ? Direction::Nearest : roundings_[at]);
    }
    figures_ = std::move(evaluation);
    factors_ = std::move(factors);
    roundings_ = std::move(roundings);
}

void Trial::setFactor(std::size_t line, double factor, Direction rounding) {
    factors_[line] = factor;
    roundings_[line] = rounding;
}

std::vector<TriedAmount> Trial::amounts() const {
    std::vector<TriedAmount> amounts;
    for (const ChangedLine& change : changes())
        amounts.push_back({figures_->dossier.main().lines[change.line].id, change.factor,
                           roundings_[change.line]});
    return amounts;
}

std::vector<ChangedLine> Trial::changes() const {
    std::vector<ChangedLine> changes;
    for (std::size_t i = 0; i < factors_.size(); ++i)
        if (factors_[i] != 1) changes.push_back({i, factors_[i]});
    return changes;
}

Result<TriedFigures> Trial::figures(Basis basis) const {
    const auto& now = *figures_;
    TriedFigures tried;
    tried.dossier = withChanges(now.dossier, changes());
    auto cooked = cook(tried.dossier, now.cooked.compositions, now.cooked.meaning);
    if (!cooked) return fail(cooked.error());
    tried.cooked = std::move(*cooked);
    const auto before = figuresPer(basis, now.dossier, now.cooked);
    if (!before) return fail(before.error());
    const auto after = figuresPer(basis, tried.dossier, tried.cooked);
    if (!after) return fail(after.error());
    tried.differences =
        comparedFigures({now.document, now.dossier, now.cooked}, *before,
                        {now.document, tried.dossier, tried.cooked}, *after, Batches::One);
    auto verdicts = verdictsOf(tried.dossier, tried.cooked);
    if (verdicts) tried.verdicts = std::move(*verdicts);
    return tried;
}

std::string triedAmount(const Line& line, double factor) {
    if (factor == 1) return lineAmount(line);
    const double amount = line.amount.middle() * factor;
    const std::string unit = line.unit != nullptr ? std::string{line.unit->symbol}
                             : amount <= 1        ? line.piece
                                                  : pluralOf(line.piece);
    return shortNumber(amount) + " " + unit;
}

Result<double> typedFactor(const Line& line, std::string_view typed) {
    std::string text{trimmed(typed)};
    if (text.ends_with('%')) {
        const auto percent = readAmount(trimmed(text.substr(0, text.size() - 1)));
        if (!percent) return fail(percent.error());
        return percent->middle() / 100;
    }
    const std::string unit = line.unit != nullptr ? std::string{line.unit->symbol} : line.piece;
    const std::size_t end = text.find_first_not_of("0123456789.,/ -\xC2\xBD\xBC\xBE");
    if (end != std::string::npos) {
        const std::string word{trimmed(text.substr(end))};
        if (singularOf(word) != singularOf(unit))
            return fail(Error{ErrorCode::UnitNotOfKind}.with("found", word));
        text = trimmed(text.substr(0, end));
    }
    if (text == "0") return 0.0;
    const auto amount = readAmount(text);
    if (!amount) return fail(amount.error());
    return amount->middle() / line.amount.middle();
}

}  // namespace nettare
