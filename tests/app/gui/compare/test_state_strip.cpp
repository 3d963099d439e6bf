#include "app/compare/state_strip.h"
#include "app/theme/palette.h"

#include "app/gui/support/gui.h"

#include <QSignalSpy>

#include <memory>

namespace nettare {

namespace {

/// Five revisions and the draft; 4 and the draft are compared.
std::unique_ptr<StateStrip> sixStates() {
    std::vector<StripState> states;
    for (int number = 1; number <= 5; ++number)
        states.push_back({QString::number(number), QStringLiteral("Revision %1").arg(number)});
    states.push_back({QStringLiteral("draft"), QStringLiteral("The draft"), true});
    auto strip = std::make_unique<StateStrip>();
    strip->show(states, {3, 5});
    return strip;
}

StateDot& dotAt(StateStrip& strip, int index) {
    return *strip.dots().at(static_cast<std::size_t>(index));
}

}  // namespace

TEST_CASE("a click takes a state in place of the one that was chosen longer ago") {
    const auto strip = sixStates();
    showReady(*strip);
    QSignalSpy chosen{strip.get(), &StateStrip::pairChosen};
    click(dotAt(*strip, 0));
    CHECK(strip->pair() == StatePair{0, 5});
    click(dotAt(*strip, 1));
    CHECK(strip->pair() == StatePair{0, 1});
    CHECK(chosen.size() == 2);
    keepPicture(*strip, QStringLiteral("state-strip"));
}

TEST_CASE("a click on a chosen state changes nothing but that the other one goes next") {
    const auto strip = sixStates();
    showReady(*strip);
    QSignalSpy chosen{strip.get(), &StateStrip::pairChosen};
    click(dotAt(*strip, 3));
    CHECK(strip->pair() == StatePair{3, 5});
    CHECK(dotAt(*strip, 3).isChecked());
    CHECK(chosen.isEmpty());
    click(dotAt(*strip, 4));
    CHECK(strip->pair() == StatePair{3, 4});
}

TEST_CASE("any two states are chosen by keys alone") {
    const auto strip = sixStates();
    showReady(*strip);
    dotAt(*strip, 5).setFocus();
    pressKey(dotAt(*strip, 5), Qt::Key_Home);
    CHECK(dotAt(*strip, 0).hasFocus());
    pressKey(dotAt(*strip, 0), Qt::Key_Space);
    CHECK(strip->pair() == StatePair{0, 5});
    pressKey(dotAt(*strip, 0), Qt::Key_Right);
    pressKey(dotAt(*strip, 1), Qt::Key_Return);
    CHECK(strip->pair() == StatePair{0, 1});
    pressKey(dotAt(*strip, 1), Qt::Key_Left);
    CHECK(dotAt(*strip, 0).hasFocus());
    pressKey(dotAt(*strip, 0), Qt::Key_End);
    CHECK(dotAt(*strip, 5).hasFocus());
}

TEST_CASE("tab stops once at the strip of states") {
    const auto strip = sixStates();
    showReady(*strip);
    int stops = 0;
    for (const StateDot* dot : strip->dots()) stops += dot->focusPolicy() != Qt::NoFocus ? 1 : 0;
    CHECK(stops == 1);
}

TEST_CASE("a state says its side by word and by shape") {
    const auto strip = sixStates();
    showReady(*strip);
    CHECK(spokenOf(dotAt(*strip, 3)).name == QStringLiteral("Revision 4, compared on the left"));
    CHECK(spokenOf(dotAt(*strip, 5)).name == QStringLiteral("The draft, compared on the right"));
    CHECK(spokenOf(dotAt(*strip, 0)).name == QStringLiteral("Revision 1"));
    const QColor cobalt = colour(Role::Cobalt, Shade::Light);
    CHECK(pixelsOf(picture(dotAt(*strip, 3)), cobalt) > 60);
    CHECK(pixelsOf(picture(dotAt(*strip, 0)), cobalt) == 0);
}

}  // namespace nettare
