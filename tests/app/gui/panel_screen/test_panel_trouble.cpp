#include "app/panel_screen/panel_trouble.h"

#include <catch2/catch.hpp>

namespace nettare {

TEST_CASE("an open line of a panel names its foods and what to do") {
    const Error error = Error{ErrorCode::PanelLineOpen}
                            .with("line", "Vitamin D")
                            .with("at_least", "0.0312")
                            .with("at_most", "1.24")
                            .with("unit", "µg")
                            .with("food", "prawns")
                            .with("food", "sea bream");
    const PanelTrouble trouble = PanelTrouble::of(error);
    CHECK(trouble.what.toStdString() ==
          "Vitamin D cannot be printed: a portion has between 0.03 µg and 1.3 µg, which print "
          "differently. No value is known for: prawns, sea bream.");
    CHECK(trouble.advice.toStdString() ==
          "State a value for each of them with its reason, for example from the supplier's sheet, "
          "or use a food whose table row or label has it.");
}

TEST_CASE("a line without an upper end says that it is not known") {
    const Error error = Error{ErrorCode::PanelLineOpen}
                            .with("line", "Iron")
                            .with("at_least", "12.6")
                            .with("at_most", "unknown")
                            .with("unit", "mg")
                            .with("food", "nettles");
    CHECK(PanelTrouble::of(error).what.toStdString() ==
          "Iron cannot be printed: a portion has at least 12 mg, and how much more is not known. "
          "No value is known for: nettles.");
}

TEST_CASE("a panel without a cooked weight asks for the weighing") {
    Error error{ErrorCode::PanelNeedsCookedWeight};
    error.pointer = "/cooked";
    const PanelTrouble trouble = PanelTrouble::of(error);
    CHECK(trouble.what.toStdString() ==
          "The panel gives the serving in grams as eaten, and the cooked dish was not weighed.");
    CHECK(trouble.advice.toStdString() ==
          "Weigh the finished batch and record the reading as its cooked weight.");
}

TEST_CASE("any other trouble is told in its own sentence, without a place in a file") {
    Error error{ErrorCode::SeriesEmpty};
    error.file = "soup.json";
    error.pointer = "/residues/0";
    const QString what = PanelTrouble::of(error).what;
    CHECK_FALSE(what.isEmpty());
    CHECK_FALSE(what.contains(QStringLiteral("/residues")));
    CHECK_FALSE(what.contains(QStringLiteral("soup.json")));
    CHECK(what.at(0).isUpper());
}

}  // namespace nettare
