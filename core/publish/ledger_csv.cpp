#include "core/publish/ledger_csv.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/ledger/ledger_words.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

constexpr std::string_view kRowEnd = "\r\n";

constexpr std::array<std::string_view, 31> kLedgerFields{
    "sequence",   "time",     "kind",          "origin",
    "what",       "why",      "gross",         "tare",
    "jar before", "net",      "unit",          "readability",
    "scale",      "vessel",   "pieces",        "state",
    "series",     "of",       "tags",          "reading before",
    "known mass", "capacity", "superseded by", "reason",
    "left out",   "suspect",  "speaks of",     "recipe",
    "id",         "hash",     "previous hash"};

bool looksLikeFormula(std::string_view text) {
    return !text.empty() && std::string_view{"=+-@\t\r"}.find(text.front()) != text.npos;
}

/// Puts a row together; cells come in the order of kLedgerFields.
class CsvRow {
public:
    /// What a person wrote.
    void text(std::string_view text) {
        begin();
        if (text.find_first_of(",\"\r\n") == text.npos && !looksLikeFormula(text)) {
            row_ += text;
            return;
        }
        row_ += '"';
        if (looksLikeFormula(text)) row_ += '\'';
        for (const char c : text) {
            if (c == '"') row_ += '"';
            row_ += c;
        }
        row_ += '"';
    }
    /// A number, a word of ours, an id.
    void plain(std::string_view text) {
        begin();
        row_ += text;
    }
    void decimal(const std::optional<Decimal>& number) {
        plain(number ? number->text() : std::string{});
    }
    void flag(bool set) { plain(set ? "yes" : ""); }

    std::string take() {
        row_ += kRowEnd;
        return std::move(row_);
    }

private:
    void begin() {
        if (begun_) row_ += ',';
        begun_ = true;
    }

    std::string row_;
    bool begun_ = false;
};

std::string joined(const std::vector<std::string>& tags) {
    std::string all;
    for (const std::string& tag : tags) {
        if (!all.empty()) all += "; ";
        all += tag;
    }
    return all;
}

void writeWeighed(const LedgerEntry& entry, CsvRow& row) {
    const bool shown = entry.kind == EntryKind::Shown;
    const bool onScale = !entry.scale.empty();
    row.plain(entry.unit);
    row.decimal(onScale ? std::optional{entry.readability} : std::nullopt);
    row.text(entry.scale);
    row.text(entry.vessel);
    row.plain(shown ? std::to_string(entry.pieces) : std::string{});
    row.plain(shown ? wordFor(entry.state, kStateWords) : std::string_view{});
    const SeriesMark mark = entry.series.value_or(SeriesMark{});
    row.plain(entry.series ? wordFor(mark.kind, kSeriesWords) : std::string_view{});
    row.text(mark.of);
    row.text(joined(mark.tags));
    row.plain(mark.before);
    const bool checked = entry.kind == EntryKind::Checked;
    row.decimal(checked ? std::optional{entry.mass} : std::nullopt);
    row.decimal(entry.capacity);
}

bool showsMass(EntryKind kind) {
    return kind == EntryKind::Shown || kind == EntryKind::Checked || kind == EntryKind::Vessel;
}

}  // namespace

std::string LedgerCsv::header() {
    CsvRow row;
    for (const std::string_view field : kLedgerFields) row.plain(field);
    return row.take();
}

// Hexadecimal digits and dashes alone, as readEntry() has seen to.
LedgerCsv::Uuid LedgerCsv::uuidOf(std::string_view id) {
    std::string digits;
    std::ranges::copy_if(id, std::back_inserter(digits), [](char c) { return c != '-'; });
    digits.resize(32, '0');
    Uuid uuid;
    std::from_chars(digits.data(), digits.data() + 16, uuid.high, 16);
    std::from_chars(digits.data() + 16, digits.data() + 32, uuid.low, 16);
    return uuid;
}

std::uint8_t LedgerCsv::unitOf(const std::string& symbol) {
    auto known = std::ranges::find(units_, symbol);
    if (known == units_.end()) known = units_.insert(units_.end(), symbol);
    return static_cast<std::uint8_t>(known - units_.begin() + 1);
}

void LedgerCsv::survey(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    sayings_.hear(entry);
    const std::string& tare = entry.takenFrom.empty() ? entry.tare : entry.takenFrom;
    if (!tare.empty()) tares_.try_emplace(uuidOf(tare));
    const auto speaksOfCheck = [&](const ChainedEntry& check) {
        return check.entry.id == entry.refersTo;
    };
    if (entry.kind == EntryKind::Checked ||
        (entry.kind == EntryKind::Superseded && std::ranges::any_of(checks_, speaksOfCheck)))
        checks_.push_back(chained);
}

const LedgerCsv::TareShown* LedgerCsv::tareOf(const LedgerEntry& entry) const {
    const std::string& tare = entry.takenFrom.empty() ? entry.tare : entry.takenFrom;
    if (tare.empty()) return nullptr;
    const auto known = tares_.find(uuidOf(tare));
    return known != tares_.end() && known->second.unit != 0 ? &known->second : nullptr;
}

LedgerCsv::RowNumbers LedgerCsv::numbersOf(const LedgerEntry& entry, const TareShown* other) {
    RowNumbers numbers;
    numbers.gross = entry.shown;
    const bool fromJar = !entry.takenFrom.empty();
    if (other != nullptr) {
        (fromJar ? numbers.jarBefore : numbers.tare) = other->shown;
        if (other->unit == unitOf(entry.unit))
            numbers.net =
                fromJar ? other->shown.minus(entry.shown) : entry.shown.minus(other->shown);
    } else if (entry.tare.empty() && !fromJar && entry.vesselTare) {
        numbers.tare = entry.vesselTare;
        numbers.net = entry.shown.minus(*entry.vesselTare);
    }
    return numbers;
}

std::string LedgerCsv::row(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    if (!scales_) scales_.emplace(checks_);
    bool suspect = entry.kind != EntryKind::Checked && showsMass(entry.kind) &&
                   scales_->isSuspect(entry.scale, chained.sequence);
    RowNumbers numbers;
    if (showsMass(entry.kind)) {
        const TareShown* other = tareOf(entry);
        numbers = numbersOf(entry, other);
        if (const auto own = tares_.find(uuidOf(entry.id)); own != tares_.end())
            own->second = {entry.shown, unitOf(entry.unit), suspect};
        suspect = suspect || (other != nullptr && other->suspect);
    }
    CsvRow row;
    row.plain(std::to_string(chained.sequence));
    row.plain(entry.at);
    row.plain(wordFor(entry.kind, kEntryKindWords));
    row.plain(wordFor(entry.origin, kEntryOriginWords));
    row.text(entry.what);
    row.text(entry.why);
    row.decimal(numbers.gross);
    row.decimal(numbers.tare);
    row.decimal(numbers.jarBefore);
    row.decimal(numbers.net);
    writeWeighed(entry, row);
    const Said* said = sayings_.about(entry.id);
    row.plain(said != nullptr ? said->supersededBy : std::string{});
    const bool hasReason = said != nullptr && !said->reason().empty();
    row.text(hasReason ? said->reason() : entry.reason);
    row.flag(said != nullptr && said->leftOut);
    row.flag(suspect);
    row.plain(entry.refersTo);
    row.plain(entry.recipe);
    row.plain(entry.id);
    row.plain(chained.hash);
    row.plain(chained.previous);
    return row.take();
}

}  // namespace nettare
