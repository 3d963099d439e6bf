#include "app/command_line/weighed_pair.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <unordered_map>

#include "app/command_line/show_recipe.h"
#include "app/command_line/weigh_on.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

using Successors = std::unordered_map<std::string_view, std::string_view>;

Error notWhole(const LedgerReading& before) {
    return ofArgument("--before", Error{ErrorCode::PairNotWhole}.with("found", before.entry().id));
}

/// The id of what took a reading's place last.
std::string_view lastOf(const Successors& successors, std::string_view id) {
    // No chain of corrections is longer than there are corrections.
    for (std::size_t steps = 0; steps < successors.size(); ++steps) {
        const auto next = successors.find(id);
        if (next == successors.end()) break;
        id = next->second;
    }
    return id;
}

/// What comes out is a part of what went in; cooking may take water up.
bool isPartOfWhole(std::string_view ratio) {
    constexpr std::array<std::string_view, 2> kParts{"edible/bought", "drained/total"};
    std::string plain = lowerAscii(ratio);
    std::erase(plain, ' ');
    return std::ranges::find(kParts, plain) != kParts.end();
}

}  // namespace

Result<void> judgePair(const Kitchen& kitchen, const LedgerReading& before,
                       const LedgerEntry& after) {
    if (!before.net) return fail(notWhole(before));
    const auto key = seriesKeyOf(after);
    if (!key) return {};
    auto entries = kitchen.seriesEntries(*key);
    if (!entries) return fail(entries.error());
    const auto readings = readingsOf(std::move(*entries), {});
    Successors successors;
    for (const LedgerReading& reading : readings)
        if (!reading.successor.empty()) successors.emplace(reading.entry().id, reading.successor);
    for (const LedgerReading& other : readings) {
        const auto of = seriesKeyOf(other.entry());
        if (!of || !sameSeries(*of, *key) || !other.counts()) continue;
        if (other.entry().id == after.refersTo) continue;
        if (lastOf(successors, other.entry().series->before) == before.entry().id)
            return fail(notWhole(before).with("other", shortId(other.entry().id)));
    }
    return {};
}

std::string pairCautions(const LedgerReading& before, const LedgerReading& after) {
    std::string cautions;
    const std::string& wentIn = before.entry().what;
    const std::string& cameOut = after.entry().what;
    if (!wentIn.empty() && foldedWhat(wentIn) != foldedWhat(cameOut))
        cautions += fmt::format(
            "  ! “{}” went in and “{}” came out; where that is a slip, correct it with "
            "--instead-of\n",
            wentIn, cameOut);
    const auto in = netGrams(before), out = netGrams(after);
    const std::string& ratio = after.entry().series->of;
    if (in && out && *in > 0 && *out > *in && isPartOfWhole(ratio))
        cautions += fmt::format(
            "  ! {} is {} %, and more than what went in cannot come out; see what was on the scale "
            "both times, and correct the one that is wrong with --instead-of\n",
            ratio, numberAt(0, 100 * *out / *in, Direction::Ceiling));
    return cautions;
}

}  // namespace nettare
