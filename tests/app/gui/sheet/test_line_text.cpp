#include "app/sheet/line_text.h"

#include <catch2/catch.hpp>

#include <QStringList>

namespace nettare {

namespace {

bool isFood(const QString& words) {
    static const QStringList foods{QStringLiteral("garlic"), QStringLiteral("fennel"),
                                   QStringLiteral("olive oil")};
    return foods.contains(words);
}

LineReading readingOf(const char* typed) {
    return readNewLine(QString::fromUtf8(typed), isFood);
}

}  // namespace

TEST_CASE("a middle dot begins the preparation as a comma does") {
    const LineReading garlic = readingOf("2 cloves garlic · sliced");
    CHECK(garlic.piece == "clove");
    CHECK(garlic.food == "garlic");
    CHECK(garlic.preparation == "sliced");
}

TEST_CASE("a word that no food begins with counts the food behind it") {
    const LineReading globes = readingOf("2 globes fennel, trimmed");
    CHECK(globes.piece == "globe");
    CHECK(globes.food == "fennel");
    CHECK(readingOf("2 fennel").piece.empty());
    CHECK(readingOf("3 tbsp olive oil").food == "olive oil");
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
