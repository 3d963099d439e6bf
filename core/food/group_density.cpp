#include "core/food/group_density.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "core/food/volume_measure.h"

namespace nettare {

namespace {

/// The middle value; of an even number the mean of the middle two.
double middleOf(std::vector<double> values) {
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

GroupDensity densityOf(const std::string& group, const std::vector<double>& densities) {
    GroupDensity density;
    density.group = group;
    density.foods = static_cast<int>(densities.size());
    density.gramsPerMl = middleOf(densities);
    double squares = 0;
    for (const double one : densities) {
        const double off = one / density.gramsPerMl - 1;
        squares += off * off;
    }
    density.relativeSpread = std::sqrt(squares / (density.foods - 1));
    return density;
}

}  // namespace

double GroupDensity::within() const {
    return std::sqrt(3.0) * relativeSpread * gramsPerMl;
}

std::string GroupDensity::reason() const {
    return fmt::format("{}: median of {} foods of the table", group, foods);
}

std::optional<double> gramsPerMlOf(const std::vector<HouseholdMeasure>& measures) {
    double largest = 0;
    std::optional<double> density;
    for (const HouseholdMeasure& measure : measures) {
        const auto unit = measure.qualifier.empty() ? volumeOfMeasure(measure.unit) : std::nullopt;
        if (!unit || *unit * measure.amount <= largest) continue;
        largest = *unit * measure.amount;
        density = measure.grams / largest;
    }
    return density;
}

std::vector<GroupDensity> groupDensities(const std::vector<TableFood>& foods) {
    std::map<std::string, std::vector<double>> groups;
    for (const TableFood& food : foods)
        if (const auto density = gramsPerMlOf(food.measures))
            groups[food.group].push_back(*density);
    return groupDensities(groups);
}

std::vector<GroupDensity> groupDensities(const std::map<std::string, std::vector<double>>& groups) {
    std::vector<GroupDensity> densities;
    for (const auto& [group, values] : groups)
        if (values.size() >= kFewestOfGroup) densities.push_back(densityOf(group, values));
    return densities;
}

}  // namespace nettare
