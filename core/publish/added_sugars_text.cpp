#include "core/publish/added_sugars_text.h"

#include <fmt/core.h>

#include "core/publish/measure_text.h"

namespace nettare {

namespace {

/// " (plain single food)"
std::string whyText(const Food& food) {
    return food.addedSugars.reason.empty() ? std::string{}
                                           : fmt::format(" ({})", food.addedSugars.reason);
}

}  // namespace

std::string addedSugarsText(const Food& food, const Composition& composition) {
    const ComponentAmount& added = composition[Component::SUGAD];
    const std::string grams = shortNumber(100 * added.perGram);
    switch (added.origin) {
        case Origin::Label:
            return fmt::format("{} g by its label", grams);
        case Origin::AllSugars:
            return fmt::format("all of its sugars: {} g{}", grams, whyText(food));
        case Origin::ByKind:
            return "none" + whyText(food);
        case Origin::ByParent:
            return "none, since it has no sugars";
        case Origin::Missing:
            if (!added.high) return "nothing is known of its sugars";
            return fmt::format("between none and {} g: nothing says what part is added",
                               shortNumber(100 * *added.high));
        case Origin::Stated:
        case Origin::Table:
        case Origin::Converted:
            break;
    }
    return fmt::format("{} g{}", grams, whyText(food));
}

}  // namespace nettare
