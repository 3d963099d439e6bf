#include "db/group_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "db/columns.h"

namespace nettare {

namespace {

FoodHit listedFood(SQLite::Statement& row, const TableIdentity& identity) {
    return {.row = {identity.table, identity.release, textAt(row, 0)},
            .name = textAt(row, 1),
            .group = textAt(row, 2),
            .energyKcalPer100g = numberAt(row, 3),
            .knownComponents = row.getColumn(4).getInt(),
            .place = static_cast<ProcessingPlace>(row.getColumn(5).getInt())};
}

}  // namespace

std::vector<FoodGroup> readGroups(SQLite::Database& database, const TableIdentity& identity) {
    SQLite::Statement rows{database, R"sql(
        SELECT g.name, count(*) FROM food f JOIN food_group g USING (group_id)
        GROUP BY f.group_id ORDER BY g.name)sql"};
    std::vector<FoodGroup> groups;
    while (rows.executeStep())
        groups.push_back({identity.table, identity.release, textAt(rows, 0),
                          static_cast<std::size_t>(rows.getColumn(1).getInt64())});
    return groups;
}

GroupPage readGroupPage(SQLite::Database& database, const TableIdentity& identity,
                        std::string_view group, std::int64_t next, int most) {
    SQLite::Statement rows{database, R"sql(
        SELECT f.number, f.name, g.name, f.energy_kcal_per_100g, f.known_components, f.place,
               f.row_order
        FROM food f JOIN food_group g USING (group_id)
        WHERE f.group_id = (SELECT group_id FROM food_group WHERE name = ?) AND f.row_order >= ?
        ORDER BY f.row_order LIMIT ?)sql"};
    rows.bind(1, std::string{group});
    rows.bind(2, next);
    rows.bind(3, most);
    GroupPage page;
    while (rows.executeStep()) {
        page.hits.push_back(listedFood(rows, identity));
        page.next = rows.getColumn(6).getInt64() + 1;
    }
    page.last = page.hits.size() < static_cast<std::size_t>(most);
    return page;
}

}  // namespace nettare
