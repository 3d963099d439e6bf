#include "app/bench/weigh_subject.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

struct SubjectText {
    Q_DECLARE_TR_FUNCTIONS(WeighSubject)
};

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

QString freeWhy(const FreeSubject& subject) {
    if (!subject.series) return SubjectText::tr("of no series");
    QString why = seriesWords(subject.series->kind, subject.series->of);
    for (const std::string& tag : subject.series->tags)
        why = SubjectText::tr("%1, %2").arg(why, textOf(tag));
    return why;
}

void addLeftOvers(std::vector<Purpose>& subjects, const DraftSession& draft) {
    const Json& document = draft.document();
    std::vector<LeftOver> known;
    for (const Json& residue : entriesIn(document, "residues"))
        known.push_back(leftOverOf(document, residue));
    const LeftOver suggested = suggestedLeftOver(document, {});
    const auto same = [&suggested](const LeftOver& left) { return isSame(left, suggested); };
    if (std::ranges::none_of(known, same)) known.push_back(suggested);
    for (const LeftOver& left : known)
        if (isComplete(left)) subjects.push_back({PurposeKind::LeftOver, {}, left});
}

}  // namespace

bool isSame(const WeighSubject& a, const WeighSubject& b) {
    if (a.index() != b.index()) return false;
    if (const auto* free = std::get_if<FreeSubject>(&a)) return *free == std::get<FreeSubject>(b);
    const auto* const purpose = std::get_if<Purpose>(&a);
    if (purpose == nullptr) return true;
    const auto& other = std::get<Purpose>(b);
    if (purpose->kind != other.kind || purpose->line != other.line) return false;
    return purpose->kind != PurposeKind::LeftOver ||
           isSame(purpose->leftOver.value_or(LeftOver{}), other.leftOver.value_or(LeftOver{}));
}

SubjectWords subjectWords(const WeighSubject& subject, const DraftSession* draft) {
    if (const auto* free = std::get_if<FreeSubject>(&subject))
        return {textOf(free->what), freeWhy(*free)};
    const auto* const purpose = std::get_if<Purpose>(&subject);
    if (purpose == nullptr || draft == nullptr)
        return {SubjectText::tr("What is it?"), SubjectText::tr("choose, or type a food")};
    const QString title = SubjectText::tr("for “%1”").arg(documentTitle(draft->document()));
    return {purposeText(*draft, *purpose), title};
}

bool countsPieces(const WeighSubject& subject) {
    if (const auto* purpose = std::get_if<Purpose>(&subject))
        return purpose->kind == PurposeKind::Series || purpose->kind == PurposeKind::Finished;
    const auto* const free = std::get_if<FreeSubject>(&subject);
    return free != nullptr && free->series && free->series->kind == SeriesKind::PerPiece;
}

bool isPair(const WeighSubject& subject) {
    const auto* const free = std::get_if<FreeSubject>(&subject);
    return free != nullptr && free->series && free->series->kind == SeriesKind::Ratio;
}

QString beforeWord(const SeriesMark& ratio) {
    if (ratio.of == kRatios[1]) return SubjectText::tr("raw");
    if (ratio.of == kRatios[2]) return SubjectText::tr("with its liquid");
    return SubjectText::tr("as bought");
}

QString afterWord(const SeriesMark& ratio) {
    if (ratio.of == kRatios[1]) return SubjectText::tr("cooked");
    if (ratio.of == kRatios[2]) return SubjectText::tr("drained");
    return SubjectText::tr("edible portion");
}

WeighedState stateBefore(const SeriesMark& ratio) {
    return ratio.of == kRatios[1] ? WeighedState::EdiblePortion : WeighedState::AsPurchased;
}

std::vector<Purpose> recipeSubjects(const DraftSession& draft) {
    std::vector<Purpose> subjects;
    std::vector<Purpose> ofDish;
    for (const Json& line : entriesIn(draft.document(), "lines")) {
        ofDish.clear();
        for (Purpose& each : purposesOf(draft, memberText(&line, "id"), LeftOver{}))
            if (each.kind == PurposeKind::Line || each.kind == PurposeKind::Series)
                subjects.push_back(std::move(each));
            else if (each.kind != PurposeKind::LeftOver)
                ofDish.push_back(std::move(each));
    }
    subjects.insert(subjects.end(), ofDish.begin(), ofDish.end());
    if (!subjects.empty()) addLeftOvers(subjects, draft);
    return subjects;
}

FreeSubject subjectOf(const SeriesSummary& series) {
    FreeSubject subject;
    subject.what = series.key.what;
    SeriesMark mark;
    mark.kind = series.key.kind;
    mark.of = series.key.of;
    subject.series = mark;
    if (mark.of == kRatios[1]) subject.state = WeighedState::Cooked;
    return subject;
}

std::optional<SeriesKey> seriesOf(const FreeSubject& subject) {
    LedgerEntry entry;
    entry.what = subject.what;
    entry.series = subject.series;
    return seriesKeyOf(entry);
}

QString seriesWords(SeriesKind kind, const std::string& of) {
    if (kind == SeriesKind::Ratio) return textOf(of);
    return SubjectText::tr("per %1").arg(textOf(of));
}

}  // namespace nettare
