#include "db/import/guess_header.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "core/support/text.h"
#include "db/import/scaled_number.h"

namespace nettare {

namespace {

using enum Component;

struct UsualName {
    std::string_view name;  ///< lower case, words between single spaces
    Component component;
};

// Common practice of published tables and labels. Names that tables use for different things are
// not here: "carbohydrate", "vitamin A", "vitamin E", "vitamin K", "salt".
constexpr auto kUsualNames = std::to_array<UsualName>({
    {"water", WATER},
    {"moisture", WATER},
    {"ash", ASH},
    {"protein", PROCNT},
    {"proteins", PROCNT},
    {"fat", FAT},
    {"fats", FAT},
    {"lipid", FAT},
    {"lipids", FAT},
    {"lipid fat", FAT},
    {"saturates", FASAT},
    {"of which saturates", FASAT},
    {"saturated fat", FASAT},
    {"saturated fatty acids", FASAT},
    {"fatty acids saturated", FASAT},
    {"trans fat", FATRN},
    {"trans fatty acids", FATRN},
    {"fatty acids trans", FATRN},
    {"monounsaturates", FAMS},
    {"monounsaturated fat", FAMS},
    {"monounsaturated fatty acids", FAMS},
    {"fatty acids monounsaturated", FAMS},
    {"polyunsaturates", FAPU},
    {"polyunsaturated fat", FAPU},
    {"polyunsaturated fatty acids", FAPU},
    {"fatty acids polyunsaturated", FAPU},
    {"cholesterol", CHOLE},
    {"carbohydrate by difference", CHOCDF},
    {"carbohydrates by difference", CHOCDF},
    {"fibre", FIBTG},
    {"fiber", FIBTG},
    {"dietary fibre", FIBTG},
    {"dietary fiber", FIBTG},
    {"fibre dietary", FIBTG},
    {"fiber dietary", FIBTG},
    {"sugar", SUGAR},
    {"sugars", SUGAR},
    {"of which sugars", SUGAR},
    {"added sugar", SUGAD},
    {"added sugars", SUGAD},
    {"sugars added", SUGAD},
    {"sodium", NA},
    {"calcium", CA},
    {"iron", FE},
    {"potassium", K},
    {"vitamin d", VITD},
    {"vitamin d d2 d3", VITD},
    {"vitamin a rae", VITA_RAE},
    {"retinol activity equivalents", VITA_RAE},
    {"vitamin c", VITC},
    {"vitamin c ascorbic acid", VITC},
    {"ascorbic acid", VITC},
    {"thiamin", THIA},
    {"thiamine", THIA},
    {"vitamin b1", THIA},
    {"thiamin b1", THIA},
    {"thiamine b1", THIA},
    {"riboflavin", RIBF},
    {"vitamin b2", RIBF},
    {"riboflavin b2", RIBF},
    {"niacin", NIA},
    {"niacin b3", NIA},
    {"vitamin b3", NIA},
    {"vitamin b6", VITB6A},
    {"vitamin b 6", VITB6A},
    {"folate", FOL},
    {"folates", FOL},
    {"folate dfe", FOLDFE},
    {"dietary folate equivalents", FOLDFE},
    {"vitamin b12", VITB12},
    {"vitamin b 12", VITB12},
    {"vitamin k1", VITK1},
    {"phylloquinone", VITK1},
    {"vitamin k phylloquinone", VITK1},
    {"alpha tocopherol", TOCPHA},
    {"vitamin e alpha tocopherol", TOCPHA},
    {"magnesium", MG},
    {"phosphorus", P},
    {"zinc", ZN},
    {"copper", CU},
    {"manganese", MN},
    {"selenium", SE},
    {"choline", CHOLN},
    {"pantothenic acid", PANTAC},
    {"vitamin b5", PANTAC},
    {"caffeine", CAFFN},
    {"alcohol", ALC},
    {"ethanol", ALC},
});

constexpr auto kFoodColumnNames = std::to_array<std::pair<std::string_view, FoodColumn>>({
    {"number", FoodColumn::Number},
    {"food number", FoodColumn::Number},
    {"no", FoodColumn::Number},
    {"food no", FoodColumn::Number},
    {"ndb no", FoodColumn::Number},
    {"code", FoodColumn::Number},
    {"food code", FoodColumn::Number},
    {"id", FoodColumn::Number},
    {"food id", FoodColumn::Number},
    {"fdc id", FoodColumn::Number},
    {"name", FoodColumn::Name},
    {"food name", FoodColumn::Name},
    {"food", FoodColumn::Name},
    {"description", FoodColumn::Name},
    {"food description", FoodColumn::Name},
    {"group", FoodColumn::Group},
    {"food group", FoodColumn::Group},
    {"category", FoodColumn::Group},
    {"food category", FoodColumn::Group},
    {"other names", FoodColumn::OtherNames},
    {"other name", FoodColumn::OtherNames},
    {"synonyms", FoodColumn::OtherNames},
    {"common names", FoodColumn::OtherNames},
    {"local name", FoodColumn::OtherNames},
    {"local names", FoodColumn::OtherNames},
    {"refuse", FoodColumn::Refuse},
    {"refuse percent", FoodColumn::Refuse},
});

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kHeaderUnits{{
    {"kg", "kg"},
    {"g", "g"},
    {"mg", "mg"},
    {"µg", "µg"},
    {"\xCE\xBCg", "µg"},
    {"ug", "µg"},
    {"mcg", "µg"},
    {"kcal", "kcal"},
    {"kj", "kJ"},
}};

constexpr bool isHeaderByte(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) > 127;
}

std::vector<std::string> headerWords(std::string_view header) {
    std::vector<std::string> found(1);
    for (const char c : lowerAscii(header)) {
        if (isHeaderByte(c))
            found.back() += c;
        else if (!found.back().empty())
            found.emplace_back();
    }
    if (found.back().empty()) found.pop_back();
    return found;
}

std::string_view unitOfWord(std::string_view word) {
    for (const auto& [written, unit] : kHeaderUnits)
        if (written == word) return unit;
    return {};
}

/// Takes "100 g", "100g" and "per" away from the end: what the values are for.
void dropReference(std::vector<std::string>& found) {
    if (found.size() >= 2 && found.back() == "g" && found[found.size() - 2] == "100")
        found.resize(found.size() - 2);
    else if (!found.empty() && found.back() == "100g")
        found.pop_back();
    if (!found.empty() && found.back() == "per") found.pop_back();
}

std::string joinedHeaderWords(const std::vector<std::string>& all) {
    std::string text;
    for (const std::string& word : all) {
        if (!text.empty()) text += ' ';
        text += word;
    }
    return text;
}

/// "energy" and "energy kilocalories": the unit tells which of the two components it is.
std::optional<HeaderGuess> guessEnergy(const std::string& name, std::string_view unit) {
    static constexpr std::array<std::string_view, 6> kNames{
        "energy", "energy kilocalories", "energy kilojoules", "calories", "kilocalories", ""};
    if (std::ranges::find(kNames, name) == kNames.end()) return std::nullopt;
    if (unit == "kcal") return HeaderGuess{ENERC_KCAL, "kcal"};
    if (unit == "kJ") return HeaderGuess{ENERC_KJ, "kJ"};
    return std::nullopt;
}

std::optional<Component> componentOfWords(std::vector<std::string> found) {
    std::erase(found, "total");
    const auto named = [&]() -> std::optional<Component> {
        const std::string name = joinedHeaderWords(found);
        const auto* const usual = std::ranges::find(kUsualNames, name, &UsualName::name);
        return usual == kUsualNames.end() ? std::nullopt : std::optional{usual->component};
    };
    if (const auto component = named()) return component;
    // "calcium ca": its sign or tagname stands behind.
    if (found.size() < 2) return std::nullopt;
    const std::string sign = found.back();
    found.pop_back();
    const auto component = named();
    const bool same = component && lowerAscii(factsOf(*component).tagname) == sign;
    return same ? component : std::nullopt;
}

/// A tagname in front, with nothing behind it but its unit.
std::optional<Component> taggedComponent(std::string_view header) {
    const std::string_view front = header.substr(0, header.find_first_of(" ([,;"));
    std::vector<std::string> rest = headerWords(header.substr(front.size()));
    dropReference(rest);
    const bool unitOnly = rest.empty() || (rest.size() == 1 && !unitOfWord(rest[0]).empty());
    return unitOnly ? componentNamed(front) : std::nullopt;
}

std::string_view unitOfTagname(Component component) {
    const bool energy = component == ENERC_KCAL || component == ENERC_KJ;
    return energy ? factsOf(component).unit : std::string_view{};
}

/// "mg" behind magnesium may be its sign or tagname: the unit stands in brackets.
bool isSignOfMagnesium(Component component, std::string_view unit, std::string_view header) {
    const bool bracketed = header.find("(mg") != std::string_view::npos ||
                           header.find("[mg") != std::string_view::npos;
    return component == MG && unit == "mg" && !bracketed;
}

std::optional<HeaderGuess> guessPart(std::string_view header) {
    std::vector<std::string> found = headerWords(header);
    dropReference(found);
    std::string_view unit = found.empty() ? std::string_view{} : unitOfWord(found.back());
    const auto tagged = taggedComponent(header);
    // "MG" alone is magnesium; "Sodium mg" ends in its unit.
    if (!unit.empty() && (found.size() > 1 || !tagged))
        found.pop_back();
    else
        unit = {};
    if (auto energy = guessEnergy(joinedHeaderWords(found), unit)) return energy;
    const auto component = tagged ? tagged : componentOfWords(found);
    if (!component) return std::nullopt;
    if (isSignOfMagnesium(*component, unit, header)) unit = {};
    if (unit.empty()) unit = unitOfTagname(*component);
    if (!unit.empty() && !powerOfTenBetween(unit, factsOf(*component).unit)) return std::nullopt;
    return HeaderGuess{*component, std::string{unit}};
}

/// A header whole, then its parts between semicolons: "Moisture; water".
std::vector<std::string_view> partsOfHeader(std::string_view header) {
    std::vector<std::string_view> parts{trimmed(header)};
    if (header.find(';') != std::string_view::npos)
        for (const std::string_view part : split(header, ';')) parts.push_back(trimmed(part));
    return parts;
}

}  // namespace

std::optional<HeaderGuess> guessHeader(std::string_view header) {
    for (const std::string_view part : partsOfHeader(header))
        if (auto guess = guessPart(part)) return guess;
    return std::nullopt;
}

std::optional<FoodColumn> guessFoodColumn(std::string_view header) {
    for (const std::string_view part : partsOfHeader(header)) {
        const std::string name = joinedHeaderWords(headerWords(part));
        for (const auto& [known, column] : kFoodColumnNames)
            if (known == name) return column;
    }
    return std::nullopt;
}

}  // namespace nettare
