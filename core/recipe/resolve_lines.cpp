#include "core/food/piece_word.h"
#include "core/recipe/counted_amount.h"
#include "core/recipe/dossier_builder.h"
#include "core/support/json.h"

namespace nettare {

// A series of prawns says nothing about bulbs: the line must count what the series weighs.
void DossierBuilder::bindSeries(Scope& scope, const LineEntry& entry, Line& line) {
    if (entry.series) {
        const std::string place = line.pointer + "/series/id";
        const std::size_t index = find(scope.names.series, entry.series->series, place);
        line.series = Line::SeriesRef{index, entry.series->use};
        if (failure_) return;
        const SeriesData& series = dossier_.series[index];
        const bool matches =
            series.kind == SeriesKind::PerPiece     ? samePiece(entry.piece.value_or(""), series.of)
            : series.kind == SeriesKind::PerMeasure ? entry.unit.value_or("") == series.of
                                                    : false;
        if (!matches)
            note(Error{ErrorCode::SeriesKindDiffers}
                     .with("found", series.id)
                     .with("of", series.kind == SeriesKind::Ratio ? "a ratio" : series.of)
                     .with("wanted", entry.piece ? *entry.piece : entry.unit.value_or(""))
                     .at(place));
    }
}

// Ratios are of what is weighed before and after.
std::size_t DossierBuilder::ratioSeries(Scope& scope, const std::string& id,
                                        const std::string& place) {
    const std::size_t index = find(scope.names.series, id, place);
    if (!failure_ && dossier_.series[index].kind != SeriesKind::Ratio)
        note(Error{ErrorCode::SeriesKindDiffers}
                 .with("found", id)
                 .with("of", dossier_.series[index].of)
                 .with("wanted", "a ratio")
                 .at(place));
    return index;
}

void DossierBuilder::bindTrim(Scope& scope, const LineEntry& entry, Line& line) {
    if (entry.trim) line.trim = ratioSeries(scope, *entry.trim, line.pointer + "/trim");
}

void DossierBuilder::bindYield(Scope& scope, const LineEntry& entry, Line& line) {
    if (!entry.yield) return;
    const StateYield& yield = *entry.yield;
    YieldData data{yield.to, {}, yield.inverse, 1, yield.within.value(), yield.reason};
    if (yield.series)
        data.series = ratioSeries(scope, *yield.series, line.pointer + "/yield/series");
    if (yield.factor) data.factor = yield.factor->value();
    line.yield = std::move(data);
}

Amount DossierBuilder::lineAmount(Scope& scope, const std::string& text,
                                  const std::string& pointer) {
    return counted(amount(text, pointer), scope.loaded.document.counting.ranges);
}

// A pint is another one in each system, and none in the metric: then whoever writes it says which.
const Unit* DossierBuilder::unit(Scope& scope, const std::string& symbol,
                                 const std::string& pointer) {
    const Unit* unit = findUnit(symbol, scope.loaded.document.measures);
    if (unit == nullptr) note(Error{ErrorCode::UnitNotInSystem}.with("found", symbol).at(pointer));
    return unit;
}

std::optional<UnitAmount> DossierBuilder::quantity(Scope& scope,
                                                   const std::optional<MeasuredAmount>& measured,
                                                   const std::string& pointer) {
    if (!measured) return std::nullopt;
    return UnitAmount{lineAmount(scope, measured->amount, pointer + "/amount"),
                      unit(scope, measured->unit, pointer + "/unit")};
}

// Spoons and cups become units of the document's own system here; from then on only factors count.
Line DossierBuilder::line(Scope& scope, const LineEntry& entry, const std::string& pointer) {
    Line line;
    line.id = entry.id;
    line.pointer = pointer;
    if (!entry.toTaste) line.amount = lineAmount(scope, entry.amount, pointer + "/amount");
    if (entry.unit) line.unit = unit(scope, *entry.unit, pointer + "/unit");
    line.toTaste = entry.toTaste;
    line.optional = entry.optional;
    line.fill = entry.fill;
    line.each = quantity(scope, entry.each, pointer + "/each");
    line.equals = quantity(scope, entry.equals, pointer + "/equals");
    line.state = entry.state;
    line.density = entry.density;
    line.piece = entry.piece.value_or("");
    const std::size_t food = find(scope.names.foods, entry.food, pointer + "/food");
    if (!failure_) {
        line.what = scope.foods[food].what;
        line.name = scope.foods[food].name;
    }
    line.preparation = entry.preparation;
    line.size = entry.size;
    line.asPurchased = entry.asPurchased;
    checkKept(entry, line);
    line.weighed = findAll(scope.names.readings, entry.weighed, pointer + "/weighed");
    if (entry.weighedFor)
        line.weighedFactor =
            line.amount.middle() /
            lineAmount(scope, *entry.weighedFor, pointer + "/weighed_for").middle();
    bindSeries(scope, entry, line);
    bindTrim(scope, entry, line);
    bindYield(scope, entry, line);
    line.assumed = entry.assumed;
    line.way = entry.way;
    return line;
}

void DossierBuilder::checkKept(const LineEntry& entry, const Line& line) {
    if (failure_ || !std::holds_alternative<RecipeIndex>(line.what)) return;
    const std::pair<std::string_view, bool> keys[] = {{"series", entry.series.has_value()},
                                                      {"trim", entry.trim.has_value()},
                                                      {"assumed", entry.assumed.has_value()},
                                                      {"way", entry.way.has_value()},
                                                      {"size", !entry.size.empty()},
                                                      {"as_purchased", entry.asPurchased},
                                                      {"to_taste", entry.toTaste},
                                                      {"fill", entry.fill.has_value()},
                                                      {"each", entry.each.has_value()},
                                                      {"equals", entry.equals.has_value()},
                                                      {"state", entry.state.has_value()},
                                                      {"yield", entry.yield.has_value()},
                                                      {"density", entry.density.has_value()}};
    for (const auto& [key, given] : keys)
        if (given)
            note(Error{ErrorCode::NotForKeptRecipe}
                     .with("key", key)
                     .with("food", line.name)
                     .at(pointerTo(line.pointer, key)));
}

void DossierBuilder::countLines(Recipe& recipe) {
    for (const Line& line : recipe.lines) {
        if (failure_) return;
        const auto* kept = std::get_if<RecipeIndex>(&line.what);
        recipe.writtenOut += kept != nullptr ? dossier_.recipes[kept->index].writtenOut : 1;
        if (recipe.writtenOut > kMostWrittenOut)
            note(Error{ErrorCode::TooManyLines}
                     .with("most", std::to_string(kMostWrittenOut))
                     .at(line.pointer));
    }
}

void DossierBuilder::addLines(Scope& scope, Recipe& recipe) {
    const RecipeDocument& document = scope.loaded.document;
    for (std::size_t i = 0; i < document.lines.size() && !failure_; ++i) {
        const std::string pointer = pointerTo("/lines", i);
        name(scope.names.lines, document.lines[i].id, i, pointer);
        recipe.lines.push_back(line(scope, document.lines[i], pointer));
    }
}

}  // namespace nettare
