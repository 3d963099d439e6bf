#include "panel/sample_panels.h"

#include "core/label/us_panel.h"

#include <stdexcept>
#include <utility>

namespace nettare {

namespace {

UsPanelInput skewerInput() {
    UsPanelInput input;
    const std::pair<Component, double> amounts[] = {
        {Component::ENERC_KCAL, 286}, {Component::FAT, 16.8},  {Component::FASAT, 4.2},
        {Component::FATRN, 0},        {Component::CHOLE, 71},  {Component::NA, 548},
        {Component::CHOCDF, 10.6},    {Component::FIBTG, 1.7}, {Component::SUGAR, 5.9},
        {Component::SUGAD, 3.8},      {Component::PROCNT, 24}, {Component::VITD, 0.1},
        {Component::CA, 34},          {Component::FE, 1.6},    {Component::K, 452},
    };
    for (const auto& [component, amount] : amounts)
        input.perServing[indexOf(component)] = {amount, amount, {}};
    input.servings = 6;
    input.household = "2 skewers with fiery sauce";
    input.servingGrams = 128;
    return input;
}

PanelLine line(Component component, const char* name, const char* amount,
               std::optional<std::string> percent, int indent, bool bold) {
    return {component, name, amount, std::move(percent), indent, bold, false};
}

std::vector<PanelLine> germanLines() {
    using enum Component;
    return {
        line(FAT, "Gesamtfettgehalt (Fett insgesamt)", "16,5 g", "21 %", 0, true),
        line(FASAT, "davon gesättigte Fettsäuren einschließlich kurzkettiger", "4 g", "20 %", 1,
             false),
        line(FAPU, "davon mehrfach ungesättigte Fettsäuren", "weniger als 1 g", std::nullopt, 1,
             false),
        line(NA, "Natriumäquivalentkonzentrationsbestimmungsgrenzwertüberschreitung", "550 mg",
             "24 %", 0, true),
        {SUGAD, "zugesetzter Zucker aus Sirup, Honig und Fruchtsaftkonzentraten", "4 g", "8 %", 2,
         false, true},
    };
}

}  // namespace

Panel skewerPanel() {
    auto panel = usPanel(skewerInput());
    if (!panel) throw std::logic_error{"the sample panel is open"};
    return std::move(*panel);
}

Panel germanPanel() {
    Panel panel;
    panel.title = "Durchschnittliche Nährwertangaben je Verzehrportion";
    panel.servings = "etwa 6 Verzehrportionen je handelsüblicher Verpackungseinheit";
    panel.servingSizeHead = "Größe der Verzehrportion";
    panel.servingHousehold = "2 Hähnchenspieße mit pikanter Erdnusssauce";
    panel.servingMetric = "(128 g)";
    panel.amountHead = "Gehalt in einer Verzehrportion";
    panel.caloriesName = "Brennwert in Kilokalorien";
    panel.calories = "1290";
    panel.percentHead = "Prozent der Referenzmenge für die tägliche Zufuhr*";
    panel.lines = germanLines();
    panel.vitamins = {line(Component::VITD, "Vitamin D (Cholecalciferol und Ergocalciferol)",
                           "0,1 µg", "0 %", 0, false)};
    panel.footnote =
        "*Der Prozentsatz gibt an, wie viel der Nährstoff einer Verzehrportion zur täglichen "
        "Ernährung beiträgt; der Referenzwert für einen durchschnittlichen Erwachsenen beträgt "
        "2000 Kilokalorien.";
    panel.caution =
        "Aus Rezeptdaten berechnet; keine Bescheinigung, dass lebensmittelrechtliche "
        "Kennzeichnungsvorschriften eingehalten sind.";
    return panel;
}

}  // namespace nettare
