#include "app/bench/series_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "core/publish/number_text.h"
#include "core/publish/series_text.h"

namespace nettare {

namespace {

struct SeriesWords {
    Q_DECLARE_TR_FUNCTIONS(SeriesCard)
};

QString seriesName(const SeriesKey& key) {
    const QString what = QString::fromStdString(key.what), of = QString::fromStdString(key.of);
    if (key.kind == SeriesKind::Ratio) return SeriesWords::tr("%1: %2").arg(what, of);
    return SeriesWords::tr("%1 per %2").arg(what, of);
}

SeriesTexts textsOf(const BenchSeries& series) {
    if (series.report) return seriesTexts(series.key, *series.report, questionOf(series));
    if (series.ratio) return ratioTexts(series.key, *series.ratio, questionOf(series));
    return {};
}

}  // namespace

QString unbroken(const std::string& text) {
    constexpr QChar kNoBreak{0x00A0};
    static const QRegularExpression kUnit{
        QStringLiteral("(?<=\\d) (?=(g|%|oz|lb|kg|kcal|kJ|mg|µg)(\\W|$))")};
    return QString::fromStdString(text)
        .replace(kUnit, kNoBreak)
        .replace(QStringLiteral("± "), QStringLiteral("±") + kNoBreak);
}

QString seriesHeading(const SeriesKey& key) {
    QString name = seriesName(key);
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}

QString seriesChoice(const SeriesSummary& series) {
    return SeriesWords::tr("%1 · %2").arg(seriesName(series.key)).arg(series.readings);
}

QString poolText(const PoolChoice& pool) {
    if (pool.earlier)
        return SeriesWords::tr("Pooled with %1")
            .arg(QString::fromStdString(earlierName(*pool.earlier)));
    return pool.usual ? SeriesWords::tr("Pooled with the usual spread")
                      : SeriesWords::tr("Pooled with nothing");
}

QString seriesSummary(const BenchSeries& series) {
    const QString summary = unbroken(textsOf(series).summary);
    return summary.isEmpty() ? SeriesWords::tr("No reading counts here.") : summary;
}

QStringList seriesSentences(const BenchSeries& series) {
    const SeriesTexts texts = textsOf(series);
    QStringList sentences{(unbroken(texts.next) + u' ' + unbroken(texts.others)).trimmed()};
    for (const std::string* each :
         {&texts.against, &series.notInTable, &texts.spread, &texts.more, &texts.drift})
        if (!each->empty()) sentences << unbroken(*each);
    if (series.pool.earlier && !series.earlier)
        sentences << SeriesWords::tr(
                         "Fewer than two readings of %1 count, so there is no spread "
                         "to pool with.")
                         .arg(QString::fromStdString(earlierName(*series.pool.earlier)));
    return sentences;
}

const LedgerReading* outlierOf(const BenchSeries& series) {
    std::optional<std::size_t> place;
    if (series.report) place = series.report->outlier;
    if (series.ratio) place = series.ratio->outlier;
    if (!place || *place >= series.counted.size()) return nullptr;
    return &series.readings[series.counted[*place]];
}

QString outlierQuestion(const BenchSeries& series) {
    const LedgerReading* const reading = outlierOf(series);
    if (reading == nullptr) return {};
    return QString::fromStdString(nettare::outlierQuestion(readingText(*reading).toStdString()));
}

QString readingText(const LedgerReading& reading) {
    if (!reading.net) return SeriesWords::tr("a reading without a net");
    QString mass =
        SeriesWords::tr("%1 %2").arg(QString::fromStdString(printedDecimal(*reading.net)),
                                     QString::fromStdString(reading.entry().unit));
    if (reading.before)
        return SeriesWords::tr("%1 of %2")
            .arg(mass, QString::fromStdString(printedDecimal(*reading.before)));
    if (reading.entry().pieces == 1) return mass;
    return SeriesWords::tr("%1 of %n pieces", nullptr, reading.entry().pieces).arg(mass);
}

}  // namespace nettare
