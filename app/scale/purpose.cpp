#include "app/scale/purpose.h"

#include <QCoreApplication>

#include "app/scale/left_over_words.h"
#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

struct PurposeWords {
    Q_DECLARE_TR_FUNCTIONS(Purpose)
};

QString seriesText(const DraftSession& draft, const std::string& line) {
    const Json* entry = entryIn(draft.document(), "lines", line);
    if (const std::string piece = memberText(entry, "piece"); !piece.empty())
        return PurposeWords::tr("%1: weight of a piece (%2)")
            .arg(lineName(draft.document(), line), QString::fromStdString(piece));
    return PurposeWords::tr("%1: weight of 1 %2")
        .arg(lineName(draft.document(), line), QString::fromStdString(memberText(entry, "unit")));
}

}  // namespace

std::vector<Purpose> purposesOf(const DraftSession& draft, const std::string& line,
                                const LeftOver& leftOver) {
    std::vector<Purpose> purposes;
    if (entryIn(draft.document(), "lines", line) != nullptr) {
        purposes.push_back({PurposeKind::Line, line});
        purposes.push_back({PurposeKind::Series, line});
    }
    if (entriesIn(draft.document(), "lines").empty()) return purposes;
    purposes.push_back({PurposeKind::Cooked, {}});
    if (draft.document().find("cooked") != nullptr) {
        purposes.push_back({PurposeKind::NotEaten, {}});
        purposes.push_back({PurposeKind::OtherCook, {}});
    }
    purposes.push_back({PurposeKind::Finished, {}});
    purposes.push_back({PurposeKind::LeftOver, {}, leftOver});
    return purposes;
}

QString purposeText(const DraftSession& draft, const Purpose& purpose) {
    switch (purpose.kind) {
        case PurposeKind::Line:
            return PurposeWords::tr("%1: its weight").arg(lineName(draft.document(), purpose.line));
        case PurposeKind::Series:
            return seriesText(draft, purpose.line);
        case PurposeKind::Cooked:
            return PurposeWords::tr("the cooked dish");
        case PurposeKind::NotEaten:
            return PurposeWords::tr("not eaten, in that weight: bones, shells, sticks");
        case PurposeKind::OtherCook:
            return PurposeWords::tr("the cooked dish of another test cook");
        case PurposeKind::Finished:
            return PurposeWords::tr("one finished %1")
                .arg(QString::fromStdString(memberText(draft.document().find("makes"), "piece")));
        case PurposeKind::LeftOver:
            return PurposeWords::tr("left over: %1")
                .arg(leftOverName(draft.document(), purpose.leftOver.value_or(LeftOver{})));
    }
    return {};
}

ReadingPurpose readingPurpose(const Purpose& purpose) {
    switch (purpose.kind) {
        case PurposeKind::Line:
            return ForLine{purpose.line};
        case PurposeKind::Series:
            return ForSeries{purpose.line, {}, {}, SeriesUse::Others};
        case PurposeKind::Cooked:
            return ForCooked{};
        case PurposeKind::NotEaten:
            return ForNotEaten{};
        case PurposeKind::OtherCook:
            return ForOtherCook{};
        case PurposeKind::Finished:
            return ForFinishedPiece{};
        case PurposeKind::LeftOver:
            break;
    }
    return ForLeftOver{};  // leftOverEdit() says what it is
}

WeighedState stateFor(const DraftSession& draft, const Purpose& purpose) {
    switch (purpose.kind) {
        case PurposeKind::Line: {
            // A line that is trimmed by a series is weighed as it was bought.
            const Json* line = entryIn(draft.document(), "lines", purpose.line);
            return line != nullptr && line->find("trim") != nullptr ? WeighedState::AsPurchased
                                                                    : WeighedState::EdiblePortion;
        }
        case PurposeKind::Series:
            return WeighedState::EdiblePortion;
        case PurposeKind::Cooked:
        case PurposeKind::OtherCook:
        case PurposeKind::Finished:
            return WeighedState::Cooked;
        default:
            return WeighedState::Residue;
    }
}

}  // namespace nettare
