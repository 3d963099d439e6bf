#include "core/edit/weighing_edits.h"

#include "core/edit/line_parts.h"
#include "core/edit/place.h"
#include "core/edit/reading_entries.h"
#include "core/edit/residue_parts.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

/// Binds a reading to what was weighed. Each answers what is wrong.
class Binding {
public:
    Binding(const Json& document, const RecordedReading& recorded, EditDraft& draft)
        : document_{document},
          reading_{recorded.gross.id},
          instead_{recorded.instead},
          draft_{draft} {}

    std::optional<Error> operator()(const ForLine& purpose) {
        const auto line = entryNamed(document_, "lines", purpose.line);
        if (!line) return line.error();
        bind(linePlace(purpose.line, "weighed"));
        if (instead_) draft_.set(linePlace(purpose.line, "weighed_for"), std::nullopt);
        if (textAt(**line, "way") != nameOf(Way::Weighed))
            draft_.set(linePlace(purpose.line, "way"), std::nullopt);
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForSeries& purpose) {
        const auto line = entryNamed(document_, "lines", purpose.line);
        if (!line) return line.error();
        const Json* bound = (*line)->find("series");
        std::string series = purpose.series;
        if (series.empty() && bound != nullptr) series = textAt(*bound, "id");
        if (series.empty()) {
            series = begin(**line, purpose.name);
        } else {
            const auto known = entryNamed(document_, "series", series);
            if (!known) return known.error();
            draft_.append(pointerTo("/series", series) + "/readings", Json{reading_});
        }
        Json binding = Json::object();
        binding.set("id", Json{series}).set("use", Json{wordFor(purpose.use, kUseWords)});
        // A line that has this series already keeps the use it said.
        if (bound == nullptr || textAt(*bound, "id") != series)
            draft_.set(linePlace(purpose.line, "series"), std::move(binding));
        if (textAt(**line, "way") != nameOf(Way::Series))
            draft_.set(linePlace(purpose.line, "way"), std::nullopt);
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForCooked&) {
        if (document_.find("cooked") != nullptr) {
            bind("/cooked/readings");
            return std::nullopt;
        }
        Json cooked = Json::object();
        draft_.set("/cooked", cooked.set("readings", onlyThis()));
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForNotEaten&) {
        if (document_.find("cooked") == nullptr)
            return Error{ErrorCode::CookedWeightMissing}.at("/cooked");
        bind("/cooked/not_eaten");
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForLeftOver& purpose) {
        auto residue =
            residueJson(document_, purpose.madeOf.value_or(ResidueMakeup::ofLines(purpose.lines)));
        if (!residue) return residue.error();
        const Json::Array& residues = itemsOf(document_, "residues");
        for (std::size_t i = 0; i < residues.size(); ++i) {
            Json same = residues[i];
            same.remove("readings");
            if (same != *residue) continue;
            bind(pointerTo("/residues", i) + "/readings");
            return std::nullopt;
        }
        draft_.append("/residues", residue->set("readings", onlyThis()));
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForOtherCook&) {
        if (document_.find("cooked") == nullptr)
            return Error{ErrorCode::CookedWeightMissing}.at("/cooked");
        Json cook = Json::object();
        draft_.append("/cooked/other_cooks", cook.set("readings", onlyThis()));
        return std::nullopt;
    }

    std::optional<Error> operator()(const ForFinishedPiece&) {
        const Json* makes = document_.find("makes");
        if (const std::string_view series = textAt(*makes, "weighed"); !series.empty()) {
            const auto known = entryNamed(document_, "series", series);
            if (!known) return known.error();
            draft_.append(pointerTo("/series", series) + "/readings", Json{reading_});
            return std::nullopt;
        }
        const std::string_view piece = textAt(*makes, "piece");
        draft_.set("/makes/weighed", Json{beginSeries(std::string{textAt(*makes, "plural")}, piece,
                                                      SeriesKind::PerPiece)});
        return std::nullopt;
    }

private:
    void bind(const std::string& list) {
        if (instead_)
            draft_.set(list, onlyThis());
        else
            draft_.append(list, Json{reading_});
    }

    Json onlyThis() const {
        Json list = Json::array();
        list.append(Json{reading_});
        return list;
    }

    /// A series of what the line counts, with this reading.
    std::string begin(const Json& line, const std::string& name) {
        const bool piece = line.find("piece") != nullptr;
        const std::string_view counted = textAt(line, piece ? "piece" : "unit");
        const std::string called = name.empty() ? std::string{nameOfLine(document_, line)} : name;
        return beginSeries(called, counted, piece ? SeriesKind::PerPiece : SeriesKind::PerMeasure);
    }

    /// A series with this reading alone; answers its id.
    std::string beginSeries(const std::string& called, std::string_view of, SeriesKind kind) {
        std::string id = freshId(document_, "series", called);
        Json series = Json::object();
        series.set("id", Json{id}).set("name", Json{called}).set("of", Json{of});
        series.set("kind", Json{wordFor(kind, kSeriesWords)});
        draft_.append("/series", series.set("readings", onlyThis()));
        return id;
    }

    const Json& document_;
    const std::string& reading_;
    bool instead_;
    EditDraft& draft_;
};

/// What the cook calls that which was weighed.
std::string_view subjectOf(const Json& document, const ReadingPurpose& purpose) {
    std::string_view id;
    if (const auto* line = std::get_if<ForLine>(&purpose)) id = line->line;
    if (const auto* series = std::get_if<ForSeries>(&purpose)) id = series->line;
    const auto line = entryNamed(document, "lines", id);
    return line ? nameOfLine(document, **line) : textAt(document, "title");
}

}  // namespace

Result<Edit> recordReading(const Json& document, const RecordedReading& recorded) {
    EditDraft draft{document, EditKind::Reading, subjectOf(document, recorded.purpose)};
    if (auto error = addReadingEntries(document, recorded, draft)) return fail(std::move(*error));
    Binding binding{document, recorded, draft};
    if (auto error = std::visit(binding, recorded.purpose)) return fail(std::move(*error));
    return draft.takeChecked();
}

}  // namespace nettare
