#include "core/nutrition/enough_weighings.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "core/nutrition/tried_act.h"

namespace nettare {

namespace {

/// Less than this share of a half-width is no difference: rounding of the sums.
constexpr double kNoDifference = 1e-9;

/// A copy of the dossier on which more is weighed.
class MoreWeighed {
public:
    MoreWeighed(const Dossier& dossier, const Cooked& cooked, std::size_t series)
        : dossier_{dossier},
          compositions_{cooked.compositions},
          meaning_{cooked.meaning},
          series_{series} {}

    /// Half-width of the target's figure after so many more; nothing where there are not so many.
    std::optional<double> halfWidth(const TargetEntry& target, int more) {
        const auto putBack = tryMoreOf(series_, more, dossier_);
        if (!putBack) return std::nullopt;
        const auto found = halfWidthNow(target);
        putBack();
        return found;
    }

private:
    std::optional<double> halfWidthNow(const TargetEntry& target) const {
        const auto cooked = cook(dossier_, compositions_, meaning_);
        if (!cooked) return std::nullopt;
        const auto figures = figuresPer(target.per, dossier_, *cooked);
        if (!figures) return std::nullopt;
        return intervalOf((*figures)[target.component]).halfWidth;
    }

    Dossier dossier_;
    const std::vector<Composition>& compositions_;
    Meaning meaning_;
    std::size_t series_;
};

/// Least of 1 to `most` for which `holds`; it holds for `most` and for all above one that holds.
int leastThat(int most, const std::function<bool(int)>& holds) {
    int tooFew = 0;
    int enough = 1;
    while (enough < most && !holds(enough)) {
        tooFew = enough;
        enough = std::min(most, enough * 2);
    }
    while (enough - tooFew > 1) {
        const int middle = tooFew + (enough - tooFew) / 2;
        (holds(middle) ? enough : tooFew) = middle;
    }
    return enough;
}

double roomOf(const TargetEntry& target, const Figure& figure) {
    if (target.atMost) return target.atMost->value() - figure.atMost.value();
    return figure.atLeast - target.atLeast->value();
}

/// As many more as can be weighed; 0 where none can.
int mostMore(const TargetEntry& target, MoreWeighed& kitchen) {
    if (kitchen.halfWidth(target, kMostMore)) return kMostMore;
    return leastThat(kMostMore, [&](int more) { return !kitchen.halfWidth(target, more); }) - 1;
}

/// Nothing where the series does not touch the figure.
std::optional<EnoughWeighings> enoughFor(const TargetEntry& target, const Figure& figure,
                                         MoreWeighed& kitchen) {
    const int most = mostMore(target, kitchen);
    if (most == 0) return std::nullopt;
    EnoughWeighings answer;
    answer.target = target;
    answer.halfWidth = intervalOf(figure).halfWidth;
    answer.least = kitchen.halfWidth(target, most).value_or(answer.halfWidth);
    answer.tried = most;
    if (std::fabs(answer.least - answer.halfWidth) <= answer.halfWidth * kNoDifference)
        return std::nullopt;
    answer.room = roomOf(target, figure);
    if (answer.room < 0) {
        answer.enough = Enough::ValueMisses;
    } else if (answer.halfWidth <= answer.room) {
        answer.enough = Enough::Already;
    } else if (answer.least > answer.room) {
        answer.enough = Enough::NoneSuffices;
    } else {
        answer.enough = Enough::WithMore;
        answer.more = leastThat(most, [&](int more) {
            const auto half = kitchen.halfWidth(target, more);
            return half && *half <= answer.room;
        });
    }
    return answer;
}

}  // namespace

Result<std::vector<EnoughWeighings>> enoughWeighings(const Dossier& dossier, const Cooked& cooked,
                                                     std::size_t series) {
    std::vector<EnoughWeighings> answers;
    MoreWeighed kitchen{dossier, cooked, series};
    for (const TargetEntry& target : dossier.main().targets) {
        const auto figures = figuresPer(target.per, dossier, cooked);
        if (!figures) return fail(figures.error());
        const Figure& figure = (*figures)[target.component];
        // Of a ceiling with a missing part that has no bound nothing can be promised.
        if (target.atMost && !figure.atMost) continue;
        if (const auto answer = enoughFor(target, figure, kitchen)) answers.push_back(*answer);
    }
    return answers;
}

}  // namespace nettare
