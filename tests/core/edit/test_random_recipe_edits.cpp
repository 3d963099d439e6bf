#include <array>
#include <catch2/catch.hpp>
#include <functional>
#include <random>

#include "core/edit/counting_edits.h"
#include "core/edit/edit_draft.h"
#include "core/edit/heading_edits.h"
#include "core/edit/line_edits.h"
#include "core/edit/series_edits.h"
#include "core/edit/step_edits.h"
#include "core/edit/weighing_edits.h"
#include "core/recipe/read_recipe.h"
#include "ledger_chain.h"
#include "random_changes.h"

using namespace nettare;

namespace {

/// A cook who changes anything at any time, and mistypes now and then.
class RandomCook {
public:
    explicit RandomCook(std::mt19937::result_type seed) : random_{seed} {}

    /// What the cook tried; some of it is refused.
    Result<Edit> next(const Json& document) {
        switch (below(10)) {
            case 0:
                return heading(document);
            case 1:
                return step(document);
            case 4:
                return residue(document);
            case 5:
                return counting(document);
            case 2:
                return reading(document);
            case 3:
                return unbindReading(document, anyId(document, "readings"));
            case 6:
                return binding(document);
            case 7:
                return following(document);
            default:
                return editOf(line(document));
        }
    }

private:
    std::size_t below(std::size_t limit) { return random_() % limit; }

    static Result<Edit> editOf(const Result<LineEdit>& made) {
        if (!made) return fail(made.error());
        return made->edit;
    }

    std::string anyText() {
        static const std::vector<std::string> kTexts{
            "",           "2",      "3 tbsp", "2 bulbs", "400 g",  "½",    "a pinch",
            "1 1/2 cups", "0.25",   "2-3",    "12",      "tea\tx", "150",  "stir",
            "5 prawns",   "fennel", "0",      "-1",      "4 cl",   "1,5 l"};
        return kTexts[below(kTexts.size())];
    }

    std::string anyId(const Json& document, const char* list) {
        const Json* entries = document.find(list);
        if (entries == nullptr || entries->items()->empty() || below(12) == 0) return "nobody";
        const auto& entry = (*entries->items())[below(entries->items()->size())];
        return *entry.find("id")->text();
    }

    FoodChoice anyFood(const Json& document) {
        if (below(3) == 0) return {anyId(document, "foods"), {}, ""};
        const std::string number = std::to_string(11000 + below(6));
        return {"", {"usda-sr", "28", number}, "food " + number};
    }

    Result<Edit> heading(const Json& document) {
        const auto component = static_cast<Component>(below(kComponentCount));
        switch (below(8)) {
            case 0:
                return setTitle(document, anyText());
            case 1:
                return setNote(document, anyText());
            case 2:
                return setYield(document, anyText());
            case 3:
                return setPiecesWord(document, anyText());
            case 4:
                return setPortionPieces(document, anyText());
            case 5:
                return setPortionGrams(document, anyText());
            case 6:
                return setTarget(document, component, static_cast<Basis>(below(4)),
                                 static_cast<TargetEnd>(below(2)), anyText());
            default:
                return setAssumption(document, static_cast<Assumption>(below(4)), anyText());
        }
    }

    Result<Edit> step(const Json& document) {
        switch (below(4)) {
            case 0:
                return addStep(document, below(4), anyText());
            case 1:
                return changeStep(document, below(4), anyText());
            case 2:
                return removeStep(document, below(4));
            default:
                return moveStep(document, below(4), below(4));
        }
    }

    Result<LineEdit> line(const Json& document) {
        const std::string id = anyId(document, "lines");
        switch (below(7)) {
            case 0:
                return setLineFood(document, id, anyFood(document));
            case 1:
                return setPreparation(document, id, anyText());
            case 2:
                return setWay(document, id, static_cast<Way>(below(6)));
            case 3:
                return addLine(document, below(4), anyText(), anyFood(document), anyText());
            case 4:
                return removeLine(document, id);
            case 5:
                return moveLine(document, id, below(6));
            default:
                return setLineAmount(document, id, anyText());
        }
    }

    ReadingPurpose anyPurpose(const Json& document) {
        const std::string id = anyId(document, "lines");
        switch (below(6)) {
            case 0:
                return ForSeries{id, below(2) == 0 ? "" : anyId(document, "series"), "Mine"};
            case 1:
                return ForCooked{};
            case 2:
                return ForNotEaten{};
            case 3:
                return below(2) == 0 ? ForLeftOver{{id}} : ForLeftOver{{}, anyMakeup(document)};
            default:
                return ForLine{id};
        }
    }

    ResidueMakeup anyMakeup(const Json& document) {
        static const std::vector<std::string> kShares{"1/2", "2/3", "0.25", ""};
        ResidueMakeup makeup{static_cast<ResidueKind>(below(6))};
        const std::size_t lines = makeup.kind == ResidueKind::Mixture ? 1 + below(3) : 1;
        while (makeup.lines.size() < lines) makeup.lines.push_back(anyId(document, "lines"));
        if (below(2) == 0)
            makeup.shares.push_back({makeup.lines.front(), kShares[below(kShares.size())]});
        if (below(2) == 0) makeup.mixedAt = std::to_string(below(5));
        makeup.food = anyId(document, "foods");
        if (below(3) == 0) makeup.called = anyText();
        return makeup;
    }

    Result<Edit> residue(const Json& document) {
        switch (below(3)) {
            case 0:
                return addResidue(document, anyMakeup(document), {anyId(document, "readings")});
            case 1:
                return setResidueMakeup(document, below(4), anyMakeup(document));
            default:
                return removeResidue(document, below(4));
        }
    }

    Result<Edit> counting(const Json& document) {
        static const std::vector<std::string> kWords{
            "", "left out", "a pinch a portion", "counted", "between", "middle", "least", "most"};
        if (below(2) == 0)
            return editOf(setOptional(document, anyId(document, "lines"), below(2) == 0));
        return setCounting(document, static_cast<CountingRule>(below(4)),
                           kWords[below(kWords.size())]);
    }

    Result<Edit> reading(const Json& document) {
        RecordedReading recorded;
        const std::string number = std::to_string(++count_);
        recorded.gross = {"gross-" + number, "scale-" + std::to_string(below(3)), Decimal{4321, -1},
                          WeighedState::EdiblePortion, ""};
        for (int i = 0; i < 2; ++i) {
            const std::string id = "scale-" + std::to_string(i);
            recorded.scales.push_back({id, id, "g", Decimal{1, -1}, {}});
        }
        if (below(2) == 0)
            recorded.tare = anyId(document, "vessels");
        else
            recorded.tare = RecordedIndication{"tare-" + std::to_string(below(9)), "scale-0",
                                               Decimal{12, 0}, WeighedState::Empty, ""};
        recorded.pieces = static_cast<int>(below(4));
        recorded.purpose = anyPurpose(document);
        return recordReading(document, recorded);
    }

    /// Something more in the ledger: a reading of what the line counts, or a word about one.
    void weigh(const std::string& what, const SeriesMark& mark) {
        static constexpr std::array kKinds{EntryKind::Superseded, EntryKind::LeftOut,
                                           EntryKind::TakenIn};
        LedgerEntry entry;
        entry.what = what;
        entry.pieces = 1 + static_cast<int>(below(3));
        entry.series = mark;
        if (mark.kind == SeriesKind::Ratio) entry.series->before = chainId(2);
        if (ledger_.entries.empty()) ledger_.showOver(ledger_.show("100.0"), "250.0");
        ledger_.showOver(chainId(1), std::to_string(120 + below(90)) + ".5", entry);
        if (below(3) == 0)
            ledger_.say(kKinds[below(kKinds.size())], chainId(1 + below(ledger_.entries.size())),
                        "because");
    }

    SeriesToBind seriesOf(const SeriesKey& key) const {
        SeriesToBind series;
        series.key = key;
        for (LedgerReading& reading : readingsOf(ledger_.entries, {})) {
            const auto own = seriesKeyOf(reading.entry());
            (own && sameSeries(*own, key) ? series.readings : series.tares)
                .push_back(std::move(reading));
        }
        return series;
    }

    Result<Edit> binding(const Json& document) {
        static const std::vector<std::string> kRatios{"edible / bought", "cooked / raw"};
        const std::string id = anyId(document, "lines");
        const auto line = entryNamed(document, "lines", id);
        if (!line) return fail(line.error());
        const std::string piece{textAt(**line, "piece")};
        SeriesMark mark{piece.empty() ? SeriesKind::PerMeasure : SeriesKind::PerPiece,
                        piece.empty() ? std::string{textAt(**line, "unit")} : piece,
                        {},
                        {}};
        if (below(3) == 0) mark = {SeriesKind::Ratio, kRatios[below(2)], {}, {}};
        weigh(id, mark);
        SeriesToBind series = seriesOf({id, mark.kind, mark.of});
        series.pooling = SeriesPooling{below(2) == 0, {}};
        if (below(3) == 0)
            series.pooling->earlier = EarlierEntry{"earlier", Decimal{3, -1}, Decimal{5, 0}};
        if (below(3) == 0 && !series.readings.empty())
            return bindToReading(document, id, series.readings.back(), series.tares.front());
        return bindToSeries(document, id, series, static_cast<SeriesUse>(below(2)));
    }

    Result<Edit> following(const Json& document) {
        const std::vector<SeriesToBind> followed = followedSeries(document);
        if (followed.empty()) return fail(Error{ErrorCode::SeriesEmpty});
        const SeriesKey key = followed[below(followed.size())].key;
        weigh(key.what, {key.kind, key.of, {}, {}});
        auto edit = followSeries(document, seriesOf(key));
        if (!edit) return fail(edit.error());
        if (!*edit) return fail(Error{ErrorCode::SeriesEmpty});
        return std::move(**edit);
    }

    std::mt19937 random_;
    int count_ = 0;
    Chain ledger_;
};

}  // namespace

TEST_CASE("whatever a cook does, the draft stays a recipe and every step can be undone", "[edit]") {
    std::mt19937::result_type seed = 2026;
    for (const Json& start : demoDocuments()) {
        RandomCook cook{++seed};
        Json document = start;
        std::vector<Edit> done;
        std::vector<std::string> texts;
        int refused = 0;
        while (done.size() < 500) {
            const auto edit = cook.next(document);
            if (!edit) {
                ++refused;
                continue;
            }
            texts.push_back(writeJson(document));
            REQUIRE_FALSE(apply(*edit, document));
            REQUIRE(readRecipe(document));
            CHECK(*readEdit(*parseJson(writeJson(editJson(*edit)))) == *edit);
            done.push_back(*edit);
        }
        CHECK(refused > 50);
        const std::string end = writeJson(document);
        for (std::size_t i = done.size(); i-- > 0;) {
            REQUIRE_FALSE(apply(inverseOf(done[i]), document));
            REQUIRE(writeJson(document) == texts[i]);
        }
        CHECK(document == start);
        for (const Edit& edit : done) REQUIRE_FALSE(apply(edit, document));
        CHECK(writeJson(document) == end);
    }
}
