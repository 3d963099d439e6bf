#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/nutrition/linear_form.h"
#include "core/quantity/interval.h"
#include "core/support/result.h"

namespace nettare {

/// Where a component's value of a food comes from.
enum class Origin : unsigned char {
    Missing,    ///< nothing known but bounds
    Stated,     ///< by the cook, with a reason
    Label,      ///< declared by the package
    Table,      ///< the row of a public table
    ByKind,     ///< zero by a rule of kind: trans fat of an unhydrogenated plant food
    ByParent,   ///< what its parent leaves is a single value
    AllSugars,  ///< added sugars that are all of its sugars
    Converted,  ///< energy in the other unit, x 4.184 or / 4.184
};
[[nodiscard]] std::string_view nameOf(Origin origin);

/// One component of a food, in its unit per gram of food.
struct ComponentAmount {
    Origin origin = Origin::Missing;
    bool onLabel = false;        ///< a label amount: printed / grams that the label speaks of
    double perGram = 0;          ///< of a known one
    double low = 0;              ///< of a missing one; of a label's, what it may stand for
    std::optional<double> high;  ///< the same; nothing where no bound is known
};

/// What a unit of a source moves per gram of food.
struct Effect {
    Component component{};
    double perGram = 0;
};

/// The effects of one source, kept in place: a food has some forty sources, and a vector for each
/// was half the work of a composition. At most four: a part, carbohydrate by difference, and energy
/// in both units.
class EffectList {
public:
    EffectList() = default;
    explicit EffectList(Effect only) { add(only); }

    void add(Effect effect) { effects_.at(count_++) = effect; }

    [[nodiscard]] bool empty() const { return count_ == 0; }
    [[nodiscard]] const Effect* begin() const { return effects_.data(); }
    [[nodiscard]] const Effect* end() const { return effects_.data() + count_; }

private:
    std::array<Effect, 4> effects_{};
    std::size_t count_ = 0;
};

/// A source of a food's composition and what it moves.
struct CompositionSource {
    Source source;
    EffectList effects;
};

/// What a food is made of, with every gap bounded as far as its other components allow.
struct Composition {
    PerComponent<ComponentAmount> amounts{};
    std::vector<CompositionSource> sources;
    /// Grams that the label speaks of, if any component stands on it. A label amount per gram is
    /// printed / these grams, so that their sources move all of them together.
    std::optional<LinearForm> labelGrams;
    /// Carbohydrate without fibre per gram, where a label gives that and no fibre.
    std::optional<Interval> withoutFibre;

    [[nodiscard]] const ComponentAmount& operator[](Component c) const {
        return amounts[indexOf(c)];
    }
};

/// Composition of a food for this batch: table values scatter as one lot does, variance
/// SE^2 + n SE^2; label amounts are the rectangles of their rounding rule. Carbohydrate (by
/// difference) and energy of a table row follow its other parts by closure. Fails on label amounts
/// that no rule prints, and on more stated added sugars than there are sugars.
[[nodiscard]] Result<Composition> compositionOf(const Food& food, std::uint32_t index,
                                                const Assumptions& assumptions);

}  // namespace nettare
