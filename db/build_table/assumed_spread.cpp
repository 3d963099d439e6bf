#include "db/build_table/assumed_spread.h"

#include "core/food/volume_measure.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

bool followsByClosure(Component component) {
    return component == Component::CHOCDF || component == Component::ENERC_KCAL ||
           component == Component::ENERC_KJ;
}

PerComponent<std::optional<double>> mediansOf(const PerComponent<std::vector<double>>& spreads) {
    PerComponent<std::optional<double>> medians{};
    for (std::size_t i = 0; i < kComponentCount; ++i) medians[i] = medianOf(spreads[i]);
    return medians;
}

}  // namespace

std::optional<double> medianOf(std::vector<double> values) {
    if (values.empty()) return std::nullopt;
    std::ranges::sort(values);
    const std::size_t middle = values.size() / 2;
    if (values.size() % 2 == 1) return values[middle];
    return (values[middle - 1] + values[middle]) / 2;
}

std::optional<double> relativeSpread(Component component, double per100g,
                                     std::optional<double> standardError, int n) {
    if (followsByClosure(component) || !standardError || per100g <= 0) return std::nullopt;
    return *standardError * std::sqrt(static_cast<double>(n)) / per100g;
}

AssumedSpreads assumedSpreads(const SpreadsByGroup& groups) {
    PerComponent<std::vector<double>> all{};
    AssumedSpreads assumed;
    for (const auto& [name, spreads] : groups) {
        assumed.byGroup[name] = mediansOf(spreads);
        for (std::size_t i = 0; i < kComponentCount; ++i)
            all[i].insert(all[i].end(), spreads[i].begin(), spreads[i].end());
    }
    assumed.overAllGroups = mediansOf(all);
    return assumed;
}

AssumedSpreads assumedSpreads(const std::vector<TableFood>& foods) {
    SpreadsByGroup groups;
    for (const TableFood& food : foods) {
        PerComponent<std::vector<double>>& group = groups[food.group];
        for (const ComponentFacts& facts : allComponents()) {
            const Component component = facts.component;
            const Spread& spread = food.profile.spread[indexOf(component)];
            const auto relative = relativeSpread(component, food.profile[component].value_or(0),
                                                 spread.standardError, spread.n);
            if (relative) group[indexOf(component)].push_back(*relative);
        }
    }
    return assumedSpreads(groups);
}

void MeasureSpreadSample::add(const HouseholdMeasure& measure) {
    if (measure.standardDeviation)
        (volumeOfMeasure(measure.unit) ? volumes_ : pieces_)
            .push_back(*measure.standardDeviation / measure.grams);
}

MeasureSpreads MeasureSpreadSample::spreads() const {
    return {.pieceRelative = medianOf(pieces_),
            .pieceRows = static_cast<int>(pieces_.size()),
            .volumeRelative = medianOf(volumes_),
            .volumeRows = static_cast<int>(volumes_.size())};
}

MeasureSpreads measureSpreads(const std::vector<TableFood>& foods) {
    MeasureSpreadSample sample;
    for (const TableFood& food : foods)
        for (const HouseholdMeasure& measure : food.measures) sample.add(measure);
    return sample.spreads();
}

}  // namespace nettare
