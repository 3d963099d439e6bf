#include "db/match_quality.h"

#include <algorithm>
#include <cstddef>

namespace nettare {

namespace {

// What a word that nobody asked for counts.
constexpr int kBeyondHead = 4;    ///< in the first part
constexpr int kBeyondBefore = 2;  ///< before or beside the words asked for
constexpr int kBeyondClass = 1;   ///< a class before the thing
constexpr int kBeyondBehind = 1;
constexpr int kOtherName = 1;  ///< the words are those of another name; each word of its own counts

bool isOneOf(const std::vector<std::string>& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

/// The place of the first beginning that the word goes on from; their number where there is none.
std::size_t startOf(const AskedWord& asked, std::string_view word) {
    const auto begins = [&](const std::string& start) { return word.starts_with(start); };
    return static_cast<std::size_t>(std::ranges::find_if(asked.starts, begins) -
                                    asked.starts.begin());
}

int beyondOf(const NameWord& word, int lastPart) {
    if (word.aside || word.neutral) return 0;
    if (word.classWord) return kBeyondClass;
    if (word.part == 0) return kBeyondHead;
    return word.part <= lastPart ? kBeyondBefore : kBeyondBehind;
}

}  // namespace

Matcher::NameMatch Matcher::ofOne(std::string_view name) {
    const std::vector<NameWord>& words = split_.of(name);
    NameMatch match;
    answered_.clear();
    int lastPart = -1;
    for (const NameWord& word : words) {
        const Mask answers = read(word, match);
        answered_.push_back(answers != 0);
        if (!word.aside && !word.neutral) ++match.telling;
        if (answers != 0) lastPart = word.part;
    }
    for (std::size_t i = 0; i < words.size(); ++i)
        if (!answered_[i]) match.beyond += beyondOf(words[i], lastPart);
    return match;
}

Matcher::Mask Matcher::read(const NameWord& word, NameMatch& match) const {
    Mask answers = 0;
    for (std::size_t i = 0; i < asked_.size(); ++i) {
        const Mask bit = Mask{1} << i;
        const bool whole = isOneOf(asked_[i].whole, word.word);
        const std::size_t start = startOf(asked_[i], word.word);
        const bool started = start < asked_[i].starts.size();
        if (!whole && !started && !isOneOf(asked_[i].begun, word.word)) continue;
        if (started)
            match.slips.at(i) = (match.begun & bit) == 0
                                    ? static_cast<int>(start)
                                    : std::min(match.slips.at(i), static_cast<int>(start));
        answers |= bit;
        match.begun |= bit;
        if (whole) match.whole |= bit;
        match.headBegun = match.headBegun || word.head;
        match.headWhole = match.headWhole || (whole && word.head);
    }
    return answers;
}

Match Matcher::of(std::string_view name, std::string_view otherNames) {
    const Mask all = (Mask{1} << asked_.size()) - 1U;
    Mask whole = 0;
    int ofOwnName = -1;
    Match best;
    const auto take = [&](const NameMatch& match) {
        const bool first = ofOwnName < 0;
        whole |= match.whole;
        MatchQuality quality = MatchQuality::Start;
        if (match.whole == all && match.headWhole)
            quality = MatchQuality::Named;
        else if (match.begun == all && match.headBegun)
            quality = MatchQuality::Begun;
        const int beyond = match.beyond + (first ? 0 : ofOwnName + kOtherName);
        if (first || quality < best.quality ||
            (quality == best.quality && match.begun == all && beyond < best.beyond))
            best = {quality, beyond, std::ranges::max(match.slips)};
        if (first) ofOwnName = match.telling;
    };
    take(ofOne(name));
    while (!otherNames.empty()) {
        const std::size_t end = std::min(otherNames.find('\n'), otherNames.size());
        take(ofOne(otherNames.substr(0, end)));
        otherNames.remove_prefix(std::min(end + 1, otherNames.size()));
    }
    if (best.quality > MatchQuality::Whole && whole == all) best.quality = MatchQuality::Whole;
    return best;
}

}  // namespace nettare
