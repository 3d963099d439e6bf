#include "app/compare/change_cards.h"

#include "app/gui/support/gui.h"

namespace nettare {

namespace {

CardWords card(const char* subject, const char* change, const char* detail) {
    return {QString::fromUtf8(subject), QString::fromUtf8(change), QString::fromUtf8(detail),
            QString::fromUtf8(subject) + QStringLiteral(" spoken.")};
}

}  // namespace

TEST_CASE("cards of a comparison stand side by side and are read as one") {
    ChangeCards cards;
    cards.show({card("Energy, per portion", "−30 kcal", "174 → 144 · ± 2, a real change"),
                card("Fat", "−3.3 g", "9.9 → 6.6 · ± 0.2, a real change"),
                card("Sodium", "−114 mg", "310 → 196 · ± 10, a real change"),
                card("Protein", "−0.1 g", "15.3 → 15.2 · ± 0.1, within uncertainty"),
                card("Ceiling 150 kcal", "met", "was missed by 24 kcal")});
    showReady(cards, {1232, 110});
    keepPicture(cards, QStringLiteral("change-cards"));
    REQUIRE(cards.cards().size() == 5);
    CHECK(cards.cards()[0]->y() == cards.cards()[4]->y());
    CHECK(cards.cards()[0]->width() >= cards.cards()[4]->width() - 1);
    CHECK(spokenOf(cards).description.startsWith(
        QStringLiteral("Energy, per portion spoken. Fat spoken.")));
}

TEST_CASE("fewer cards leave none behind") {
    ChangeCards cards;
    cards.show({card("Fat", "0 g", ""), card("Sodium", "0 mg", "")});
    cards.show({card("Fat", "0 g", "")});
    CHECK(cards.cards().size() == 1);
}

}  // namespace nettare
