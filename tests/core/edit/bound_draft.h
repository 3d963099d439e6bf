#pragma once

#include <catch2/catch.hpp>

#include "core/edit/place.h"
#include "core/edit/series_edits.h"
#include "core/nutrition/way_to_grams.h"
#include "core/recipe/dossier.h"
#include "core/recipe/read_recipe.h"
#include "demo.h"

namespace nettare {

/// A recipe that goes through edits; each one is taken back and made again.
struct BoundDraft {
    Json document = demo::skewers();

    BoundDraft& make(const Result<Edit>& edit) {
        REQUIRE(edit);
        const Json before = document;
        document = *applied(document, *edit);
        REQUIRE(readRecipe(document));
        CHECK(writeJson(*applied(document, inverseOf(*edit))) == writeJson(before));
        return *this;
    }
    BoundDraft& follow(const SeriesToBind& series) {
        const auto edit = followSeries(document, series);
        REQUIRE(edit);
        REQUIRE(*edit);
        return make(**edit);
    }
    [[nodiscard]] std::string at(const std::string& place) const {
        const Json* value = valueAt(document, place);
        return value == nullptr ? "nothing" : writeJson(*value);
    }
    [[nodiscard]] std::size_t count(const char* list) const {
        return document.find(list)->items()->size();
    }
    [[nodiscard]] Dossier dossier() const {
        const auto any = [](const TableRow& row) -> Result<std::optional<TableFood>> {
            TableFood food;
            food.row = row;
            food.name = row.number;
            return std::optional{food};
        };
        const auto none = [](const std::string&, const std::string&) -> Result<LoadedRecipe> {
            return fail(Error{ErrorCode::FileNotReadable});
        };
        const auto made = makeDossier({"main", *readRecipe(document)}, any, none);
        REQUIRE(made);
        return *made;
    }
    /// The chosen way of a line.
    [[nodiscard]] OpenWay way(const char* line) const {
        const auto index = indexOfId(*document.find("lines"), line);
        const auto ways = waysToGrams(dossier(), 0, *index);
        REQUIRE(ways);
        return ways->way();
    }
};

}  // namespace nettare
