#include "app/sheet/yield_texts.h"

#include "app/sheet/ceiling.h"
#include "app/sheet/document_texts.h"
#include "core/nutrition/weigh.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// "10 skewers", "1 skewer", by the words of the document.
QString counted(const DraftSession& draft, const std::string& pieces) {
    const Json* makes = draft.document().find("makes");
    const auto amount = readAmount(pieces);
    const bool one = amount && amount->high() <= Fraction{1};
    const std::string word = memberText(makes, one ? "piece" : "plural");
    return QString::fromStdString(pieces + " " + word);
}

/// Whole grams from 100 on, tenths below: what a kitchen scale shows.
QString weightText(double grams) {
    return QString::fromStdString(numberAt(grams < 100 ? 1 : 0, grams) + " g");
}

}  // namespace

QString makesShown(const DraftSession& draft) {
    return counted(draft, memberText(draft.document().find("makes"), "pieces"));
}

QString portionShown(const DraftSession& draft) {
    const Json* portion = draft.document().find("portion");
    if (const std::string grams = memberText(portion, "grams"); !grams.empty())
        return QString::fromStdString(grams + " g");
    return counted(draft, memberText(portion, "pieces"));
}

QString ceilingShown(const DraftSession& draft) {
    return QString::fromStdString(ceilingText(draft.document()));
}

QString cookedShown(const DraftSession& draft) {
    if (!draft.evaluation()) return {};
    const auto& cooked = draft.evaluation()->cooked.eaten.cooked;
    return cooked ? weightText(cooked->value()) : QString{};
}

QString leftShown(const DraftSession& draft) {
    if (!draft.evaluation()) return {};
    const Dossier& dossier = draft.evaluation()->dossier;
    double left = 0;
    for (const Residue& residue : dossier.main().residues)
        left += weighed(dossier, residue.readings).value();
    return left > 0 ? weightText(left) : QString{};
}

}  // namespace nettare
