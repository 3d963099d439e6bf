#include "app/gui/path/sample_path.h"

namespace nettare {

namespace {

PathStep sampleStep(PathKind kind, const char* value, const char* unit, const char* plusMinus,
                    const char* words) {
    PathStep step;
    step.kind = kind;
    step.value = value;
    step.unit = unit;
    step.plusMinus = plusMinus;
    step.words = words;
    return step;
}

PathStep sampleLine(std::size_t place) {
    PathStep grams = sampleStep(PathKind::Grams, "353.4", "g", "7.0", "your series of 6 readings");
    grams.formula = "36 × 9.817 g";
    grams.more = "variance 36² s²/6 + 36 s²; another way, by the table: 382 g, 7.9 % apart";
    grams.way = place == 1 ? Way::Label : Way::Series;
    grams.line = place;
    PathStep value = sampleStep(PathKind::Value, "85.0", "kcal", "4", "per 100 g, public table");
    value.way = Way::Table;
    PathStep line = sampleStep(PathKind::Line, "300.4", "kcal", "16", "36 prawns, peeled");
    line.formula = "353.4 g × 85.0 kcal / 100 g";
    line.line = place;
    line.below = {grams, value};
    return line;
}

}  // namespace

PathStep samplePath(int lines) {
    PathStep batch = sampleStep(PathKind::Batch, "1201.6", "kcal", "25", "sum of the lines");
    for (int i = 0; i < lines; ++i) batch.below.push_back(sampleLine(static_cast<std::size_t>(i)));
    PathStep missing = sampleStep(PathKind::Missing, "", "", "", "fennel does not say");
    batch.below.push_back(missing);
    PathStep division = sampleStep(PathKind::Division, "120.16", "kcal", "2.5", "a skewer");
    division.formula = "1201.6 kcal / 10 skewers";
    division.below = {batch};
    PathStep figure = sampleStep(PathKind::Figure, "240", "kcal", "5", "per portion, rounded once");
    figure.formula = "120.16 kcal × 2 skewers";
    figure.below = {division};
    return figure;
}

}  // namespace nettare
