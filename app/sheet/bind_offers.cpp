#include "app/sheet/bind_offers.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

namespace nettare {

namespace {

/// So far back readings are looked for, and so many are offered.
constexpr int kReadingsLookedAt = 400;
constexpr std::size_t kMostReadings = 8;

struct BindWords {
    Q_DECLARE_TR_FUNCTIONS(BindOffer)
};

/// The first word in the singular: "prawns, peeled" and "prawn meat" are of one food.
std::string firstWord(const std::string& what) {
    const std::string folded = foldedWhat(what);
    std::string word = folded.substr(0, folded.find_first_of(" ,"));
    if (word.ends_with('s')) word.pop_back();
    return word;
}

bool isOfFood(const LineToBind& line, const std::string& what, const std::string& row) {
    return (!row.empty() && row == line.row) || firstWord(line.food) == firstWord(what);
}

QString tagsText(const std::vector<std::string>& tags) {
    QStringList texts;
    for (const std::string& tag : tags) texts += QString::fromStdString(tag);
    return texts.isEmpty() ? QString{} : QStringLiteral(" · ") + texts.join(QStringLiteral(" · "));
}

QString gramsText(const LedgerReading& reading) {
    return QString::fromStdString(reading.net->text() + " " + reading.entry().unit);
}

QString pooledText(const SeriesPooling& pooling) {
    if (pooling.earlier)
        return BindWords::tr(", pooled with %1").arg(QString::fromStdString(pooling.earlier->name));
    return pooling.assumed ? BindWords::tr(", pooled with the usual spread") : QString{};
}

QString seriesText(const SeriesToBind& series) {
    const auto counting = std::ranges::count_if(series.readings, &LedgerReading::counts);
    const QString what = QString::fromStdString(series.key.what);
    const QString of = QString::fromStdString(series.key.of);
    const QString words = series.key.kind == SeriesKind::Ratio
                              ? BindWords::tr("ratio %2 of %1").arg(what, of)
                              : BindWords::tr("series %1, per %2").arg(what, of);
    const QString readings =
        counting == 1 ? BindWords::tr("1 reading") : BindWords::tr("%1 readings").arg(counting);
    return BindWords::tr("%1%2, %3").arg(words, tagsText(series.tags), readings) +
           pooledText(series.pooling.value_or(SeriesPooling{}));
}

/// All readings of the key, and those of each condition alone where there are several.
Result<void> addSeries(const Kitchen& kitchen, const SeriesSummary& summary, bool ownFood,
                       const PoolChoices& pools, std::vector<BindOffer>& offers) {
    std::vector<std::vector<std::string>> conditions{{}};
    for (const std::string& tag : summary.tags) conditions.push_back({tag});
    for (const auto& tags : conditions) {
        auto series = seriesToBind(kitchen, summary.key, tags);
        if (!series) return fail(series.error());
        if (std::ranges::none_of(series->readings, &LedgerReading::counts)) continue;
        auto pooling = poolingBy(kitchen, pools.of(summary.key, tags));
        if (!pooling) return fail(pooling.error());
        series->pooling = std::move(*pooling);
        QString text = seriesText(*series);
        offers.push_back({std::move(text), ownFood, std::move(*series)});
    }
    return {};
}

std::optional<LedgerReading> named(const std::vector<LedgerReading>& readings,
                                   const std::string& id) {
    const auto found = std::ranges::find_if(
        readings, [&](const LedgerReading& each) { return each.entry().id == id; });
    return found == readings.end() ? std::nullopt : std::optional{*found};
}

Result<void> addReadings(const Kitchen& kitchen, const LineToBind& line, const ScaleChecks& checks,
                         std::vector<BindOffer>& offers) {
    const auto page = kitchen.ledgerPage(0, kReadingsLookedAt);
    if (!page) return fail(page.error());
    const auto readings = readingsOf(*page, checks);
    std::size_t found = 0;
    for (auto reading = readings.rbegin(); reading != readings.rend() && found < kMostReadings;
         ++reading) {
        const LedgerEntry& entry = reading->entry();
        if (!reading->counts() || !reading->net || reading->net->coefficient() <= 0) continue;
        if (entry.what.empty() || !isOfFood(line, entry.what, entry.row)) continue;
        const QString text = BindWords::tr("reading %1 of %2, %3")
                                 .arg(gramsText(*reading), QString::fromStdString(entry.what),
                                      QString::fromStdString(entry.at).left(16).replace(
                                          QLatin1Char{'T'}, QLatin1Char{' '}));
        const std::string& first = entry.takenFrom.empty() ? entry.tare : entry.takenFrom;
        offers.push_back({text, true, ReadingToBind{*reading, named(readings, first)}});
        ++found;
    }
    return {};
}

}  // namespace

Result<std::vector<BindOffer>> bindOffers(const Kitchen& kitchen, const LineToBind& line,
                                          const PoolChoices& pools) {
    const auto kept = kitchen.seriesKept();
    if (!kept) return fail(kept.error());
    const auto checks = kitchen.scaleChecks();
    if (!checks) return fail(checks.error());
    std::vector<SeriesSummary> fitting;
    for (const SeriesSummary& summary : *kept) {
        const bool ratio = summary.key.kind == SeriesKind::Ratio;
        const bool ownFood = isOfFood(line, summary.key.what, {});
        if (ratio ? ownFood : summary.key.of == line.counted) fitting.push_back(summary);
    }
    std::ranges::stable_sort(fitting, std::greater<>{}, [&](const SeriesSummary& summary) {
        return isOfFood(line, summary.key.what, {});
    });
    std::vector<BindOffer> offers;
    for (const SeriesSummary& summary : fitting)
        if (const auto added =
                addSeries(kitchen, summary, isOfFood(line, summary.key.what, {}), pools, offers);
            !added)
            return fail(added.error());
    if (const auto added = addReadings(kitchen, line, *checks, offers); !added)
        return fail(added.error());
    return offers;
}

}  // namespace nettare
