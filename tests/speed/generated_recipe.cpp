#include "generated_recipe.h"

namespace speed {

using namespace nettare;

namespace {

constexpr std::size_t kFoods = 40;

/// Repeatable numbers between 0 and 1 without a library's distribution.
class Numbers {
public:
    double next() {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return static_cast<double>(state_ >> 40U) / static_cast<double>(1U << 24U);
    }

private:
    std::uint64_t state_ = 20261125;
};

Food generatedFood(std::size_t index, Numbers& numbers) {
    Food food;
    food.name = "food " + std::to_string(index);
    food.identity = food.name;
    TableFood row;
    row.row = {"generated", "1", std::to_string(index)};
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        row.profile.per100g[k] = 1 + 10 * numbers.next();
        row.profile.spread[k] = {0.1 + numbers.next(), 8, {}};
    }
    row.factors = {6.25, 2.44, 8.37, 3.57};
    row.measures = {{1, "cup", "", 100 + 100 * numbers.next(), 0, {}},
                    {1, "clove", "", 3 + numbers.next(), 12, 0.4}};
    food.table = row;
    return food;
}

void addReading(Dossier& dossier, std::size_t grossOf, std::size_t tareOf) {
    Reading reading;
    reading.id = "r" + std::to_string(dossier.readings.size());
    reading.gross = grossOf;
    reading.tare = Reading::ShownTare{tareOf};
    dossier.readings.push_back(reading);
}

/// One bowl that every weighed line goes into: neighbours share an indication.
void addChain(Dossier& dossier, std::size_t count) {
    dossier.scales.push_back(
        {"s", "scale", findUnit("g", MeasureSystem::UsCustomary), Decimal{1, 0}, 0.002});
    for (std::size_t i = 0; i <= count; ++i)
        dossier.indications.push_back({"i" + std::to_string(i), 0,
                                       Decimal{static_cast<std::int64_t>(300 + 37 * i), 0},
                                       WeighedState::EdiblePortion, ""});
    for (std::size_t i = 0; i < count; ++i) addReading(dossier, i + 1, i);
}

Line generatedLine(std::size_t index, const Dossier& dossier) {
    Line line;
    line.id = "line-" + std::to_string(index);
    line.amount = Amount{Fraction{3}, Fraction{3}, "3"};
    line.what = FoodIndex{index % kFoods};
    line.name = dossier.foods[index % kFoods].name;
    if (index % 4 == 0) line.weighed = {index};
    if (index % 4 == 1) line.series = Line::SeriesRef{0, SeriesUse::Others};
    if (index % 4 == 3)
        line.unit = findUnit("cup", MeasureSystem::UsCustomary);
    else
        line.piece = "clove";
    return line;
}

}  // namespace

Dossier generatedDossier(std::size_t lines) {
    Dossier dossier;
    Numbers numbers;
    for (std::size_t i = 0; i < kFoods; ++i) dossier.foods.push_back(generatedFood(i, numbers));
    addChain(dossier, lines + 2);
    dossier.series.push_back({"series", "series", SeriesKind::PerPiece, "clove", {0, 1, 2, 3}, {}});
    Recipe recipe;
    recipe.title = "generated";
    recipe.pieces = *Count::from(Fraction{10});
    recipe.portionPieces = Count::from(Fraction{2});
    Residue residue;
    residue.kind = ResidueKind::Mixture;
    residue.readings = {lines};
    for (std::size_t i = 0; i < lines; ++i) {
        recipe.lines.push_back(generatedLine(i, dossier));
        if (i < 8) residue.lines.push_back(i);
    }
    recipe.residues = {residue};
    recipe.cooked = {lines + 1};
    dossier.recipes.push_back(std::move(recipe));
    return dossier;
}

}  // namespace speed
