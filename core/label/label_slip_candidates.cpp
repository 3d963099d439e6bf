#include <string>

#include "core/label/label_slip.h"

namespace nettare {

namespace {

// How rare a slip is, as -ln of its share, up to a constant: common practice of typists, from
// memory; each kind counts by itself and is shared among the figures it can lead to.
constexpr double kTypedTwice = 1.0;
constexpr double kPoint = 1.5;
constexpr double kExchanged = 1.5;
constexpr double kAlike = 2.6;  ///< a digit for one that looks like it or lies beside it
constexpr double kOther = 3.0;
constexpr double kTooMany = 4.0;
constexpr double kDropped = 4.5;
constexpr double kEasilyDropped = 3.5;

/// Longer figures are no amounts of food.
constexpr std::size_t kLongestFigure = 7;

/// Digits that look alike in print, or are neighbours on a keypad.
bool looksAlike(char a, char b) {
    for (const std::string_view pair : {"17", "38", "56", "06", "08", "35", "49", "27", "68", "69"})
        if ((pair[0] == a && pair[1] == b) || (pair[0] == b && pair[1] == a)) return true;
    const int distance = a > b ? a - b : b - a;
    return distance == 1;
}

/// Digits of a figure and how many of them are decimals.
struct FigureDigits {
    std::string digits;
    int decimals = 0;

    /// Nothing where the number would begin with a zero that nobody prints.
    [[nodiscard]] std::optional<Decimal> figure() const {
        if (digits.empty() || decimals < 0 || digits.size() > kLongestFigure) return std::nullopt;
        const std::size_t whole = digits.size() - std::min(digits.size(), std::size_t(decimals));
        if (whole == 0 || (whole > 1 && digits.front() == '0')) return std::nullopt;
        std::int64_t coefficient = 0;
        for (const char digit : digits) coefficient = coefficient * 10 + (digit - '0');
        return Decimal{coefficient, -decimals};
    }
};

struct CandidateList {
    Decimal printed;
    std::vector<SlipCandidate> all{};

    void add(const FigureDigits& digits, double unlikely) {
        const auto figure = digits.figure();
        if (figure && *figure != printed) all.push_back({*figure, unlikely});
    }
};

/// "26" for "66".
void addOtherDigits(CandidateList& list, const FigureDigits& typed) {
    for (std::size_t i = 0; i < typed.digits.size(); ++i)
        for (char digit = '0'; digit <= '9'; ++digit) {
            FigureDigits meant = typed;
            meant.digits[i] = digit;
            list.add(meant, looksAlike(digit, typed.digits[i]) ? kAlike : kOther);
        }
}

/// "66" for a typed "6"; a digit at the end of the whole part goes in front of the point.
void addDroppedDigits(CandidateList& list, const FigureDigits& typed) {
    const auto whole = typed.digits.size() - static_cast<std::size_t>(typed.decimals);
    for (std::size_t i = 0; i <= typed.digits.size(); ++i)
        for (char digit = '0'; digit <= '9'; ++digit) {
            FigureDigits meant = typed;
            meant.digits.insert(i, 1, digit);
            if (i > whole) ++meant.decimals;
            // A zero at the end, or a digit like its neighbour, is easily dropped.
            const bool easily = (i == typed.digits.size() && digit == '0') ||
                                (i > 0 && typed.digits[i - 1] == digit);
            list.add(meant, easily ? kEasilyDropped : kDropped);
        }
}

/// "66" for a typed "666", "16" for "156".
void addDigitsTooMany(CandidateList& list, const FigureDigits& typed) {
    const auto whole = typed.digits.size() - static_cast<std::size_t>(typed.decimals);
    for (std::size_t i = 0; i < typed.digits.size(); ++i) {
        FigureDigits meant = typed;
        meant.digits.erase(i, 1);
        if (i >= whole) --meant.decimals;
        const bool twice = i > 0 && typed.digits[i - 1] == typed.digits[i];
        list.add(meant, twice ? kTypedTwice : kTooMany);
    }
}

/// "16" for "61".
void addExchanged(CandidateList& list, const FigureDigits& typed) {
    for (std::size_t i = 1; i < typed.digits.size(); ++i) {
        FigureDigits meant = typed;
        std::swap(meant.digits[i - 1], meant.digits[i]);
        list.add(meant, kExchanged);
    }
}

/// "7.1" for "71", "71" for "7.1", "0.5" for "5"; packages print two decimals at most.
void addOtherPoints(CandidateList& list, const FigureDigits& typed) {
    for (int decimals = 0; decimals <= 2; ++decimals) {
        FigureDigits meant = typed;
        meant.decimals = decimals;
        // "05" was "0.5" before it lost its point; "5" may have lost the zero as well.
        if (meant.digits.size() == std::size_t(decimals)) meant.digits.insert(0, 1, '0');
        while (decimals == 0 && meant.digits.size() > 1 && meant.digits.front() == '0')
            meant.digits.erase(0, 1);
        list.add(meant, kPoint);
    }
}

}  // namespace

std::vector<SlipCandidate> slipCandidates(Decimal printed) {
    FigureDigits typed{printed.text(), printed.decimals()};
    std::erase(typed.digits, '.');
    CandidateList list{printed};
    if (typed.digits.size() > kLongestFigure) return {};
    list.all.reserve(32 * (typed.digits.size() + 1));
    addOtherDigits(list, typed);
    addDroppedDigits(list, typed);
    addDigitsTooMany(list, typed);
    addExchanged(list, typed);
    addOtherPoints(list, typed);
    return list.all;
}

}  // namespace nettare
