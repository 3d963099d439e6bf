#include "core/label/household_unit.h"

#include "core/food/piece_word.h"
#include "core/support/text.h"
#include "core/wording/unit_names.h"

namespace nettare {

namespace {

/// "cup" of "cup (240 mL)", "tablespoon" of "tablespoon(s)".
std::string_view withoutBracket(std::string_view printed) {
    const std::string_view text = trimmed(printed);
    const std::size_t open = text.rfind('(');
    const bool ends = text.ends_with(')') && open != std::string_view::npos;
    const std::string_view before = ends ? trimmed(text.substr(0, open)) : text;
    return before.empty() ? text : before;
}

/// "fl oz" of "fluidounces" and "floz"; empty for other words.
std::string_view fluidOunce(std::string_view compact) {
    for (const std::string_view fluid : {"fluid", "fl"})
        if (compact.starts_with(fluid) && unitNamed(compact.substr(fluid.size())) == "oz")
            return "fl oz";
    return {};
}

/// Symbols that have no other words, such as "stick" and "imp pint", are left as they are.
std::string symbolOfMeasure(std::string_view printed) {
    const std::string plain = replaced(householdPiece(printed), ".", " ");
    std::string spaced, compact;
    for (const std::string_view word : words(plain)) {
        if (!spaced.empty()) spaced += ' ';
        spaced += word;
        compact += word;
    }
    if (const auto fluid = fluidOunce(compact); !fluid.empty()) return std::string{fluid};
    if (const auto known = unitNamed(compact); !known.empty()) return std::string{known};
    return singularOf(spaced);
}

}  // namespace

const Unit* householdUnit(std::string_view printed, MeasureSystem system) {
    return findUnit(symbolOfMeasure(printed), system);
}

std::string householdPiece(std::string_view printed) {
    return lowerAscii(withoutBracket(printed));
}

}  // namespace nettare
