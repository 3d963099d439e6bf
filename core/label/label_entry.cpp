#include "core/label/label_entry.h"

#include <algorithm>

#include "core/food/label_json.h"
#include "core/food/label_words.h"
#include "core/label/check_label.h"
#include "core/label/label_refusal.h"
#include "core/label/label_values.h"
#include "core/label/read_printed.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json_reader.h"
#include "core/support/text.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

constexpr auto kLabelSource = "package label";
constexpr auto kPrintedReason = "as printed on the package";
constexpr auto kUntoldReason = "the package does not tell";

std::string trimmedCopy(std::string_view typed) {
    return std::string{trimmed(typed)};
}

/// "1,03" as "1.03", for what is never a thousand.
std::string numberCopy(std::string_view typed) {
    return withDecimalPoint(trimmed(typed), "g");
}

/// "1 1/2 cups" as "1 1/2" and "cups".
struct HouseholdText {
    std::string amount, unit;
};

HouseholdText splitHousehold(const std::string& typed) {
    const std::string text = trimmedCopy(typed);
    for (std::size_t size = std::min(text.size(), kAmountLength); size > 0; --size)
        if (readAmount(trimmed(text.substr(0, size))))
            return {trimmedCopy(text.substr(0, size)), trimmedCopy(text.substr(size))};
    return {text, {}};
}

/// "240 mL" as "240" and millilitres.
struct SizeText {
    std::string number;
    std::optional<bool> inMillilitres;
};

SizeText splitSize(const std::string& typed) {
    const std::string text = trimmedCopy(typed);
    const std::size_t unit = text.find_last_of("0123456789.,") + 1;
    const std::string word = lowerAscii(trimmed(text.substr(unit)));
    // A package may well hold "1,500 g", unlike a nutrient: the cook is asked to write it plainly.
    constexpr std::string_view kMayBeThousands = "ml";
    if (unit == 0 || (word != "g" && word != "ml"))
        return {withDecimalPoint(text, kMayBeThousands), std::nullopt};
    return {withDecimalPoint(trimmed(text.substr(0, unit)), kMayBeThousands), word == "ml"};
}

std::string relativeText(const std::string& percent) {
    std::string text = numberCopy(percent);
    const auto read = Decimal::read(text);
    if (!read) return text;
    return Decimal{read->coefficient(), read->exponent() - 2}.text();
}

std::string percentText(Decimal relative) {
    std::string text = relative.times(100).text();
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

/// Who writes "1" for what a millilitre weighs does not mean 0.5 to 1.5 g.
constexpr Decimal kMostDensityRounding{5, -2};

/// Half of the last digit that was written, as far as a density can be off.
Decimal roundingOf(Decimal density) {
    return std::min(Decimal{5, density.exponent() - 1}, kMostDensityRounding);
}

/// The half-width that was typed, or that of the rounding; as typed where it cannot be read.
std::string densityWithin(const LabelTyped& typed) {
    if (std::string within = numberCopy(typed.densityWithin); !within.empty()) return within;
    const auto density = Decimal::read(numberCopy(typed.gramsPerMl));
    return density ? roundingOf(*density).text() : std::string{"0"};
}

void setUnlessEmpty(Json& json, const char* key, const std::string& typed) {
    if (const std::string text = trimmedCopy(typed); !text.empty()) json.set(key, Json{text});
}

Json declaredJson(const LabelTyped& typed) {
    Json list = Json::array();
    for (const LabelAmount& amount : typed.amounts) {
        if (trimmed(amount.printed).empty()) continue;
        Json entry = Json::object();
        entry.set("component", Json{tagnameOf(amount.line)});
        list.append(entry.set("printed", Json{trimmed(amount.printed)}));
    }
    return list;
}

/// The label as a document holds it, of whatever was typed, so that both are read by one reader.
Json typedJson(const LabelTyped& typed) {
    Json json = Json::object();
    json.set("rules", Json{wordFor(typed.rules, kLabelRulesWords)});
    json.set("per", Json{wordFor(typed.per, kLabelPerWords)});
    json.set("basis", Json{wordFor(typed.state, kLabelStateWords)});
    setUnlessEmpty(json, isInMillilitres(typed) ? "serving_ml" : "serving_grams",
                   splitSize(typed.servingSize).number);
    if (!trimmed(typed.household).empty()) {
        const HouseholdText household = splitHousehold(typed.household);
        Json serving = Json::object();
        serving.set("amount", Json{household.amount});
        json.set("serving", serving.set("unit", Json{household.unit}));
    }
    json.set("declares", declaredJson(typed));
    if (const std::string density = numberCopy(typed.gramsPerMl); !density.empty()) {
        Json entry = Json::object();
        entry.set("g_per_ml", Json{density});
        json.set("density", entry.set("within", Json{densityWithin(typed)}));
    }
    setUnlessEmpty(json, "servings_per_pack", typed.servingsPerPack);
    setUnlessEmpty(json, "date", typed.date);
    setUnlessEmpty(json, "declaration_spread", relativeText(typed.declarationSpreadPercent));
    return json;
}

/// "/label/declares/2/printed" as "/label/declares/FAT", which a form finds its field by.
std::string fieldPointer(const std::string& pointer, const Json& label) {
    constexpr std::string_view kDeclared = "/label/declares/";
    if (!pointer.starts_with(kDeclared)) return pointer;
    const std::size_t end = pointer.find('/', kDeclared.size());
    const auto index =
        Decimal::read(pointer.substr(kDeclared.size(), end - kDeclared.size())).value_or(Decimal{});
    const auto& entries = *label.find("declares")->items();
    const auto at = static_cast<std::size_t>(index.value());
    if (at >= entries.size()) return pointer;
    return std::string{kDeclared} + std::string{*entries[at].find("component")->text()};
}

AddedSugars readAddedSugars(ObjectReader& root, const LabelTyped& typed) {
    AddedSugars added;
    added.kind = typed.addedSugars;
    if (!root.has("added_sugars")) return added;
    ObjectReader reader = root.object("added_sugars");
    if (added.kind == AddedSugarKind::Stated)
        added.statedPer100g = reader.decimal("per_100g", NumberSign::NotNegative).value();
    added.reason = reader.text("reason", kNameLength);
    return added;
}

Json addedJson(const LabelTyped& typed) {
    const auto printed =
        std::ranges::find(typed.amounts, LabelLine{Component::SUGAD}, &LabelAmount::line);
    std::string reason = trimmedCopy(typed.addedSugarsReason);
    if (reason.empty() && printed != typed.amounts.end() && !trimmed(printed->printed).empty())
        reason = kPrintedReason;
    if (reason.empty() && typed.addedSugars == AddedSugarKind::BetweenNoneAndAll)
        reason = kUntoldReason;
    Json json = Json::object();
    json.set("per_100g", Json{numberCopy(typed.addedSugarsPer100g)});
    return json.set("reason", Json{reason});
}

/// "It is as printed" holds for what is found in the label, and for nothing that was changed since.
std::vector<LabelAssent> heldAssents(const LabelFacts& facts) {
    const auto findings = checkLabel(facts);
    std::vector<LabelAssent> held;
    for (const LabelAssent& assent : facts.assents) {
        // Like foods are not known here.
        const bool found = assent.kind == LabelFindingKind::UnlikeMeasure ||
                           std::ranges::any_of(findings, [&](const LabelFinding& finding) {
                               return finding.kind == assent.kind && finding.about == assent.about;
                           });
        if (found) held.push_back(assent);
    }
    return held;
}

/// What must hold beyond the form of the texts. Pointers are those of documents.
Result<LabelFacts> checkedFacts(const LabelEntry& entry, const LabelTyped& typed) {
    // Said in percent, as it was typed.
    const auto& spread = entry.facts.declarationSpread;
    if (spread && *spread > Decimal{1, 0})
        return fail(Error{ErrorCode::OutOfRange}
                        .with("found", trimmed(typed.declarationSpreadPercent))
                        .with("low", "0")
                        .with("high", "100")
                        .at("/label/declaration_spread"));
    auto facts = labelFrom(entry, "/label");
    if (!facts) return facts;
    if (!facts->date.empty() && !isCalendarDay(facts->date))
        return fail(Error{ErrorCode::NotADate}.with("found", facts->date).at("/label/date"));
    facts->photo = typed.photo;
    facts->assents = typed.assents;
    facts->assents = heldAssents(*facts);
    if (auto refusal = labelRefusal(*facts)) {
        refusal->pointer = "/label" + refusal->pointer;
        return fail(*refusal);
    }
    if (const auto values = labelValues(*facts); !values) {
        Error error = values.error();
        error.pointer = "/label" + error.pointer;
        return fail(error);
    }
    return facts;
}

}  // namespace

LabelTyped typedLabelOf(const OwnFood& own) {
    LabelTyped typed;
    typed.name = own.food.name;
    typed.addedSugars = own.food.addedSugars.kind;
    if (typed.addedSugars == AddedSugarKind::Stated)
        typed.addedSugarsPer100g = Decimal::fromDouble(own.food.addedSugars.statedPer100g).text();
    if (const std::string& reason = own.food.addedSugars.reason;
        reason != kPrintedReason && reason != kUntoldReason)
        typed.addedSugarsReason = reason;
    typed.plant = own.food.plant;
    typed.date = own.origin.date;
    typed.note = own.origin.note;
    if (!own.food.label) return typed;
    const LabelFacts& label = *own.food.label;
    typed.rules = label.rules;
    typed.per = label.per;
    typed.state = label.state;
    if (label.householdAmount)
        typed.household = label.householdAmount->text() + " " + label.householdUnit;
    if (label.servingSize) typed.servingSize = label.servingSize->text();
    typed.servingInMillilitres = label.servingInMillilitres;
    typed.servingsPerPack = label.servingsPerPack;
    if (label.density) {
        typed.gramsPerMl = label.density->gramsPerMl.text();
        typed.densityWithin = label.density->within.text();
    }
    typed.amounts = label.amounts;
    if (label.declarationSpread)
        typed.declarationSpreadPercent = percentText(*label.declarationSpread);
    typed.photo = label.photo;
    typed.assents = label.assents;
    return typed;
}

std::string servingNumber(const LabelTyped& typed) {
    return splitSize(typed.servingSize).number;
}

bool isInMillilitres(const LabelTyped& typed) {
    return splitSize(typed.servingSize).inMillilitres.value_or(typed.servingInMillilitres);
}

LabelFacts factsSoFar(const LabelTyped& typed) {
    LabelFacts facts;
    facts.rules = typed.rules;
    facts.per = typed.per;
    facts.state = typed.state;
    facts.servingInMillilitres = isInMillilitres(typed);
    if (const auto size = Decimal::read(splitSize(typed.servingSize).number);
        size && *size > Decimal{})
        facts.servingSize = size;
    const HouseholdText household = splitHousehold(typed.household);
    if (const auto amount = readAmount(household.amount); amount && facts.servingSize) {
        facts.householdAmount = *amount;
        facts.householdUnit = household.unit;
    }
    const auto density = Decimal::read(numberCopy(typed.gramsPerMl));
    if (density && *density > Decimal{}) {
        const Decimal within = Decimal::read(densityWithin(typed)).value_or(Decimal{});
        facts.density =
            LabelDensity{*density, within < *density ? std::max(within, Decimal{}) : Decimal{}};
    }
    for (const LabelAmount& amount : typed.amounts)
        if (const std::string printed = trimmedCopy(amount.printed);
            !printed.empty() && printed.size() <= kAmountLength)
            facts.amounts.push_back({amount.line, printed});
    facts.assents = typed.assents;
    return facts;
}

Result<OwnFood> labelledFoodFrom(const LabelTyped& typed, const OwnFood& before) {
    const Json label = typedJson(typed);
    Json json = Json::object();
    json.set("name", Json{trimmed(typed.name)}).set("date", Json{trimmed(typed.date)});
    setUnlessEmpty(json, "note", typed.note);
    json.set("label", label).set("added_sugars", addedJson(typed));
    std::optional<Error> failure;
    ObjectReader root{json, "", failure};
    OwnFood own = before;
    own.food.name = root.text("name", kNameLength);
    ObjectReader reader = root.object("label");
    const LabelEntry entry = readLabel(reader);
    own.food.addedSugars = readAddedSugars(root, typed);
    own.food.plant = typed.plant;
    own.origin.date = root.text("date", kNameLength);
    own.origin.note = root.optionalText("note", kProseLength).value_or("");
    if (own.origin.source.empty()) own.origin.source = kLabelSource;
    auto facts = failure ? Result<LabelFacts>{fail(*failure)} : checkedFacts(entry, typed);
    if (facts)
        if (const auto refusal = addedSugarsRefusal(*facts, own.food.addedSugars))
            facts = fail(*refusal);
    if (!facts) {
        Error error = facts.error().with("food", own.food.name);
        error.pointer = fieldPointer(error.pointer, label);
        return fail(error);
    }
    own.food.profile = labelProfile(*facts);
    own.food.label = std::move(*facts);
    return own;
}

}  // namespace nettare
