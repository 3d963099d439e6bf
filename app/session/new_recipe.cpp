#include "app/session/new_recipe.h"

#include "core/recipe/read_recipe.h"

namespace nettare {

Json newRecipeDocument(const std::string& title) {
    Json makes = Json::object();
    makes.set("pieces", Json{"1"}).set("piece", Json{"piece"}).set("plural", Json{"pieces"});
    Json portion = Json::object();
    portion.set("pieces", Json{"1"});
    Json scale = Json::object();
    scale.set("id", Json{"scale"}).set("name", Json{"kitchen scale"});
    scale.set("unit", Json{"g"}).set("readability", Json{"1"});
    Json scales = Json::array();
    scales.append(std::move(scale));
    Json document = Json::object();
    document.set("format", Json{kRecipeFormat});
    document.set("version", Json{static_cast<double>(kRecipeVersion)});
    document.set("title", Json{title}).set("measures", Json{"us"});
    document.set("makes", std::move(makes)).set("portion", std::move(portion));
    document.set("scales", std::move(scales));
    document.set("foods", Json::array()).set("lines", Json::array());
    return document;
}

}  // namespace nettare
