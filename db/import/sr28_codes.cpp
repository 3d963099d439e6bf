#include <optional>

#include "db/import/nutrient_numbers.h"
#include "db/import/sr28_parts.h"
#include "db/import/sr28_rows.h"

namespace nettare {

namespace {

/// Reads a file of codes and their meanings; `take` gives the id of each.
template <class Take>
Result<void> readCodeFile(Sr28Import& import, std::string_view name,
                          std::map<std::string, int, std::less<>>& ids, const Take& take) {
    auto rows = Sr28Rows::open(import.files, name, 2, import.run);
    if (!rows) return fail(rows.error());
    for (;;) {
        const auto more = rows->next();
        if (!more) return fail(more.error());
        if (!*more) break;
        const std::string code = rows->requiredText(0);
        const std::string meaning = rows->requiredText(1);
        if (ids.contains(code)) rows->refuse(ErrorCode::RowRepeated, code);
        if (!rows->refused()) ids[code] = take(code, meaning);
    }
    import.writer.input(name, rows->sha256());
    return {};
}

/// From one unit of mass to another: 1000 from g to mg. Energy is published in both units, so it
/// is never converted.
std::optional<double> factorBetween(std::string_view from, std::string_view to) {
    const auto perGram = [](std::string_view unit) -> double {
        if (unit == "g") return 1;
        if (unit == "mg") return 1e3;
        return unit == "µg" ? 1e6 : 0;
    };
    if (from == to) return 1;
    if (perGram(from) == 0 || perGram(to) == 0) return std::nullopt;
    return perGram(to) / perGram(from);
}

Result<Sr28Codes::Nutrient> nutrientOf(TableWriter& writer, const std::string& number,
                                       const std::string& unit, const std::string& tagname,
                                       const std::string& name) {
    const auto ours = componentOfNutrientNumber(number);
    if (!ours)
        return Sr28Codes::Nutrient{.component = writer.component(number, tagname, name, unit)};
    const ComponentFacts& facts = factsOf(*ours);
    const auto factor = factorBetween(unit, facts.unit);
    if (!factor)
        return fail(Error{ErrorCode::UnitUnconvertible}
                        .with("unit", unit)
                        .with("component", facts.name)
                        .with("wanted", facts.unit));
    writer.ourComponent(*ours, number);
    return Sr28Codes::Nutrient{
        .component = static_cast<int>(indexOf(*ours)), .factor = *factor, .isOurs = true};
}

}  // namespace

Result<void> readSr28Codes(Sr28Import& import) {
    TableWriter& writer = import.writer;
    const auto group = [&](const std::string& /*code*/, const std::string& name) {
        return writer.group(name);
    };
    const auto source = [&](const std::string& code, const std::string& meaning) {
        return writer.source(code, meaning);
    };
    const auto derivation = [&](const std::string& code, const std::string& meaning) {
        return writer.derivation(code, meaning);
    };
    if (auto read = readCodeFile(import, "FD_GROUP.txt", import.codes.groups, group); !read)
        return read;
    if (auto read = readCodeFile(import, "SRC_CD.txt", import.codes.sources, source); !read)
        return read;
    return readCodeFile(import, "DERIV_CD.txt", import.codes.derivations, derivation);
}

Result<void> readSr28Nutrients(Sr28Import& import) {
    auto rows = Sr28Rows::open(import.files, "NUTR_DEF.txt", 6, import.run);
    if (!rows) return fail(rows.error());
    for (;;) {
        const auto more = rows->next();
        if (!more) return fail(more.error());
        if (!*more) break;
        const std::string number = rows->requiredText(0);
        const std::string writtenUnit = rows->requiredText(1);
        const std::string unit{unitOfUsda(writtenUnit)};
        const std::string tagname = rows->text(2);
        const std::string name = rows->requiredText(3);
        if (import.codes.nutrients.contains(number)) rows->refuse(ErrorCode::RowRepeated, number);
        if (rows->refused()) continue;
        const auto nutrient = nutrientOf(import.writer, number, unit, tagname, name);
        if (!nutrient) return fail(rows->at(nutrient.error()));
        import.codes.nutrients.emplace(number, *nutrient);
    }
    import.writer.input("NUTR_DEF.txt", rows->sha256());
    return {};
}

}  // namespace nettare
