#include "core/recipe/shared_weighing.h"

namespace nettare {

namespace {

template <class Thing>
std::size_t append(std::vector<Thing>& things, Thing thing) {
    things.push_back(std::move(thing));
    return things.size() - 1;
}

/// The place of what is the same; else the thing is added.
template <class Places, class Thing>
std::size_t addOnce(Places& places, typename Places::key_type key, std::vector<Thing>& things,
                    Thing thing) {
    const auto [place, isNew] = places.emplace(std::move(key), things.size());
    if (isNew) things.push_back(std::move(thing));
    return place->second;
}

}  // namespace

std::size_t SharedWeighing::add(Scale scale) {
    // A scale whose unit is none is refused; until then it has no symbol.
    if (!shares_ || scale.unit == nullptr) return append(dossier_.scales, std::move(scale));
    decltype(scales_)::key_type key{scale.id, scale.name, scale.unit->symbol,
                                    scale.readability.text(), scale.calibrationRelative};
    return addOnce(scales_, std::move(key), dossier_.scales, std::move(scale));
}

std::size_t SharedWeighing::add(Vessel vessel) {
    if (!shares_) return append(dossier_.vessels, std::move(vessel));
    decltype(vessels_)::key_type key{vessel.id, vessel.name, vessel.scale, vessel.tare.text()};
    return addOnce(vessels_, std::move(key), dossier_.vessels, std::move(vessel));
}

std::size_t SharedWeighing::add(Indication indication) {
    if (!shares_ || indication.at.empty())
        return append(dossier_.indications, std::move(indication));
    Shown key{indication.id, indication.scale, indication.shown.text(), indication.state,
              indication.at};
    return addOnce(indications_, std::move(key), dossier_.indications, std::move(indication));
}

std::size_t SharedWeighing::add(const Reading& reading) {
    if (!shares_) return append(dossier_.readings, reading);
    const auto* vessel = std::get_if<Reading::KnownTare>(&reading.tare);
    const std::size_t tare =
        vessel != nullptr ? vessel->vessel : std::get<Reading::ShownTare>(reading.tare).indication;
    return addOnce(readings_, {reading.id, reading.pieces, reading.gross, vessel != nullptr, tare},
                   dossier_.readings, reading);
}

std::size_t SharedWeighing::add(SeriesData series) {
    if (!shares_) return append(dossier_.series, std::move(series));
    Repeated key = repeated(series);
    return addOnce(series_, std::move(key), dossier_.series, std::move(series));
}

SharedWeighing::Shown SharedWeighing::shown(std::size_t indication) const {
    const Indication& one = dossier_.indications[indication];
    return {one.id, one.scale, one.shown.text(), one.state, one.at};
}

SharedWeighing::Weighed SharedWeighing::weighed(std::size_t reading) const {
    const Reading& one = dossier_.readings[reading];
    TareShown tare;
    if (const auto* vessel = std::get_if<Reading::KnownTare>(&one.tare))
        tare = vessel->vessel;
    else
        tare = shown(std::get<Reading::ShownTare>(one.tare).indication);
    return {one.id, one.pieces, shown(one.gross), std::move(tare)};
}

SharedWeighing::Repeated SharedWeighing::repeated(const SeriesData& series) const {
    std::vector<Weighed> all;
    for (const std::size_t reading : series.readings) all.push_back(weighed(reading));
    for (const auto& [before, after] : series.pairs) {
        all.push_back(weighed(before));
        all.push_back(weighed(after));
    }
    Pooled pooled{series.pooled, {}, {}, {}};
    if (const auto& earlier = series.earlier)
        pooled = {false, earlier->name, earlier->spread.text(), earlier->freedom.text()};
    return {series.id, series.name, series.kind, series.of, std::move(pooled), std::move(all)};
}

}  // namespace nettare
