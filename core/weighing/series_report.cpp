#include "core/weighing/series_report.h"

#include <cmath>

#include "core/weighing/outlier.h"

namespace nettare {

namespace {

SpreadBasis basisOf(int readings, bool pooled) {
    if (pooled) return SpreadBasis::Pooled;
    if (readings == 1) return SpreadBasis::Assumed;
    return readings < 4 ? SpreadBasis::FewOwn : SpreadBasis::Own;
}

/// One reading has the assumed spread already.
template <class Statistics>
std::optional<KnownSpread> earlierOf(const SeriesQuestion& question, const Statistics& own) {
    if (question.earlier) return question.earlier->known;
    if (!question.poolAssumed || own.readings == 1) return std::nullopt;
    return assumedBeside(own, question.assumed);
}

void answerOthers(SeriesReport& report, const SeriesQuestion& question,
                  const CoverageOf& coverage) {
    if (!question.others) return;
    const double count = *question.others;
    const PieceStatistics& series = report.statistics;
    report.others = ValueWithin{count * series.mean, halfWidthAfter(series, count, 0, coverage)};
    report.floorWithin = floorHalfWidth(series, count, coverage);
    if (!question.wanted) return;
    report.more = weighingsUntil(series, count, *question.wanted, coverage);
    report.noneSuffices = !report.more && *question.wanted <= report.floorWithin;
}

}  // namespace

Result<SeriesReport> seriesReport(const std::vector<SeriesReading>& readings,
                                  const SeriesQuestion& question, const StudentLaw& student) {
    const auto own = pieceStatistics(readings, question.assumed);
    if (!own) return fail(own.error());
    SeriesReport report;
    const auto earlier = earlierOf(question, *own);
    report.statistics = earlier ? pooledWith(*own, *earlier) : *own;
    report.basis = basisOf(own->readings, earlier.has_value());
    const double mean = report.statistics.mean;
    report.mean = {mean, meanHalfWidth(report.statistics, student.coverage)};
    report.next = {mean, nextPieceHalfWidth(report.statistics, student.coverage)};
    answerOthers(report, question, student.coverage);
    report.outlier = oddReading(readings, student);
    report.drift = driftOf(readings, student.coverage);
    if (question.published)
        report.against = againstTable(*own, *question.published, student.coverage);
    return report;
}

Result<RatioReport> ratioReport(const std::vector<RatioReading>& readings,
                                const SeriesQuestion& question, const StudentLaw& student) {
    const auto own = ratioStatistics(readings, question.assumed);
    if (!own) return fail(own.error());
    RatioReport report;
    const auto earlier = earlierOf(question, *own);
    report.statistics = earlier ? pooledWith(*own, *earlier) : *own;
    report.basis = basisOf(own->readings, earlier.has_value());
    const double factor = student.coverage(report.statistics.freedom);
    const double uncertainty = report.statistics.ratioUncertainty();
    report.ratio = {own->ratio, factor * uncertainty};
    // A lot of the mean size scatters by s_e about its share; its own and the ratio's add up.
    if (!report.statistics.spreadAssumed)
        report.next =
            ValueWithin{own->ratio, factor * uncertainty * std::sqrt(own->readings + 1.0)};
    report.outlier = oddReading(readings, student);
    return report;
}

}  // namespace nettare
