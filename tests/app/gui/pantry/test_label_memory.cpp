#include <catch2/catch.hpp>

#include "app/pantry/label_memory.h"
#include "app/theme/user_settings.h"

namespace nettare {

TEST_CASE("a label that was not saved when the window closed is there again, to the last letter") {
    userSettings()->clear();
    UnfinishedLabel label;
    label.food = "0b0e4f0c-8a0e-4f5c-9a57-3f3d2f1f8a11";
    label.typed.name = "<b>Hazel</b> \xE2\x80\xAE spread";
    label.typed.rules = LabelRules::Eu;
    label.typed.per = LabelPer::HundredMillilitres;
    label.typed.state = LabelState::Drained;
    label.typed.household = "2 tb";
    label.typed.servingInMillilitres = true;
    label.typed.gramsPerMl = "1.0";
    label.typed.amounts = {{Component::FAT, "1,"}, {LabelOnly::NACL, std::string(10'000, '9')}};
    label.typed.addedSugars = AddedSugarKind::AllOfItsSugars;
    label.typed.addedSugarsReason = "syrup";
    label.typed.plant = true;
    label.typed.date = "2026-05";
    label.photoPath = QStringLiteral("/photographs/spread \u202E.jpg");
    label.typed.assents = {{LabelFindingKind::SaltDiffers, "NACL 1, NA 300"}};
    const QString kitchen = QStringLiteral("/kitchens/mill lane.nettare");
    keepUnfinished(kitchen, label);
    CHECK(unfinishedLabel(kitchen) == label);
    CHECK_FALSE(unfinishedLabel(QStringLiteral("/kitchens/another.nettare")));
    forgetUnfinished(kitchen);
    CHECK_FALSE(unfinishedLabel(kitchen));
}

TEST_CASE("a label that is not saved in one kitchen survives those of another kitchen") {
    userSettings()->clear();
    const QString mill = QStringLiteral("/kitchens/mill lane.nettare");
    const QString harbour = QStringLiteral("/kitchens/harbour.nettare");
    UnfinishedLabel first, second;
    first.typed.name = "Thick yoghurt";
    second.typed.name = "Oat crackers";
    second.food = "0b0e4f0c-8a0e-4f5c-9a57-3f3d2f1f8a11";
    second.correction = true;
    second.samePhoto = true;
    keepUnfinished(mill, first);
    keepUnfinished(harbour, second);
    CHECK(unfinishedLabel(mill) == first);
    CHECK(unfinishedLabel(harbour) == second);
    forgetUnfinished(harbour);
    CHECK(unfinishedLabel(mill) == first);
    CHECK_FALSE(unfinishedLabel(harbour));
}

TEST_CASE("settings that somebody changed by hand are no label, and break nothing") {
    userSettings()->clear();
    keepUnfinished(QStringLiteral("k"), {});
    QString place;
    for (const QString& key : userSettings()->allKeys())
        if (key.startsWith(QStringLiteral("label/unfinished"))) place = key;
    REQUIRE_FALSE(place.isEmpty());
    userSettings()->setValue(place, QStringLiteral("{\"kitchen\":"));
    CHECK_FALSE(unfinishedLabel(QStringLiteral("k")));
    userSettings()->setValue(place,
                             QStringLiteral("{\"kitchen\":\"k\",\"typed\":{\"amounts\":[3,[]],"
                                            "\"kind\":99,\"rules\":\"mars\"}}"));
    const auto read = unfinishedLabel(QStringLiteral("k"));
    REQUIRE(read);
    CHECK(read->typed.amounts.empty());
    CHECK(read->typed.addedSugars == AddedSugarKind::BetweenNoneAndAll);
    userSettings()->setValue(QStringLiteral("label/rules"), QStringLiteral("mars"));
    CHECK(usualLabel().rules == LabelRules::Us);
}

TEST_CASE("the next label begins with the rules of the last one") {
    userSettings()->clear();
    CHECK(usualLabel().rules == LabelRules::Us);
    LabelTyped typed;
    typed.rules = LabelRules::Eu;
    typed.per = LabelPer::HundredGrams;
    rememberLabel(typed);
    CHECK(usualLabel().rules == LabelRules::Eu);
    CHECK(usualLabel().per == LabelPer::HundredGrams);
    CHECK(usualLabel().date.size() == 10);
}

}  // namespace nettare
