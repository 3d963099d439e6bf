#include <cmath>

#include "app/command_line/series_page.h"
#include "core/nutrition/student_t.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// Adds u, nu, low and high of a value whose 95 % half-width has that freedom.
void writeInterval(double value, double within, double freedom, Json& json) {
    json.set("u", Json{within / coverageFactor(freedom)}).set("nu", Json{freedom});
    json.set("low", Json{value - within}).set("high", Json{value + within});
}

Json withinJson(const ValueWithin& value, double freedom) {
    Json json = Json::object();
    json.set("value", Json{value.value});
    writeInterval(value.value, value.within, freedom, json);
    return json;
}

/// The same where the value is known as so many times its standard uncertainty.
void writeIntervalByT(double value, double t, double freedom, Json& json) {
    if (t != 0) writeInterval(value, coverageFactor(freedom) * std::fabs(value / t), freedom, json);
    json.set("t", Json{t}).set("nu", Json{freedom});
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
    if (against.freedom > 0) writeIntervalByT(against.difference, against.t, against.freedom, json);
    if (against.moreToTell)
        json.set("more_to_tell", Json{static_cast<double>(*against.moreToTell)});
    return json;
}

/// With what the spread is pooled: s in the terms of KnownSpread, of ratios a share.
Json pooledWithJson(const std::string& name, KnownSpread known, int readings) {
    Json json = Json::object();
    json.set("name", Json{name}).set("s", Json{known.spread}).set("nu", Json{known.freedom});
    if (readings > 0) json.set("g", Json{static_cast<double>(readings)});
    return json;
}

template <class Report>
void writePool(const BenchSeries& series, const Report& report, Json& json) {
    if (report.basis != SpreadBasis::Pooled) return;
    if (const auto& earlier = series.earlier)
        json.set("pooled_with", pooledWithJson(earlier->name, earlier->known, earlier->readings));
    else
        json.set("pooled_with",
                 pooledWithJson("the assumed spread",
                                assumedBeside(report.statistics, questionOf(series).assumed), 0));
}

void writeReport(const BenchSeries& series, Json& json) {
    const SeriesReport& report = *series.report;
    const PieceStatistics& statistics = report.statistics;
    json.set("g", Json{static_cast<double>(statistics.readings)});
    json.set("n", Json{static_cast<double>(statistics.pieces)});
    json.set("s", Json{statistics.spread}).set("nu", Json{statistics.freedom});
    json.set("spread", Json{basisWord(report.basis)});
    writePool(series, report, json);
    json.set("mean", withinJson(report.mean, statistics.freedom));
    json.set("next", withinJson(report.next, statistics.freedom));
    if (report.others) json.set("others", withinJson(*report.others, statistics.freedom));
    if (report.more) json.set("more", Json{static_cast<double>(*report.more)});
    if (series.enough > 0) json.set("none_suffices", Json{report.noneSuffices});
    if (report.drift) {
        Json drift = Json::object();
        drift.set("per_reading", Json{report.drift->perReading});
        writeIntervalByT(report.drift->perReading, report.drift->t, report.drift->freedom, drift);
        drift.set("significant", Json{report.drift->significant});
        json.set("drift", std::move(drift));
    }
    if (report.against) json.set("against", againstJson(*report.against, *series.published));
}

void writeRatio(const BenchSeries& series, Json& json) {
    const RatioReport& report = *series.ratio;
    json.set("g", Json{static_cast<double>(report.statistics.readings)});
    json.set("s", Json{report.statistics.residualSpread});
    const double freedom = report.statistics.freedom;
    json.set("nu", Json{freedom}).set("spread", Json{basisWord(report.basis)});
    json.set("ratio", withinJson(report.ratio, freedom));
    writePool(series, report, json);
    if (report.next) json.set("next", withinJson(*report.next, freedom));
}

Json readingJson(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    Json json = Json::object();
    json.set("id", Json{entry.id}).set("at", Json{entry.at}).set("unit", Json{entry.unit});
    if (reading.net) json.set("net", Json{reading.net->text()});
    if (reading.before) json.set("before", Json{reading.before->text()});
    json.set("pieces", Json{static_cast<double>(entry.pieces)});
    json.set("counts", Json{reading.countsInSeries()}).set("in_doubt", Json{reading.suspect});
    if (reading.asWeighed) json.set("as_weighed", Json{true});
    if (!reading.reason.empty()) json.set("reason", Json{reading.reason});
    if (reading.tareOverruled) json.set("tare_taken_back", Json{reading.tareReason});
    if (reading.beforeOverruled) json.set("before_taken_back", Json{reading.beforeReason});
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
    if (series.ratio) writeRatio(series, json);
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
