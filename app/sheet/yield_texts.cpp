#include "app/sheet/yield_texts.h"

#include <QCoreApplication>

#include "app/scale/left_over_words.h"
#include "app/sheet/ceiling.h"
#include "app/sheet/document_texts.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct YieldTexts {
    Q_DECLARE_TR_FUNCTIONS(YieldTexts)
};

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

std::vector<ShownResidue> residuesShown(const DraftSession& draft) {
    std::vector<ShownResidue> shown;
    const Json& document = draft.document();
    for (const Json& residue : entriesIn(document, "residues")) {
        ShownResidue one{leftOverOf(document, residue), {}, {}};
        const QString name = leftOverName(document, one.left);
        const auto grams =
            draft.evaluation() ? gramsLeft(*draft.evaluation(), one.left) : std::nullopt;
        one.text = grams ? YieldTexts::tr("%1 %2").arg(weightText(*grams), name) : name;
        one.foods = leftOverFoods(document, one.left);
        shown.push_back(std::move(one));
    }
    return shown;
}

}  // namespace nettare
