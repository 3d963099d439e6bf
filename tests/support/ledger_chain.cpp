#include "ledger_chain.h"

#include <fmt/format.h>

namespace nettare {

std::string chainId(std::size_t number) {
    return fmt::format("00000000-0000-4000-8000-{:012}", number);
}

Decimal decimal(const std::string& text) {
    return Decimal::read(text).value();
}

LedgerEntry pieceOf(const std::string& what, int pieces) {
    LedgerEntry entry;
    entry.what = what;
    entry.pieces = pieces;
    entry.series = SeriesMark{SeriesKind::PerPiece, "prawn", {}, {}};
    return entry;
}

std::string Chain::add(LedgerEntry entry) {
    entry.id = chainId(entries.size() + 1);
    entry.at = "2026-05-16T15:41:07Z";
    entries.push_back({std::move(entry), static_cast<long long>(entries.size()) + 1, {}, {}});
    return entries.back().entry.id;
}

std::string Chain::show(const std::string& shown, LedgerEntry entry) {
    entry.kind = EntryKind::Shown;
    entry.shown = decimal(shown);
    if (entry.unit.empty()) entry.unit = "g";
    if (entry.readability == Decimal{}) entry.readability = decimal("0.1");
    if (entry.scale.empty()) entry.scale = "bench scale";
    entry.indication = "shown-" + std::to_string(entries.size() + 1);
    return add(std::move(entry));
}

std::string Chain::showOver(const std::string& tare, const std::string& shown, LedgerEntry entry) {
    entry.tare = tare;
    return show(shown, std::move(entry));
}

std::string Chain::check(const std::string& mass, const std::string& shown,
                         const std::string& scale) {
    LedgerEntry entry;
    entry.kind = EntryKind::Checked;
    entry.scale = scale;
    entry.unit = "g";
    entry.readability = decimal("0.1");
    entry.mass = decimal(mass);
    entry.shown = decimal(shown);
    return add(std::move(entry));
}

std::string Chain::say(EntryKind kind, const std::string& of, const std::string& reason) {
    LedgerEntry entry;
    entry.kind = kind;
    entry.refersTo = of;
    entry.reason = reason;
    return add(std::move(entry));
}

}  // namespace nettare
