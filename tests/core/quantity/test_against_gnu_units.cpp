#include <catch2/catch.hpp>

#include "core/quantity/unit.h"
#include "core/support/text.h"

#include <array>
#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <vector>

using namespace nettare;

namespace {

/// One of our units with its name in GNU units, which says "us" where countries differ.
struct NamedPair {
    const char* ours = "";
    const char* gnu = "";
};

constexpr std::array kGnuMasses{NamedPair{"g", "g"}, NamedPair{"kg", "kg"}, NamedPair{"mg", "mg"},
                                NamedPair{"oz", "oz"}, NamedPair{"lb", "lb"}};
constexpr std::array kGnuVolumes{NamedPair{"ml", "ml"}, NamedPair{"l", "l"},
                                 NamedPair{"tsp", "usteaspoon"}, NamedPair{"tbsp", "ustablespoon"},
                                 NamedPair{"cup", "uscup"}};

struct Conversion {
    Decimal amount;
    NamedPair from{}, to{};
};

Conversion anyConversion(std::mt19937& random) {
    const auto& family = random() % 2 == 0 ? kGnuMasses : kGnuVolumes;
    const auto digits = static_cast<std::int64_t>(random() % 999999) + 1;
    const int exponent = -static_cast<int>(random() % 5);
    const NamedPair from = family[random() % family.size()];
    const NamedPair to = family[random() % family.size()];
    return {Decimal{digits, exponent}, from, to};
}

double converted(const Conversion& conversion) {
    const Unit& from = *findUnit(conversion.from.ours, MeasureSystem::UsCustomary);
    const Unit& to = *findUnit(conversion.to.ours, MeasureSystem::UsCustomary);
    const double amount = conversion.amount.value();
    return from.kind == UnitKind::Mass ? massOf(amount, from) / massOf(1, to)
                                       : volumeOf(amount, from) / volumeOf(1, to);
}

/// The command for one run of GNU units: on its input the lines "have" and "want" take turns.
std::string gnuUnitsCommand(const std::vector<Conversion>& conversions) {
    std::string command = "LC_ALL=C units --terse --quiet --output-format %.17g 2>&1 <<'END'\n";
    for (const Conversion& c : conversions)
        command += c.amount.text() + " " + c.from.gnu + "\n" + c.to.gnu + "\n";
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

}  // namespace

TEST_CASE("kitchen units convert as GNU units converts them", "[quantity]") {
    if (std::system("command -v units >/dev/null 2>&1") != 0)
        FAIL(
            "GNU units, which checks our factors, was not found: install the Debian package "
            "\"units\".");
    std::mt19937 random{8112026};
    std::vector<Conversion> conversions(400);
    for (Conversion& conversion : conversions) conversion = anyConversion(random);
    const std::string output = outputOf(gnuUnitsCommand(conversions));
    const auto lines = words(output);
    CAPTURE(output);
    REQUIRE(lines.size() == conversions.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Conversion& c = conversions[i];
        CAPTURE(i, c.amount.text(), c.from.ours, c.to.ours, lines[i]);
        const auto theirs = numberIn(lines[i]);
        REQUIRE(theirs);
        CHECK_THAT(converted(c), Catch::Matchers::WithinRel(*theirs, 1e-12));
    }
}
