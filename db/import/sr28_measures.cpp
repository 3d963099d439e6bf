#include "db/import/sr28_measure.h"
#include "db/import/sr28_parts.h"
#include "db/import/sr28_rows.h"

namespace nettare {

namespace {

enum MeasureField : std::size_t {
    kMeasureFood,
    kPosition,
    kAmount,
    kWords,
    kGrams,
    kMeasurePoints,
    kDeviation,
    kMeasureFields
};

HouseholdMeasure measureOfRow(Sr28Rows& rows, std::string_view foodName) {
    HouseholdMeasure measure;
    measure.amount = rows.requiredNumber(kAmount);
    const Sr28Measure read =
        readSr28Measure(rows.requiredText(kWords), foodName, measure.amount > 1);
    measure.unit = read.unit;
    measure.qualifier = read.qualifier;
    measure.grams = rows.requiredNumber(kGrams);
    measure.n = rows.count(kMeasurePoints);
    measure.standardDeviation = rows.number(kDeviation);
    return measure;
}

}  // namespace

Result<void> readSr28Measures(Sr28Import& import) {
    auto rows = Sr28Rows::open(import.files, "WEIGHT.txt", kMeasureFields, import.run);
    if (!rows) return fail(rows.error());
    for (;;) {
        const auto more = rows->next();
        if (!more) return fail(more.error());
        if (!*more) break;
        const auto food = import.writer.find(rows->raw(kMeasureFood));
        if (!food) rows->refuse(ErrorCode::RowWithoutFood, rows->raw(kMeasureFood));
        const std::string_view name = food ? std::string_view{import.codes.names[*food]} : "";
        const HouseholdMeasure measure = measureOfRow(*rows, name);
        if (measure.amount <= 0) rows->refuse(rows->raw(kAmount), "a number above 0");
        if (measure.grams <= 0) rows->refuse(rows->raw(kGrams), "a number above 0");
        if (!rows->refused()) static_cast<void>(import.writer.measure(*food, measure));
    }
    import.writer.input("WEIGHT.txt", rows->sha256());
    return {};
}

}  // namespace nettare
