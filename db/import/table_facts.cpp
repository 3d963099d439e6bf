#include "db/import/table_facts.h"

#include <SQLiteCpp/Statement.h>

#include <map>

#include "core/food/group_density.h"
#include "db/build_table/assumed_spread.h"
#include "db/build_table/bind.h"
#include "db/columns.h"

namespace nettare {

namespace {

HouseholdMeasure measureAt(SQLite::Statement& row) {
    return {.amount = row.getColumn(1).getDouble(),
            .unit = textAt(row, 2),
            .qualifier = textAt(row, 3),
            .grams = row.getColumn(4).getDouble(),
            .n = 0,
            .standardDeviation = numberAt(row, 5)};
}

/// The densities of foods by group, and the spreads of their measures.
class MeasureReading {
public:
    explicit MeasureReading(const GroupedFoods& foods) : foods_{&foods} {}

    void add(std::uint32_t food, HouseholdMeasure measure) {
        if (food != food_) endFood();
        food_ = food;
        spreads.add(measure);
        measures_.push_back(std::move(measure));
    }
    void endFood() {
        if (const auto density = gramsPerMlOf(measures_))
            densities[foods_->nameOf(food_)].push_back(*density);
        measures_.clear();
    }

    MeasureSpreadSample spreads;
    std::map<std::string, std::vector<double>> densities;

private:
    const GroupedFoods* foods_;
    std::uint32_t food_ = 0;
    std::vector<HouseholdMeasure> measures_;
};

std::map<std::string, int> idsOf(const GroupedFoods& foods) {
    std::map<std::string, int> ids;
    for (const std::string& group : foods.groups)
        ids.emplace(group, static_cast<int>(ids.size()) + 1);
    return ids;
}

void writeGroupSpreads(SQLite::Statement& row, int group, const AssumedSpreads& assumed,
                       const PerComponent<std::optional<double>>& medians) {
    for (std::size_t i = 0; i < kComponentCount; ++i) {
        const auto relative = medians[i] ? medians[i] : assumed.overAllGroups[i];
        if (!relative) continue;
        row.bind(1, group);
        row.bind(2, static_cast<int>(i));
        bindNumber(row, 3, relative);
        row.bind(4, medians[i] ? 0 : 1);
        row.exec();
        row.reset();
    }
}

}  // namespace

void writeIdentity(SQLite::Database& database, const TableTarget& target,
                   const MeasureSpreads& spreads) {
    SQLite::Statement row{database, "INSERT INTO identity VALUES (1, ?, ?, ?, ?, ?, ?, ?)"};
    bindText(row, 1, target.table);
    bindText(row, 2, target.release);
    bindText(row, 3, target.citation);
    bindNumber(row, 4, spreads.pieceRelative);
    row.bind(5, spreads.pieceRows);
    bindNumber(row, 6, spreads.volumeRelative);
    row.bind(7, spreads.volumeRows);
    row.exec();
}

void writeAssumedSpreads(SQLite::Database& database, const GroupedFoods& foods,
                         const std::vector<ValueRows::RelativeSpread>& spreads) {
    SpreadsByGroup byGroup;
    for (const std::string& group : foods.groups) byGroup[group];
    for (const auto& one : spreads)
        byGroup[foods.nameOf(one.food)][indexOf(one.component)].push_back(one.relative);
    const AssumedSpreads assumed = assumedSpreads(byGroup);
    SQLite::Statement row{database, "INSERT INTO assumed_spread VALUES (?, ?, ?, ?)"};
    for (const auto& [group, id] : idsOf(foods))
        writeGroupSpreads(row, id, assumed, assumed.byGroup.at(group));
}

MeasureSpreads writeDensities(SQLite::Database& database, const GroupedFoods& foods) {
    MeasureReading reading{foods};
    SQLite::Statement rows{database, R"sql(
        SELECT food_id, amount, unit, qualifier, grams, standard_deviation_grams
        FROM measure ORDER BY food_id, position)sql"};
    while (rows.executeStep())
        reading.add(static_cast<std::uint32_t>(rows.getColumn(0).getInt64()), measureAt(rows));
    reading.endFood();
    const auto ids = idsOf(foods);
    SQLite::Statement row{database, "INSERT INTO group_density VALUES (?, ?, ?, ?)"};
    for (const GroupDensity& density : groupDensities(reading.densities)) {
        row.bind(1, ids.at(density.group));
        row.bind(2, density.gramsPerMl);
        row.bind(3, density.relativeSpread);
        row.bind(4, density.foods);
        row.exec();
        row.reset();
    }
    return reading.spreads.spreads();
}

}  // namespace nettare
