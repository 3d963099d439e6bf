#include "core/quantity/unit.h"

namespace nettare {

namespace {

using enum MeasureSystem;

}  // namespace

const Unit* findUnit(std::string_view symbol, MeasureSystem system) {
    // The litre has two symbols, l and L (SI Brochure, table 8, from memory); documents keep one.
    if (symbol == "mL") symbol = "ml";
    if (symbol == "L") symbol = "l";
    for (const Unit& unit : allUnits())
        if (unit.symbol == symbol && (!unit.system || unit.system == system)) return &unit;
    return nullptr;
}

const Unit* findSizeOfThing(std::string_view thing) {
    for (const Unit& unit : allSizesOfThings())
        if (unit.symbol == thing) return &unit;
    return nullptr;
}

std::optional<MeasureSystem> measureSystemNamed(std::string_view name) {
    for (const MeasureSystem system : {UsCustomary, UsLabel, Metric, Imperial, Australian})
        if (nameOf(system) == name) return system;
    return std::nullopt;
}

std::string_view nameOf(MeasureSystem system) {
    switch (system) {
        case UsCustomary:
            return "us";
        case UsLabel:
            return "label";
        case Metric:
            return "metric";
        case Imperial:
            return "imperial";
        case Australian:
            return "australian";
    }
    return {};
}

bool isShownByScales(const Unit& unit) {
    return unit.kind == UnitKind::Mass && unit.symbol != "stick";
}

Mass massOf(double amount, const Unit& unit) {
    return Mass::fromGrams(amount * unit.factor.value());
}

Volume volumeOf(double amount, const Unit& unit) {
    return Volume::fromMillilitres(amount * unit.factor.value());
}

}  // namespace nettare
