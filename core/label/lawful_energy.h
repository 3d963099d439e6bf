#pragma once

#include <optional>

#include "core/label/check_label_numbers.h"
#include "core/quantity/interval.h"

namespace nettare {

/// Whether the energy may hold alcohol, and on labels of the EU and the UK organic acids, without a
/// line: no package need print them. So it is where amounts are of millilitres, and on labels of
/// the EU and the UK where fat and protein are both below 1 g. Alcohol is then at most 80 % of the
/// weight and what is printed leaves, acids at most 8 %.
[[nodiscard]] bool mayHideAlcohol(const LabelNumbers& label);

/// The energy that the other lines of a US label can have, in kcal, however they were rounded: the
/// smallest interval that holds what every lawful method of 21 CFR 101.9(c)(1)(i) gives. A line
/// that is missing may be anything the weight leaves; fibre that is not printed is below 1 g, since
/// the law asks for it from there on, once protein is printed, which follows it; sugar alcohols
/// count where they are printed, and so does alcohol but where mayHideAlcohol(). Factors approved
/// for single foods, as for allulose, are left out.
[[nodiscard]] Interval usLawfulEnergy(const LabelNumbers& label);

/// The energy of the other lines of a label of the EU or the UK by the factors of Regulation (EU)
/// 1169/2011, Annex XIV, kJ and kcal each by its own. Fibre that is not printed may be anything the
/// weight leaves; polyols count where they are printed, alcohol there or where mayHideAlcohol(),
/// with organic acids then.
struct EuLawfulEnergy {
    Interval kilocalories, kilojoules;
    /// What kJ can be where kcal are what the label prints; nothing where it prints none, or none
    /// that the lines can have.
    std::optional<Interval> kilojoulesThen;
};
[[nodiscard]] EuLawfulEnergy euLawfulEnergy(const LabelNumbers& label);

/// The kJ that some food of so many kcal can have, whatever it is made of.
[[nodiscard]] Interval kilojoulesOf(Interval kilocalories);

/// Energy by the method most packages use, in kcal, from the printed figures: 4-4-9 with and
/// without fibre, Annex XIV. Nothing where fat, carbohydrate or protein is missing.
[[nodiscard]] std::optional<Interval> usualEnergy(const LabelNumbers& label);

}  // namespace nettare
