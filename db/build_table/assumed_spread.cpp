#include "db/build_table/assumed_spread.h"

#include "core/food/volume_measure.h"

#include <algorithm>
#include <cmath>

namespace nettare {

namespace {

using RelativeSpreads = PerComponent<std::vector<double>>;

bool followsByClosure(Component component) {
    return component == Component::CHOCDF || component == Component::ENERC_KCAL ||
           component == Component::ENERC_KJ;
}

std::optional<double> relativeSpread(const Profile& profile, Component component) {
    const Spread& spread = profile.spread[indexOf(component)];
    const double mean = profile[component].value_or(0);
    if (followsByClosure(component) || !spread.standardError || mean <= 0) return std::nullopt;
    return *spread.standardError * std::sqrt(static_cast<double>(spread.n)) / mean;
}

PerComponent<std::optional<double>> mediansOf(const RelativeSpreads& spreads) {
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

AssumedSpreads assumedSpreads(const std::vector<TableFood>& foods) {
    std::map<std::string, RelativeSpreads> groups;
    RelativeSpreads all{};
    for (const TableFood& food : foods) {
        RelativeSpreads& group = groups[food.group];
        for (const ComponentFacts& facts : allComponents())
            if (const auto relative = relativeSpread(food.profile, facts.component)) {
                group[indexOf(facts.component)].push_back(*relative);
                all[indexOf(facts.component)].push_back(*relative);
            }
    }
    AssumedSpreads assumed;
    assumed.overAllGroups = mediansOf(all);
    for (const auto& [name, spreads] : groups) assumed.byGroup[name] = mediansOf(spreads);
    return assumed;
}

MeasureSpreads measureSpreads(const std::vector<TableFood>& foods) {
    std::vector<double> pieces;
    std::vector<double> volumes;
    for (const TableFood& food : foods)
        for (const HouseholdMeasure& measure : food.measures)
            if (measure.standardDeviation)
                (volumeOfMeasure(measure.unit) ? volumes : pieces)
                    .push_back(*measure.standardDeviation / measure.grams);
    return {.pieceRelative = medianOf(pieces),
            .pieceRows = static_cast<int>(pieces.size()),
            .volumeRelative = medianOf(volumes),
            .volumeRows = static_cast<int>(volumes.size())};
}

}  // namespace nettare
