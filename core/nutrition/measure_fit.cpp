#include "core/nutrition/measure_fit.h"

#include <algorithm>
#include <cmath>

#include "core/food/measure_scaling.h"
#include "core/food/piece_word.h"
#include "core/food/volume_measure.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// What "sliced", "slices" and "slice" have in common.
std::string stemOf(std::string_view word) {
    std::string stem = singularOf(lowerAscii(word));
    if (stem.size() > 3 && stem.ends_with("ed"))
        stem.resize(stem.size() - 2);
    else if (stem.size() > 3 && stem.ends_with('e'))
        stem.pop_back();
    if (stem.ends_with('f')) stem.back() = 'v';
    return stem;
}

std::vector<std::string> stemsOf(std::string_view text) {
    std::vector<std::string> stems;
    for (const std::string_view part : split(text, ','))
        for (const std::string_view word : words(part)) stems.push_back(stemOf(word));
    return stems;
}

bool holdsAll(const std::vector<std::string>& all, const std::vector<std::string>& wanted) {
    return std::ranges::all_of(
        wanted, [&](const std::string& word) { return std::ranges::find(all, word) != all.end(); });
}

/// The words before the last of a piece's name: "extra large" of "extra large egg".
std::string_view sizeWords(const HouseholdMeasure& measure) {
    if (volumeOfMeasure(measure.unit)) return {};
    const std::size_t space = measure.unit.rfind(' ');
    return space == std::string::npos ? std::string_view{}
                                      : std::string_view{measure.unit}.substr(0, space);
}

/// A qualifier that only gives the size of the piece in inches.
bool isLength(std::string_view qualifier) {
    constexpr std::string_view kEnds[] = {" in diameter", " in long", " in thick"};
    return std::ranges::any_of(
        kEnds, [&](std::string_view end) { return qualifier.find(end) != std::string_view::npos; });
}

/// Chooses among the measures of one food.
class Choice {
public:
    Choice(const TableFood& food, std::vector<std::size_t> measures)
        : food_{food}, measures_{std::move(measures)} {}

    /// Keeps those that fit if any does; answers whether one did.
    template <class Fits>
    bool prefer(Fits fits) {
        std::vector<std::size_t> kept;
        std::ranges::copy_if(measures_, std::back_inserter(kept),
                             [&](std::size_t i) { return fits(food_.measures[i]); });
        if (kept.empty()) return false;
        measures_ = std::move(kept);
        return true;
    }

    bool preferSize(std::string_view size);
    bool preferPreparation(std::string_view preparation);
    void preferPlain();
    void keepNearest(double asked);

    std::vector<std::size_t> measures() && { return std::move(measures_); }
    [[nodiscard]] std::size_t size() const { return measures_.size(); }

private:
    const TableFood& food_;
    std::vector<std::size_t> measures_;
};

/// The very words first, then the size of a piece, then any measure that says all of them; of
/// "medium-large" each part.
bool Choice::preferSize(std::string_view size) {
    if (prefer([&](const auto& measure) { return measure.qualifier == size; })) return true;
    const auto wanted = stemsOf(size);
    if (prefer([&](const auto& measure) { return stemsOf(sizeWords(measure)) == wanted; }))
        return true;
    if (prefer([&](const auto& measure) {
            auto all = stemsOf(measure.qualifier);
            for (std::string& word : stemsOf(sizeWords(measure))) all.push_back(std::move(word));
            return holdsAll(all, wanted);
        }))
        return true;
    const auto parts = split(size, '-');
    return parts.size() == 2 && prefer([&](const auto& measure) {
               return std::ranges::any_of(parts, [&](std::string_view part) {
                   return sizeWords(measure) == trimmed(part);
               });
           });
}

/// A qualifier counts where the preparation says all of its words, or all of one of its
/// alternatives ("chopped or diced"); the one with most words wins.
bool Choice::preferPreparation(std::string_view preparation) {
    if (preparation.empty()) return false;
    const auto said = stemsOf(preparation);
    std::size_t most = 1;
    const auto matched = [&](const HouseholdMeasure& measure) {
        std::size_t count = 0;
        std::string_view rest = measure.qualifier;
        while (!rest.empty()) {
            const std::size_t at = rest.find(" or ");
            const auto wanted = stemsOf(rest.substr(0, at));
            if (holdsAll(said, wanted)) count = std::max(count, wanted.size());
            rest = at == std::string_view::npos ? std::string_view{} : rest.substr(at + 4);
        }
        return count;
    };
    for (const std::size_t i : measures_) most = std::max(most, matched(food_.measures[i]));
    return prefer([&](const auto& measure) { return matched(measure) == most; });
}

/// What names no size and no preparation; a length beside a size word is none.
void Choice::preferPlain() {
    prefer([](const auto& measure) { return sizeWords(measure).empty(); });
    prefer([](const auto& measure) {
        return measure.qualifier.empty() ||
               (!sizeWords(measure).empty() && isLength(measure.qualifier));
    });
}

void Choice::keepNearest(double asked) {
    const auto distance = [&](std::size_t i) {
        return std::fabs(std::log(food_.measures[i].amount / asked));
    };
    const auto sameThing = [&](std::size_t a, std::size_t b) {
        return food_.measures[a].unit == food_.measures[b].unit &&
               food_.measures[a].qualifier == food_.measures[b].qualifier;
    };
    const std::vector<std::size_t> all = measures_;
    std::erase_if(measures_, [&](std::size_t i) {
        return std::ranges::any_of(all, [&](std::size_t other) {
            if (other == i || !sameThing(i, other)) return false;
            return distance(other) < distance(i) || (distance(other) == distance(i) && other < i);
        });
    });
}

}  // namespace

MeasureFit fittingMeasures(const Line& line, const TableFood& food,
                           std::vector<std::size_t> candidates, std::optional<double> asked) {
    MeasureFit fit;
    if (candidates.size() == 1 && line.size.empty()) {
        fit.measures = std::move(candidates);
        return fit;
    }
    if (candidates.empty()) return fit;
    Choice choice{food, std::move(candidates)};
    const bool sizeFound = !line.size.empty() && choice.preferSize(line.size);
    if (choice.size() > 1 && !choice.preferPreparation(line.preparation)) choice.preferPlain();
    if (choice.size() > 1 && asked) choice.keepNearest(*asked);
    fit.sizeNotSaid = choice.size() > 1 || (!line.size.empty() && !sizeFound);
    fit.measures = std::move(choice).measures();
    return fit;
}

bool isPiece(const HouseholdMeasure& measure, std::string_view piece) {
    return measure.unit == piece ||
           (measure.unit.back() == 's' && singularOf(measure.unit) == piece);
}

bool endsInPiece(const HouseholdMeasure& measure, std::string_view piece) {
    const std::string_view unit = measure.unit;
    if (isPiece(measure, piece)) return true;
    return !piece.empty() && unit.size() > piece.size() && unit.ends_with(piece) &&
           unit[unit.size() - piece.size() - 1] == ' ';
}

}  // namespace nettare
