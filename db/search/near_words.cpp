#include "db/search/near_words.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace nettare {

namespace {

using Letters = std::vector<std::string_view>;

constexpr int kFirstLetterCost = 2;
constexpr int kUnfinishedCost = 1;
constexpr std::size_t kShortestBeginning = 3;

bool goesOn(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

/// The bytes of the letter at `at`.
std::string_view letterAt(std::string_view text, std::size_t at) {
    std::size_t end = at + 1;
    while (end < text.size() && goesOn(text[end])) ++end;
    return text.substr(at, end - at);
}

Letters lettersOf(std::string_view text) {
    Letters letters;
    for (std::size_t at = 0; at < text.size(); at += letters.back().size())
        letters.push_back(letterAt(text, at));
    return letters;
}

bool isVowel(std::string_view letter) {
    return letter.size() == 1 && std::string_view{"aeiouy"}.find(letter) != std::string_view::npos;
}

/// Tries every slip once, from the first letter to the last; words are looked up only where the
/// list has words that begin as the letters before the slip.
class SlipSearch {
public:
    SlipSearch(std::string_view typed, const WordList& list)
        : typed_{typed}, letters_{lettersOf(typed)}, list_{list} {}

    std::vector<NearWord> run() {
        std::size_t at = 0;
        const bool brief = letters_.size() < kFewestLettersOfSlip;
        for (place_ = 0; place_ < letters_.size(); ++place_) {
            before_ = typed_.substr(0, at);
            letter_ = letters_[place_];
            at += letter_.size();
            after_ = typed_.substr(at);
            if (!tryOtherLetters()) break;
            if (brief) continue;
            tryWithout();
            trySwapped();
        }
        const auto key = [](const NearWord& near) {
            return std::tuple{near.cost, -near.foods, near.word};
        };
        std::ranges::sort(found_, {}, key);
        std::vector<NearWord> best;
        for (NearWord& near : found_)
            if (std::ranges::find(best, near.word, &NearWord::word) == best.end())
                best.push_back(std::move(near));
        return best;
    }

private:
    /// Another letter here, or one more before it. False where no word begins as `before_`.
    bool tryOtherLetters() {
        const std::string start{before_};
        bool any = false;
        std::string from = start;
        for (auto word = list_.seek(from); word && word->word.starts_with(start);
             word = list_.seek(from)) {
            any = true;
            if (word->word.size() == start.size()) {
                from = start + '\x01';
                continue;
            }
            const std::string other{letterAt(word->word, start.size())};
            if (other != letter_) {
                tryBeginning(start + other + std::string{after_}, replaceCost(other));
                tryBeginning(start + other + std::string{letter_} + std::string{after_},
                             other == previous() ? 0 : 1);
            } else {
                tryBeginning(start + other + std::string{letter_} + std::string{after_}, 0);
            }
            from = beyond(start + other);
        }
        return any;
    }

    /// A text after all words that begin so.
    static std::string beyond(std::string text) {
        text.push_back('\xFF');
        return text;
    }

    void tryWithout() {
        if (letter_ != previous())
            tryBeginning(std::string{before_} + std::string{after_},
                         after_.starts_with(letter_) ? 0 : 1);
    }

    void trySwapped() {
        if (place_ + 1 >= letters_.size() || letters_[place_ + 1] == letter_) return;
        const std::string_view next = letters_[place_ + 1];
        tryBeginning(std::string{before_} + std::string{next} + std::string{letter_} +
                         std::string{after_.substr(next.size())},
                     0);
    }

    [[nodiscard]] std::string_view previous() const {
        return place_ == 0 ? std::string_view{} : letters_[place_ - 1];
    }
    [[nodiscard]] int replaceCost(std::string_view other) const {
        return isVowel(other) && isVowel(letter_) ? 1 : 2;
    }

    void tryBeginning(const std::string& beginning, int cost) {
        if (beginning.size() < kShortestBeginning || beginning == typed_) return;
        const auto known = [&](const NearWord& near) { return near.beginning == beginning; };
        if (std::ranges::any_of(found_, known)) return;
        const auto first = list_.seek(beginning);
        if (!first || !first->word.starts_with(beginning)) return;
        const bool brief = letters_.size() < kFewestLettersOfSlip;
        if (brief && (first->word != beginning || beginning.size() <= typed_.size())) return;
        NearWord near{.beginning = beginning, .word = {}, .whole = false, .cost = cost, .foods = 0};
        near.whole = first->word == beginning;
        const auto word = near.whole ? first : list_.mostUsed(beginning);
        if (!word || word->word.starts_with(typed_)) return;  // found without a slip
        near.word = word->word;
        near.foods = word->foods;
        near.cost += (near.whole ? 0 : kUnfinishedCost) + (place_ == 0 ? kFirstLetterCost : 0);
        found_.push_back(std::move(near));
    }

    std::string_view typed_;
    Letters letters_;
    const WordList& list_;
    std::size_t place_ = 0;
    std::string_view before_, letter_, after_;
    std::vector<NearWord> found_;
};

}  // namespace

std::vector<NearWord> nearWords(std::string_view typed, const WordList& list) {
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    if (lettersOf(typed).size() + 1 < kFewestLettersOfSlip || std::ranges::any_of(typed, isDigit))
        return {};
    return SlipSearch{typed, list}.run();
}

}  // namespace nettare
