#include "core/support/time_form.h"

namespace nettare {

namespace {

bool allDigitsIn(std::string_view text) {
    return text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// Two digits at `start` that are a number from `low` to `high`, both written with two digits.
bool isTwoDigits(std::string_view text, std::size_t start, std::string_view low,
                 std::string_view high) {
    if (text.size() < start + 2) return false;
    const std::string_view part = text.substr(start, 2);
    return allDigitsIn(part) && low <= part && part <= high;
}

/// Whether it begins with a day.
bool beginsWithDay(std::string_view text) {
    return text.size() >= 10 && allDigitsIn(text.substr(0, 4)) && text[4] == '-' &&
           isTwoDigits(text, 5, "01", "12") && text[7] == '-' && isTwoDigits(text, 8, "01", "31");
}

int numberAt(std::string_view text, std::size_t start, std::size_t digits) {
    int number = 0;
    for (const char digit : text.substr(start, digits)) number = 10 * number + (digit - '0');
    return number;
}

int daysOfMonth(int year, int month) {
    if (month == 2) return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

/// "2026-03-07", "T", "18:12", then ":09" or nothing; the rest is left in `text`.
bool takeDayAndClock(std::string_view& text) {
    const bool form = text.size() > 16 && beginsWithDay(text) && text[10] == 'T' &&
                      isTwoDigits(text, 11, "00", "23") && text[13] == ':' &&
                      isTwoDigits(text, 14, "00", "59");
    if (!form) return false;
    text.remove_prefix(16);
    if (text.front() == ':' && isTwoDigits(text, 1, "00", "59")) text.remove_prefix(3);
    return true;
}

}  // namespace

bool isDateForm(std::string_view text) {
    return text.size() == 10 && beginsWithDay(text);
}

bool isCalendarDay(std::string_view text) {
    return isDateForm(text) &&
           numberAt(text, 8, 2) <= daysOfMonth(numberAt(text, 0, 4), numberAt(text, 5, 2));
}

bool isTimeForm(std::string_view text) {
    if (!takeDayAndClock(text)) return false;
    if (text == "Z") return true;
    return text.size() == 6 && (text[0] == '+' || text[0] == '-') &&
           isTwoDigits(text, 1, "00", "23") && text[3] == ':' && isTwoDigits(text, 4, "00", "59");
}

}  // namespace nettare
