#include "db/import/ranked_foods.h"

#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <cmath>

#include "core/recipe/words.h"
#include "db/build_table/bind.h"
#include "db/build_table/row_rank.h"
#include "db/columns.h"
#include "db/import/imported_traits.h"
#include "db/search/kitchen_names.h"
#include "db/search/list_words.h"

namespace nettare {

namespace {

constexpr auto kByRank = R"sql(
    SELECT food_id, number, name, other_names, group_id, refuse_percent, refuse_note,
           nitrogen, protein, fat, carbohydrate, place, rank_of_row(name, group_id, place)
    FROM staged_food ORDER BY 13, number)sql";

/// How often goOn is asked, in foods, and how much of the index is merged between two askings.
constexpr int kFoodsBetween = 4096;
constexpr int kPagesBetween = 4096;

ProcessingPlace placeOf(int stored, bool told, std::string_view name, std::string_view group) {
    return told ? static_cast<ProcessingPlace>(stored) : processingPlace(name, group);
}

/// SQL: rank_of_row(name, group_id, place or NULL).
void rankOfRow(sqlite3_context* context, int /*count*/, sqlite3_value** values) {
    const auto* foods = static_cast<const GroupedFoods*>(sqlite3_user_data(context));
    const auto* text = static_cast<const char*>(sqlite3_value_blob(values[0]));
    const std::string_view name{text, static_cast<std::size_t>(sqlite3_value_bytes(values[0]))};
    const std::string& group =
        foods->groups[static_cast<std::size_t>(sqlite3_value_int(values[1])) - 1];
    const bool told = sqlite3_value_type(values[2]) != SQLITE_NULL;
    const ProcessingPlace place = placeOf(sqlite3_value_int(values[2]), told, name, group);
    sqlite3_result_int64(context, rowRank({.name = name, .group = group, .place = place}));
}

/// The names, one a line, with those that kitchens use for such a food.
std::string withKitchenNames(std::string names, std::string_view foodName) {
    for (const std::string& name : kitchenNamesOf(foodName)) {
        if (!names.empty()) names += '\n';
        names += name;
    }
    return names;
}

/// Writes foods one after the other, as rows 1, 2, 3 ...
class FoodRows {
public:
    FoodRows(SQLite::Database& database, const GroupedFoods& foods, const ValueRows& values)
        : foods_{&foods},
          values_{&values},
          food_{database,
                "INSERT INTO food VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
                "NULL, ?)"},
          words_{database, "INSERT INTO food_words (rowid, name, other_names) VALUES (?, ?, ?)"} {}

    void write(SQLite::Statement& staged) {
        const auto id = static_cast<std::uint32_t>(staged.getColumn(0).getInt64());
        const std::string name = textAt(staged, 2);
        const ProcessingPlace place =
            placeOf(staged.getColumn(11).getInt(), !staged.getColumn(11).isNull(), name,
                    foods_->nameOf(id));
        // A product goes by its maker's name.
        const std::string otherNames = place == ProcessingPlace::Branded
                                           ? textAt(staged, 3)
                                           : withKitchenNames(textAt(staged, 3), name);
        food_.bind(1, ++row_);
        food_.bind(2, id);
        bindText(food_, 3, textAt(staged, 1));
        bindText(food_, 4, name);
        bindText(food_, 5, otherNames);
        food_.bind(6, staged.getColumn(4).getInt());
        food_.bind(7, static_cast<int>(place));
        bindFigures(id);
        bindPublished(staged);
        bindTraits(importedTraits(name, foods_->nameOf(id), place));
        food_.exec();
        food_.reset();
        writeWords(name, otherNames);
    }

private:
    void bindFigures(std::uint32_t id) {
        const double energy = values_->energyKcal(id);
        bindNumber(food_, 8, std::isnan(energy) ? std::nullopt : std::optional{energy});
        food_.bind(9, values_->known(id));
    }
    void bindPublished(SQLite::Statement& staged) {
        bindNumber(food_, 10, numberAt(staged, 5));
        bindNote(food_, 11, textAt(staged, 6));
        for (int factor = 0; factor < 4; ++factor)
            bindNumber(food_, 13 + factor, numberAt(staged, 7 + factor));
    }
    void bindTraits(const ImportedTraits& traits) {
        food_.bind(12, traits.plant ? 1 : 0);
        bindText(food_, 17, wordFor(traits.addedSugars.kind, kAddedSugarWords));
        bindText(food_, 18, traits.addedSugars.reason);
    }
    void writeWords(const std::string& name, const std::string& otherNames) {
        words_.bind(1, row_);
        words_.bindNoCopy(2, name);
        words_.bindNoCopy(3, otherNames);
        words_.exec();
        words_.reset();
    }

    const GroupedFoods* foods_;
    const ValueRows* values_;
    SQLite::Statement food_, words_;
    std::int64_t row_ = 0;
};

/// Brings the index into one piece, as 'optimize' does, but by steps.
bool mergeWords(SQLite::Database& database, const TableWriter::GoOn& goOn) {
    SQLite::Statement merge{database,
                            "INSERT INTO food_words (food_words, rank) VALUES ('merge', ?)"};
    // The first, with a minus, takes in all pieces; a step that writes nothing has nothing to do.
    for (int pages = -kPagesBetween;; pages = kPagesBetween) {
        const int before = database.getTotalChanges();
        merge.bind(1, pages);
        merge.exec();
        merge.reset();
        if (database.getTotalChanges() - before < 2) return true;
        if (goOn && !goOn()) return false;
    }
}

}  // namespace

bool writeRankedFoods(SQLite::Database& database, const GroupedFoods& foods,
                      const ValueRows& values, const TableWriter::GoOn& goOn) {
    database.createFunction("rank_of_row", 3, true, const_cast<GroupedFoods*>(&foods), rankOfRow);
    SQLite::Statement staged{database, kByRank};
    FoodRows rows{database, foods, values};
    for (int count = 1; staged.executeStep(); ++count) {
        rows.write(staged);
        if (count % kFoodsBetween == 0 && goOn && !goOn()) return false;
    }
    if (!mergeWords(database, goOn)) return false;
    listWords(database);
    return true;
}

}  // namespace nettare
