#include "core/edit/counting_edits.h"

#include <array>

#include "core/edit/line_parts.h"
#include "core/support/json_reader.h"

namespace nettare {

namespace {

constexpr std::array<Word<CountingRule>, 4> kRuleKeys{{
    {"to_taste", CountingRule::ToTaste},
    {"optional", CountingRule::Optional},
    {"ranges", CountingRule::Ranges},
    {"makes", CountingRule::Makes},
}};

}  // namespace

Result<Edit> setCounting(const Json& document, CountingRule rule, std::string_view word) {
    const std::string_view key = wordFor(rule, kRuleKeys);
    EditDraft draft{document, EditKind::Counting, ""};
    const Json* there = document.find("counting");
    Json all = there != nullptr ? *there : Json::object();
    if (word.empty())
        all.remove(key);
    else
        all.set(key, Json{word});
    const bool none = all.members() == nullptr || all.members()->empty();
    draft.set("/counting", none ? std::nullopt : std::optional{std::move(all)});
    return draft.takeChecked();
}

Result<LineEdit> setOptional(const Json& document, std::string_view line, bool optional) {
    const auto found = entryNamed(document, "lines", line);
    if (!found) return fail(found.error());
    EditDraft draft{document, EditKind::Optional, nameOfLine(document, **found)};
    draft.set(linePlace(line, "optional"), optional ? std::optional{Json{true}} : std::nullopt);
    return LineEdit{draft.take(), std::string{line}, {}};
}

}  // namespace nettare
