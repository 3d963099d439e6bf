#include "core/support/json_reader.h"

#include <algorithm>
#include <cmath>

#include "core/support/text.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

/// What a reader of a missing object reads; the failure is noted by then.
const Json kNullJson;

/// Up to six digits, then up to six decimals after a point; a minus where signs are allowed.
/// Six and six are the twelve digits of a Decimal.
bool isDecimalForm(std::string_view text, bool minusAllowed) {
    if (minusAllowed && text.starts_with('-')) text.remove_prefix(1);
    const auto parts = split(text, '.');
    return parts.size() <= 2 && std::ranges::all_of(parts, [](std::string_view part) {
               return !part.empty() && part.size() <= 6 &&
                      part.find_first_not_of("0123456789") == std::string_view::npos;
           });
}

}  // namespace

std::string_view kindOf(const Json& json) {
    if (json.text() != nullptr) return "text";
    if (json.number() != nullptr) return "a number";
    if (json.boolean() != nullptr) return "true or false";
    if (json.items() != nullptr) return "a list";
    if (json.members() != nullptr) return "an object";
    return "null";
}

bool isIdentifier(std::string_view text) {
    return !text.empty() && text.size() <= 64 && text.front() != '-' &&
           text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") ==
               std::string_view::npos;
}

ObjectReader::ObjectReader(const Json& json, std::string pointer, std::optional<Error>& failure)
    : json_{json}, pointer_{std::move(pointer)}, failure_{failure} {
    if (!failure_ && json_.members() == nullptr)
        failure_ = Error{ErrorCode::WrongKind}
                       .with("wanted", "an object in curly brackets")
                       .with("found", kindOf(json_))
                       .at(pointer_);
}

void ObjectReader::note(ErrorCode code, std::string_view key, std::string_view found,
                        std::string_view known) {
    if (failure_) return;
    failure_ = Error{code}.with("key", key).with("found", found).at(pointerTo(pointer_, key));
    // Not by with(), which would cut the list.
    if (!known.empty()) failure_->values.push_back({"known", std::string{known}});
}

const Json* ObjectReader::take(std::string_view key, bool needed) {
    asked_.push_back(key);
    if (failure_) return nullptr;
    const Json* value = json_.find(key);
    if (value == nullptr && needed)
        failure_ = Error{ErrorCode::MissingKey}.with("key", key).at(pointer_);
    return value;
}

bool ObjectReader::has(std::string_view key) {
    return take(key, false) != nullptr;
}

std::string ObjectReader::checkedText(std::string_view key, const Json& value, std::size_t most) {
    const std::string* text = value.text();
    if (text == nullptr) {
        note(ErrorCode::WrongKind, key, kindOf(value));
        if (failure_) failure_->values.push_back({"wanted", "text in quotes"});
        return {};
    }
    if (trimmed(*text).empty()) note(ErrorCode::EmptyText, key);
    if (codePoints(*text) > most) {
        note(ErrorCode::TextTooLong, key, *text);
        if (failure_) failure_->values.push_back({"most", std::to_string(most)});
    }
    if (!isPlainLine(*text)) note(ErrorCode::TextNotClean, key, *text);
    return failure_ ? std::string{} : *text;
}

std::string ObjectReader::text(std::string_view key, std::size_t most) {
    const Json* value = take(key, true);
    return value != nullptr ? checkedText(key, *value, most) : std::string{};
}

std::optional<std::string> ObjectReader::optionalText(std::string_view key, std::size_t most) {
    const Json* value = take(key, false);
    return value != nullptr ? std::optional{checkedText(key, *value, most)} : std::nullopt;
}

std::vector<std::string> ObjectReader::texts(std::string_view key, std::size_t most,
                                             std::size_t length) {
    std::vector<std::string> found;
    for (const Item& item : items(key, 1, most))
        found.push_back(checkedText(key, item.json, length));
    return found;
}

std::string ObjectReader::id(std::string_view key) {
    std::string found = text(key, 64);
    if (!failure_ && !isIdentifier(found)) note(ErrorCode::NotAnIdentifier, key, found);
    return found;
}

std::optional<std::string> ObjectReader::optionalId(std::string_view key) {
    return has(key) ? std::optional{id(key)} : std::nullopt;
}

std::vector<std::string> ObjectReader::ids(std::string_view key, std::size_t most) {
    std::vector<std::string> found;
    for (const Item& item : items(key, 1, most)) {
        const std::string* text = item.json.text();
        if (text == nullptr || !isIdentifier(*text)) {
            if (!failure_)
                failure_ =
                    Error{text == nullptr ? ErrorCode::WrongKind : ErrorCode::NotAnIdentifier}
                        .with("wanted", "text in quotes")
                        .with("found", text == nullptr ? kindOf(item.json) : *text)
                        .at(item.pointer);
            return {};
        }
        found.push_back(*text);
    }
    return found;
}

std::vector<std::string> ObjectReader::optionalIds(std::string_view key, std::size_t most) {
    return has(key) ? ids(key, most) : std::vector<std::string>{};
}

std::string ObjectReader::time(std::string_view key) {
    std::string found = text(key, 40);
    if (!failure_ && !isTimeForm(found)) note(ErrorCode::NotATime, key, found);
    return found;
}

Decimal ObjectReader::decimal(std::string_view key, NumberSign sign) {
    const std::string found = text(key, 40);
    if (failure_) return {};
    // A number that is right but for its sign has a sentence of its own.
    const bool negative = found.starts_with('-');
    if (negative && sign != NumberSign::Any && isDecimalForm(found, true)) {
        note(ErrorCode::NegativeMass, key, found);
        return {};
    }
    const auto value =
        isDecimalForm(found, sign == NumberSign::Any) ? Decimal::read(found) : std::nullopt;
    if (!value)
        note(ErrorCode::NotADecimal, key, found);
    else if (sign == NumberSign::Positive && value->coefficient() == 0)
        note(ErrorCode::NotPositive, key, found);
    return value.value_or(Decimal{});
}

std::optional<Decimal> ObjectReader::optionalDecimal(std::string_view key, NumberSign sign) {
    return has(key) ? std::optional{decimal(key, sign)} : std::nullopt;
}

double ObjectReader::number(std::string_view key) {
    const Json* value = take(key, true);
    if (value == nullptr) return 0;
    if (value->number() == nullptr) {
        note(ErrorCode::WrongKind, key, kindOf(*value));
        if (failure_) failure_->values.push_back({"wanted", "a number"});
        return 0;
    }
    return *value->number();
}

std::optional<double> ObjectReader::optionalNumber(std::string_view key) {
    return has(key) ? std::optional{number(key)} : std::nullopt;
}

long long ObjectReader::wholeNumber(std::string_view key, long long low, long long high) {
    const double found = number(key);
    if (failure_) return low;
    const bool within = found >= static_cast<double>(low) && found <= static_cast<double>(high);
    if (within && found == std::floor(found)) return static_cast<long long>(found);
    note(ErrorCode::OutOfRange, key, numberText(found));
    failure_->values.push_back({"low", std::to_string(low)});
    failure_->values.push_back({"high", std::to_string(high)});
    return low;
}

bool ObjectReader::optionalFlag(std::string_view key) {
    const Json* value = take(key, false);
    if (value == nullptr) return false;
    if (value->boolean() == nullptr) {
        note(ErrorCode::WrongKind, key, kindOf(*value));
        if (failure_) failure_->values.push_back({"wanted", "true or false"});
        return false;
    }
    return *value->boolean();
}

std::size_t ObjectReader::exactlyOneOf(std::span<const std::string_view> keys) {
    std::size_t which = keys.size();
    std::size_t found = 0;
    std::string names;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        (names += names.empty() ? "" : ", ") += keys[i];
        // All are asked for, found or not, so that finish() blames none of them.
        if (has(keys[i])) {
            which = i;
            ++found;
        }
    }
    if (!failure_ && found != 1) {
        failure_ = Error{ErrorCode::OneOfNeeded}.at(pointer_);
        failure_->values.push_back({"known", names});
    }
    return which;
}

ObjectReader ObjectReader::object(std::string_view key) {
    const Json* value = take(key, true);
    return {value != nullptr ? *value : kNullJson, pointerTo(pointer_, key), failure_};
}

std::vector<ObjectReader::Item> ObjectReader::items(std::string_view key, std::size_t least,
                                                    std::size_t most) {
    const Json* value = take(key, least > 0);
    if (value == nullptr) return {};
    if (value->items() == nullptr) {
        note(ErrorCode::WrongKind, key, kindOf(*value));
        failure_->values.push_back({"wanted", "a list in square brackets"});
        return {};
    }
    // Nothing failed before, or take() had answered null: what note() keeps is ours to add to.
    const std::size_t count = value->items()->size();
    if (count < least) note(ErrorCode::TooFewItems, key);
    if (count > most) {
        note(ErrorCode::TooManyItems, key);
        failure_->values.push_back({"most", std::to_string(most)});
    }
    if (failure_) return {};
    std::vector<Item> found;
    found.reserve(count);
    for (std::size_t i = 0; i < count; ++i)
        found.push_back({(*value->items())[i], pointerTo(pointerTo(pointer_, key), i)});
    return found;
}

void ObjectReader::finish() {
    if (failure_) return;
    for (const JsonMember& member : *json_.members())
        if (std::ranges::find(asked_, member.key) == asked_.end()) {
            note(member.key.empty() ? ErrorCode::EmptyKey : ErrorCode::UnknownKey, member.key,
                 member.key);
            return;
        }
}

}  // namespace nettare
