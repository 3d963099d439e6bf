#include "small_table.h"

using namespace nettare;

void writeSmallTable(const Scratch& folder) {
    folder.write("table.txt",
                 "# invented\nkey|value\ntable|small\nrelease|1\ncitation|Invented for tests.\n");
    folder.write("foods.txt",
                 "number|name|group|refuse_percent|refuse_note|nitrogen_factor|"
                 "protein_kcal_per_g|fat_kcal_per_g|carbohydrate_kcal_per_g\n"
                 "00001|carrots, raw|vegetable|11|peelings|6.25|2.78|8.37|3.84\n"
                 "00002|carrot cake|bread|-|-|0.00|-|-|-\n");
    folder.write("components.txt", valuesHeader() +
                                       valuesLine("00001", {{Component::WATER, "88.29"},
                                                            {Component::ENERC_KCAL, "41"},
                                                            {Component::NA, "69"}}) +
                                       valuesLine("00002", {{Component::WATER, "20"}}));
    folder.write("spreads.txt", "number|tagname|n|standard_error\n00001|NA|16|3.45\n");
    folder.write("measures.txt",
                 "number|amount|unit|qualifier|grams|n|standard_deviation_grams\n"
                 "00001|0.5|cup|sliced|61|4|6.1\n");
    folder.write("other_names.txt", "number|name\n00001|garden carrots\n");
    folder.write("kitchen_names.txt", "number|name\n00001|gajar\n");
    folder.write("traits.txt",
                 "key|added|plant|reason\ngroup bread|12.5|no|as the recipe says\n"
                 "group vegetable|none|yes|its own sugars\n");
    folder.write("everyday.txt", "number\n00002\n");
}

std::string valuesHeader() {
    std::string line = "number";
    for (const ComponentFacts& facts : allComponents())
        if (facts.component != Component::SUGAD) line += "|" + std::string{facts.tagname};
    return line + "\n";
}

std::string valuesLine(std::string_view number,
                       const std::vector<std::pair<Component, std::string>>& values) {
    std::string line{number};
    for (const ComponentFacts& facts : allComponents()) {
        if (facts.component == Component::SUGAD) continue;
        std::string field = "-";
        for (const auto& [component, text] : values)
            if (component == facts.component) field = text;
        line += "|" + field;
    }
    return line + "\n";
}
