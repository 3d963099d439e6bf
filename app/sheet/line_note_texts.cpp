#include "app/sheet/line_note_texts.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/line_rows.h"
#include "core/nutrition/line_findings.h"
#include "core/publish/finding_sentence.h"
#include "core/publish/number_text.h"
#include "core/publish/way_sentence.h"

namespace nettare {

namespace {

struct NoteWords {
    Q_DECLARE_TR_FUNCTIONS(LineNote)
};

/// A line of the draft with what was found of it.
struct Found {
    const Evaluation* evaluation = nullptr;
    std::size_t index = 0;

    [[nodiscard]] const LineGrams& grams() const { return evaluation->cooked.lines[index].ways; }
    [[nodiscard]] QString sentence(const OpenWay& way) const {
        return QString::fromStdString(waySentence(evaluation->dossier, 0, index, way));
    }
};

std::optional<Found> foundIn(const DraftSession& draft, const std::string& line) {
    if (!draft.evaluation()) return {};
    const auto& lines = draft.evaluation()->dossier.main().lines;
    const auto at = std::ranges::find(lines, line, &Line::id);
    if (at == lines.end()) return {};
    const Found found{draft.evaluation().get(), static_cast<std::size_t>(at - lines.begin())};
    return found.grams().ways.empty() ? std::nullopt : std::optional{found};
}

QString noteGrams(double grams) {
    const int decimals = grams < 10 ? 1 : 0;
    return NoteWords::tr("%1 g").arg(QString::fromStdString(numberAt(decimals, grams)));
}

/// The draft has no figures because of that line: most often, no way to its grams is open.
bool failsHere(const DraftSession& draft, const std::string& line) {
    const auto failing = failingLine(draft);
    const Json::Array& lines = entriesIn(draft.document(), "lines");
    return failing && *failing < lines.size() && memberText(&lines[*failing], "id") == line;
}

std::vector<LineFinding> findingsIn(const Found& found) {
    return findingsOf(found.evaluation->dossier, 0, found.index, found.grams());
}

QString sentenceOf(const Found& found, const LineFinding& finding) {
    return QString::fromStdString(
        findingSentence(found.evaluation->dossier, 0, found.index, found.grams(), finding));
}

}  // namespace

LineNoteTexts lineNoteTexts(const DraftSession& draft, const std::string& line) {
    LineNoteTexts texts;
    if (failsHere(draft, line)) {
        texts.sentence = draftSentence(draft.document(), *draft.failure());
        return texts;
    }
    const auto found = foundIn(draft, line);
    if (!found) return texts;
    const LineGrams& grams = found->grams();
    texts.mark = markOf(grams.way().way);
    texts.word = wordOf(grams.way().way);
    texts.sentence = found->sentence(grams.way());
    for (const OpenWay& way : grams.ways)
        if (&way != &grams.way())
            texts.others.push_back(
                {way.way, markOf(way.way),
                 NoteWords::tr("%1 %2").arg(wordOf(way.way), noteGrams(way.grams.value())),
                 found->sentence(way)});
    for (const LineFinding& finding : findingsIn(*found))
        texts.findings.push_back({sentenceOf(*found, finding), finding.better});
    return texts;
}

std::vector<QString> marginTexts(const DraftSession& draft) {
    std::vector<QString> texts;
    if (!draft.evaluation()) return texts;
    for (const Line& line : draft.evaluation()->dossier.main().lines) {
        QStringList sentences;
        if (const auto found = foundIn(draft, line.id))
            for (const LineFinding& finding : findingsIn(*found))
                sentences += sentenceOf(*found, finding);
        texts.push_back(sentences.join(QLatin1Char{'\n'}));
    }
    return texts;
}

std::optional<Way> wayBeside(const DraftSession& draft, const std::string& line, bool back) {
    const auto found = foundIn(draft, line);
    if (!found) return {};
    const LineGrams& grams = found->grams();
    const std::size_t count = grams.ways.size();
    // A kind that is open twice is chosen as one, by its better way.
    for (std::size_t step = 1; step < count; ++step) {
        const Way way = grams.ways[(grams.chosen + (back ? count - step : step)) % count].way;
        if (way != grams.way().way) return way;
    }
    return {};
}

}  // namespace nettare
