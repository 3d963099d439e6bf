#include "db/search/search_tables.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <tuple>
#include <utility>
#include <vector>

#include "db/word_forms.h"

namespace nettare {

namespace {

using Asked = std::vector<AskedWord>;

/// Words that a slip may have meant, kept of those that are near enough.
constexpr std::size_t kMostMeant = 12;

/// A row found, by the table that shows it.
struct Found {
    FoundRow row;
    std::size_t table = 0;
    int uses = 0;
    int beyond = 0;  ///< what was asked for; 0 in a table that was put in order by hand

    /// What this cook used more comes before the tables' own order.
    [[nodiscard]] auto key() const {
        return std::tuple{row.kind(), -uses, table, beyond, row.rowOrder};
    }
};

bool isBetter(const Found& a, const Found& b) {
    return a.key() < b.key();
}

/// Foods of the likeliest word that come before those of others.
constexpr int kOfLikeliest = 3;

class TablesSearch {
public:
    TablesSearch(const TablesInOrder& tables, std::size_t most, const UsedRows& used)
        : tables_{tables}, most_{most}, used_{used} {}

    Result<FoodSearch> run(const Asked& asked) {
        auto exact = searchFor(asked, {});
        if (!exact || !exact->hits.empty()) return exact;
        return forgiving(asked);
    }

private:
    /// The hits, best first, each row once: as the first table has it, with the better of its
    /// ranks. Of one slip only those words stay that a hit was found by.
    Result<FoodSearch> searchFor(const Asked& asked, std::vector<ForgivenSlip> slips) const {
        auto found = rowsFor(asked);
        if (!found) return fail(found.error());
        if (found->empty()) return FoodSearch{};
        if (slips.empty())
            keepBest(*found);
        else
            keepOfEach(*found);
        if (slips.size() == 1) keepUsed(slips.front(), *found);
        FoodSearch search{.hits = {}, .slips = std::move(slips)};
        for (const Found& one : *found) {
            auto hit = tables_.tables[one.table].hit(one.row.number);
            if (!hit) return fail(hit.error());
            if (*hit) search.hits.push_back(std::move(**hit));
        }
        return search;
    }

    void keepBest(std::vector<Found>& found) const {
        const auto end = found.begin() + static_cast<std::ptrdiff_t>(std::min(most_, found.size()));
        std::partial_sort(found.begin(), end, found.end(), isBetter);
        found.erase(end, found.end());
    }

    /// Nobody knows which word was meant: after the first few of the likeliest, the best of each
    /// other word comes before any second one.
    void keepOfEach(std::vector<Found>& found) const {
        std::ranges::sort(found, isBetter);
        std::map<int, int> seen;
        std::vector<std::pair<int, Found>> turns;
        for (Found& one : found) {
            const int slip = one.row.match.slip;
            const int turn = seen[slip]++ / (slip == 0 ? kOfLikeliest : 1);
            turns.emplace_back(turn, std::move(one));
        }
        std::ranges::stable_sort(turns, {}, [](const auto& turn) { return turn.first; });
        found.clear();
        for (auto& turn : turns)
            if (found.size() < most_) found.push_back(std::move(turn.second));
    }

    static void keepUsed(ForgivenSlip& slip, const std::vector<Found>& found) {
        std::vector<std::string> used;
        for (std::size_t i = 0; i < slip.taken.size(); ++i) {
            const auto by = [i](const Found& one) {
                return one.row.match.slip == static_cast<int>(i);
            };
            if (std::ranges::any_of(found, by)) used.push_back(std::move(slip.taken[i]));
        }
        slip.taken = std::move(used);
    }

    Result<std::vector<Found>> rowsFor(const Asked& asked) const {
        std::vector<Found> all;
        std::map<std::pair<std::size_t, std::string>, std::size_t> shared;
        for (std::size_t i = 0; i < tables_.tables.size(); ++i) {
            auto rows = tables_.tables[i].ranked(asked);
            if (!rows) return fail(rows.error());
            for (FoundRow& row : *rows) {
                Found one = found(i, std::move(row));
                const auto [place, first] =
                    shared.try_emplace({one.table, one.row.number}, all.size());
                if (first)
                    all.push_back(std::move(one));
                else if (isBetter(one, all[place->second]))
                    all[place->second] = std::move(one);
            }
        }
        return all;
    }

    [[nodiscard]] Found found(std::size_t table, FoundRow row) const {
        Found one{.row = std::move(row), .table = table, .uses = 0, .beyond = 0};
        if (table >= tables_.orderedByHand) one.beyond = one.row.match.beyond;
        if (table < tables_.heldEarlier.size()) {
            const auto earlier = tables_.heldEarlier[table].find(one.row.number);
            if (earlier != tables_.heldEarlier[table].end()) one.table = earlier->second;
        }
        if (!used_.empty()) {
            const FoodTable& at = tables_.tables[table];
            const auto uses = used_.find(TableRow{at.table(), at.release(), one.row.number}.text());
            if (uses != used_.end()) one.uses = uses->second;
        }
        return one;
    }

    /// The search with a slip forgiven in each word that no table has; where they have all words,
    /// but no food has all of them, in one after the other.
    Result<FoodSearch> forgiving(const Asked& asked) const {
        Asked meant = asked;
        std::vector<ForgivenSlip> slips;
        for (AskedWord& word : meant) {
            const auto known = anyKnows(word);
            if (!known) return fail(known.error());
            if (*known) continue;
            auto slip = forgive(word);
            if (!slip) return fail(slip.error());
            if (slip->taken.empty()) return FoodSearch{};
            slips.push_back(std::move(*slip));
        }
        if (!slips.empty()) return searchFor(meant, std::move(slips));
        for (std::size_t i = 0; i < asked.size(); ++i) {
            meant = asked;
            auto slip = forgive(meant[i]);
            if (!slip) return fail(slip.error());
            if (slip->taken.empty()) continue;
            auto search = searchFor(meant, {std::move(*slip)});
            if (!search || !search->hits.empty()) return search;
        }
        return FoodSearch{};
    }

    Result<bool> anyKnows(const AskedWord& word) const {
        for (const FoodTable& table : tables_.tables) {
            auto known = table.knows(word);
            if (!known || *known) return known;
        }
        return false;
    }

    /// Lets the word stand for what it may have meant.
    Result<ForgivenSlip> forgive(AskedWord& word) const {
        std::vector<NearWord> near;
        for (const FoodTable& table : tables_.tables) {
            auto words = table.near(word.typed);
            if (!words) return fail(words.error());
            std::ranges::move(*words, std::back_inserter(near));
        }
        std::ranges::stable_sort(near, {}, [](const NearWord& one) {
            return std::tuple{one.cost, -one.foods, one.word};
        });
        ForgivenSlip slip{.typed = word.typed, .taken = {}};
        AskedWord meant{.typed = word.typed, .whole = {}, .begun = {}, .starts = {}};
        for (const NearWord& one : near) {
            if (meant.starts.size() == kMostMeant) break;
            if (std::ranges::find(slip.taken, one.word) != slip.taken.end()) continue;
            meant.starts.push_back(one.beginning);
            slip.taken.push_back(one.word);
            if (!one.whole) continue;
            meant.whole.push_back(one.beginning);
            std::ranges::move(otherForms(one.beginning), std::back_inserter(meant.whole));
        }
        word = std::move(meant);
        return slip;
    }

    const TablesInOrder& tables_;
    std::size_t most_;
    const UsedRows& used_;
};

}  // namespace

Result<FoodSearch> searchTables(const TablesInOrder& tables, std::string_view words,
                                std::size_t most, const UsedRows& used) {
    const Asked asked = askedWords(words);
    if (asked.empty() || most == 0) return FoodSearch{};
    return TablesSearch{tables, most, used}.run(asked);
}

}  // namespace nettare
