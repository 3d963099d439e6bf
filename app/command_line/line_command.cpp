#include "app/command_line/line_command.h"

#include <fmt/core.h>

#include <cmath>
#include <ostream>

#include "app/command_line/show_recipe.h"
#include "app/words/error_sentence.h"
#include "core/edit/written_line.h"
#include "core/nutrition/line_findings.h"
#include "core/nutrition/way_to_grams.h"
#include "core/publish/finding_sentence.h"
#include "core/publish/number_text.h"
#include "core/publish/reading_text.h"
#include "core/publish/way_sentence.h"
#include "core/quantity/kitchen_measure.h"
#include "core/quantity/kitchen_volume.h"
#include "core/recipe/read_recipe.h"
#include "core/support/text.h"
#include "core/wording/line_meanings.h"
#include "core/wording/read_line.h"

namespace nettare {

namespace {

constexpr std::size_t kMostFoods = 4;

/// A recipe that holds nothing yet, in that system of measures.
Json emptyRecipe(std::string_view measures) {
    Json makes = Json::object();
    makes.set("pieces", Json{"1"}).set("piece", Json{"piece"}).set("plural", Json{"pieces"});
    Json portion = Json::object();
    portion.set("pieces", Json{"1"});
    Json recipe = Json::object();
    recipe.set("format", Json{kRecipeFormat}).set("version", Json{double{kRecipeVersion}});
    recipe.set("title", Json{"line"}).set("measures", Json{measures});
    return recipe.set("makes", std::move(makes)).set("portion", std::move(portion));
}

/// Foods of the table for the words, first with all of them, then without the first ones, which
/// tell more than the name: "extra-virgin olive oil".
Result<std::vector<FoodHit>> foodsFor(const FoodTables& tables, std::string_view words) {
    while (!words.empty()) {
        auto found = tables.search(words, kMostFoods);
        if (!found) return fail(found.error());
        // A slip is no food that the line names; `foods` forgives it.
        if (!found->hits.empty() && found->slips.empty()) return std::move(found->hits);
        const std::size_t space = words.find(' ');
        words = space == std::string_view::npos ? "" : words.substr(space + 1);
    }
    return std::vector<FoodHit>{};
}

/// How a volume is measured with cups and spoons, and the error that makes; nothing where it was
/// written so, and for what is no volume.
std::string measuredText(const LineReading& reading, std::string_view measures) {
    const auto system = measureSystemNamed(measures);
    if (!reading.amount || reading.amount->isRange() || reading.units.size() != 1 || !system)
        return {};
    const Unit* unit = findUnit(reading.units.front(), *system);
    if (unit == nullptr || unit->kind != UnitKind::Volume || unit->isVague()) return {};
    constexpr double kTolerance = 0.02;
    const auto spooned =
        writeMeasure(volumeOf(reading.amount->middle(), *unit), *system, kTolerance);
    if (!spooned) return {};
    const bool asWritten = spooned->parts.size() == 1 && spooned->parts.front().unit == unit &&
                           spooned->relativeError == 0;
    if (asWritten) return {};
    const std::string_view side = spooned->relativeError < 0 ? "less" : "more";
    const double percent = std::fabs(spooned->relativeError) * 100;
    return spooned->text() + (percent == 0 ? std::string{", exactly"}
                                           : fmt::format(", {} % {}", numberAt(1, percent), side));
}

std::string gramsRow(const OpenWay& way, bool chosen) {
    const double grams = way.grams.value();
    const int decimals = grams < 10 ? 2 : grams < 100 ? 1 : 0;
    return fmt::format("  {} {:<9}{:>8} g ± {:<6} ", chosen ? '>' : ' ', nameOf(way.way),
                       numberAt(decimals, grams), numberAt(decimals, 2 * way.grams.uncertainty()));
}

/// What could be stated of a volume whose food has no measure of one.
void showDensity(const Dossier& dossier, const FoodTables& tables, std::ostream& out) {
    const Line& line = dossier.main().lines.front();
    const auto* food = std::get_if<FoodIndex>(&line.what);
    if (food == nullptr || line.unit == nullptr || line.unit->kind != UnitKind::Volume) return;
    const auto& row = dossier.foods[food->index].table;
    const auto density = row ? tables.groupDensity(row->group) : std::nullopt;
    if (density && *density)
        out << fmt::format("  its group has a density that could be stated: {} g/ml ± {} ({})\n",
                           numberAt(3, (*density)->gramsPerMl), numberAt(3, (*density)->within()),
                           (*density)->reason());
}

void showWays(const Dossier& dossier, const FoodTables& tables, std::ostream& out) {
    const auto grams = waysToGrams(dossier, 0, 0);
    if (!grams) {
        Error error = grams.error();
        error.file.clear();
        error.pointer.clear();
        out << "  " << errorSentence(error) << '\n';
        showDensity(dossier, tables, out);
        return;
    }
    for (const OpenWay& way : grams->ways)
        out << gramsRow(way, &way == &grams->way()) << waySentence(dossier, 0, 0, way) << '\n';
    for (const LineFinding& finding : findingsOf(dossier, 0, 0, *grams))
        out << "  ! " << findingSentence(dossier, 0, 0, *grams, finding) << '\n';
}

/// The dossier of a recipe that has this one line.
Result<Dossier> dossierOf(const LineReading& reading, const FoodHit& hit, const FoodTables& tables,
                          std::string_view measures) {
    const Json empty = emptyRecipe(measures);
    const std::string name = hit.name.substr(0, hit.name.find(','));
    const auto edit = addWrittenLine(empty, 0, reading, {"", hit.row, name});
    if (!edit) return fail(edit.error());
    const auto json = applied(empty, edit->edit);
    if (!json) return fail(json.error());
    auto document = readRecipe(*json);
    if (!document) return fail(document.error());
    const FoodLookup foods = [&tables](const TableRow& row) { return tables.find(row); };
    const RecipeLookup recipes = [](const std::string&,
                                    const std::string&) -> Result<LoadedRecipe> {
        return fail(ErrorCode::NotAKeptRecipe);
    };
    return makeDossier({"", std::move(*document)}, foods, recipes);
}

}  // namespace

Result<void> showLine(const LineCommand& command, DossierLoader& loader, std::ostream& out) {
    std::string text;
    for (const std::string& word : command.words) (text += text.empty() ? "" : " ") += word;
    if (trimmed(text).empty()) return fail(ofArgument("LINE", {ErrorCode::EmptyText}));
    if (const auto measure = readKitchenMeasure(text)) {
        for (const std::string& row : kitchenMeasureLines(*measure)) out << row << '\n';
        return {};
    }
    const LineReading reading = readLine(text);
    out << readingText(reading);
    if (const std::string measured = measuredText(reading, command.measures); !measured.empty())
        out << fmt::format("  {:<13}{}\n", "measured as", measured);
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto hits = foodsFor(**tables, reading.food);
    if (!hits) return fail(hits.error());
    if (hits->empty()) {
        out << "No food of the table matches; its grams can be weighed or assumed.\n";
        return {};
    }
    const FoodHit& food = hits->front();
    out << fmt::format("{} ({})\n", food.name, food.row.text());
    const auto meanings = meaningsOf(reading);
    for (const LineReading& meaning : meanings) {
        if (meanings.size() > 1) out << "if " << meaningText(meaning) << ":\n";
        if (!meaning.amount && meaning.size.empty()) {
            out << "  no amount; weigh it, assume its grams, or let the recipe's rule count it\n";
            continue;
        }
        const auto dossier = dossierOf(meaning, food, **tables, command.measures);
        if (dossier)
            showWays(*dossier, **tables, out);
        else
            out << "  " << errorSentence(dossier.error()) << '\n';
    }
    for (std::size_t i = 1; i < hits->size(); ++i)
        out << (i == 1 ? "or: " : "    ")
            << fmt::format("{} ({})\n", (*hits)[i].name, (*hits)[i].row.text());
    return {};
}

}  // namespace nettare
