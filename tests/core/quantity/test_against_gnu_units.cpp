#include <catch2/catch.hpp>

#include "core/quantity/gas_mark.h"
#include "core/quantity/unit.h"
#include "core/support/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <span>
#include <vector>

using namespace nettare;

namespace {

using enum MeasureSystem;

/// One of our units with its name or its terms in GNU units, which says "us" and "br" where
/// countries differ.
struct NamedPair {
    const char* ours = "";
    MeasureSystem system = UsCustomary;
    const char* gnu = "";
};

constexpr std::array kGnuMasses{
    NamedPair{"g", Metric, "g"},   NamedPair{"kg", Metric, "kg"},
    NamedPair{"mg", Metric, "mg"}, NamedPair{"oz", Metric, "oz"},
    NamedPair{"lb", Metric, "lb"}, NamedPair{"stick", Metric, "stickbutter"}};
constexpr std::array kGnuVolumes{
    NamedPair{"ml", Metric, "ml"},
    NamedPair{"cl", Metric, "cl"},
    NamedPair{"dl", Metric, "dl"},
    NamedPair{"l", Metric, "l"},
    NamedPair{"tsp", UsCustomary, "usteaspoon"},
    NamedPair{"tbsp", UsCustomary, "ustablespoon"},
    NamedPair{"cup", UsCustomary, "uscup"},
    NamedPair{"fl oz", UsCustomary, "usfluidounce"},
    NamedPair{"pint", UsCustomary, "uspint"},
    NamedPair{"quart", UsCustomary, "usquart"},
    NamedPair{"gal", UsCustomary, "usgallon"},
    NamedPair{"tbsp", UsLabel, "legaltablespoon"},
    NamedPair{"tsp", UsLabel, "1|3 legaltablespoon"},
    NamedPair{"cup", UsLabel, "legalcup"},
    NamedPair{"fl oz", UsLabel, "1|8 legalcup"},
    NamedPair{"pint", UsLabel, "uspint"},
    NamedPair{"quart", UsLabel, "usquart"},
    NamedPair{"gal", UsLabel, "usgallon"},
    NamedPair{"cup", Metric, "metriccup"},
    NamedPair{"tsp", Metric, "brteaspoon"},
    NamedPair{"tbsp", Metric, "brtablespoon"},
    NamedPair{"tsp", Imperial, "brteaspoon"},
    NamedPair{"tbsp", Imperial, "brtablespoon"},
    NamedPair{"cup", Imperial, "brcup"},
    NamedPair{"fl oz", Imperial, "brfluidounce"},
    NamedPair{"pint", Imperial, "brpint"},
    NamedPair{"quart", Imperial, "brquart"},
    NamedPair{"gal", Imperial, "brgallon"},
    NamedPair{"tsp", Australian, "australiateaspoon"},
    NamedPair{"tbsp", Australian, "australiatablespoon"},
    NamedPair{"cup", Australian, "metriccup"},
    NamedPair{"fl oz", Australian, "brfluidounce"},
    NamedPair{"pint", Australian, "brpint"},
    NamedPair{"quart", Australian, "brquart"},
    NamedPair{"gal", Australian, "brgallon"},
    NamedPair{"dessertspoon", Metric, "brdessertspoon"},
    NamedPair{"us fl oz", Metric, "usfluidounce"},
    NamedPair{"us pint", Metric, "uspint"},
    NamedPair{"us quart", Metric, "usquart"},
    NamedPair{"us gal", Metric, "usgallon"},
    NamedPair{"imp fl oz", Metric, "brfluidounce"},
    NamedPair{"imp pint", Metric, "brpint"},
    NamedPair{"imp quart", Metric, "brquart"},
    NamedPair{"imp gal", Metric, "brgallon"},
};

struct Conversion {
    Decimal amount;
    NamedPair from{}, to{};
};

Conversion anyConversion(std::mt19937& random) {
    const bool masses = random() % 8 == 0;
    const std::span<const NamedPair> family =
        masses ? std::span<const NamedPair>{kGnuMasses} : std::span<const NamedPair>{kGnuVolumes};
    const auto digits = static_cast<std::int64_t>(random() % 999999) + 1;
    const int exponent = -static_cast<int>(random() % 5);
    const NamedPair from = family[random() % family.size()];
    const NamedPair to = family[random() % family.size()];
    return {Decimal{digits, exponent}, from, to};
}

double converted(const Conversion& conversion) {
    const Unit& from = *findUnit(conversion.from.ours, conversion.from.system);
    const Unit& to = *findUnit(conversion.to.ours, conversion.to.system);
    const double amount = conversion.amount.value();
    return from.kind == UnitKind::Mass ? massOf(amount, from) / massOf(1, to)
                                       : volumeOf(amount, from) / volumeOf(1, to);
}

/// What GNU units is asked: how much of `want` there is in `have`.
struct Question {
    std::string have, want;
};

/// The command for one run of GNU units: on its input the lines "have" and "want" take turns.
std::string gnuUnitsCommand(const std::vector<Question>& questions) {
    std::string command = "LC_ALL=C units --terse --quiet --output-format %.17g 2>&1 <<'END'\n";
    for (const Question& question : questions)
        command += question.have + "\n" + question.want + "\n";
    return command + "END\n";
}

std::string outputOf(const std::string& command) {
    std::string output;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 4096> buffer{};
    std::size_t count = 0;
    while ((count = fread(buffer.data(), 1, buffer.size(), pipe)) > 0)
        output.append(buffer.data(), count);
    CHECK(pclose(pipe) == 0);
    return output;
}

std::optional<double> numberIn(std::string_view text) {
    double value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    return read.ec == std::errc{} && read.ptr == end ? std::optional{value} : std::nullopt;
}

/// One number for each question.
std::vector<double> gnuAnswers(const std::vector<Question>& questions) {
    if (std::system("command -v units >/dev/null 2>&1") != 0)
        FAIL(
            "GNU units, which checks our factors, was not found: install the Debian package "
            "\"units\".");
    const std::string output = outputOf(gnuUnitsCommand(questions));
    const auto lines = words(output);
    REQUIRE(lines.size() == questions.size());
    std::vector<double> answers;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        CAPTURE(i, questions[i].have, questions[i].want, lines[i]);
        const auto number = numberIn(lines[i]);
        REQUIRE(number);
        answers.push_back(*number);
    }
    return answers;
}

}  // namespace

TEST_CASE("every unit that has a definition is compared with GNU units", "[quantity]") {
    const auto isCompared = [](const Unit& unit) {
        const auto names = [&](const NamedPair& pair) {
            return findUnit(pair.ours, pair.system) == &unit;
        };
        return std::ranges::any_of(kGnuMasses, names) || std::ranges::any_of(kGnuVolumes, names);
    };
    for (const Unit& unit : allUnits()) {
        CAPTURE(unit.symbol);
        CHECK(isCompared(unit) != unit.isVague());
    }
}

TEST_CASE("kitchen units convert as GNU units converts them", "[quantity]") {
    std::mt19937 random{8112026};
    std::vector<Conversion> conversions(2000);
    std::vector<Question> questions;
    for (Conversion& c : conversions) {
        c = anyConversion(random);
        questions.push_back({c.amount.text() + " " + c.from.gnu, c.to.gnu});
    }
    const std::vector<double> theirs = gnuAnswers(questions);
    for (std::size_t i = 0; i < conversions.size(); ++i) {
        const Conversion& c = conversions[i];
        CAPTURE(i, c.amount.text(), c.from.ours, c.to.ours);
        CHECK_THAT(converted(c), Catch::Matchers::WithinRel(theirs[i], 1e-12));
    }
}

TEST_CASE("gas marks and degrees convert as GNU units converts them", "[quantity]") {
    std::vector<Question> questions;
    std::vector<double> ours;
    for (const GasMark& mark : allGasMarks()) {
        questions.push_back({"gasmark(" + std::to_string(mark.numerator) + "|" +
                                 std::to_string(mark.denominator) + ")",
                             "tempF"});
        ours.push_back(mark.fahrenheit);
    }
    for (int fahrenheit = -40; fahrenheit <= 550; fahrenheit += 5) {
        questions.push_back({"tempF(" + std::to_string(fahrenheit) + ")", "tempC"});
        ours.push_back(celsiusOf(Fraction{fahrenheit})->value());
    }
    const std::vector<double> theirs = gnuAnswers(questions);
    for (std::size_t i = 0; i < ours.size(); ++i) {
        CAPTURE(questions[i].have);
        CHECK(ours[i] == Approx(theirs[i]).margin(1e-9));
    }
}
