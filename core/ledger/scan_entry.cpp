#include "core/ledger/scan_entry.h"

#include <algorithm>
#include <cstdint>
#include <functional>

#include "core/ledger/entry_limits.h"
#include "core/ledger/ledger_words.h"
#include "core/recipe/read_recipe.h"
#include "core/recipe/words.h"
#include "core/support/canonical_scan.h"
#include "core/support/time_form.h"

namespace nettare {

namespace {

template <class T, std::size_t N>
T scanWord(CanonicalScan& scan, const std::array<Word<T>, N>& known) {
    const std::string_view found = scan.text(kAmountLength);
    for (const Word<T>& word : known)
        if (word.word == found) return word.meaning;
    scan.spoil();
    return known.front().meaning;
}

void scanName(CanonicalScan& scan, std::string& name) {
    name = scan.text(kNameLength);
}

void scanUuid(CanonicalScan& scan, std::string& id) {
    id = scan.text(kAmountLength);
    scan.need(isUuidForm(id));
}

void scanId(CanonicalScan& scan, std::string& id) {
    constexpr std::size_t kIdLength = 64;
    id = scan.text(kIdLength);
    scan.need(isIdentifier(id));
}

/// As documents write them: up to six digits on either side of the point.
Decimal scanDecimal(CanonicalScan& scan, NumberSign sign) {
    constexpr std::size_t kSide = 6;
    const std::string_view text = scan.text(kAmountLength);
    const auto found = Decimal::read(text);
    const std::size_t minus = text.starts_with('-') ? 1 : 0;
    const std::size_t whole = std::min(text.find('.'), text.size()) - minus;
    scan.need(found && whole <= kSide && found->decimals() <= static_cast<int>(kSide));
    scan.need(found && found->text() == text);
    scan.need(found && (sign == NumberSign::Any || found->coefficient() >= 0));
    scan.need(found && (sign != NumberSign::Positive || found->coefficient() != 0));
    return found.value_or(Decimal{});
}

/// The units that kitchen scales have; of others only the slow reader knows.
void scanUnit(CanonicalScan& scan, std::string& unit) {
    unit = scan.text(kAmountLength);
    scan.need(unit == "g" || unit == "kg" || unit == "oz" || unit == "lb");
}

void scanTags(CanonicalScan& scan, std::vector<std::string>& tags) {
    scan.take("[");
    do tags.emplace_back(scan.text(kNameLength));
    while (scan.tries(",") && scan.isSound());
    scan.take("]");
    scan.need(tags.size() <= kMostTags);
    scan.need(std::ranges::adjacent_find(tags, std::greater_equal<>{}) == tags.end());
}

SeriesMark scanSeries(CanonicalScan& scan) {
    SeriesMark mark;
    scan.open();
    if (scan.begins("before")) scanUuid(scan, mark.before);
    scan.need(scan.begins("kind"));
    mark.kind = scanWord(scan, kSeriesWords);
    scan.need(scan.begins("of"));
    scanName(scan, mark.of);
    if (scan.begins("tags")) scanTags(scan, mark.tags);
    scan.close();
    scan.need(mark.before.empty() == (mark.kind != SeriesKind::Ratio));
    return mark;
}

/// A member of entries and how it is read.
struct EntryMember {
    std::string_view key;
    void (*read)(CanonicalScan&, ChainedEntry&);
};

/// In the order of their keys.
constexpr std::array<EntryMember, 26> kMembers{{
    {"at",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.entry.at = scan.text(kAmountLength);
         scan.need(isTimeForm(to.entry.at));
     }},
    {"capacity",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.entry.capacity = scanDecimal(scan, NumberSign::Positive);
     }},
    {"id", [](CanonicalScan& scan, ChainedEntry& to) { scanUuid(scan, to.entry.id); }},
    {"indication",
     [](CanonicalScan& scan, ChainedEntry& to) { scanId(scan, to.entry.indication); }},
    {"kind", [](CanonicalScan& scan,
                ChainedEntry& to) { to.entry.kind = scanWord(scan, kEntryKindWords); }},
    {"mass", [](CanonicalScan& scan,
                ChainedEntry& to) { to.entry.mass = scanDecimal(scan, NumberSign::Positive); }},
    {"origin", [](CanonicalScan& scan,
                  ChainedEntry& to) { to.entry.origin = scanWord(scan, kEntryOriginWords); }},
    {"pieces",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.entry.pieces = static_cast<int>(scan.wholeNumber(1, kMostPiecesWeighed));
     }},
    {"previous",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.previous = scan.text(64);
         scan.need(to.previous.size() == 64 && isHexadecimal(to.previous));
     }},
    {"readability",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.entry.readability = scanDecimal(scan, NumberSign::Positive);
     }},
    {"reason", [](CanonicalScan& scan, ChainedEntry& to) { scanName(scan, to.entry.reason); }},
    {"recipe", [](CanonicalScan& scan, ChainedEntry& to) { scanId(scan, to.entry.recipe); }},
    {"refers_to", [](CanonicalScan& scan, ChainedEntry& to) { scanUuid(scan, to.entry.refersTo); }},
    {"row", [](CanonicalScan& scan, ChainedEntry& to) { scanName(scan, to.entry.row); }},
    {"scale", [](CanonicalScan& scan, ChainedEntry& to) { scanName(scan, to.entry.scale); }},
    {"sequence", [](CanonicalScan& scan,
                    ChainedEntry& to) { to.sequence = scan.wholeNumber(1, kMostEntriesOfChain); }},
    {"series", [](CanonicalScan& scan, ChainedEntry& to) { to.entry.series = scanSeries(scan); }},
    {"shown", [](CanonicalScan& scan,
                 ChainedEntry& to) { to.entry.shown = scanDecimal(scan, NumberSign::Any); }},
    {"state",
     [](CanonicalScan& scan, ChainedEntry& to) { to.entry.state = scanWord(scan, kStateWords); }},
    {"taken_from",
     [](CanonicalScan& scan, ChainedEntry& to) { scanUuid(scan, to.entry.takenFrom); }},
    {"tare", [](CanonicalScan& scan, ChainedEntry& to) { scanUuid(scan, to.entry.tare); }},
    {"unit", [](CanonicalScan& scan, ChainedEntry& to) { scanUnit(scan, to.entry.unit); }},
    {"vessel", [](CanonicalScan& scan, ChainedEntry& to) { scanName(scan, to.entry.vessel); }},
    {"vessel_tare",
     [](CanonicalScan& scan, ChainedEntry& to) {
         to.entry.vesselTare = scanDecimal(scan, NumberSign::NotNegative);
     }},
    {"what", [](CanonicalScan& scan, ChainedEntry& to) { scanName(scan, to.entry.what); }},
    {"why", [](CanonicalScan& scan, ChainedEntry& to) { to.entry.why = scan.text(kWhyLength); }},
}};

using MemberSet = std::uint32_t;

/// Those members as bits by their places.
constexpr MemberSet membersOf(std::initializer_list<std::string_view> keys) {
    MemberSet set = 0;
    for (const std::string_view key : keys)
        for (std::size_t i = 0; i < kMembers.size(); ++i)
            if (kMembers[i].key == key) set |= MemberSet{1} << i;
    return set;
}

constexpr MemberSet kOfScale = membersOf({"scale", "unit", "readability"});
constexpr MemberSet kReference = membersOf({"refers_to", "reason"});
constexpr MemberSet kOfShown = kOfScale | membersOf({"indication", "shown", "state", "pieces"});
constexpr MemberSet kMayBeShown =
    membersOf({"vessel", "what", "why", "row", "tare", "taken_from", "vessel_tare", "series"});
constexpr MemberSet kCapacity = membersOf({"capacity"});
constexpr MemberSet kOfCheck = kOfScale | membersOf({"shown", "mass"});
constexpr MemberSet kOfVessel = kOfScale | membersOf({"shown", "vessel"});

/// Members that every entry of a kind has, and those that it may have besides.
struct MemberRule {
    MemberSet needed, allowed;
};

MemberRule ruleFor(EntryKind kind) {
    switch (kind) {
        case EntryKind::Shown:
            return {kOfShown, kMayBeShown};
        case EntryKind::Scale:
            return {kOfScale, kCapacity};
        case EntryKind::Checked:
            return {kOfCheck, 0};
        case EntryKind::Vessel:
            return {kOfVessel, 0};
        default:
            return {kReference, 0};
    }
}

bool areMembersOf(MemberSet found, const ChainedEntry& chained) {
    constexpr MemberSet kAlways = membersOf({"at", "id", "kind", "origin", "sequence"});
    constexpr MemberSet kPrevious = membersOf({"previous"});
    constexpr MemberSet kRecipe = membersOf({"recipe"});
    const MemberRule rule = ruleFor(chained.entry.kind);
    const MemberSet previous = chained.sequence > 1 ? kPrevious : 0;
    const MemberSet reference = (found & kReference) != 0 ? kReference : 0;
    const MemberSet needed = kAlways | rule.needed | previous | reference;
    const MemberSet allowed = needed | rule.allowed | kRecipe;
    return (needed & ~found) == 0 && (found & ~allowed) == 0;
}

}  // namespace

std::optional<ChainedEntry> scanEntry(std::string_view text) {
    CanonicalScan scan{text};
    ChainedEntry chained;
    MemberSet found = 0;
    for (std::size_t i = 0; i < kMembers.size() && scan.isSound(); ++i) {
        if (!scan.begins(kMembers[i].key)) continue;
        kMembers[i].read(scan, chained);
        found |= MemberSet{1} << i;
    }
    const LedgerEntry& entry = chained.entry;
    if (entry.kind == EntryKind::Vessel) scan.need(entry.shown.coefficient() >= 0);
    if (!scan.isWhole() || !areMembersOf(found, chained)) return std::nullopt;
    return chained;
}

}  // namespace nettare
