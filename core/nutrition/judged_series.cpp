#include "core/nutrition/judged_series.h"

#include "core/nutrition/student_t.h"

namespace nettare {

const StudentLaw& studentLaw() {
    static const StudentLaw kLaw{coverageFactor, studentT};
    return kLaw;
}

Result<SeriesReport> judgedSeries(const std::vector<SeriesReading>& readings,
                                  const SeriesQuestion& question) {
    return seriesReport(readings, question, studentLaw());
}

Result<RatioReport> judgedRatios(const std::vector<RatioReading>& readings,
                                 const SeriesQuestion& question) {
    return ratioReport(readings, question, studentLaw());
}

}  // namespace nettare
