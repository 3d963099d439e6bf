#include "core/food/own_food_entry.h"

#include <algorithm>

#include "core/food/without_label.h"
#include "core/recipe/read_recipe.h"
#include "core/support/json_reader.h"
#include "core/support/text.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

/// Pure fat has 902 kcal per 100 g, the most of the 8,789 foods of SR28.
constexpr double kMostKcal = 1000;
constexpr double kMostKj = 4184;

std::string textOf(double number) {
    return Decimal::fromDouble(number).text();
}

std::string textOf(const std::optional<double>& number) {
    return number ? textOf(*number) : std::string{};
}

/// The most that 100 g can hold of a component, in its unit.
double mostOf(const ComponentFacts& facts) {
    if (facts.unit == "kcal") return kMostKcal;
    if (facts.unit == "kJ") return kMostKj;
    if (facts.unit == "mg") return 100e3;
    if (facts.unit == "µg") return 100e6;
    return 100;
}

/// Reads typed texts one by one; the first that is wrong is kept, at its place.
class EntryReader {
public:
    [[nodiscard]] std::optional<Error>& failure() { return failure_; }

    std::string text(const std::string& place, const std::string& typed, std::size_t most) {
        const auto [parent, key] = parts(place);
        Json holder = Json::object();
        holder.set(key, Json{trimmed(typed)});
        return ObjectReader{holder, parent, failure_}.text(key, most);
    }
    std::string optionalText(const std::string& place, const std::string& typed, std::size_t most) {
        return trimmed(typed).empty() ? std::string{} : text(place, typed, most);
    }
    std::optional<double> number(const std::string& place, const std::string& typed, double most,
                                 NumberSign sign = NumberSign::NotNegative) {
        if (trimmed(typed).empty()) return std::nullopt;
        const auto [parent, key] = parts(place);
        Json holder = Json::object();
        holder.set(key, Json{trimmed(typed)});
        const double value = ObjectReader{holder, parent, failure_}.decimal(key, sign).value();
        if (!failure_ && value > most) {
            failure_ = Error{ErrorCode::OutOfRange}.with("found", trimmed(typed)).at(place);
            failure_->values.push_back({"low", "0"});
            failure_->values.push_back({"high", textOf(most)});
        }
        return value;
    }
    double neededNumber(const std::string& place, const std::string& typed, double most) {
        const auto value = number(place, typed, most, NumberSign::Positive);
        if (!value && !failure_) failure_ = Error{ErrorCode::EmptyText}.at(place);
        return value.value_or(0);
    }

private:
    struct Parts {
        std::string parent, key;
    };
    static Parts parts(const std::string& place) {
        const std::size_t slash = place.rfind('/');
        return {place.substr(0, slash), place.substr(slash + 1)};
    }
    std::optional<Error> failure_;
};

std::string placeOfComponent(const ComponentFacts& facts) {
    return pointerTo("/components", facts.tagname);
}

MeasureEntry measureEntry(const HouseholdMeasure& measure) {
    return {textOf(measure.amount), measure.unit, measure.qualifier, textOf(measure.grams)};
}

/// As long as it is typed as before, a measure keeps what the table says of its spread.
HouseholdMeasure measureFrom(EntryReader& reader, const std::string& place,
                             const MeasureEntry& typed, const OwnFood& before) {
    for (const HouseholdMeasure& old : before.food.measures)
        if (measureEntry(old) == typed) return old;
    constexpr double kMostGrams = 100'000;
    HouseholdMeasure measure;
    measure.amount = reader.neededNumber(place + "/amount", typed.amount, kMostGrams);
    measure.unit = reader.text(place + "/unit", typed.unit, kNameLength);
    measure.qualifier = reader.optionalText(place + "/qualifier", typed.qualifier, kNameLength);
    measure.grams = reader.neededNumber(place + "/grams", typed.grams, kMostGrams);
    return measure;
}

bool isEmpty(const MeasureEntry& entry) {
    return entry == MeasureEntry{};
}

void markChanged(OwnFoodOrigin& origin, Component component) {
    if (std::ranges::find(origin.changed, component) == origin.changed.end())
        origin.changed.push_back(component);
    std::ranges::sort(origin.changed);
}

void readComponents(EntryReader& reader, const OwnFoodEntry& entry, const OwnFoodEntry& was,
                    const PerComponent<std::optional<double>>& usualSpread, OwnFood& own) {
    for (const ComponentFacts& facts : allComponents()) {
        const std::size_t at = indexOf(facts.component);
        if (trimmed(entry.per100g[at]) == was.per100g[at]) continue;
        auto& value = own.food.profile.per100g[at];
        Spread& spread = own.food.profile.spread[at];
        value = reader.number(placeOfComponent(facts), entry.per100g[at], mostOf(facts));
        const auto assumed = spread.assumedRelative ? spread.assumedRelative : usualSpread[at];
        spread = Spread{};
        if (value) spread.assumedRelative = assumed;
        markChanged(own.origin, facts.component);
    }
}

bool isTypedOver(const OwnFoodEntry& entry, const OwnFoodEntry& was) {
    return !std::ranges::equal(entry.per100g, was.per100g,
                               [](const std::string& typed, const std::string& before) {
                                   return trimmed(typed) == before;
                               });
}

/// The unit of energy that was left as it was belongs to another value now.
void keepEnergyOne(const OwnFoodEntry& entry, const OwnFoodEntry& was, OwnFood& own) {
    const auto typed = [&](Component unit) {
        return trimmed(entry.per100g[indexOf(unit)]) != was.per100g[indexOf(unit)];
    };
    const auto clear = [&](Component unit) {
        own.food.profile.per100g[indexOf(unit)].reset();
        own.food.profile.spread[indexOf(unit)] = Spread{};
        markChanged(own.origin, unit);
    };
    using enum Component;
    if (typed(ENERC_KCAL) && !typed(ENERC_KJ) && own.food.profile[ENERC_KJ]) clear(ENERC_KJ);
    if (typed(ENERC_KJ) && !typed(ENERC_KCAL) && own.food.profile[ENERC_KCAL]) clear(ENERC_KCAL);
}

void readAddedSugars(EntryReader& reader, const OwnFoodEntry& entry, AddedSugars& added) {
    added.kind = entry.addedSugars;
    added.statedPer100g = 0;
    if (added.kind == AddedSugarKind::Stated) {
        const auto stated = reader.number("/added_sugars/per_100g", entry.addedSugarsPer100g, 100);
        if (!stated && !reader.failure())
            reader.failure() = Error{ErrorCode::EmptyText}.at("/added_sugars/per_100g");
        added.statedPer100g = stated.value_or(0);
    }
    added.reason = reader.text("/added_sugars/reason", entry.addedSugarsReason, kNameLength);
}

void readOriginTexts(EntryReader& reader, const OwnFoodEntry& entry, OwnFoodOrigin& origin) {
    origin.source = reader.text("/origin/source", entry.source, kNameLength);
    origin.date = reader.text("/origin/date", entry.date, kNameLength);
    if (!reader.failure() && !isCalendarDay(origin.date))
        reader.failure() = Error{ErrorCode::NotADate}.with("found", origin.date).at("/origin/date");
    origin.note = reader.optionalText("/origin/note", entry.note, kProseLength);
}

}  // namespace

OwnFoodEntry entryOf(const OwnFood& own) {
    const TableFood& food = own.food;
    OwnFoodEntry entry;
    entry.name = food.name;
    entry.refusePercent = textOf(food.refusePercent);
    for (std::size_t at = 0; at < kComponentCount; ++at)
        entry.per100g[at] = textOf(food.profile.per100g[at]);
    entry.plant = food.plant;
    entry.addedSugars = food.addedSugars.kind;
    if (food.addedSugars.kind == AddedSugarKind::Stated)
        entry.addedSugarsPer100g = textOf(food.addedSugars.statedPer100g);
    entry.addedSugarsReason = food.addedSugars.reason;
    for (const HouseholdMeasure& measure : food.measures)
        entry.measures.push_back(measureEntry(measure));
    entry.source = own.origin.source;
    entry.date = own.origin.date;
    entry.note = own.origin.note;
    return entry;
}

OwnFood copyOf(const TableFood& row) {
    OwnFood own;
    own.food = withoutLabel(row);
    own.food.row = TableRow{std::string{kOwnTable}, "", ""};
    own.origin.copiedFrom = row.row;
    own.origin.copiedName = row.name;
    return own;
}

Result<OwnFood> ownFoodFrom(const OwnFoodEntry& entry, const OwnFood& before,
                            const PerComponent<std::optional<double>>& usualSpread) {
    const OwnFoodEntry was = entryOf(before);
    OwnFood own = before;
    EntryReader reader;
    if (isTypedOver(entry, was)) own.food = withoutLabel(own.food);
    own.food.name = reader.text("/name", entry.name, kNameLength);
    own.food.plant = entry.plant;
    readComponents(reader, entry, was, usualSpread, own);
    keepEnergyOne(entry, was, own);
    readAddedSugars(reader, entry, own.food.addedSugars);
    if (trimmed(entry.refusePercent) != was.refusePercent) {
        own.food.refusePercent = reader.number("/refuse_percent", entry.refusePercent, 100);
        own.food.refuseNote.clear();
    }
    own.food.measures.clear();
    std::size_t at = 0;
    for (const MeasureEntry& typed : entry.measures) {
        const std::string place = pointerTo("/measures", at++);
        if (!isEmpty(typed)) own.food.measures.push_back(measureFrom(reader, place, typed, before));
    }
    readOriginTexts(reader, entry, own.origin);
    if (reader.failure()) return fail(*reader.failure());
    return own;
}

}  // namespace nettare
