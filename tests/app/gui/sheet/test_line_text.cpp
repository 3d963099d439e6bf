#include "app/sheet/line_text.h"

#include <catch2/catch.hpp>

#include <QStringList>

namespace nettare {

namespace {

struct SplitCase {
    const char *typed, *amount, *food, *preparation;
};

constexpr SplitCase kSplitCases[] = {
    {"3 tbsp olive oil", "3 tbsp", "olive oil", ""},
    {"3 tbsp olive oil, for the marinade", "3 tbsp", "olive oil", "for the marinade"},
    {"2 cloves garlic · sliced", "2 cloves", "garlic", "sliced"},
    {"36 prawns", "36", "prawns", ""},
    {"1 1/2 cups flour", "1 1/2 cups", "flour", ""},
    {"½ lemon", "½", "lemon", ""},
    {"1½ lemon", "1½", "lemon", ""},
    {"2-3 tbsp parsley", "2-3 tbsp", "parsley", ""},
    {"1,5 kg prawns", "1,5 kg", "prawns", ""},
    {"olive oil", "", "olive oil", ""},
    {"3 tbsp", "3 tbsp", "", ""},
};

bool isFood(const QString& words) {
    static const QStringList foods{QStringLiteral("olive oil"), QStringLiteral("garlic"),
                                   QStringLiteral("prawns"),    QStringLiteral("flour"),
                                   QStringLiteral("lemon"),     QStringLiteral("parsley")};
    return foods.contains(words);
}

}  // namespace

TEST_CASE("a line as a cook writes it is split into amount, food and preparation") {
    for (const SplitCase& each : kSplitCases) {
        INFO(each.typed);
        const NewLineText line = splitNewLine(QString::fromUtf8(each.typed), isFood);
        CHECK(line.amount == QString::fromUtf8(each.amount));
        CHECK(line.food == QString::fromUtf8(each.food));
        CHECK(line.preparation == QString::fromUtf8(each.preparation));
    }
}

TEST_CASE("a name that holds a comma stays whole while it is the line's own") {
    const QString name = QStringLiteral("prawns, shell on");
    const IngredientText own = splitIngredient(QStringLiteral("prawns, shell on · peeled"), name);
    CHECK(own.food == name);
    CHECK(own.preparation == QStringLiteral("peeled"));
    const IngredientText other = splitIngredient(QStringLiteral("shrimps, peeled"), name);
    CHECK(other.food == QStringLiteral("shrimps"));
    CHECK(other.preparation == QStringLiteral("peeled"));
}

}  // namespace nettare
