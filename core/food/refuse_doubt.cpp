#include "core/food/refuse_doubt.h"

#include "core/support/text.h"

namespace nettare {

std::optional<RefuseDoubt> refuseDoubt(const TableFood& food) {
    if (food.refusePercent.value_or(0) == 0) return std::nullopt;
    const std::string note = lowerAscii(food.refuseNote);
    const std::string name = lowerAscii(food.name);
    const auto says = [](const std::string& text, std::string_view words) {
        return text.find(words) != std::string::npos;
    };
    if (says(note, "published")) return RefuseDoubt::WrongSum;
    if (says(note, "although the values are")) return RefuseDoubt::PeelThoughEaten;
    if (says(note, "when bought in")) return RefuseDoubt::ShellIfBoughtInShell;
    if ((says(name, "skinless") || says(name, "no skin")) && says(note, "skin"))
        return RefuseDoubt::SkinOfSkinless;
    if (says(note, "gristle") && !says(note, "bone")) return RefuseDoubt::Gristle;
    return std::nullopt;
}

}  // namespace nettare
