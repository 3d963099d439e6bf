#include "db/import/value_rows.h"

#include <algorithm>
#include <limits>

#include "db/build_table/bind.h"

namespace nettare {

namespace {

void bindId(SQLite::Statement& row, int index, std::optional<int> id) {
    if (id)
        row.bind(index, *id);
    else
        row.bind(index);
}

}  // namespace

ValueRows::ValueRows(SQLite::Database& database)
    : insert_{database, "INSERT OR IGNORE INTO food_component VALUES (?, ?, ?, ?, ?, ?, ?)"} {}

bool ValueRows::add(std::uint32_t food, const NewValue& value) {
    if (food != current_) {
        flush();
        current_ = food;
    }
    growTo(food);
    // A food that comes back after others had theirs may have the value in the file.
    const bool taken = written_[food] ? write(food, value) : isNew(food, value.component);
    if (!taken) return false;
    if (!written_[food]) held_.push_back(value);
    note(food, value);
    return true;
}

void ValueRows::flush() {
    if (held_.empty()) return;
    std::ranges::sort(held_, {}, &NewValue::component);
    for (const NewValue& value : held_) static_cast<void>(write(current_, value));
    held_.clear();
    written_[current_] = true;
}

double ValueRows::energyKcal(std::uint32_t food) const {
    return food < energyKcal_.size() ? energyKcal_[food] : std::numeric_limits<double>::quiet_NaN();
}

int ValueRows::known(std::uint32_t food) const {
    return food < known_.size() ? known_[food] : 0;
}

bool ValueRows::isNew(std::uint32_t food, int component) {
    const auto place = static_cast<std::size_t>(component);
    if (place >= seen_.size()) seen_.resize(place + 1);
    if (seen_[place] == std::uint64_t{food} + 1) return false;
    seen_[place] = std::uint64_t{food} + 1;
    return true;
}

bool ValueRows::write(std::uint32_t food, const NewValue& value) {
    insert_.bind(1, food);
    insert_.bind(2, value.component);
    insert_.bind(3, value.per100g);
    bindNumber(insert_, 4, value.standardError);
    bindCount(insert_, 5, value.dataPoints);
    bindId(insert_, 6, value.derivation);
    bindId(insert_, 7, value.source);
    const bool written = insert_.exec() == 1;
    insert_.reset();
    return written;
}

void ValueRows::note(std::uint32_t food, const NewValue& value) {
    if (value.component >= static_cast<int>(kComponentCount)) return;
    const auto component = static_cast<Component>(value.component);
    ++known_[food];
    if (component == Component::ENERC_KCAL) energyKcal_[food] = value.per100g;
    const auto relative =
        relativeSpread(component, value.per100g, value.standardError, value.dataPoints);
    if (relative && value.dataPoints > 0) spreads_.push_back({food, component, *relative});
}

void ValueRows::growTo(std::uint32_t food) {
    if (food < known_.size()) return;
    written_.resize(food + 1);
    known_.resize(food + 1);
    energyKcal_.resize(food + 1, std::numeric_limits<double>::quiet_NaN());
}

}  // namespace nettare
