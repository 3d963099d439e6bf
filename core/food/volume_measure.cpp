#include "core/food/volume_measure.h"

namespace nettare {

std::optional<double> volumeOfMeasure(std::string_view unit) {
    const Unit* known = findUnit(unit == "fl_oz" ? "fl oz" : unit, MeasureSystem::UsCustomary);
    if (known == nullptr || known->kind != UnitKind::Volume || known->isVague())
        return std::nullopt;
    return volumeOf(1, *known).millilitres();
}

bool isMeasuredIn(std::string_view tableWord, const Unit& unit) {
    if (unit.kind != UnitKind::Volume) return false;
    if (const auto volume = volumeOfMeasure(tableWord)) return *volume == unit.factor.value();
    return tableWord == unit.symbol;
}

}  // namespace nettare
