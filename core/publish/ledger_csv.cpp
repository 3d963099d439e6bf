#include "core/publish/ledger_csv.h"

#include <algorithm>
#include <array>

#include "core/ledger/ledger_words.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

constexpr std::string_view kRowEnd = "\r\n";

constexpr std::array<std::string_view, 33> kLedgerFields{
    "sequence",
    "time",
    "kind",
    "origin",
    "what",
    "why",
    "gross",
    "tare",
    "jar before",
    "net",
    "unit",
    "readability",
    "scale",
    "vessel",
    "pieces",
    "state",
    "series",
    "of",
    "tags",
    "reading before",
    "known mass",
    "capacity",
    "superseded by",
    "reason",
    "left out",
    "suspect",
    "tare taken back",
    "before taken back",
    "speaks of",
    "recipe",
    "id",
    "hash",
    "previous hash",
};

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

}  // namespace

std::string LedgerCsv::header() {
    CsvRow row;
    for (const std::string_view field : kLedgerFields) row.plain(field);
    return row.take();
}

std::string LedgerCsv::row(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    const WalkedEntry walked = walk_.look(chained);
    CsvRow row;
    row.plain(std::to_string(chained.sequence));
    row.plain(entry.at);
    row.plain(wordFor(entry.kind, kEntryKindWords));
    row.plain(wordFor(entry.origin, kEntryOriginWords));
    row.text(entry.what);
    row.text(entry.why);
    row.decimal(walked.gross);
    row.decimal(walked.tare);
    row.decimal(walked.jarBefore);
    row.decimal(walked.net);
    writeWeighed(entry, row);
    const Said* const said = walked.said;
    row.plain(said != nullptr ? said->supersededBy : std::string{});
    const bool hasReason = said != nullptr && !said->reason().empty();
    row.text(hasReason ? said->reason() : entry.reason);
    row.flag(said != nullptr && said->leftOut);
    row.flag(walked.suspect);
    row.text(walked.ofTare != nullptr ? walked.ofTare->reason() : std::string{});
    row.text(walked.ofBefore != nullptr ? walked.ofBefore->reason() : std::string{});
    row.plain(entry.refersTo);
    row.plain(entry.recipe);
    row.plain(entry.id);
    row.plain(chained.hash);
    row.plain(chained.previous);
    return row.take();
}

}  // namespace nettare
