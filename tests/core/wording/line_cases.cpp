#include "line_cases.h"

#include <fmt/core.h>

#include <array>
#include <fstream>

namespace nettare {

namespace {

std::string amountText(const Amount& amount) {
    const std::string low = writeFraction(amount.low());
    return amount.isRange() ? low + "-" + writeFraction(amount.high()) : low;
}

std::string amountOf(const std::optional<Amount>& amount, const std::optional<AskedAmount>& asked) {
    if (asked) return asked->decimal.text() + "?";
    return amount ? amountText(*amount) : std::string{};
}

std::string unitOf(const std::vector<std::string_view>& units) {
    if (units.empty()) return {};
    return std::string{units.front()} + (units.size() > 1 ? "?" : "");
}

std::string measureText(const LineMeasure& measure) {
    std::string text = measure.about ? "about " : "";
    text += amountOf(measure.amount, measure.asked);
    const std::string what = measure.counted.empty() ? unitOf(measure.units) : measure.counted;
    return what.empty() ? text : text + " " + what;
}

std::string measuresText(const std::vector<LineMeasure>& measures) {
    std::string text;
    for (const LineMeasure& measure : measures)
        text += (text.empty() ? "" : ", ") + measureText(measure);
    return text;
}

std::string restText(const std::vector<std::string>& rest) {
    std::string text;
    for (const std::string& piece : rest) text += (text.empty() ? "" : " ") + piece;
    return text;
}

constexpr std::array kFieldKeys{"about", "amount",   "assumed",  "each",  "equals",    "fill",
                                "food",  "optional", "or",       "piece", "plus more", "prep",
                                "rest",  "size",     "to taste", "unit"};

void addField(LineFields& fields, const std::string& field) {
    for (const std::string key : kFieldKeys) {
        if (field != key && !field.starts_with(key + " ")) continue;
        // "plus more" and the like hold no value, and no key begins another one.
        fields[key] = field.size() > key.size() ? field.substr(key.size() + 1) : "";
        return;
    }
    fields["unknown key: " + field] = "";
}

LineCase lineCaseOf(const std::string& line) {
    const std::string bar = " | ";
    LineCase row;
    std::size_t begin = line.find(bar);
    row.text = line.substr(0, begin);
    while (begin != std::string::npos) {
        const std::size_t end = line.find(bar, begin + bar.size());
        const std::size_t from = begin + bar.size();
        addField(row.fields, line.substr(from, end == std::string::npos ? end : end - from));
        begin = end;
    }
    return row;
}

}  // namespace

std::vector<LineCase> lineCasesIn(const std::string& path) {
    std::vector<LineCase> cases;
    std::ifstream file{path};
    for (std::string line; std::getline(file, line);)
        if (!line.empty() && !line.starts_with("# ")) cases.push_back(lineCaseOf(line));
    return cases;
}

LineFields fieldsOf(const LineReading& reading) {
    LineFields fields{{"amount", amountOf(reading.amount, reading.amountAsked)},
                      {"unit", unitOf(reading.units)},
                      {"piece", reading.piece},
                      {"each", measuresText(reading.each)},
                      {"equals", measuresText(reading.equals)},
                      {"size", reading.size},
                      {"fill", reading.fill},
                      {"food", reading.food},
                      {"prep", reading.preparation},
                      {"or", reading.alternative},
                      {"rest", restText(reading.rest)}};
    std::erase_if(fields, [](const auto& field) { return field.second.empty(); });
    if (reading.optional) fields["optional"] = "";
    if (reading.toTaste) fields["to taste"] = "";
    if (reading.plusMore) fields["plus more"] = "";
    if (reading.about) fields["about"] = "";
    if (reading.assumed) fields["assumed"] = "";
    return fields;
}

std::string differences(const LineFields& expected, const LineFields& read) {
    std::string text;
    for (const auto& [key, value] : read) {
        const auto found = expected.find(key);
        if (found == expected.end())
            text += fmt::format("  {}: read \"{}\", which is not there\n", key, value);
        else if (found->second != value)
            text += fmt::format("  {}: read \"{}\", not \"{}\"\n", key, value, found->second);
    }
    for (const auto& [key, value] : expected)
        if (!read.contains(key)) text += fmt::format("  {}: did not read \"{}\"\n", key, value);
    return text;
}

std::string writtenParts(const LineReading& reading) {
    std::string text;
    for (const LinePart& part : reading.parts)
        text += reading.text.substr(part.begin, part.end - part.begin);
    return text;
}

}  // namespace nettare
