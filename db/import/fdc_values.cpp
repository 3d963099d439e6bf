#include <array>
#include <set>
#include <unordered_map>

#include "core/support/text.h"
#include "db/import/fdc_foods.h"
#include "db/import/nutrient_numbers.h"
#include "db/import/one_line.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

// FoodData Central download, field descriptions, from memory. nutrient_nbr is the number that the
// Standard Reference has as well; amounts are for 100 g in the unit of nutrient.csv.
//
// Energy is 208 alone. Some foods have it by general or by specific factors only (957, 958): taken
// for 208, foods computed by different methods would stand side by side as if they were alike. It
// is kept under its own number, and the food's energy is missing.
constexpr std::array<FdcColumn, 4> kNutrientColumns{
    {{"id"}, {"name"}, {"unit_name"}, {"nutrient_nbr"}}};
constexpr std::array<FdcColumn, 3> kDerivationColumns{{{"id"}, {"code"}, {"description"}}};
constexpr std::array<FdcColumn, 5> kValueColumns{
    {{"fdc_id"}, {"nutrient_id"}, {"amount"}, {"data_points", false}, {"derivation_id", false}}};

/// A nutrient of the download.
struct FdcNutrient {
    std::string number, name, unit;
    std::optional<Component> component;
    int powerOfTen = 0;    ///< to the component's unit
    int stored = -1;       ///< in the table file; -1 until its first value
    std::size_t rows = 0;  ///< taken under its own number
};

struct FdcDerivation {
    std::string code, description;
    int stored = -1;
};

/// Reads the values, which are most of a download: nothing is kept of a row.
class FdcValues {
public:
    explicit FdcValues(FdcImport& import) : import_{import} {}

    Result<void> readAll() {
        if (auto read = readNutrients(); !read) return read;
        if (auto read = readDerivations(); !read) return read;
        auto read = eachFdcRow(import_, "food_nutrient.csv", kValueColumns,
                               [&](FdcFile& file) { takeRow(file); });
        for (const auto& [id, nutrient] : nutrients_)
            if (nutrient.rows > 0)
                import_.run.report.unnamedComponents[nutrient.number] = nutrient.rows;
        return read;
    }

private:
    Result<void> readNutrients() {
        return eachFdcRow(import_, "nutrient.csv", kNutrientColumns, [&](FdcFile& file) {
            const auto id = fdcId(file[0]);
            if (!id) return;
            FdcNutrient nutrient;
            nutrient.number = trimmed(file[3]);
            nutrient.name = oneLine(file[1]);
            nutrient.unit = unitOfUsda(trimmed(file[2]));
            // Several nutrients may share a number, or have none: the first keeps it.
            const bool first = !nutrient.number.empty() && numbers_.insert(nutrient.number).second;
            if (first)
                findComponent(nutrient);
            else
                nutrient.number = "id " + std::to_string(*id);
            if (nutrient.name.empty()) nutrient.name = nutrient.number;
            if (nutrient.unit.empty()) nutrient.unit = "?";
            nutrients_.emplace(*id, std::move(nutrient));
        });
    }

    /// A unit that is not the component's in another size leaves the nutrient one of its own.
    static void findComponent(FdcNutrient& nutrient) {
        const auto component = componentOfNutrientNumber(nutrient.number);
        if (!component) return;
        const auto power = powerOfTenBetween(nutrient.unit, factsOf(*component).unit);
        if (!power) return;
        nutrient.component = component;
        nutrient.powerOfTen = *power;
    }

    Result<void> readDerivations() {
        constexpr std::string_view kName = "food_nutrient_derivation.csv";
        if (!import_.files.has(kName)) return {};
        return eachFdcRow(import_, kName, kDerivationColumns, [&](FdcFile& file) {
            if (const auto id = fdcId(file[0]))
                derivations_.emplace(
                    *id, FdcDerivation{std::string{trimmed(file[1])}, oneLine(file[2])});
        });
    }

    void takeRow(FdcFile& file) {
        const auto food = foodOfRow(import_, file, 0);
        if (!food || file[2].empty()) return;
        FdcNutrient* const nutrient = nutrientOf(file[1]);
        if (nutrient == nullptr) {
            ++import_.run.report.unknownComponents[std::string{file[1]}];
            return;
        }
        const auto amount = readScaledNumber(file[2], '.', nutrient->powerOfTen);
        if (!amount || *amount < 0) {
            const ErrorCode code = amount ? ErrorCode::CellNegative : ErrorCode::CellNotANumber;
            file.reject(file.errorHere(code).with("found", file[2]).with("column", "amount"));
            return;
        }
        NewValue value;
        value.component = storedComponent(*nutrient);
        value.per100g = *amount;
        value.dataPoints = static_cast<int>(fdcId(file[3]).value_or(0));
        value.derivation = derivationOf(file[4]);
        if (!import_.writer.value(*food, value))
            file.reject(file.errorHere(ErrorCode::RowRepeated)
                            .with("found", std::string{file[0]} + " " + nutrient->number));
        else if (!nutrient->component)
            ++nutrient->rows;
    }

    FdcNutrient* nutrientOf(std::string_view text) {
        const auto id = fdcId(text);
        const auto found = id ? nutrients_.find(*id) : nutrients_.end();
        return found == nutrients_.end() ? nullptr : &found->second;
    }

    int storedComponent(FdcNutrient& nutrient) {
        if (nutrient.stored >= 0) return nutrient.stored;
        if (nutrient.component) {
            import_.writer.ourComponent(*nutrient.component, nutrient.number);
            nutrient.stored = static_cast<int>(indexOf(*nutrient.component));
        } else {
            nutrient.stored =
                import_.writer.component(nutrient.number, "", nutrient.name, nutrient.unit);
        }
        return nutrient.stored;
    }

    std::optional<int> derivationOf(std::string_view text) {
        const auto id = fdcId(text);
        const auto found = id ? derivations_.find(*id) : derivations_.end();
        if (found == derivations_.end()) return std::nullopt;
        FdcDerivation& derivation = found->second;
        if (derivation.stored < 0)
            derivation.stored = import_.writer.derivation(derivation.code, derivation.description);
        return derivation.stored;
    }

    FdcImport& import_;
    std::unordered_map<std::uint32_t, FdcNutrient> nutrients_;
    std::unordered_map<std::uint32_t, FdcDerivation> derivations_;
    std::set<std::string> numbers_;
};

}  // namespace

Result<void> readFdcValues(FdcImport& import) {
    return FdcValues{import}.readAll();
}

}  // namespace nettare
