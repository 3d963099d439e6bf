#include "label_cases.h"

#include "core/support/text.h"

#include <catch2/catch.hpp>

#include <charconv>
#include <fstream>

namespace nettare {

namespace {

std::vector<std::string> csvFields(const std::string& line) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            fields.emplace_back();
        else
            fields.back() += c;
    }
    return fields;
}

LabelCase labelCaseOf(const std::vector<std::string>& fields) {
    LabelCase row{fields[0], fields[1], {}, {}, fields[3].starts_with("tie:"), fields[4]};
    for (const std::string_view pair : split(fields[2], ';')) {
        const std::size_t equals = pair.find('=');
        row.input[std::string{pair.substr(0, equals)}] = pair.substr(equals + 1);
    }
    const std::string_view expected = fields[3];
    for (const std::string_view print : split(expected.substr(row.tie ? 4 : 0), '|'))
        row.lawful.emplace_back(print);
    return row;
}

std::vector<LabelCase> casesOfFile(const std::string& path) {
    std::ifstream file{path};
    std::vector<LabelCase> rows;
    bool header = true;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        const auto fields = csvFields(line);
        REQUIRE(fields.size() == 5);
        if (!header) rows.push_back(labelCaseOf(fields));
        header = false;
    }
    REQUIRE_FALSE(rows.empty());
    return rows;
}

}  // namespace

double LabelCase::number(const std::string& key) const {
    const std::string& text = input.at(key);
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    REQUIRE(read.ptr == text.data() + text.size());
    return value;
}

bool LabelCase::accepts(const std::string& printed) const {
    const auto unit = input.find("unit");
    const auto same = [&](const std::string& print) {
        return print == printed || (unit != input.end() && print == printed + " " + unit->second);
    };
    if (tie) return same(lawful.back());
    for (const std::string& print : lawful)
        if (same(print)) return true;
    return false;
}

std::vector<LabelCase> labelCases() {
    return casesOfFile(NETTARE_TEST_DATA "/label/us_rounding_cases.csv");
}

std::vector<LabelCase> euLabelCases() {
    return casesOfFile(NETTARE_TEST_DATA "/label/eu_rounding_cases.csv");
}

std::vector<LabelCase> labelCases(const std::string& topic) {
    std::vector<LabelCase> rows;
    for (const LabelCase& row : labelCases())
        if (row.topic == topic) rows.push_back(row);
    REQUIRE_FALSE(rows.empty());
    return rows;
}

Component componentOfCase(const std::string& nutrient) {
    static const std::map<std::string, Component> kNames{
        {"fat", Component::FAT},
        {"saturated_fat", Component::FASAT},
        {"cholesterol", Component::CHOLE},
        {"sodium", Component::NA},
        {"carbohydrate", Component::CHOCDF},
        {"fiber", Component::FIBTG},
        {"added_sugars", Component::SUGAD},
        {"protein_corrected", Component::PROCNT},
        {"vitamin_A", Component::VITA_RAE},
        {"vitamin_B12", Component::VITB12},
        {"vitamin_D", Component::VITD},
        {"calcium", Component::CA},
        {"iron", Component::FE},
        {"potassium", Component::K},
        {"vitamin_C", Component::VITC},
        {"zinc", Component::ZN},
        {"magnesium", Component::MG},
        {"copper", Component::CU},
        {"selenium", Component::SE},
    };
    return kNames.at(nutrient);
}

}  // namespace nettare
