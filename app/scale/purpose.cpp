#include "app/scale/purpose.h"

#include <QCoreApplication>

#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

struct PurposeWords {
    Q_DECLARE_TR_FUNCTIONS(Purpose)
};

/// The lines of the first mixture that something was left of; none where there is no such.
std::vector<std::string> mixtureOf(const DraftSession& draft) {
    std::vector<std::string> lines;
    for (const Json& residue : entriesIn(draft.document(), "residues")) {
        if (residue.find("mixture") == nullptr) continue;
        for (const Json& line : entriesIn(residue, "mixture"))
            if (line.text() != nullptr) lines.push_back(*line.text());
        break;
    }
    return lines;
}

QString mixtureText(const DraftSession& draft) {
    QStringList names;
    for (const std::string& line : mixtureOf(draft)) names += lineName(draft.document(), line);
    return names.join(QStringLiteral(", "));
}

QString seriesText(const DraftSession& draft, const std::string& line) {
    const Json* entry = entryIn(draft.document(), "lines", line);
    if (const std::string piece = memberText(entry, "piece"); !piece.empty())
        return PurposeWords::tr("%1: weight of a piece (%2)")
            .arg(lineName(draft.document(), line), QString::fromStdString(piece));
    return PurposeWords::tr("%1: weight of 1 %2")
        .arg(lineName(draft.document(), line), QString::fromStdString(memberText(entry, "unit")));
}

}  // namespace

std::vector<Purpose> purposesOf(const DraftSession& draft, const std::string& line) {
    std::vector<Purpose> purposes;
    if (entryIn(draft.document(), "lines", line) != nullptr) {
        purposes.push_back({PurposeKind::Line, line});
        purposes.push_back({PurposeKind::Series, line});
    }
    if (entriesIn(draft.document(), "lines").empty()) return purposes;
    purposes.push_back({PurposeKind::Cooked, {}});
    if (draft.document().find("cooked") != nullptr) purposes.push_back({PurposeKind::NotEaten, {}});
    if (!mixtureOf(draft).empty()) purposes.push_back({PurposeKind::LeftMixture, {}});
    if (!line.empty()) purposes.push_back({PurposeKind::LeftOfLine, line});
    purposes.push_back({PurposeKind::LeftUnknown, {}});
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
            return PurposeWords::tr("not eaten: bones, shells, sticks");
        case PurposeKind::LeftMixture:
            return PurposeWords::tr("left in the bowl: %1").arg(mixtureText(draft));
        case PurposeKind::LeftOfLine:
            return PurposeWords::tr("left over of %1")
                .arg(lineName(draft.document(), purpose.line));
        case PurposeKind::LeftUnknown:
            return PurposeWords::tr("left over, of unknown make-up");
    }
    return {};
}

ReadingPurpose readingPurpose(const DraftSession& draft, const Purpose& purpose) {
    switch (purpose.kind) {
        case PurposeKind::Line:
            return ForLine{purpose.line};
        case PurposeKind::Series:
            return ForSeries{purpose.line, {}, {}, SeriesUse::Others};
        case PurposeKind::Cooked:
            return ForCooked{};
        case PurposeKind::NotEaten:
            return ForNotEaten{};
        case PurposeKind::LeftMixture:
            return ForLeftOver{mixtureOf(draft)};
        case PurposeKind::LeftOfLine:
            return ForLeftOver{{purpose.line}};
        case PurposeKind::LeftUnknown:
            break;
    }
    return ForLeftOver{};
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
            return WeighedState::Cooked;
        default:
            return WeighedState::Residue;
    }
}

}  // namespace nettare
