#include "core/food/label_document.h"

#include <catch2/catch.hpp>

#include "core/food/own_food_json.h"
#include "core/label/label_values.h"
#include "document_mutations.h"
#include "json_edit.h"
#include "published_schema.h"

namespace nettare {

namespace {

constexpr auto kLabelSchema = "label.schema.json";

/// Every member that a label document can have.
Json fullLabelDocument() {
    return jsonOf(
        R"({"format": "nettare label", "version": 1, "name": "Oat drink", "group": "drink",
        "label": {"rules": "eu", "per": "100ml", "basis": "prepared",
            "serving_ml": "250", "serving": {"amount": "1", "unit": "glass"},
            "density": {"g_per_ml": "1.03", "within": "0.01"}, "servings_per_pack": "about 4",
            "declares": [{"component": "ENERC_KJ", "printed": "197"},
                         {"component": "NACL", "printed": "<0.01"},
                         {"component": "CHOAVL", "printed": "4.8"},
                         {"component": "FIBTG", "printed": "0"}],
            "date": "2026-05-16", "declaration_spread": "0.1",
            "photo": {"sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
                      "name": "pack.jpg"},
            "as_printed": [{"finding": "energy", "about": "ENERC_KJ 197"}]},
        "added_sugars": {"kind": "stated", "per_100g": "2.5", "reason": "its maker, by letter"},
        "plant": true, "source": "photograph of the pack", "note": "bought in May"})");
}

Json exampleLabel() {
    return jsonOf(fileText(NETTARE_RESOURCES "/demo/thick-yogurt.label.json"));
}

bool agreedOnLabel(PublishedSchema& schema, const MutatedDocument& mutated) {
    const auto reader = [](const Json& json) -> Result<void> {
        const auto read = readLabelShape(json);
        if (!read) return fail(read.error());
        return {};
    };
    return agree(schema, reader, mutated);
}

Error refusedLabel(const Json& json) {
    const auto own = readLabelDocument(json);
    REQUIRE_FALSE(own);
    return own.error();
}

}  // namespace

TEST_CASE("a label document is an own food with its label and what it comes to", "[food][label]") {
    const auto own = readLabelDocument(fullLabelDocument());
    REQUIRE(own);
    CHECK(own->food.name == "Oat drink");
    CHECK(own->food.group == "drink");
    CHECK(own->food.plant);
    CHECK(own->food.row == TableRow{"own", "", ""});
    CHECK(own->food.addedSugars.statedPer100g == 2.5);
    CHECK(own->origin.source == "photograph of the pack");
    CHECK(own->origin.date == "2026-05-16");
    CHECK(own->origin.note == "bought in May");
    // 4.8 g in 100 ml of 1.03 g each, fibre none: carbohydrate with fibre.
    CHECK(*own->food.profile[Component::CHOCDF] == Approx(4.8 / 1.03));
    CHECK(own->food.profile.per100g == labelProfile(*own->food.label).per100g);
}

TEST_CASE("a label document reads back as it was written", "[food][label]") {
    for (const Json& json : {fullLabelDocument(), exampleLabel()}) {
        const auto own = readLabelDocument(json);
        REQUIRE(own);
        const Json written = labelDocumentJson(*own);
        const auto again = readLabelDocument(written);
        REQUIRE(again);
        CHECK(writeJson(ownFoodJson(*again)) == writeJson(ownFoodJson(*own)));
        CHECK(writeJson(labelDocumentJson(*again)) == writeJson(written));
    }
}

TEST_CASE("what a label document leaves out is taken from the pack, or said to be open",
          "[food][label]") {
    Json json = fullLabelDocument();
    for (const char* key : {"group", "added_sugars", "plant", "source", "note"})
        json = without(json, "/" + std::string{key});
    const auto own = readLabelDocument(json);
    REQUIRE(own);
    CHECK(own->origin.source == "package label");
    CHECK(own->food.addedSugars.kind == AddedSugarKind::BetweenNoneAndAll);
    CHECK(own->food.addedSugars.reason == "the label document says nothing of them");
    CHECK_FALSE(own->food.plant);
}

TEST_CASE("a label document of the next pack changes what it states and nothing else",
          "[food][label]") {
    auto before = readLabelDocument(fullLabelDocument());
    REQUIRE(before);
    before->food.refusePercent = 3;
    before->food.label->photo = LabelPhoto{std::string(64, 'a'), "jar.jpg"};
    Json json = without(fullLabelDocument(), "/label/photo");
    for (const char* key : {"group", "added_sugars", "plant", "source", "note"})
        json = without(json, "/" + std::string{key});
    const auto document = readLabelShape(json);
    REQUIRE(document);
    const auto next = labelledFood(*document, *before);
    REQUIRE(next);
    CHECK(next->food.group == before->food.group);
    CHECK(next->food.plant == before->food.plant);
    CHECK(next->food.addedSugars.reason == before->food.addedSugars.reason);
    CHECK(next->food.refusePercent == 3.0);
    CHECK(next->origin.source == before->origin.source);
    CHECK(next->origin.note == before->origin.note);
    // The photograph is of the old pack.
    CHECK_FALSE(next->food.label->photo);
}

TEST_CASE("a label document says what is wrong with it and where", "[food][label]") {
    const Json full = fullLabelDocument();
    const Error recipe = refusedLabel(with(full, "/format", Json{"nettare recipe"}));
    CHECK(recipe.code == ErrorCode::WrongFormat);
    CHECK(recipe.value("known") == "nettare label");
    CHECK(refusedLabel(with(full, "/version", Json{2.0})).code == ErrorCode::NewerFormat);
    CHECK(refusedLabel(with(full, "/version", Json{"1"})).code == ErrorCode::WrongKind);
    const Error undated = refusedLabel(without(full, "/label/date"));
    CHECK(undated.code == ErrorCode::MissingKey);
    CHECK(undated.pointer == "/label");
    CHECK(undated.value("key") == "date");
    CHECK(refusedLabel(with(full, "/label/date", Json{"May"})).pointer == "/label/date");
    CHECK(refusedLabel(with(full, "/label/date", Json{"2026-02-31"})).code == ErrorCode::NotADate);
    CHECK(refusedLabel(without(full, "/label/density")).code == ErrorCode::LabelNeedsDensity);
    CHECK(refusedLabel(without(full, "/label/declares")).pointer == "/label");
    CHECK(refusedLabel(with(full, "/more", Json{true})).code == ErrorCode::UnknownKey);
}

TEST_CASE("a label document that no recipe could use is refused at its place", "[food][label]") {
    const auto refusedAt = [](const char* place, const char* value, ErrorCode code) {
        INFO(place << " " << value);
        Error error = refusedLabel(with(fullLabelDocument(), place, Json{value}));
        CHECK(error.code == code);
        CHECK(error.pointer == place);
        CHECK(error.value("food") == "Oat drink");
        return error;
    };
    refusedAt("/label/declares/2/printed", "1O", ErrorCode::LabelAmountUnreadable);
    refusedAt("/label/declares/3/printed", "traces", ErrorCode::LabelAmountUnreadable);
    // Packages of the EU print sodium as salt, and carbohydrate without fibre.
    refusedAt("/label/declares/2/component", "CHOCDF", ErrorCode::ComponentUnknown);
    // 4.85 g of carbohydrate in 100 ml of 1.02 g each, and a tenth more by the declaration spread.
    const Error sugars =
        refusedAt("/added_sugars/per_100g", "50", ErrorCode::AddedSugarsAboveSugars);
    CHECK(sugars.value("found") == "50");
    CHECK(sugars.value("most") == "5.23");
    CHECK(readLabelDocument(with(fullLabelDocument(), "/added_sugars/per_100g", Json{"5.2"})));
    refusedAt("/added_sugars/per_100g", "120", ErrorCode::OutOfRange);
    refusedAt("/label/declaration_spread", "1.5", ErrorCode::OutOfRange);
    const Error within = refusedAt("/label/density/within", "1.03", ErrorCode::OutOfRange);
    CHECK(within.value("low") == "0");
    CHECK(within.value("high") == "1.03");
}

TEST_CASE("a version before the first of label documents is no newer one", "[food][label]") {
    for (const double version : {0.0, -1.0, 0.5}) {
        const Error error = refusedLabel(with(fullLabelDocument(), "/version", Json{version}));
        CHECK(error.code == ErrorCode::OutOfRange);
        CHECK(error.pointer == "/version");
    }
}

TEST_CASE("hostile text in a label is refused at its place", "[food][label]") {
    const std::string long10k(10'000, 'x');
    for (const char* place :
         {"/name", "/group", "/source", "/note", "/label/serving/unit", "/label/servings_per_pack",
          "/label/photo/name", "/label/declares/0/printed", "/added_sugars/reason",
          "/label/as_printed/0/about"}) {
        INFO(place);
        const auto code = [&](const std::string& text) {
            const Error error = refusedLabel(with(fullLabelDocument(), place, Json{text}));
            CHECK(error.pointer == place);
            return error.code;
        };
        CHECK(code(long10k) == ErrorCode::TextTooLong);
        // U+202E and U+2067 turn the writing round, U+0007 rings.
        for (const char* hidden : {"a\u202eb", "a\u2067b", "a\u0007b", "a\nb"})
            CHECK(code(hidden) == ErrorCode::TextNotClean);
        CHECK(code(" ") == ErrorCode::EmptyText);
    }
    // Markup is text like any other: it stays as it is typed, and whoever shows it shows it so.
    const auto own = readLabelDocument(
        with(fullLabelDocument(), "/name", Json{"<b onclick=x>Oat</b> & {0} %s"}));
    REQUIRE(own);
    CHECK(own->food.name == "<b onclick=x>Oat</b> & {0} %s");
    CHECK(refusedLabel(with(fullLabelDocument(), "/label/serving/amount", Json{"<b>1</b>"})).code ==
          ErrorCode::NotAnAmount);
}

TEST_CASE("reader and schema agree on label documents", "[food][label]") {
    PublishedSchema schema{kLabelSchema};
    CHECK(agreedOnLabel(schema, {"nothing changed", fullLabelDocument()}));
    CHECK(agreedOnLabel(schema, {"the example", exampleLabel()}));
    std::vector<std::string> places;
    collectMembers(fullLabelDocument(), "", places);
    REQUIRE(places.size() > 35);
    for (const std::string& place : places) {
        agreedOnLabel(schema, {"without " + place, without(fullLabelDocument(), place)});
        CHECK_FALSE(
            agreedOnLabel(schema, {place + " null", with(fullLabelDocument(), place, Json{})}));
    }
}

TEST_CASE("reader and schema agree on a thousand changed label documents", "[food][label]") {
    PublishedSchema schema{kLabelSchema};
    DocumentMutator mutator{fullLabelDocument(), 20261126};
    int accepted = 0;
    int refused = 0;
    for (int i = 0; i < 1000; ++i) {
        CAPTURE(i);
        ++(agreedOnLabel(schema, mutator.next()) ? accepted : refused);
    }
    CHECK(accepted >= 150);
    CHECK(refused >= 250);
}

TEST_CASE("the label's form is explained to people, in the words of the recipe's form",
          "[food][label]") {
    CHECK(checkExplained(kLabelSchema) > 50);
    const Json recipe = jsonOf(fileText(NETTARE_RESOURCES "/schema/recipe.schema.json"));
    const Json label = jsonOf(fileText(NETTARE_RESOURCES "/schema/label.schema.json"));
    for (const JsonMember& definition : *label.find("definitions")->members()) {
        INFO(definition.key);
        const Json* same = recipe.find("definitions")->find(definition.key);
        REQUIRE(same != nullptr);
        CHECK(*same == definition.value);
    }
}

}  // namespace nettare
