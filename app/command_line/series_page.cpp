#include "app/command_line/series_page.h"

#include <fmt/core.h>

#include <algorithm>
#include <initializer_list>

#include "app/command_line/weigh_on.h"
#include "core/publish/number_text.h"
#include "core/publish/series_text.h"

namespace nettare {

namespace {

Result<std::optional<TableFood>> foodOf(const Kitchen& kitchen, DossierLoader& loader,
                                        const std::string& text) {
    const auto row = rowNamed(text);
    if (!row) return std::optional<TableFood>{};
    auto kept = kitchen.food(*row);
    if (!kept || *kept) return kept;
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    return (*tables)->find(*row);
}

SeriesTexts textsToPrint(const BenchSeries& series) {
    if (series.report) return seriesTexts(series.key, *series.report, questionOf(series));
    return ratioTexts(series.key, *series.ratio, questionOf(series));
}

std::optional<std::size_t> oddPlace(const BenchSeries& series) {
    const auto odd = series.report ? series.report->outlier : series.ratio->outlier;
    return odd ? std::optional{series.counted[*odd]} : std::nullopt;
}

std::string netWords(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    if (!reading.net) return "no net";
    std::string text = fmt::format("{} {}", printedDecimal(*reading.net), entry.unit);
    if (reading.before)
        text += fmt::format(" of {} {}", printedDecimal(*reading.before), entry.unit);
    else if (entry.pieces != 1)
        text += fmt::format(", {} pieces", entry.pieces);
    return text;
}

/// Why a reading does not count, or is in doubt; empty where all is well.
std::string standing(const LedgerReading& reading) {
    if (!reading.supersededBy.empty()) return "taken back: " + reading.reason;
    if (reading.leftOut) return "left out: " + reading.reason;
    std::string why;
    const auto add = [&why](const std::string& more) {
        if (!why.empty()) why += "; ";
        why += more;
    };
    if (reading.beforeOverruled) add("what went in was taken back: " + reading.beforeReason);
    if (reading.tareOverruled)
        add(fmt::format(
            "{} was taken back: {}",
            reading.entry().takenFrom.empty() ? "its tare" : "what the jar showed before",
            reading.tareReason));
    if (reading.suspect) add("in doubt: a check of the scale failed");
    return why;
}

std::string readingLine(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    std::string line = fmt::format("  {}  {}  {}", shortId(entry.id), entry.at, netWords(reading));
    for (const std::string& tag : entry.series->tags) line += fmt::format("  [{}]", tag);
    if (const std::string why = standing(reading); !why.empty()) line += fmt::format("  {}", why);
    return line + "\n";
}

}  // namespace

std::string seriesTitle(const SeriesKey& key) {
    const char* joint = key.kind == SeriesKind::Ratio ? ": " : " per ";
    return fmt::format("{}{}{}", key.what, joint, key.of);
}

Result<BenchSeries> seriesIn(const Kitchen& kitchen, DossierLoader& loader,
                             const BenchSeries& asked) {
    auto series = readSeries(kitchen, asked.key, asked.tags, asked.pool);
    if (!series) return fail(series.error());
    BenchSeries& shown = series->shown;
    shown.others = asked.others;
    shown.enough = asked.enough;
    const auto food = foodOf(kitchen, loader, shown.row);
    if (!food) return fail(food.error());
    if (*food) holdAgainst(shown, **food);
    judge(*series);
    return std::move(shown);
}

std::string seriesLines(const BenchSeries& series) {
    if (!series.report && !series.ratio) return "No reading counts in it.\n";
    const SeriesTexts texts = textsToPrint(series);
    std::string lines;
    for (const std::string& text : {texts.summary, texts.next, texts.others, texts.more,
                                    texts.spread, texts.against, series.notInTable, texts.drift})
        if (!text.empty()) lines += fmt::format("{}\n", text);
    if (const auto odd = oddPlace(series))
        lines += fmt::format("{}: {}\n", shortId(series.readings[*odd].entry().id),
                             outlierQuestion(netWords(series.readings[*odd])));
    return lines;
}

std::string seriesPage(const BenchSeries& series, const std::string& promise) {
    std::string page =
        fmt::format("{}\n{}{}", seriesTitle(series.key), seriesLines(series), promise);
    for (const LedgerReading& reading : series.readings) page += readingLine(reading);
    return page;
}

}  // namespace nettare
