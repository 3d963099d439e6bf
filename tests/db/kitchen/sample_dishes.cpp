#include "sample_dishes.h"

#include <fmt/core.h>

using namespace nettare;

namespace {

Json entry(std::initializer_list<std::pair<const char*, std::string>> members) {
    Json json = Json::object();
    for (const auto& [key, text] : members) json.set(key, Json{text});
    return json;
}

Json listOf(Json only) {
    Json list = Json::array();
    list.append(std::move(only));
    return list;
}

constexpr auto kLater = "2026-05-16T12:30:00+02:00";

}  // namespace

Json dish(const std::string& title, const std::string& food) {
    Json json = entry({{"format", "nettare recipe"}, {"title", title}, {"note", "for cold days"}});
    json.set("version", Json{1.0});
    json.set("makes", entry({{"pieces", "4"}, {"piece", "bowl"}, {"plural", "bowls"}}));
    json.set(
        "scales",
        listOf(entry(
            {{"id", "counter"}, {"name", "counter scale"}, {"unit", "g"}, {"readability", "1"}})));
    json.set("indications",
             listOf(entry(
                 {{"id", "bowl"}, {"scale", "counter"}, {"shown", "340"}, {"state", "empty"}})));
    json.set("foods", listOf(entry({{"id", "f1"}, {"name", food}})));
    json.set("lines",
             listOf(entry({{"id", "l1"}, {"amount", "200"}, {"unit", "g"}, {"food", "f1"}})));
    json.set("steps", listOf(entry({{"text", "Simmer gently."}})));
    return json;
}

Edit retitled(const std::string& before, const std::string& after) {
    return {EditKind::Title, after, {SetMember{"/title", Json{before}, Json{after}}}};
}

JournalChange added(std::size_t kept, std::vector<Edit> edits) {
    const std::size_t all = kept + edits.size();
    return {kept, std::move(edits), all, kLater};
}

JournalChange cursorAt(std::size_t all, std::size_t cursor) {
    return {all, {}, cursor, kLater};
}

TableFood rowOf(const std::string& number, double energyKcal) {
    TableFood food;
    food.row = {"usda-sr", "28", number};
    food.name = "Food " + number;
    food.group = "vegetable";
    food.profile.per100g[indexOf(Component::ENERC_KCAL)] = energyKcal;
    food.addedSugars = {AddedSugarKind::None, 0, "nothing is added"};
    return food;
}

LedgerEntry shown(int number, const std::string& grams) {
    LedgerEntry entry;
    entry.id = fmt::format("{:08x}-0000-4000-8000-000000000000", number);
    entry.at = "2026-05-16T12:10:00+02:00";
    entry.indication = "i" + std::to_string(number);
    entry.shown = Decimal::read(grams).value_or(Decimal{});
    entry.unit = "g";
    entry.readability = Decimal{1, 0};
    entry.scale = "counter scale";
    return entry;
}

LedgerEntry about(int number, EntryKind kind, int of) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.id = shown(number, "0").id;
    entry.at = "2026-05-16T12:20:00+02:00";
    entry.refersTo = shown(of, "0").id;
    entry.reason = "slip of the hand";
    return entry;
}

RevisionToKeep toKeep(const Json& document, const std::string& note) {
    RevisionToKeep revision;
    revision.document = document;
    revision.note = note;
    revision.at = kLater;
    revision.foods = {rowOf("1", 31), rowOf("2", 61)};
    revision.figures = Json::object();
    revision.figures.set("energy", Json{124.5});
    revision.arithmetic = 1;
    return revision;
}
