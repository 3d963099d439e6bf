#include "core/food/label_json.h"

#include <catch2/catch.hpp>

#include "core/food/table_food_json.h"

namespace nettare {

namespace {

constexpr const char* kWholeLabel = R"({"rules": "eu", "per": "100ml", "basis": "prepared",
    "serving_ml": "250", "serving": {"amount": "1", "unit": "glass"},
    "density": {"g_per_ml": "1.03", "within": "0.01"}, "servings_per_pack": "about 4",
    "declares": [{"component": "ENERC_KJ", "printed": "197"}, {"component": "NACL", "printed": "<0.01"},
                 {"component": "CHOAVL", "printed": "4.8"}, {"component": "FIBTG", "printed": "0"}],
    "date": "2026-05-16", "declaration_spread": "0.1",
    "photo": {"sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
              "name": "pack.jpg"},
    "as_printed": [{"finding": "energy", "about": "ENERC_KJ 197"}]})";

Result<LabelFacts> labelOfText(const std::string& text) {
    const auto json = parseJson(text);
    REQUIRE(json);
    std::optional<Error> failure;
    ObjectReader reader{*json, "/label", failure};
    const LabelEntry entry = readLabel(reader);
    if (failure) return fail(*failure);
    return labelFrom(entry, "/label");
}

ErrorCode refused(const std::string& from, const std::string& to) {
    std::string text = kWholeLabel;
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    const auto label = labelOfText(text.replace(at, from.size(), to));
    REQUIRE_FALSE(label);
    return label.error().code;
}

}  // namespace

TEST_CASE("a label reads back as it was written", "[food][label]") {
    const auto label = labelOfText(kWholeLabel);
    REQUIRE(label);
    CHECK(label->rules == LabelRules::Eu);
    CHECK(label->per == LabelPer::HundredMillilitres);
    CHECK(label->state == LabelState::Prepared);
    CHECK(label->servingSize->text() == "250");
    CHECK(label->servingInMillilitres);
    CHECK(label->householdAmount->text() == "1");
    CHECK(label->density->gramsPerMl.text() == "1.03");
    CHECK(*label->printed(LabelOnly::NACL) == "<0.01");
    CHECK(*label->printed(Component::FIBTG) == "0");
    CHECK(label->printed(Component::FAT) == nullptr);
    CHECK(label->photo->fileName == "pack.jpg");
    CHECK(label->assents == std::vector<LabelAssent>{{LabelFindingKind::Energy, "ENERC_KJ 197"}});
    const std::string written = writeJson(labelJson(*label));
    CHECK(written == writeJson(labelJson(*labelOfText(written))));
}

TEST_CASE("a food with a label is one food with it, and another version without", "[food][label]") {
    TableFood food;
    food.row = {"own", "1", "0f8fad5b-d9cb-469f-a165-70867728950e"};
    food.name = "thick yogurt";
    const std::string bare = foodVersion(food);
    food.label = *labelOfText(kWholeLabel);
    CHECK(foodVersion(food) != bare);
    const auto again = readTableFood(tableFoodJson(food));
    REQUIRE(again);
    CHECK(foodVersion(*again) == foodVersion(food));
}

TEST_CASE("a label says what is missing or said twice", "[food][label]") {
    CHECK(refused(R"("serving_ml": "250", )", "") == ErrorCode::LabelNeedsServing);
    CHECK(refused(R"("serving_ml": "250")", R"("serving_ml": "250", "serving_grams": "258")") ==
          ErrorCode::OneOfNeeded);
    CHECK(refused(R"("density": {"g_per_ml": "1.03", "within": "0.01"}, )", "") ==
          ErrorCode::LabelNeedsDensity);
    CHECK(refused("NACL", "FIBTG") == ErrorCode::DuplicateId);
    CHECK(refused("NACL", "SALT") == ErrorCode::ComponentUnknown);
    CHECK(refused("2026-05-16", "16.5.2026") == ErrorCode::NotADate);
    CHECK(refused("e3b0", "E3B0") == ErrorCode::NotAHash);
    CHECK(refused(R"("amount": "1")", R"("amount": "some")") == ErrorCode::NotAnAmount);
    CHECK(refused(R"("finding": "energy")", R"("finding": "taste")") == ErrorCode::NotOneOf);
}

}  // namespace nettare
