#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nettare {

/// A word of a food's name and where it stands.
struct NameWord {
    std::string_view word;   ///< folded as searchWords does
    int part = 0;            ///< of the parts between commas, from 0
    bool aside = false;      ///< in brackets
    bool head = false;       ///< says what the thing is: see Matcher
    bool classWord = false;  ///< of the class before the thing
    bool neutral = false;    ///< "raw", "whole", "and" ...: tells no other thing apart
};

/// The words of one name at a time, without a copy for each.
class NameWords {
public:
    /// Takes a name apart; the words are valid until the next call.
    const std::vector<NameWord>& of(std::string_view name);

private:
    void findHeads();

    std::string folded_;
    std::vector<NameWord> words_;
};

}  // namespace nettare
