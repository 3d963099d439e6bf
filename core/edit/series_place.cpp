#include "core/edit/series_place.h"

#include <algorithm>

#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// The tags of a series in their order, as readers take them.
std::vector<std::string> tagsOf(const Json& bench) {
    std::vector<std::string> tags;
    for (const Json& tag : itemsOf(bench, "tags"))
        if (tag.text() != nullptr) tags.push_back(*tag.text());
    std::ranges::sort(tags);
    return tags;
}

std::optional<SeriesKind> seriesKindOf(const Json& series) {
    for (const auto& [word, kind] : kSeriesWords)
        if (textAt(series, "kind") == word) return kind;
    return std::nullopt;
}

std::vector<std::string> sortedTexts(const Json::Array& entries) {
    std::vector<std::string> texts;
    texts.reserve(entries.size());
    for (const Json& entry : entries) texts.push_back(writeJson(entry));
    std::ranges::sort(texts);
    return texts;
}

}  // namespace

std::string_view SeriesPlace::listName() const {
    return kind == SeriesKind::Ratio ? "pairs" : "readings";
}

std::string SeriesPlace::member(std::string_view key) const {
    return pointerTo(pointerTo("/series", id), key);
}

std::optional<BenchName> benchOf(const Json& series) {
    const Json* bench = series.find("bench");
    const auto kind = seriesKindOf(series);
    if (bench == nullptr || !kind) return std::nullopt;
    const std::string_view of = textAt(*kind == SeriesKind::Ratio ? *bench : series, "of");
    return BenchName{{std::string{textAt(*bench, "what")}, *kind, std::string{of}}, tagsOf(*bench)};
}

Json benchJson(const SeriesKey& key, const std::vector<std::string>& tags) {
    Json bench = Json::object();
    bench.set("what", Json{key.what});
    if (key.kind == SeriesKind::Ratio) bench.set("of", Json{key.of});
    if (tags.empty()) return bench;
    Json list = Json::array();
    for (const std::string& tag : tags) list.append(Json{tag});
    return bench.set("tags", std::move(list));
}

std::optional<std::size_t> indexOfBench(const Json& document, const SeriesKey& key,
                                        const std::vector<std::string>& tags) {
    const Json::Array& series = itemsOf(document, "series");
    for (std::size_t i = 0; i < series.size(); ++i)
        if (const auto bench = benchOf(series[i]);
            bench && sameSeries(bench->key, key) && bench->tags == tags)
            return i;
    return std::nullopt;
}

std::optional<std::size_t> indexOfSame(const Json& document, const SeriesKey& key,
                                       const Json::Array& entries) {
    const std::vector<std::string> wanted = sortedTexts(entries);
    const SeriesPlace place{{}, key.kind};
    const Json::Array& series = itemsOf(document, "series");
    for (std::size_t i = 0; i < series.size(); ++i) {
        const bool free = series[i].find("bench") == nullptr && seriesKindOf(series[i]) == key.kind;
        const bool counts = key.kind == SeriesKind::Ratio || textAt(series[i], "of") == key.of;
        if (free && counts && sortedTexts(itemsOf(series[i], place.listName())) == wanted) return i;
    }
    return std::nullopt;
}

Json newSeries(const Json& document, const SeriesKey& key, const std::vector<std::string>& tags,
               Json list) {
    std::string name = key.what;
    for (const std::string& tag : tags) (name += ", ") += tag;
    Json series = Json::object();
    series.set("id", Json{freshId(document, "series", key.what)});
    series.set("name", Json{shortened(name, kNameLength - 1)});
    series.set("kind", Json{wordFor(key.kind, kSeriesWords)});
    if (key.kind != SeriesKind::Ratio) series.set("of", Json{key.of});
    series.set(SeriesPlace{{}, key.kind}.listName(), std::move(list));
    return series.set("bench", benchJson(key, tags));
}

SeriesPooling poolingOf(const Json& series) {
    SeriesPooling pooling;
    const Json* pooled = series.find("pooled");
    pooling.assumed = pooled != nullptr && pooled->boolean() != nullptr && *pooled->boolean();
    const Json* with = series.find("pooled_with");
    if (with == nullptr) return pooling;
    const auto spread = Decimal::read(textAt(*with, "s"));
    const auto freedom = Decimal::read(textAt(*with, "nu"));
    if (spread && freedom)
        pooling.earlier = EarlierEntry{std::string{textAt(*with, "name")}, *spread, *freedom};
    return pooling;
}

std::optional<Json> pooledJson(const SeriesPooling& pooling) {
    if (!pooling.assumed || pooling.earlier) return std::nullopt;
    return Json{true};
}

std::optional<Json> pooledWithJson(const SeriesPooling& pooling) {
    if (!pooling.earlier) return std::nullopt;
    Json with = Json::object();
    with.set("name", Json{shortened(pooling.earlier->name, kNameLength - 1)});
    return with.set("s", Json{pooling.earlier->spread.text()})
        .set("nu", Json{pooling.earlier->freedom.text()});
}

std::optional<FoodState> stateAfter(std::string_view ratio) {
    if (ratio == "cooked / raw") return FoodState::Cooked;
    if (ratio == "drained / whole" || ratio == "drained / total") return FoodState::Drained;
    return std::nullopt;
}

}  // namespace nettare
