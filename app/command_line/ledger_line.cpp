#include "app/command_line/ledger_line.h"

#include <fmt/core.h>

#include "app/command_line/weigh_on.h"
#include "core/ledger/bench_equipment.h"
#include "core/ledger/ledger_words.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

std::string amountShown(Decimal amount, const std::string& unit) {
    return fmt::format("{} {}", printedDecimal(amount), unit);
}

std::string equipmentText(const LedgerEntry& entry) {
    switch (entry.kind) {
        case EntryKind::Scale:
            return fmt::format("“{}”, steps of {}", entry.scale,
                               amountShown(entry.readability, entry.unit));
        case EntryKind::Checked:
            return fmt::format(
                "“{}” showed {} for {}: {}", entry.scale, amountShown(entry.shown, entry.unit),
                amountShown(entry.mass, entry.unit),
                isGoodCheck(entry.mass, entry.shown, entry.readability) ? "good" : "FAILED");
        case EntryKind::Vessel:
            return fmt::format("“{}”, tare {}", entry.vessel, amountShown(entry.shown, entry.unit));
        default:
            return fmt::format("{}: {}", shortId(entry.refersTo), entry.reason);
    }
}

/// "; taken back: slip of the hand"
std::string becameOf(const Said* said) {
    if (said == nullptr || said->reason().empty()) return {};
    if (!said->successor.empty())
        return fmt::format("; replaced by {}: {}", shortId(said->successor), said->reason());
    return fmt::format("; {}: {}", said->supersededBy.empty() ? "left out" : "taken back",
                       said->reason());
}

std::string shownText(const LedgerEntry& entry, const WalkedEntry& walked) {
    std::string text = amountShown(entry.shown, entry.unit);
    if (walked.net) text += fmt::format(", net {}", amountShown(*walked.net, entry.unit));
    if (!entry.what.empty()) text += fmt::format("  {}", entry.what);
    if (entry.pieces != 1) text += fmt::format(", {} pieces", entry.pieces);
    if (!entry.why.empty()) text += fmt::format(" ({})", entry.why);
    if (walked.ofBefore != nullptr)
        text += fmt::format("; what went in was taken back: {}", walked.ofBefore->reason());
    if (walked.ofTare != nullptr)
        text += fmt::format("; {} was taken back: {}",
                            walked.jarBefore ? "what the jar showed before" : "its tare",
                            walked.ofTare->reason());
    if (walked.suspect) text += "; in doubt: a check of the scale failed";
    return text;
}

}  // namespace

std::string LedgerLines::row(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    const WalkedEntry walked = walk_.look(chained);
    const bool shown = entry.kind == EntryKind::Shown;
    return fmt::format("{:>6}  {}  {}  {:<10}  {}{}\n", chained.sequence, entry.at,
                       shortId(entry.id), wordFor(entry.kind, kEntryKindWords),
                       shown ? shownText(entry, walked) : equipmentText(entry),
                       becameOf(walked.said));
}

}  // namespace nettare
