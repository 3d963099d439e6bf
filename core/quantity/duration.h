#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/interval.h"
#include "core/quantity/quantity.h"

namespace nettare {

/// A length of time in seconds. It has no sum, product or conversion with a temperature: twice the
/// heat is not half the time.
class Duration : public Quantity<Duration> {
public:
    [[nodiscard]] static constexpr Duration fromSeconds(double value) { return Duration{value}; }
    [[nodiscard]] constexpr double seconds() const { return value_; }
    [[nodiscard]] constexpr double minutes() const { return value_ / 60; }

private:
    friend class Quantity<Duration>;
    constexpr explicit Duration(double value) : Quantity{value} {}
};

/// A time as kitchens write it.
struct DurationText {
    Duration low, high;  ///< as typed; equal where one time was
    bool about = false;

    /// In seconds; "about" widens it by 10 % on either side (decision of ours).
    [[nodiscard]] Interval seconds() const;
};

/// "6 min", "1 h 30 min", "1h30", "1 1/2 hours", "an hour", "half an hour", "25-30 minutes", "30
/// min to 1 hour", "about 20 min", "2 days". Nothing for other texts, for no time at all and for a
/// range that runs backwards.
[[nodiscard]] std::optional<DurationText> readDuration(std::string_view text);

}  // namespace nettare
