#include "random_recipe.h"

#include "core/quantity/amount.h"
#include "shuffled_lines.h"

namespace nettare {

using kitchen::Kitchen;

namespace {

std::string quoted(const std::string& key, const std::string& value) {
    return "\"" + key + "\":\"" + value + "\"";
}

/// 60 g of oil and 40 g of fennel, of which 90 g are left after cooking and 5 g in the pot.
Kitchen randomSauce() {
    Kitchen sauce;
    sauce.json("title", R"("Sauce")");
    sauce.json("makes", R"({"pieces":"4-6","piece":"spoon","plural":"spoons"})");
    sauce.line(R"({"id":"o","amount":"60","unit":"g","food":"oil"})");
    sauce.line(R"({"id":"f","amount":"40","unit":"g","food":"fennel"})");
    sauce.reading("pot", "5", "", "residue").reading("done", "90", "", "cooked");
    sauce.json("residues", R"([{"mixture":["o","f"],"readings":["pot"]}])");
    return sauce.json("cooked", R"({"readings":["done"]})");
}

void addFoods(Kitchen& kitchen) {
    kitchen.append("foods", R"({"id":"water","name":"water","stated":[
        {"component":"WATER","per_100g":"100","within":"0","reason":"invented"},
        {"component":"ENERC_KCAL","per_100g":"0","within":"0","reason":"invented"}]})");
    kitchen.append("foods", R"({"id":"paste","name":"paste","label":{"rules":"us",
        "serving_grams":"33","serving":{"amount":"2","unit":"tbsp"},"declares":[
        {"component":"ENERC_KCAL","printed":"70"},{"component":"FAT","printed":"4.5"},
        {"component":"CHOCDF","printed":"8"},{"component":"PROCNT","printed":"1"},
        {"component":"NA","printed":"210"}]}})");
    kitchen.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})");
    kitchen.kept("sauce", randomSauce());
}

const Json::Array& linesIn(const Kitchen& kitchen) {
    return *kitchen.document().find("lines")->items();
}

Kitchen withLines(Kitchen kitchen, const std::vector<Json>& lines) {
    Json list = Json::array();
    for (const Json& line : lines) list.append(line);
    return kitchen.json("lines", writeJson(list));
}

Json idsOf(const Json::Array& ids, const std::string& id, const std::string& a,
           const std::string& b) {
    Json list = Json::array();
    for (const Json& one : ids) {
        const bool split = *one.text() == id;
        list.append(split ? Json{a} : one);
        if (split) list.append(Json{b});
    }
    return list;
}

/// A residue with a line's two parts in place of it.
Json withParts(Json residue, const std::string& id, const std::string& a, const std::string& b) {
    if (const Json* line = residue.find("line"); line != nullptr && *line->text() == id) {
        residue.remove("line");
        Json both = Json::array();
        both.append(Json{a});
        both.append(Json{b});
        residue.set("mixture", std::move(both));
    } else if (const Json* mixture = residue.find("mixture")) {
        residue.set("mixture", idsOf(*mixture->items(), id, a, b));
    }
    const Json* shares = residue.find("shares");
    if (shares == nullptr) return residue;
    Json all = Json::array();
    for (Json share : *shares->items()) {
        const bool split = *share.find("line")->text() == id;
        if (split) all.append(share.set("line", Json{a}));
        if (split) share.set("line", Json{b});
        all.append(share);
    }
    return residue.set("shares", std::move(all));
}

std::string eighthsOf(const std::string& amount, int eighths) {
    return writeFraction(*readAmount(amount)->low().times(*Fraction::make(eighths, 8)));
}

}  // namespace

std::string RandomRecipes::anyAmount() {
    return writeFraction(*Fraction::make(static_cast<std::int64_t>(1 + below(32)), 8));
}

std::string RandomRecipes::weigh(Kitchen& kitchen, std::size_t least, std::size_t most,
                                 const std::string& state) {
    std::string id = "r-" + std::to_string(++readings_);
    const std::string grams = std::to_string(least + below(most - least));
    if (oneIn(2))
        kitchen.reading(id, grams, "", state);
    else
        kitchen.reading(id, grams + "." + std::to_string(below(10)), "", state, "fine");
    return id;
}

/// "cooked" by a factor or by a series of pairs.
std::string RandomRecipes::yielded() {
    if (oneIn(2))
        return R"(,"yield":{"to":"cooked","factor":"0.85","within":"0.05","reason":"by eye"})";
    return std::string{R"(,"yield":{"to":"cooked","series":"trim","inverse":)"} +
           (oneIn(2) ? "true}" : "false}");
}

/// What cooks write more rarely.
std::string RandomRecipes::rarelyMeasured(Kitchen& kitchen) {
    static const std::vector<std::string> kFills{"heaping", "rounded", "generous", "scant"};
    const std::string amount = quoted("amount", anyAmount());
    switch (below(9)) {
        case 0:
            return amount + R"(,"unit":"tbsp","food":"oil",)" + quoted("fill", kFills[below(4)]);
        case 1:
            return amount +
                   R"(,"piece":"tin","food":"water","each":{"amount":"14.5","unit":"oz"})" +
                   yielded();
        case 2:
            return amount + R"(,"piece":"flask","food":"oil","each":{"amount":"330","unit":"ml"})";
        case 3:
            return amount + R"(,"piece":"bag","food":"sugar","equals":{"amount":"1 1/3",)" +
                   quoted("unit", oneIn(2) ? "lb" : "cup") + "}";
        case 4:
            return amount + R"(,"unit":"cup","food":"syrup","density":{"g_per_ml":"1.37",)" +
                   R"("within":"0.02","reason":"by eye"})" +
                   (oneIn(2) ? "," + quoted("fill", kFills[below(4)]) : "");
        case 5:
            return amount + R"(,"unit":"pinch","food":"sugar")";
        case 6:
            return amount + R"(,"piece":"bulb","food":"fennel","trim":"trim","weighed":[")" +
                   weigh(kitchen, 100, 300, "as purchased") + R"(",")" +
                   weigh(kitchen, 10, 30, oneIn(2) ? "cooked" : "edible portion") + R"("])" +
                   yielded();
        case 7:
            return amount + R"(,"unit":"kg","food":"fennel","as_purchased":true)" +
                   (oneIn(2) ? R"(,"trim":"trim")" : "") + yielded();
        default:
            return amount + R"(,"piece":"lot","food":"oil","weighed_for":"1 2/3","weighed":[)" +
                   R"("ounces-oil"])";
    }
}

/// A line of one of the kept recipes, by pieces, by weight or as batches.
std::string RandomRecipes::rarelyKept() {
    const std::string food = quoted("food", oneIn(2) ? "sauce" : "gravy");
    if (oneIn(3)) return quoted("amount", anyAmount()) + R"(,"piece":"batch",)" + food;
    if (oneIn(2)) return R"("amount":"2 1/2","unit":"oz",)" + food;
    return R"("amount":"1/3-1/2","piece":"spoon",)" + food;
}

void RandomRecipes::addRareThings(Kitchen& kitchen) {
    kitchen.append("scales", R"({"id":"ounces","name":"ounces","unit":"oz","readability":"0.05"})");
    kitchen.append("indications", R"({"id":"oz-zero","scale":"ounces","shown":"-0.05",)"
                                  R"("state":"empty"})");
    kitchen.append("indications", R"({"id":"oz-oil","scale":"ounces","shown":"3.35",)"
                                  R"("state":"edible portion"})");
    kitchen.append("readings", R"({"id":"ounces-oil","gross":"oz-oil","tare":"oz-zero"})");
    kitchen.reading("t-a", "231", "", "as purchased").reading("t-b", "167");
    kitchen.append("series", R"({"id":"trim","name":"trimming","kind":"ratio",)"
                             R"("pairs":[{"before":"t-a","after":"t-b"}]})");
    kitchen.append("foods", R"({"id":"syrup","name":"syrup","stated":[
        {"component":"ENERC_KJ","per_100g":"1255.2","reason":"invented"},
        {"component":"SUGAR","per_100g":"71.5","within":"2","reason":"invented"}],
        "added_sugars":{"kind":"all","reason":"invented"}})");
    kitchen.append("foods", R"({"id":"gravy","name":"gravy","recipe":"gravy"})");
    Kitchen gravy;
    gravy.json("title", R"("Gravy")");
    gravy.json("makes", R"({"pieces":"7","piece":"spoon","plural":"spoons"})");
    gravy.append("foods", R"({"id":"sauce","name":"sauce","recipe":"sauce"})");
    gravy.line(R"({"id":"s","amount":"1/3","piece":"batch","food":"sauce"})");
    gravy.line(R"({"id":"u","amount":"1 1/3","unit":"tsp","food":"sugar"})");
    gravy.reading("left", "2", "", "residue");
    gravy.json("residues", R"([{"unknown":true,"readings":["left"]}])");
    kitchen.kept("gravy", gravy);
}

/// Amount, unit and food of a line with a way of its own.
std::string RandomRecipes::measured(Kitchen& kitchen) {
    static const std::vector<std::string> kFoods{"oil", "fennel", "sugar", "paste", "water"};
    static const std::vector<std::string> kSpoons{"tsp", "tbsp", "cup"};
    static const std::vector<std::string> kMasses{"g", "kg", "oz", "lb"};
    std::string amount = quoted("amount", anyAmount());
    switch (below(7)) {
        case 0:
            return amount + R"(,"piece":"lot",)" + quoted("food", kFoods[below(5)]) +
                   R"(,"weighed":[")" + weigh(kitchen, 20, 300) + R"("])";
        case 1: {
            const std::string reading = weigh(kitchen, 100, 300, "as purchased");
            return amount + R"(,"piece":"lot","food":"fennel","weighed":[")" + reading + R"("])";
        }
        case 2:
            return amount + R"(,"piece":"bulb","food":"fennel","series":{"id":"bulbs","use":)"
                            R"("others"})";
        case 3:
            return amount + "," + quoted("unit", kSpoons[below(3)]) + "," +
                   quoted("food", std::vector<std::string>{"oil", "sugar", "paste"}[below(3)]);
        case 4:
            return amount + "," + quoted("unit", kMasses[below(4)]) + "," +
                   quoted("food", kFoods[below(5)]);
        case 5:
            return R"("amount":"2-3","piece":"bulb","food":"fennel")";
        default:
            return amount + R"(,"piece":"lot",)" + quoted("food", kFoods[below(5)]) +
                   R"(,"assumed":{"grams":"80","within":"15","reason":"by eye"})";
    }
}

std::string RandomRecipes::anyLine(Kitchen& kitchen) {
    std::string line = "{" + quoted("id", "l-" + std::to_string(++lines_)) + ",";
    if (oneIn(10))
        return line + quoted("amount", anyAmount()) + R"(,"piece":"spoon","food":"sauce"})";
    if (oneIn(10)) return line + R"("to_taste":true,"food":"sugar"})";
    const bool rare = draw_ == Draw::AllWays && oneIn(2);
    if (rare && oneIn(4)) return line + rarelyKept() + "}";
    line += rare ? rarelyMeasured(kitchen) : measured(kitchen);
    return line + (oneIn(6) ? R"(,"optional":true})" : "}");
}

std::string RandomRecipes::anyMixture() {
    std::string ids;
    std::string shares;
    for (std::size_t i = 1; i <= lines_; ++i) {
        if (oneIn(2)) continue;
        const std::string id = "l-" + std::to_string(i);
        ids += (ids.empty() ? "\"" : ",\"") + id + "\"";
        if (oneIn(3))
            shares += (shares.empty() ? "{" : ",{") + quoted("line", id) + "," +
                      quoted("share", oneIn(2) ? "2/3" : "0.5") + "}";
    }
    if (ids.empty()) return R"("mixture":["l-1"])";
    return R"("mixture":[)" + ids + "]" +
           (shares.empty() ? std::string{} : R"(,"shares":[)" + shares + "]");
}

std::string RandomRecipes::anyResidue(Kitchen& kitchen) {
    const std::string reading = weigh(kitchen, 1, 12, "residue");
    std::string what;
    switch (below(7)) {
        case 0:
            what = quoted("line", "l-" + std::to_string(1 + below(lines_)));
            break;
        case 1:
            what = R"("drip":"oil")";
            break;
        case 2:
            what = R"("unknown":true)";
            break;
        case 3:
            what = R"("water":true)";
            break;
        case 4:
            what = R"("not_eaten":true)";
            break;
        default:
            what = anyMixture();
    }
    return "{" + what + R"(,"readings":[")" + reading + R"("]})";
}

Kitchen RandomRecipes::next() {
    Kitchen kitchen;
    readings_ = lines_ = 0;
    addFoods(kitchen);
    if (draw_ == Draw::AllWays) addRareThings(kitchen);
    std::string bulbs;
    for (std::size_t n = 1 + below(4); n > 0; --n)
        bulbs += (bulbs.empty() ? "\"" : ",\"") + weigh(kitchen, 200, 260) + "\"";
    kitchen.append("series", R"({"id":"bulbs","name":"bulbs","kind":"per piece","of":"bulb",)"
                             R"("readings":[)" +
                                 bulbs + "]}");
    for (std::size_t n = 2 + below(8); n > 0; --n) kitchen.line(anyLine(kitchen));
    for (std::size_t n = below(4); n > 0; --n) kitchen.append("residues", anyResidue(kitchen));
    if (oneIn(3)) kitchen.json("makes", R"({"pieces":"4-6","piece":"cake","plural":"cakes"})");
    if (oneIn(2))
        kitchen.json("cooked", R"({"readings":[")" + weigh(kitchen, 200, 900, "cooked") + R"("]})");
    static const std::vector<std::string> kOptional{"counted", "left out", "between"};
    static const std::vector<std::string> kRanges{"middle", "least", "most"};
    return kitchen.json(
        "counting", "{" + quoted("to_taste", oneIn(2) ? "left out" : "a pinch a portion") + "," +
                        quoted("optional", kOptional[below(3)]) + "," +
                        quoted("ranges", kRanges[below(3)]) + "," +
                        quoted("makes", kRanges[below(3)]) + "}");
}

Kitchen withLinesMoved(const Kitchen& kitchen, std::uint32_t seed) {
    const Json moved = withLinesShuffled(kitchen.document(), seed);
    return withLines(kitchen, *moved.find("lines")->items());
}

Kitchen withLineSplit(const Kitchen& kitchen, std::size_t line, int rest) {
    std::vector<Json> lines = linesIn(kitchen);
    Json& first = lines[line];
    const std::string id = *first.find("id")->text();
    const std::string amount = *first.find("amount")->text();
    if (first.find("weighed") != nullptr) first.set("weighed_for", Json{amount});
    Json second = first;
    // The ids sort as the one did.
    first.set("id", Json{id + "-a"}).set("amount", Json{eighthsOf(amount, 2)});
    second.set("id", Json{id + "-b"}).set("amount", Json{eighthsOf(amount, rest)});
    lines.push_back(second);
    Kitchen split = withLines(kitchen, lines);
    const Json* residues = kitchen.document().find("residues");
    if (residues == nullptr) return split;
    Json all = Json::array();
    for (const Json& residue : *residues->items())
        all.append(withParts(residue, id, id + "-a", id + "-b"));
    return split.json("residues", writeJson(all));
}

Kitchen withUnitRenamed(const Kitchen& kitchen, std::size_t line, const std::string& unit,
                        int many) {
    std::vector<Json> lines = linesIn(kitchen);
    const std::string amount = *lines[line].find("amount")->text();
    lines[line].set("amount", Json{eighthsOf(amount, 8 * many)}).set("unit", Json{unit});
    return withLines(kitchen, lines);
}

}  // namespace nettare
