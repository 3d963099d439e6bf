#pragma once

#include <string_view>

namespace nettare {

/// True for "2026-03-07T18:12:09+01:00": ISO 8601 extended form, seconds optional, offset or Z
/// needed.
[[nodiscard]] bool isTimeForm(std::string_view text);

/// True for "2026-03-07": a day as ISO 8601 writes it. What was kept earlier may say "2026-02-31".
[[nodiscard]] bool isDateForm(std::string_view text);

/// The same of a day that there is: what is typed or read anew. By the Gregorian calendar.
[[nodiscard]] bool isCalendarDay(std::string_view text);

}  // namespace nettare
