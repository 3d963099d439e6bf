#include <catch2/catch.hpp>
#include <cmath>

#include "core/nutrition/figures.h"
#include "core/quantity/amount.h"
#include "random_recipe.h"

using namespace nettare;
using kitchen::Kitchen;
using kitchen::Served;

// Laws that hold for any recipe. Each checker names the first component that breaks its law, and is
// shown a recipe that does.

namespace {

constexpr int kLawfulRecipes = 1000;

std::optional<Served> servedIfAny(const Kitchen& kitchen) {
    const auto dossier = kitchen.dossier();
    if (!dossier || !cook(*dossier)) return std::nullopt;
    return Served{kitchen};
}

bool closeTo(double a, double b) {
    return std::fabs(a - b) <= 1e-9 * std::max(std::fabs(a), std::fabs(b)) + 1e-11;
}

bool closeTo(const std::optional<double>& a, const std::optional<double>& b) {
    return a.has_value() == b.has_value() && (!a || closeTo(*a, *b));
}

Figures batchOf(const Served& served) {
    return Served::orThrow(figuresPer(Basis::Batch, served.dossier, served.cooked));
}

std::string tagnameOf(std::size_t k) {
    return std::string{allComponents()[k].tagname};
}

std::string twiceText(const std::string& amount) {
    const auto read = readAmount(amount);
    const auto twice = [](Fraction end) { return writeFraction(*end.times(Fraction{2})); };
    return read->isRange() ? twice(read->low()) + "-" + twice(read->high()) : twice(read->low());
}

/// The list with `change` made to every entry.
template <class Change>
std::string eachOf(const Kitchen& kitchen, const char* key, Change change) {
    Json list = Json::array();
    for (Json entry : *kitchen.document().find(key)->items()) {
        change(entry);
        list.append(std::move(entry));
    }
    return writeJson(list);
}

/// Every other reading than those of the series of bulbs is one of the batch.
bool isOfSeries(const Kitchen& kitchen, const std::string& id) {
    for (const Json& series : *kitchen.document().find("series")->items())
        for (const Json& reading : *series.find("readings")->items())
            if (*reading.text() == id) return true;
    return false;
}

/// Twice the batch: amounts, what was weighed of it, what was assumed, and the pieces it makes; the
/// line of that index stays as it was.
Kitchen twice(const Kitchen& kitchen, std::optional<std::size_t> but = {}) {
    Kitchen all = kitchen;
    std::size_t index = 0;
    all.json("lines", eachOf(kitchen, "lines", [&](Json& line) {
                 const Json* amount = line.find("amount");
                 if (index++ == but || amount == nullptr) return;
                 const std::string text = *amount->text();
                 line.set("amount", Json{twiceText(text)});
                 const Json* assumed = line.find("assumed");
                 if (assumed == nullptr) return;
                 Json scaled = *assumed;
                 line.set("assumed", scaled.set("for", Json{text}));
             }));
    all.json("indications", eachOf(kitchen, "indications", [&](Json& indication) {
                 if (isOfSeries(kitchen, *indication.find("id")->text())) return;
                 const auto shown = Decimal::read(*indication.find("shown")->text());
                 indication.set("shown", Json{shown->times(2).text()});
             }));
    Json makes = *kitchen.document().find("makes");
    makes.set("pieces", Json{twiceText(*makes.find("pieces")->text())});
    return all.json("makes", writeJson(makes));
}

/// A weight as written is known to its last digit, which has nothing to do with its size.
bool anyWritten(const Served& served) {
    for (const Line& line : served.dossier.main().lines)
        if (line.unit != nullptr && line.unit->kind == UnitKind::Mass) return true;
    return false;
}

std::string scalingFlaw(const Served& once, const Served& doubled) {
    const Figures a = batchOf(once);
    const Figures b = batchOf(doubled);
    const bool written = anyWritten(once);
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const Figure& x = a.figures[k];
        const Figure& y = b.figures[k];
        const bool scales = closeTo(2 * x.value, y.value) && closeTo(2 * x.atLeast, y.atLeast) &&
                            x.atMost.has_value() == y.atMost.has_value() &&
                            (!x.atMost || closeTo(2 * *x.atMost, *y.atMost));
        const bool surer = written || y.u <= 2 * x.u * (1 + 1e-9) + 1e-11;
        if (!scales || !surer) return tagnameOf(k);
    }
    return {};
}

/// A dish that is one line: so much of a kept recipe.
Kitchen madeOf(const Kitchen& kept, const std::string& batches) {
    Kitchen outer;
    outer.append("foods", R"({"id":"all","name":"all","recipe":"all"})");
    outer.line(R"({"id":"a","piece":"batch","food":"all","amount":")" + batches + "\"}");
    return outer.kept("all", kept).keptOf(kept);
}

std::string wholeFlaw(const Served& written, const Served& kept) {
    const Figures a = batchOf(written);
    const Figures b = batchOf(kept);
    for (std::size_t k = 0; k < kComponentCount; ++k) {
        const Figure& x = a.figures[k];
        const Figure& y = b.figures[k];
        if (!closeTo(x.value, y.value) || !closeTo(x.u, y.u) || !closeTo(x.atLeast, y.atLeast) ||
            !closeTo(x.atMost, y.atMost) || x.complete() != y.complete())
            return tagnameOf(k);
    }
    return {};
}

}  // namespace

TEST_CASE("twice of any batch has twice of everything, and is no less sure", "[nutrition]") {
    RandomRecipes recipes{600};
    int checked = 0;
    int surer = 0;
    int broken = 0;
    int noticed = 0;
    while (checked < kLawfulRecipes) {
        const Kitchen kitchen = recipes.next();
        const auto once = servedIfAny(kitchen);
        if (!once) continue;
        CAPTURE(checked, writeJson(kitchen.document()));
        REQUIRE(scalingFlaw(*once, Served{twice(kitchen)}).empty());
        surer += anyWritten(*once) ? 0 : 1;
        if (++checked % 10 != 0) continue;
        const auto wrong = servedIfAny(twice(kitchen, 0));
        const bool counts = once->cooked.lines[0].asUsed.value() > 0;
        if (!wrong || !counts ||
            kitchen.document().find("lines")->items()->front().find("amount") == nullptr)
            continue;
        ++broken;
        noticed += scalingFlaw(*once, *wrong).empty() ? 0 : 1;
    }
    CHECK(surer > kLawfulRecipes / 10);
    CHECK(broken > kLawfulRecipes / 20);
    // A weighed line does not depend on the amount that was written.
    CHECK(noticed > broken / 2);
}

TEST_CASE("any recipe used whole equals its lines written out", "[nutrition]") {
    RandomRecipes recipes{700, RandomRecipes::Draw::AllWays};
    int checked = 0;
    int noticed = 0;
    while (checked < kLawfulRecipes) {
        const Kitchen kitchen = recipes.next();
        const auto written = servedIfAny(kitchen);
        if (!written) continue;
        CAPTURE(checked, writeJson(kitchen.document()));
        REQUIRE(wholeFlaw(*written, Served{madeOf(kitchen, "1")}).empty());
        if (++checked % 20 == 0)
            noticed += wholeFlaw(*written, Served{madeOf(kitchen, "7/8")}).empty() ? 0 : 1;
    }
    CHECK(noticed == kLawfulRecipes / 20);
}
