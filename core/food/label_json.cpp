#include "core/food/label_json.h"

#include "core/food/label_words.h"
#include "core/recipe/read_recipe.h"
#include "core/support/sha256.h"
#include "core/support/text.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

Json amountsJson(const std::vector<LabelAmount>& amounts) {
    Json list = Json::array();
    for (const LabelAmount& amount : amounts) {
        Json entry = Json::object();
        entry.set("component", Json{tagnameOf(amount.line)});
        list.append(entry.set("printed", Json{amount.printed}));
    }
    return list;
}

Json assentsJson(const std::vector<LabelAssent>& assents) {
    Json list = Json::array();
    for (const LabelAssent& assent : assents) {
        Json entry = Json::object();
        entry.set("finding", Json{wordFor(assent.kind, kLabelFindingWords)});
        list.append(entry.set("about", Json{assent.about}));
    }
    return list;
}

LabelLine readLine(ObjectReader& reader) {
    const std::string tagname = reader.text("component", kAmountLength);
    const auto line = labelLineNamed(tagname);
    if (!line && !reader.failure())
        reader.failure() = Error{ErrorCode::ComponentUnknown}
                               .with("found", tagname)
                               .at(reader.pointer() + "/component");
    return line.value_or(Component::ENERC_KCAL);
}

void readServing(ObjectReader& reader, LabelEntry& entry) {
    const auto grams = reader.optionalDecimal("serving_grams", NumberSign::Positive);
    const auto millilitres = reader.optionalDecimal("serving_ml", NumberSign::Positive);
    entry.servingTwice = grams && millilitres;
    entry.facts.servingSize = grams ? grams : millilitres;
    entry.facts.servingInMillilitres = !grams && millilitres;
    if (!reader.has("serving")) return;
    ObjectReader serving = reader.object("serving");
    entry.householdAmount = serving.text("amount", kAmountLength);
    entry.facts.householdUnit = serving.text("unit", kNameLength);
    serving.finish();
}

void readDensity(ObjectReader& reader, LabelFacts& facts) {
    if (!reader.has("density")) return;
    ObjectReader density = reader.object("density");
    facts.density = LabelDensity{density.decimal("g_per_ml", NumberSign::Positive),
                                 density.decimal("within", NumberSign::NotNegative)};
    density.finish();
}

void readPhoto(ObjectReader& reader, LabelFacts& facts) {
    if (!reader.has("photo")) return;
    ObjectReader photo = reader.object("photo");
    facts.photo = LabelPhoto{photo.text("sha256", kNameLength), photo.text("name", kNameLength)};
    if (!photo.failure() && !isSha256(facts.photo->sha256))
        photo.failure() = Error{ErrorCode::NotAHash}.at(photo.pointer() + "/sha256");
    photo.finish();
}

void readAssents(ObjectReader& reader, LabelFacts& facts) {
    for (const auto& [json, pointer] : reader.items("as_printed", 0, kMostEntries)) {
        ObjectReader entry{json, pointer, reader.failure()};
        const auto kind = entry.oneOf("finding", kLabelFindingWords);
        facts.assents.push_back({kind, entry.text("about", kProseLength)});
        entry.finish();
    }
}

/// The numbers of a label that are no amounts of it; the place is below the label.
std::optional<Error> outOfRange(const LabelFacts& facts) {
    const auto& spread = facts.declarationSpread;
    if (spread && *spread > Decimal{1, 0})
        return Error{ErrorCode::OutOfRange}
            .with("found", spread->text())
            .with("low", "0")
            .with("high", "1")
            .at("/declaration_spread");
    const auto& density = facts.density;
    if (density && density->within >= density->gramsPerMl)
        return Error{ErrorCode::OutOfRange}
            .with("found", density->within.text())
            .with("low", "0")
            .with("high", density->gramsPerMl.text())
            .at("/density/within");
    return std::nullopt;
}

}  // namespace

Json labelJson(const LabelFacts& label) {
    Json json = Json::object();
    json.set("rules", Json{wordFor(label.rules, kLabelRulesWords)});
    if (label.per != LabelPer::Serving) json.set("per", Json{wordFor(label.per, kLabelPerWords)});
    if (label.state != LabelState::AsSold)
        json.set("basis", Json{wordFor(label.state, kLabelStateWords)});
    if (label.servingSize)
        json.set(label.servingInMillilitres ? "serving_ml" : "serving_grams",
                 Json{label.servingSize->text()});
    if (label.householdAmount) {
        Json serving = Json::object();
        serving.set("amount", Json{label.householdAmount->text()});
        json.set("serving", serving.set("unit", Json{label.householdUnit}));
    }
    json.set("declares", amountsJson(label.amounts));
    if (label.density) {
        Json density = Json::object();
        density.set("g_per_ml", Json{label.density->gramsPerMl.text()});
        json.set("density", density.set("within", Json{label.density->within.text()}));
    }
    if (!label.servingsPerPack.empty()) json.set("servings_per_pack", Json{label.servingsPerPack});
    if (!label.date.empty()) json.set("date", Json{label.date});
    if (label.declarationSpread)
        json.set("declaration_spread", Json{label.declarationSpread->text()});
    if (label.photo) {
        Json photo = Json::object();
        photo.set("sha256", Json{label.photo->sha256});
        json.set("photo", photo.set("name", Json{label.photo->fileName}));
    }
    if (!label.assents.empty()) json.set("as_printed", assentsJson(label.assents));
    return json;
}

LabelEntry readLabel(ObjectReader& label) {
    LabelEntry entry;
    LabelFacts& facts = entry.facts;
    facts.rules = label.oneOf("rules", kLabelRulesWords);
    if (label.has("per")) facts.per = label.oneOf("per", kLabelPerWords);
    if (label.has("basis")) facts.state = label.oneOf("basis", kLabelStateWords);
    readServing(label, entry);
    for (const auto& [json, pointer] : label.items("declares", 1, kLabelLineCount)) {
        ObjectReader amount{json, pointer, label.failure()};
        const LabelLine line = readLine(amount);
        facts.amounts.push_back({line, amount.text("printed", kAmountLength)});
        amount.finish();
    }
    readDensity(label, facts);
    facts.servingsPerPack = label.optionalText("servings_per_pack", kAmountLength).value_or("");
    facts.date = label.optionalText("date", kAmountLength).value_or("");
    facts.declarationSpread = label.optionalDecimal("declaration_spread", NumberSign::NotNegative);
    readPhoto(label, facts);
    readAssents(label, facts);
    label.finish();
    return entry;
}

std::string photoName(std::string_view fileName) {
    std::string name = shortened(fileName, kNameLength - 1);
    return trimmed(name).empty() ? "photograph" : name;
}

Result<LabelFacts> labelFrom(const LabelEntry& entry, const std::string& pointer) {
    LabelFacts facts = entry.facts;
    if (entry.servingTwice)
        return fail(
            Error{ErrorCode::OneOfNeeded}.with("known", "serving_grams, serving_ml").at(pointer));
    for (std::size_t i = 0; i < facts.amounts.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (facts.amounts[i].line == facts.amounts[j].line)
                return fail(Error{ErrorCode::DuplicateId}
                                .with("found", tagnameOf(facts.amounts[i].line))
                                .at(pointerTo(pointer + "/declares", i)));
    if (!entry.householdAmount.empty()) {
        const auto amount = readAmount(entry.householdAmount);
        if (!amount) return fail(amount.error().at(pointer + "/serving/amount"));
        facts.householdAmount = *amount;
    }
    if (!facts.date.empty() && !isDateForm(facts.date))
        return fail(Error{ErrorCode::NotADate}.with("found", facts.date).at(pointer + "/date"));
    const bool needed = facts.per == LabelPer::Serving || facts.householdAmount;
    if (needed && !facts.servingSize)
        return fail(Error{ErrorCode::LabelNeedsServing}.at(pointer + "/serving_grams"));
    if (facts.needsDensity() && !facts.density)
        return fail(Error{ErrorCode::LabelNeedsDensity}.at(pointer + "/density"));
    if (auto outside = outOfRange(facts)) {
        outside->pointer = pointer + outside->pointer;
        return fail(*outside);
    }
    return facts;
}

}  // namespace nettare
