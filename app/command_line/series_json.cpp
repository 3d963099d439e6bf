#include "app/command_line/series_page.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

Json withinJson(const ValueWithin& value) {
    Json json = Json::object();
    json.set("value", Json{value.value}).set("low", Json{value.value - value.within});
    json.set("high", Json{value.value + value.within});
    return json;
}

constexpr std::string_view basisWord(SpreadBasis basis) {
    switch (basis) {
        case SpreadBasis::FewOwn:
            return "few own";
        case SpreadBasis::Assumed:
            return "assumed";
        case SpreadBasis::Pooled:
            return "pooled";
        case SpreadBasis::Own:
            break;
    }
    return "own";
}

constexpr std::string_view verdictWord(AgainstTable verdict) {
    return verdict == AgainstTable::Differs  ? "differs"
           : verdict == AgainstTable::Agrees ? "no difference shows"
                                             : "cannot be told";
}

Json againstJson(const AgainstPublished& against, const PublishedMean& published) {
    Json json = Json::object();
    json.set("source", Json{published.source}).set("mean", Json{published.mean});
    json.set("n", Json{static_cast<double>(published.count)});
    if (published.deviation) json.set("s", Json{*published.deviation});
    json.set("verdict", Json{verdictWord(against.verdict)});
    json.set("difference", Json{against.difference});
    if (against.freedom > 0) json.set("t", Json{against.t}).set("nu", Json{against.freedom});
    if (against.moreToTell)
        json.set("more_to_tell", Json{static_cast<double>(*against.moreToTell)});
    return json;
}

void writeReport(const BenchSeries& series, Json& json) {
    const SeriesReport& report = *series.report;
    const PieceStatistics& statistics = report.statistics;
    json.set("g", Json{static_cast<double>(statistics.readings)});
    json.set("n", Json{static_cast<double>(statistics.pieces)});
    json.set("s", Json{statistics.spread}).set("nu", Json{statistics.freedom});
    json.set("spread", Json{basisWord(report.basis)});
    json.set("mean", withinJson(report.mean)).set("next", withinJson(report.next));
    if (report.others) json.set("others", withinJson(*report.others));
    if (report.more) json.set("more", Json{static_cast<double>(*report.more)});
    if (series.enough > 0) json.set("none_suffices", Json{report.noneSuffices});
    if (report.drift) {
        Json drift = Json::object();
        drift.set("per_reading", Json{report.drift->perReading}).set("t", Json{report.drift->t});
        drift.set("nu", Json{report.drift->freedom});
        drift.set("significant", Json{report.drift->significant});
        json.set("drift", std::move(drift));
    }
    if (report.against) json.set("against", againstJson(*report.against, *series.published));
}

void writeRatio(const RatioReport& report, Json& json) {
    json.set("g", Json{static_cast<double>(report.statistics.readings)});
    json.set("s", Json{report.statistics.residualSpread});
    json.set("nu", Json{report.statistics.freedom});
    json.set("spread", Json{basisWord(report.basis)}).set("ratio", withinJson(report.ratio));
    if (report.next) json.set("next", withinJson(*report.next));
}

Json readingJson(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    Json json = Json::object();
    json.set("id", Json{entry.id}).set("at", Json{entry.at}).set("unit", Json{entry.unit});
    if (reading.net) json.set("net", Json{reading.net->text()});
    if (reading.before) json.set("before", Json{reading.before->text()});
    json.set("pieces", Json{static_cast<double>(entry.pieces)});
    json.set("counts", Json{reading.counts()}).set("in_doubt", Json{reading.suspect});
    if (!reading.reason.empty()) json.set("reason", Json{reading.reason});
    Json tags = Json::array();
    for (const std::string& tag : entry.series->tags) tags.append(Json{tag});
    json.set("tags", std::move(tags));
    return json;
}

}  // namespace

Json seriesJson(const BenchSeries& series) {
    Json json = Json::object();
    json.set("food", Json{series.key.what}).set("of", Json{series.key.of});
    json.set("kind", Json{wordFor(series.key.kind, kSeriesWords)});
    if (series.report) writeReport(series, json);
    if (series.ratio) writeRatio(*series.ratio, json);
    const auto odd = series.report  ? series.report->outlier
                     : series.ratio ? series.ratio->outlier
                                    : std::nullopt;
    if (odd) json.set("odd", Json{series.readings[series.counted[*odd]].entry().id});
    Json readings = Json::array();
    for (const LedgerReading& reading : series.readings) readings.append(readingJson(reading));
    json.set("readings", std::move(readings));
    return json;
}

}  // namespace nettare
