#include "app/command_line/label_page.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/food/label_json.h"
#include "core/food/label_words.h"
#include "core/label/label_interval.h"
#include "core/label/label_lines.h"
#include "core/label/label_values.h"
#include "core/label/read_printed.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/label_sentence.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// Text of people, cut to what fits a line.
std::string shown(const std::string& text) {
    constexpr std::size_t kLongestLine = 200;
    return shortened(text, kLongestLine);
}

std::string_view rulesText(LabelRules rules) {
    return rules == LabelRules::Us ? "United States, 21 CFR 101.9"
                                   : "European Union and United Kingdom, Regulation (EU) 1169/2011";
}

std::string_view stateText(LabelState state) {
    switch (state) {
        case LabelState::AsSold:
            return "as sold";
        case LabelState::Prepared:
            return "as prepared";
        case LabelState::Drained:
            return "drained";
    }
    return {};
}

/// "about 4 servings", however much of it was typed.
std::string packText(const std::string& servings) {
    const bool says = lowerAscii(servings).find("serving") != std::string::npos;
    return shown(servings) + (servings.empty() || says ? "" : " servings");
}

std::string headText(const LabelPage& page) {
    const LabelFacts& label = page.label();
    std::string text = shown(page.own.food.name) + '\n';
    const auto row = [&text](std::string_view name, const std::string& value) {
        if (!value.empty()) text += fmt::format("{:<9}{}\n", name, value);
    };
    row("rules", std::string{rulesText(label.rules)});
    row("amounts", fmt::format("per {}, {}", labelBasisText(label), stateText(label.state)));
    if (label.per != LabelPer::Serving) row("serving", labelServingText(label));
    if (label.density)
        row("1 ml", fmt::format("{} g ± {}", label.density->gramsPerMl.text(),
                                label.density->within.text()));
    row("pack", packText(label.servingsPerPack));
    if (label.declarationSpread)
        row("spread", fmt::format("± {} % beside the rounding",
                                  numberAt(1, 100 * label.declarationSpread->value())));
    row("source", shown(page.own.origin.source));
    row("read", label.date);
    if (label.photo)
        row("photo", fmt::format("{}, {}", shown(label.photo->fileName), label.photo->sha256));
    row("note", shown(page.own.origin.note));
    return text;
}

/// As packages call it, with its unit there; calories have none.
struct LineName {
    std::string called, unit;
};

LineName nameOfLine(LabelRules rules, const LabelLine& line) {
    const PrintedLine* printed = printedLine(rules, line);
    if (printed == nullptr) return {std::string{nameOf(line)}, std::string{unitOf(line)}};
    return {std::string(2 * static_cast<std::size_t>(printed->indent), ' ') +
                std::string{printed->called},
            std::string{printed->unit}};
}

double per100gOf(const LabelFacts& label, const LabelAmount& amount,
                 const DecimalInterval& interval) {
    return printedFigure(amount, interval) * 100 / labelGrams(label);
}

int decimalsOfLine(const LabelLine& line) {
    const auto component = componentOf(line);
    return component ? factsOf(*component).decimals : 2;
}

/// What may be nothing shows how much it can be.
std::string per100gText(const LabelFacts& label, const LabelAmount& amount,
                        const DecimalInterval& interval) {
    const int decimals = decimalsOfLine(amount.line);
    const std::string_view unit = unitOf(amount.line);
    if (interval.low == Decimal{} && interval.high > Decimal{})
        return fmt::format(
            "up to {} {}",
            numberAt(decimals, interval.high.value() * 100 / labelGrams(label), Direction::Ceiling),
            unit);
    return fmt::format("{} {}", numberAt(decimals, per100gOf(label, amount, interval)), unit);
}

/// The amount without its own unit, which has a column.
std::string printedText(const LabelAmount& amount) {
    const bool read = readPrinted(amount.printed, unitOf(amount.line)).has_value();
    return shown(read ? amount.printed.substr(0, amount.printed.find_last_of("0123456789") + 1)
                      : amount.printed);
}

std::string lineText(const LabelFacts& label, const LabelAmount& amount) {
    const auto [called, unit] = nameOfLine(label.rules, amount.line);
    const auto interval = labelInterval(label, amount);
    const std::string_view own = unitOf(amount.line);
    const std::string stands =
        interval ? fmt::format("{} {}", intervalText(*interval), own) : "no lawful print";
    const std::string each = interval ? per100gText(label, amount, *interval) : "";
    std::string row = fmt::format("  {:<26}{:>14} {:<5}{:<18}{:>12}", called, printedText(amount),
                                  unit, stands, each);
    row.erase(row.find_last_not_of(' ') + 1);
    return row + '\n';
}

/// How a document says it.
Json assentJson(const LabelFinding& finding) {
    Json json = Json::object();
    json.set("finding", Json{wordFor(finding.kind, kLabelFindingWords)});
    return json.set("about", Json{finding.about});
}

std::string findingText(const LabelFacts& label, const LabelFinding& finding) {
    std::string text =
        fmt::format("  {} {}\n", finding.assented ? "=" : "!", findingSentence(label, finding));
    if (finding.assented) return text + "    as printed, says who read it\n";
    if (finding.impossible) return text;
    return text + fmt::format("    if it is printed so: \"as_printed\": [{}]\n",
                              writeJson(assentJson(finding)));
}

Json lineJson(const LabelFacts& label, const LabelAmount& amount) {
    Json json = Json::object();
    json.set("component", Json{tagnameOf(amount.line)}).set("printed", Json{amount.printed});
    json.set("unit", Json{unitOf(amount.line)});
    const auto interval = labelInterval(label, amount);
    if (!interval) return json;
    json.set("low", Json{interval->low.value()}).set("high", Json{interval->high.value()});
    json.set("low_included", Json{interval->lowIncluded});
    json.set("high_included", Json{interval->highIncluded});
    return json.set("per_100g", Json{per100gOf(label, amount, *interval)});
}

Json findingJson(const LabelFacts& label, const LabelFinding& finding) {
    Json json = assentJson(finding);
    json.set("as_printed", Json{finding.assented});
    json.set("sentence", Json{findingSentence(label, finding)});
    if (!finding.slip) return json;
    Json slip = Json::object();
    if (finding.slip->line) slip.set("component", Json{tagnameOf(*finding.slip->line)});
    slip.set("printed", Json{finding.slip->printed}).set("instead", Json{finding.slip->instead});
    return json.set("likely_slip", std::move(slip));
}

}  // namespace

bool LabelPage::hasOpen() const {
    return std::ranges::any_of(findings,
                               [](const LabelFinding& finding) { return !finding.assented; });
}

std::string labelText(const LabelPage& page) {
    const LabelFacts& label = page.label();
    std::string text = headText(page);
    text += fmt::format("  {:<26}{:>14} {:<5}{:<18}{:>12}\n", "", "printed", "", "stands for",
                        "per 100 g");
    for (const LabelAmount& amount : label.amounts) text += lineText(label, amount);
    if (page.findings.empty()) return text + "Nothing in it contradicts the rest.\n";
    for (const LabelFinding& finding : page.findings) text += findingText(label, finding);
    return text;
}

Json labelPageJson(const LabelPage& page) {
    const LabelFacts& label = page.label();
    Json lines = Json::array();
    for (const LabelAmount& amount : label.amounts) lines.append(lineJson(label, amount));
    Json findings = Json::array();
    for (const LabelFinding& finding : page.findings) findings.append(findingJson(label, finding));
    Json json = Json::object();
    json.set("name", Json{page.own.food.name}).set("label", labelJson(label));
    json.set("source", Json{page.own.origin.source});
    return json.set("lines", std::move(lines)).set("findings", std::move(findings));
}

}  // namespace nettare
