#include "core/food/label_document.h"

#include "core/label/label_refusal.h"
#include "core/label/label_values.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

/// Where a label document names no source.
constexpr std::string_view kUsualSource = "package label";
constexpr std::string_view kNothingSaid = "the label document says nothing of them";

/// Format and version first, as for recipes.
void readLabelForm(ObjectReader& root) {
    const std::string format = root.text("format", kAmountLength);
    if (root.failure()) return;
    if (format != kLabelFormat) {
        root.failure() = Error{ErrorCode::WrongFormat}
                             .with("found", format)
                             .with("wanted", "a label document")
                             .with("known", kLabelFormat)
                             .at("/format");
        return;
    }
    const double version = root.number("version");
    if (!root.failure() && version < kLabelVersion)
        root.failure() = Error{ErrorCode::OutOfRange}
                             .with("found", numberText(version))
                             .with("low", std::to_string(kLabelVersion))
                             .with("high", std::to_string(kLabelVersion))
                             .at("/version");
    else if (!root.failure() && version != kLabelVersion)
        root.failure() = Error{ErrorCode::NewerFormat}
                             .with("found", numberText(version))
                             .with("known", std::to_string(kLabelVersion))
                             .at("/version");
}

LabelEntry readDatedLabel(ObjectReader& root) {
    ObjectReader reader = root.object("label");
    LabelEntry entry = readLabel(reader);
    if (!root.failure() && entry.facts.date.empty())
        root.failure() = Error{ErrorCode::MissingKey}.with("key", "date").at(reader.pointer());
    return entry;
}

/// As a recipe document says them.
std::optional<AddedSugars> readAddedSugarsOf(ObjectReader& root) {
    if (!root.has("added_sugars")) return std::nullopt;
    ObjectReader reader = root.object("added_sugars");
    AddedSugars added;
    added.kind = reader.oneOf("kind", kAddedSugarWords);
    if (added.kind == AddedSugarKind::Stated)
        added.statedPer100g = reader.decimal("per_100g", NumberSign::NotNegative).value();
    added.reason = reader.text("reason", kNameLength);
    reader.finish();
    return added;
}

Json addedSugarsMember(const AddedSugars& added) {
    Json json = Json::object();
    json.set("kind", Json{wordFor(added.kind, kAddedSugarWords)});
    if (added.kind == AddedSugarKind::Stated)
        json.set("per_100g", Json{Decimal::fromDouble(added.statedPer100g).text()});
    return json.set("reason", Json{added.reason});
}

Result<LabelFacts> checkedLabel(const LabelDocument& document) {
    auto label = labelFrom(document.label, "/label");
    if (!label) return label;
    if (!isCalendarDay(label->date))
        return fail(Error{ErrorCode::NotADate}.with("found", label->date).at("/label/date"));
    if (auto refusal = labelRefusal(*label)) {
        refusal->pointer = "/label" + refusal->pointer;
        return fail(*refusal);
    }
    return label;
}

}  // namespace

Result<LabelDocument> readLabelShape(const Json& json) {
    std::optional<Error> failure;
    ObjectReader root{json, "", failure};
    LabelDocument document;
    readLabelForm(root);
    document.name = root.text("name", kNameLength);
    document.group = root.optionalText("group", kNameLength).value_or("");
    document.label = readDatedLabel(root);
    document.addedSugars = readAddedSugarsOf(root);
    if (root.has("plant")) document.plant = root.optionalFlag("plant");
    document.source = root.optionalText("source", kNameLength).value_or("");
    document.note = root.optionalText("note", kProseLength).value_or("");
    root.finish();
    if (failure) return fail(*failure);
    return document;
}

Result<OwnFood> labelledFood(const LabelDocument& document) {
    OwnFood unknown;
    unknown.food.row = TableRow{std::string{kOwnTable}, "", ""};
    unknown.food.addedSugars = {AddedSugarKind::BetweenNoneAndAll, 0, std::string{kNothingSaid}};
    unknown.origin.source = kUsualSource;
    return labelledFood(document, unknown);
}

Result<OwnFood> labelledFood(const LabelDocument& document, const OwnFood& before) {
    auto label = checkedLabel(document);
    if (!label) return fail(label.error().with("food", document.name));
    OwnFood own = before;
    own.food.name = document.name;
    if (!document.group.empty()) own.food.group = document.group;
    own.food.plant = document.plant.value_or(before.food.plant);
    own.food.addedSugars = document.addedSugars.value_or(before.food.addedSugars);
    if (const auto refusal = addedSugarsRefusal(*label, own.food.addedSugars))
        return fail(refusal->with("food", document.name));
    own.food.profile = labelProfile(*label);
    if (!document.source.empty()) own.origin.source = document.source;
    own.origin.date = label->date;
    if (!document.note.empty()) own.origin.note = document.note;
    own.food.label = std::move(*label);
    return own;
}

Result<OwnFood> readLabelDocument(const Json& json) {
    const auto document = readLabelShape(json);
    if (!document) return fail(document.error());
    return labelledFood(*document);
}

Json labelDocumentJson(const OwnFood& own) {
    Json json = Json::object();
    json.set("format", Json{kLabelFormat}).set("version", Json{double{kLabelVersion}});
    json.set("name", Json{own.food.name});
    if (!own.food.group.empty()) json.set("group", Json{own.food.group});
    if (own.food.label) json.set("label", labelJson(*own.food.label));
    json.set("added_sugars", addedSugarsMember(own.food.addedSugars));
    if (own.food.plant) json.set("plant", Json{true});
    json.set("source", Json{own.origin.source});
    if (!own.origin.note.empty()) json.set("note", Json{own.origin.note});
    return json;
}

}  // namespace nettare
