#include "app/sheet/counting_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/sheet/document_texts.h"
#include "app/sheet/yield_texts.h"
#include "core/quantity/amount.h"

namespace nettare {

namespace {

struct CountingWords {
    Q_DECLARE_TR_FUNCTIONS(Counting)
};

bool isRange(const std::string& text) {
    const auto amount = readAmount(text);
    return amount && amount->isRange();
}

template <class Test>
bool anyLine(const Json& document, Test test) {
    return std::ranges::any_of(entriesIn(document, "lines"), test);
}

bool matters(const Json& document, CountingRule rule) {
    switch (rule) {
        case CountingRule::ToTaste:
            return anyLine(document,
                           [](const Json& line) { return line.find("to_taste") != nullptr; });
        case CountingRule::Optional:
            return anyLine(document, [](const Json& line) {
                const Json* optional = line.find("optional");
                return optional != nullptr && *optional == Json{true};
            });
        case CountingRule::Ranges:
            return anyLine(document,
                           [](const Json& line) { return isRange(memberText(&line, "amount")); });
        case CountingRule::Makes:
            return isRange(memberText(document.find("makes"), "pieces"));
    }
    return false;
}

ShownRule toTaste() {
    return {CountingRule::ToTaste,
            CountingWords::tr("To taste"),
            {{"left out", CountingWords::tr("to taste left out"), CountingWords::tr("left out")},
             {"a pinch a portion", CountingWords::tr("to taste: a pinch a portion"),
              CountingWords::tr("a pinch for each portion")}}};
}

ShownRule optionalLines() {
    return {CountingRule::Optional,
            CountingWords::tr("Optional lines"),
            {{"counted", CountingWords::tr("optional counted"), CountingWords::tr("counted")},
             {"left out", CountingWords::tr("optional left out"), CountingWords::tr("left out")},
             {"between", CountingWords::tr("optional half counted"),
              CountingWords::tr("half, between none and all")}}};
}

/// `text` names what is a range.
std::vector<CountingOption> rangeOptions(const QString& text) {
    return {
        {"middle", CountingWords::tr("%1 by the middle").arg(text),
         CountingWords::tr("by the middle, with the range as uncertainty")},
        {"least", CountingWords::tr("%1 by the least").arg(text),
         CountingWords::tr("by the least")},
        {"most", CountingWords::tr("%1 by the most").arg(text), CountingWords::tr("by the most")}};
}

ShownRule ruleOf(const DraftSession& draft, CountingRule rule) {
    switch (rule) {
        case CountingRule::ToTaste:
            return toTaste();
        case CountingRule::Optional:
            return optionalLines();
        case CountingRule::Ranges:
            return {rule, CountingWords::tr("Ranges of amounts"),
                    rangeOptions(CountingWords::tr("ranges"))};
        case CountingRule::Makes:
            break;
    }
    const QString makes = makesShown(draft);
    return {rule, CountingWords::tr("How many it makes"), rangeOptions(makes)};
}

/// The member of "counting" in documents.
std::string_view keyOf(CountingRule rule) {
    switch (rule) {
        case CountingRule::ToTaste:
            return "to_taste";
        case CountingRule::Optional:
            return "optional";
        case CountingRule::Ranges:
            return "ranges";
        case CountingRule::Makes:
            break;
    }
    return "makes";
}

}  // namespace

std::vector<ShownRule> rulesShown(const DraftSession& draft) {
    std::vector<ShownRule> shown;
    for (const CountingRule rule : {CountingRule::ToTaste, CountingRule::Optional,
                                    CountingRule::Ranges, CountingRule::Makes}) {
        if (!matters(draft.document(), rule)) continue;
        ShownRule one = ruleOf(draft, rule);
        const std::string word = memberText(draft.document().find("counting"), keyOf(rule));
        const auto held = std::ranges::find(one.options, word, &CountingOption::word);
        // A document that says nothing has the first: the default.
        if (held != one.options.end())
            one.current = static_cast<std::size_t>(held - one.options.begin());
        shown.push_back(std::move(one));
    }
    return shown;
}

}  // namespace nettare
