#include "app/sheet/draft_sentence.h"

#include <QCoreApplication>

#include <charconv>
#include <vector>

#include "app/sheet/document_texts.h"
#include "app/words/error_sentence.h"
#include "core/support/text.h"

namespace nettare {

namespace {

struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(DraftSentence)
};

/// An entry of a list by its index or its id, as the step of a pointer says.
const Json* entryAt(const Json& document, std::string_view list, std::string_view step) {
    const Json::Array& entries = entriesIn(document, list);
    std::size_t index = 0;
    const auto [end, wrong] = std::from_chars(step.data(), step.data() + step.size(), index);
    const bool whole = wrong == std::errc{} && end == step.data() + step.size();
    if (whole) return index < entries.size() ? &entries[index] : nullptr;
    return entryIn(document, list, step);
}

QString stepName(std::string_view step) {
    int index = 0;
    std::from_chars(step.data(), step.data() + step.size(), index);
    return PlaceWords::tr("step %1").arg(index + 1);
}

}  // namespace

QString placeName(const Json& document, const std::string& pointer) {
    const auto steps = split(pointer, '/');
    if (steps.size() < 2) return {};
    const std::string_view list = steps[1], entry = steps.size() > 2 ? steps[2] : "";
    if (list == "lines")
        return lineName(document, memberText(entryAt(document, list, entry), "id"));
    if (list == "foods" || list == "series" || list == "scales" || list == "vessels")
        return QString::fromStdString(memberText(entryAt(document, list, entry), "name"));
    if (list == "steps") return stepName(entry);
    if (list == "title") return PlaceWords::tr("the title");
    if (list == "makes") return PlaceWords::tr("what it makes");
    if (list == "portion") return PlaceWords::tr("the portion");
    if (list == "targets") return PlaceWords::tr("the ceiling");
    if (list == "cooked") return PlaceWords::tr("the cooked dish");
    if (list == "residues") return PlaceWords::tr("what is left over");
    return {};
}

namespace {

/// The sentence without the line's id before it: the place has said which line it is.
QString withoutLineId(const Error& error) {
    const QString sentence = QString::fromStdString(errorSentence(error));
    const QString head =
        QStringLiteral("line “%1”: ")
            .arg(QString::fromUtf8(error.value("line").data(),
                                   static_cast<qsizetype>(error.value("line").size())));
    return sentence.startsWith(head) ? sentence.mid(head.size()) : sentence;
}

}  // namespace

QString draftSentence(const Json& document, const Error& error) {
    const QString place = placeName(document, error.pointer);
    if (place.isEmpty()) return QString::fromStdString(errorSentence(error));
    Error placeless = error;
    placeless.file.clear();
    placeless.pointer.clear();
    return PlaceWords::tr("%1: %2").arg(place, withoutLineId(placeless));
}

}  // namespace nettare
