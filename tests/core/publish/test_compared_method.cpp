#include "core/publish/compared_method.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/support/text.h"

using namespace nettare;

namespace {

std::vector<StepEntry> steps(const std::vector<std::string>& texts) {
    std::vector<StepEntry> all;
    all.reserve(texts.size());
    for (const std::string& text : texts) all.push_back({text});
    return all;
}

/// "(a b) -c- +d+" of each step.
std::vector<std::string> shown(const std::vector<StepDifference>& method) {
    std::vector<std::string> all;
    for (const StepDifference& step : method) {
        std::string text;
        for (const WordsRun& run : step.runs) {
            const char* mark = run.kind == WordsKind::Removed ? "-"
                               : run.kind == WordsKind::Added ? "+"
                                                              : "";
            text += (text.empty() ? "" : " ") + (mark + run.text) + mark;
        }
        all.push_back(text);
    }
    return all;
}

/// The text of one side, put together from the runs.
std::vector<std::string> sideOf(const std::vector<StepDifference>& method, WordsKind own) {
    std::vector<std::string> all;
    for (const StepDifference& step : method) {
        const bool there =
            own == WordsKind::Removed ? step.before.has_value() : step.after.has_value();
        if (!there) continue;
        std::string text;
        for (const WordsRun& run : step.runs)
            if (run.kind == WordsKind::Kept || run.kind == own)
                text += (text.empty() ? "" : " ") + run.text;
        all.push_back(text);
    }
    return all;
}

}  // namespace

TEST_CASE("a changed step shows which words went and which came", "[publish]") {
    const auto before = steps({"Stir well.", "Grill at 230 °C for 6 min, turning once."});
    const auto after = steps({"Stir well.", "Grill at 210 °C for 8 min, turning once."});
    CHECK(shown(comparedMethod(before, after)) ==
          std::vector<std::string>{"Stir well.",
                                   "Grill at -230- +210+ °C for -6- +8+ min, turning once."});
}

TEST_CASE("a step that is new or gone stands whole", "[publish]") {
    const auto before = steps({"Stir.", "Thread ten skewers."});
    const auto after = steps({"Stir.", "Rest for an hour in the cold.", "Thread ten skewers."});
    CHECK(shown(comparedMethod(before, after)) ==
          std::vector<std::string>{"Stir.", "+Rest for an hour in the cold.+",
                                   "Thread ten skewers."});
    CHECK(shown(comparedMethod(after, before)) ==
          std::vector<std::string>{"Stir.", "-Rest for an hour in the cold.-",
                                   "Thread ten skewers."});
    CHECK(shown(comparedMethod(steps({"Boil the beans."}), steps({"Heat oil in a pan."}))) ==
          std::vector<std::string>{"-Boil the beans.-", "+Heat oil in a pan.+"});
    CHECK(comparedMethod({}, {}).empty());
}

TEST_CASE("both methods can be read back from their difference", "[publish]") {
    std::mt19937 random{8};
    const auto anyMethod = [&] {
        static const std::vector<std::string> kWords{"stir", "the", "oil", "and", "rest", "grill"};
        std::vector<std::string> texts;
        for (std::size_t s = random() % 6; s > 0; --s) {
            std::string text{"cook"};
            for (std::size_t w = random() % 8; w > 0; --w) text += " " + kWords[random() % 6];
            texts.push_back(text);
        }
        return texts;
    };
    for (int i = 0; i < 300; ++i) {
        const auto before = anyMethod();
        const auto after = anyMethod();
        const auto method = comparedMethod(steps(before), steps(after));
        CHECK(sideOf(method, WordsKind::Removed) == before);
        CHECK(sideOf(method, WordsKind::Added) == after);
    }
}
