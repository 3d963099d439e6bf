#include "app/theme/theme.h"

#include "app/theme/dress.h"
#include "app/theme/user_settings.h"

#include <QApplication>

#include <array>
#include <utility>

namespace nettare {

namespace {

constexpr auto kShadeKey = "theme/shade";

constexpr std::array kChoiceWords{
    std::pair{ShadeChoice::System, "system"},
    std::pair{ShadeChoice::Light, "light"},
    std::pair{ShadeChoice::Dark, "dark"},
};

ShadeChoice keptChoice() {
    const QString word = userSettings()->value(QLatin1String{kShadeKey}).toString();
    for (const auto& [choice, name] : kChoiceWords)
        if (word == QLatin1String{name}) return choice;
    return ShadeChoice::System;
}

void keepChoice(ShadeChoice choice) {
    for (const auto& [each, name] : kChoiceWords)
        if (each == choice)
            userSettings()->setValue(QLatin1String{kShadeKey}, QString{QLatin1String{name}});
}

Shade shadeBy(ShadeChoice choice, Shade system) {
    if (choice == ShadeChoice::System) return system;
    return choice == ShadeChoice::Dark ? Shade::Dark : Shade::Light;
}

}  // namespace

Theme::Theme(const QDBusConnection& bus, QObject* parent)
    : QObject{parent},
      system_{bus},
      choice_{keptChoice()},
      shade_{shadeBy(choice_, system_.shade())} {
    connect(&system_, &SystemShade::changed, this, &Theme::follow);
    dress(*qApp, shade_);
}

void Theme::choose(ShadeChoice choice) {
    choice_ = choice;
    keepChoice(choice);
    follow();
}

void Theme::follow() {
    const Shade next = shadeBy(choice_, system_.shade());
    if (next == shade_) return;
    shade_ = next;
    dress(*qApp, shade_);
    emit changed(shade_);
}

}  // namespace nettare
