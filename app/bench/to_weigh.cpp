#include "app/bench/to_weigh.h"

#include <QCoreApplication>

#include "app/scale/left_over_words.h"
#include "app/sheet/document_texts.h"
#include "core/publish/number_text.h"
#include "core/publish/sheet_lines.h"

namespace nettare {

namespace {

struct ToWeighWords {
    Q_DECLARE_TR_FUNCTIONS(ToWeigh)
};

void addLines(std::vector<ToWeigh>& list, const DraftSession& draft) {
    const auto& evaluation = draft.evaluation();
    if (!evaluation) return;
    for (const SheetLine& line :
         sheetLines(evaluation->document, evaluation->dossier, evaluation->cooked)) {
        if (line.way != Way::Assumed || isLeftOut(line.counting)) continue;
        const double used = line.grams + line.leftOver;
        list.push_back({{PurposeKind::Line, line.id, {}},
                        lineName(draft.document(), line.id),
                        ToWeighWords::tr("assumed, %1 g")
                            .arg(QString::fromStdString(numberAt(used < 10 ? 1 : 0, used))),
                        used});
    }
}

void addLeftOvers(std::vector<ToWeigh>& list, const DraftSession& draft) {
    const Json& document = draft.document();
    const auto add = [&](const LeftOver& left) {
        list.push_back({{PurposeKind::LeftOver, {}, left},
                        ToWeighWords::tr("what is left of %1").arg(leftOverName(document, left)),
                        ToWeighWords::tr("not weighed"),
                        {}});
    };
    const auto& residues = entriesIn(document, "residues");
    for (const Json& residue : residues)
        if (residue.find("readings") == nullptr) add(leftOverOf(document, residue));
    if (!residues.empty()) return;
    const LeftOver suggested = suggestedLeftOver(document, {});
    if (suggested.kind == ResidueKind::Mixture && isComplete(suggested)) add(suggested);
}

}  // namespace

std::vector<ToWeigh> stillToWeigh(const DraftSession& draft) {
    std::vector<ToWeigh> list;
    addLines(list, draft);
    addLeftOvers(list, draft);
    if (draft.document().find("cooked") == nullptr && !entriesIn(draft.document(), "lines").empty())
        list.push_back({{PurposeKind::Cooked, {}, {}},
                        ToWeighWords::tr("the cooked dish"),
                        ToWeighWords::tr("for per 100 g"),
                        {}});
    return list;
}

}  // namespace nettare
