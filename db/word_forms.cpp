#include "db/word_forms.h"

#include <algorithm>
#include <array>

namespace nettare {

namespace {

/// A plural ending and the singular ending that it may stand for.
struct EndingRule {
    std::string_view plural;
    std::string_view singular;
};

constexpr std::array kEndings{EndingRule{"ies", "y"}, EndingRule{"ves", "f"},
                              EndingRule{"ves", "fe"}, EndingRule{"es", ""}, EndingRule{"s", ""}};

/// Letters that a rule must leave, so that "is" or "es" stay whole.
constexpr std::size_t kShortestStem = 2;

bool endsIn(std::string_view word, std::string_view ending) {
    return word.size() >= ending.size() + kShortestStem && word.ends_with(ending);
}

bool takesEs(std::string_view stem) {
    return stem.ends_with("o") || stem.ends_with("ch") || stem.ends_with("sh") ||
           stem.ends_with("s") || stem.ends_with("x");
}

}  // namespace

std::vector<std::string> otherForms(std::string_view word) {
    std::vector<std::string> forms;
    for (const EndingRule& rule : kEndings) {
        const bool plural = endsIn(word, rule.plural) && !word.ends_with("ss");
        const std::string_view stem =
            plural ? word.substr(0, word.size() - rule.plural.size()) : word;
        if (plural && (rule.plural != "es" || takesEs(stem)))
            forms.push_back(std::string{stem} + std::string{rule.singular});
        else if (!rule.singular.empty() && endsIn(word, rule.singular))
            forms.push_back(std::string{word.substr(0, word.size() - rule.singular.size())} +
                            std::string{rule.plural});
    }
    return forms;
}

std::vector<std::string> allForms(std::string_view word) {
    std::vector<std::string> forms{std::string{word}};
    const auto add = [&forms](std::string form) {
        if (std::ranges::find(forms, form) == forms.end()) forms.push_back(std::move(form));
    };
    for (std::string& form : otherForms(word)) add(std::move(form));
    const std::size_t singulars = forms.size();
    for (std::size_t i = 0; i < singulars; ++i) {
        const std::string form = forms[i];
        if (form.size() < kShortestStem) continue;
        const bool plural = form.ends_with('s') && !form.ends_with("ss");
        if (!plural) add(form + (takesEs(form) ? "es" : "s"));
        for (std::string& other : otherForms(form)) add(std::move(other));
    }
    return forms;
}

bool sameWord(std::string_view a, std::string_view b) {
    const auto isFormOf = [](std::string_view form, std::string_view word) {
        const std::vector<std::string> forms = otherForms(word);
        return std::ranges::find(forms, form) != forms.end();
    };
    return a == b || isFormOf(a, b) || isFormOf(b, a);
}

}  // namespace nettare
