#include <fmt/core.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

#include "app/kitchen/keep_draft.h"
#include "app/words/error_sentence.h"
#include "db/food_table.h"

// keep_many TABLE KITCHEN RECIPES REVISIONS: makes a kitchen of so many generated recipes of ten
// lines with so many kept revisions each. Foods are those of the table; all weights are invented.

namespace nettare {

namespace {

constexpr auto kAt = "2026-05-16T12:00:00+02:00";
constexpr int kLines = 10;
constexpr int kTogether = 500;  // revisions of one transaction

[[noreturn]] void giveUp(const Error& error) {
    fmt::print(stderr, "keep_many: {}\n", errorSentence(error));
    std::exit(1);
}

template <class T>
T orGiveUp(Result<T> result) {
    if (!result) giveUp(result.error());
    return std::move(*result);
}

bool has(const std::vector<TableFood>& foods, const TableFood& food) {
    return std::ranges::find(foods, food.row, &TableFood::row) != foods.end();
}

/// Foods of the table that have a plain cup, so that every line has two ways to its grams.
std::vector<TableFood> foodsWithCups(const FoodTable& table) {
    const auto isPlainCup = [](const HouseholdMeasure& measure) {
        return measure.unit == "cup" && measure.qualifier.empty();
    };
    std::vector<TableFood> foods;
    for (const char* word : {"raw", "flour", "oil", "beans", "cheese", "nuts", "juice", "dried"})
        for (const FoodHit& hit : orGiveUp(table.search(word, 20))) {
            auto food = orGiveUp(table.find(hit.row.number));
            if (food && std::ranges::any_of(food->measures, isPlainCup) && !has(foods, *food))
                foods.push_back(std::move(*food));
        }
    return foods;
}

/// A document of ten lines: weighed into one bowl, as written, and by the cup in turn.
class GeneratedDocument {
public:
    GeneratedDocument(const std::vector<TableFood>& foods, int recipe, int revision)
        : foods_{foods}, recipe_{recipe}, revision_{revision} {
        for (int line = 0; line < kLines; ++line) add(line);
    }

    [[nodiscard]] std::string text() const {
        return fmt::format(
            R"({{"format":"nettare recipe","version":1,"title":"Generated {}","measures":"us",)"
            R"("makes":{{"pieces":"8","piece":"piece","plural":"pieces"}},)"
            R"("portion":{{"pieces":"2"}},)"
            R"("scales":[{{"id":"s","name":"scale","unit":"g","readability":"1"}}],)"
            R"("indications":[{}],"readings":[{}],"foods":[{}],"lines":[{}]}})",
            recipe_, indications_, readings_, foodEntries_, lines_);
    }

    [[nodiscard]] const TableFood& food(int line) const {
        const std::size_t place =
            static_cast<std::size_t>(recipe_) * 7 + static_cast<std::size_t>(line);
        return foods_[place % foods_.size()];
    }

private:
    void add(int line) {
        append(foodEntries_,
               fmt::format(R"({{"id":"f{0}","name":"food {0}","table":{{"table":"usda-sr",)"
                           R"("release":"28","number":"{1}"}}}})",
                           line, food(line).row.number));
        append(lines_, fmt::format(R"({{"id":"l{0}","food":"f{0}",{1}}})", line, amount(line)));
    }

    std::string amount(int line) {
        if (line % 3 == 1)
            return fmt::format(R"("amount":"{}","unit":"g")",
                               10 + (recipe_ * 3 + revision_ + line) % 200);
        if (line % 3 == 2)
            return fmt::format(R"("amount":"{}","unit":"cup")", 1 + (revision_ + line) % 3);
        shown_ += 40 + (recipe_ + revision_ + line * 17) % 90;
        append(indications_, fmt::format(R"({{"id":"i{}","scale":"s","shown":"{}",)"
                                         R"("state":"edible portion"}})",
                                         line, shown_));
        append(readings_, fmt::format(R"({{"id":"r{0}","gross":"i{0}","tare":"{1}"}})", line,
                                      std::exchange(before_, fmt::format("i{}", line))));
        return fmt::format(R"("amount":"1","piece":"piece","weighed":["r{}"])", line);
    }

    static void append(std::string& list, const std::string& entry) {
        (list += list.empty() ? "" : ",") += entry;
    }

    const std::vector<TableFood>& foods_;
    int recipe_, revision_;
    int shown_ = 300;
    std::string before_ = "bowl";
    std::string indications_ = R"({"id":"bowl","scale":"s","shown":"300","state":"empty"})";
    std::string readings_, foodEntries_, lines_;
};

/// Fills the kitchen with revisions, many in one transaction.
class Filling {
public:
    Filling(Kitchen& kitchen, const std::vector<TableFood>& foods, int revisions)
        : kitchen_{kitchen}, foods_{foods}, revisions_{revisions} {}

    /// The next few of all `count`; false after the last one.
    bool keepSome(int count) {
        const int last = std::min(next_ + kTogether, count);
        if (auto kept = kitchen_.together([&] { return keepUntil(last); }); !kept)
            giveUp(kept.error());
        return next_ < count;
    }

private:
    Result<void> keepUntil(int last) {
        for (; next_ < last; ++next_) {
            const GeneratedDocument document{foods_, next_ / revisions_, next_ % revisions_};
            const Json json = orGiveUp(parseJson(document.text()));
            if (next_ % revisions_ == 0) recipe_ = orGiveUp(kitchen_.addRecipe(json, kAt));
            Closure closure;
            for (int line = 0; line < kLines; ++line) closure.foods.push_back(document.food(line));
            const auto revision = revisionToKeep(json, closure, "generated", kAt, {});
            if (!revision) return fail(revision.error());
            if (auto kept = kitchen_.keep(recipe_, *revision); !kept) return fail(kept.error());
        }
        return {};
    }

    Kitchen& kitchen_;
    const std::vector<TableFood>& foods_;
    int revisions_;
    int next_ = 0;
    std::string recipe_;
};

}  // namespace

}  // namespace nettare

int main(int argc, char** argv) {
    using namespace nettare;
    if (argc != 5) return 2;
    const auto foods = foodsWithCups(orGiveUp(FoodTable::open(argv[1])));
    const int recipes = std::atoi(argv[3]);
    const int revisions = std::atoi(argv[4]);
    if (recipes < 1 || revisions < 1 || foods.size() < kLines) return 2;
    Kitchen kitchen = orGiveUp(Kitchen::create(argv[2], kAt));
    Filling filling{kitchen, foods, revisions};
    while (filling.keepSome(recipes * revisions)) {
    }
}
