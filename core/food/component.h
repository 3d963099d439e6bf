#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace nettare {

/// A constituent of food, by its INFOODS tagname (FAO/INFOODS tagnames for food components). Energy
/// is two components, as tables publish it. SUGAD (added sugars) follows the EuroFIR thesaurus,
/// from memory; INFOODS has no tagname for it. Order is the order of every table and block.
enum class Component : unsigned char {
    WATER,
    ASH,
    ENERC_KCAL,
    ENERC_KJ,
    PROCNT,
    FAT,
    FASAT,
    FATRN,
    FAMS,
    FAPU,
    CHOLE,
    CHOCDF,
    FIBTG,
    SUGAR,
    SUGAD,
    NA,
    CA,
    FE,
    K,
    VITD,
    VITA_RAE,
    VITC,
    THIA,
    RIBF,
    NIA,
    VITB6A,
    FOL,
    FOLDFE,
    VITB12,
    VITK1,
    TOCPHA,
    MG,
    P,
    ZN,
    CU,
    MN,
    SE,
    CHOLN,
    PANTAC,
    CAFFN,
    ALC,
};

inline constexpr std::size_t kComponentCount = 41;

/// How a component is written.
struct ComponentFacts {
    Component component;
    std::string_view tagname;  ///< "ENERC_KCAL"
    std::string_view unit;     ///< "kcal", "kJ", "g", "mg" or "µg"
    std::string_view name;     ///< "energy"
    int decimals;              ///< that people read: 0 for kcal, 1 for g (common practice)
};

/// All components in their order.
[[nodiscard]] const std::array<ComponentFacts, kComponentCount>& allComponents();

/// How that component is written.
[[nodiscard]] const ComponentFacts& factsOf(Component component);

/// The component of that tagname, case as written; nothing if there is none.
[[nodiscard]] std::optional<Component> componentNamed(std::string_view tagname);

/// Its place in every table and block.
[[nodiscard]] constexpr std::size_t indexOf(Component component) {
    return static_cast<std::size_t>(component);
}

/// One value per component.
template <class T>
using PerComponent = std::array<T, kComponentCount>;

}  // namespace nettare
