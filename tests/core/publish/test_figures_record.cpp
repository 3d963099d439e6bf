#include "core/publish/figures_record.h"

#include <catch2/catch.hpp>

#include "compared_kitchens.h"
#include "json_edit.h"

using namespace kitchen;

namespace {

Json recordOfKitchen(const Kitchen& kitchen) {
    const Served served{kitchen};
    return figuresRecord(served.dossier, served.cooked);
}

Kitchen turned(const Kitchen& kitchen) {
    Kitchen other = kitchen;
    Json lines = Json::array();
    const Json::Array& items = *kitchen.document().find("lines")->items();
    for (std::size_t i = items.size(); i-- > 0;) lines.append(items[i]);
    return other.json("lines", writeJson(lines));
}

}  // namespace

TEST_CASE("a revision stores its figures in the same bytes, however its lines are ordered",
          "[publish]") {
    const Kitchen kitchen = dish("3", "7");
    CHECK(writeJson(recordOfKitchen(kitchen)) == writeJson(recordOfKitchen(turned(kitchen))));
}

TEST_CASE("the stored figures are those that are shown", "[publish]") {
    const Kitchen kitchen = dish("3", "7");
    Json record = recordOfKitchen(kitchen);
    CHECK(partAt(record, "/bases").items()->size() == 4);
    CHECK(*partAt(record, "/arithmetic").number() >= 1);
    const Served served{kitchen};
    const Figure energy = served.figure(Basis::Portion, Component::ENERC_KCAL);
    const std::string place = "/bases/1/figures/" + std::to_string(indexOf(energy.component));
    CHECK(*partAt(record, "/bases/1/basis").text() == "portion");
    CHECK(*partAt(record, place + "/component").text() == "ENERC_KCAL");
    CHECK(*partAt(record, place + "/value").number() == energy.value);
    CHECK(*partAt(record, place + "/u").number() == energy.u);
    CHECK(*partAt(record, place + "/low").number() == intervalOf(energy).low);
    CHECK(*partAt(record, place + "/at_most").number() == energy.value);
}

TEST_CASE("a portion in grams of a dish that was not weighed has no figures to store",
          "[publish]") {
    Kitchen kitchen = dish("3", "7");
    kitchen.json("portion", R"({"grams":"150"})");
    Json record = recordOfKitchen(kitchen);
    CHECK(partAt(record, "/bases").items()->size() == 3);
}

TEST_CASE("the text of the stored figures is their record, byte for byte", "[publish]") {
    const auto isSame = [](const Kitchen& kitchen) {
        const Served served{kitchen};
        return figuresRecordText(served.dossier, served.cooked) ==
               writeJson(figuresRecord(served.dossier, served.cooked));
    };
    Kitchen kitchen = dish("3", "7");
    CHECK(isSame(kitchen));
    CHECK(isSame(Kitchen{}.line(R"({"id":"o","amount":"1","unit":"tbsp","food":"oil"})")));
    CHECK(isSame(Kitchen{}.line(R"({"id":"f","amount":"2","unit":"g","food":"fennel"})")));
    kitchen.json("portion", R"({"grams":"150"})");
    CHECK(isSame(kitchen));
    kitchen.reading("pan", "60", "", "cooked").json("cooked", R"({"readings":["pan"]})");
    CHECK(isSame(kitchen));
}
