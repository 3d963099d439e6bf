#include "core/publish/residue_rows.h"

#include <fmt/core.h>

#include "core/nutrition/weigh.h"
#include "core/publish/number_text.h"
#include "core/recipe/words.h"

namespace nettare {

namespace {

std::string whatBecame(const Dossier& dossier, const Residue& residue) {
    switch (residue.kind) {
        case ResidueKind::Line:
        case ResidueKind::Mixture:
            break;
        case ResidueKind::Drip:
            return fmt::format("of {} ran off", dossier.foods[*residue.food].name);
        case ResidueKind::Unknown:
            return "of unknown make-up are left over, anything between the leanest and the "
                   "richest line";
        case ResidueKind::Water:
            return "of cooking water were poured off";
        case ResidueKind::NotEaten:
            return "are not eaten and carry nothing away";
    }
    return {};
}

}  // namespace

std::string residueRows(const Dossier& dossier) {
    std::string rows;
    for (const Residue& residue : dossier.main().residues) {
        const std::string became = whatBecame(dossier, residue);
        if (became.empty()) continue;
        rows += fmt::format("  {}{} g {}\n",
                            residue.called.empty() ? std::string{} : residue.called + ": ",
                            numberAt(1, weighed(dossier, residue.readings).value()), became);
    }
    return rows;
}

Json residuesJson(const Dossier& dossier) {
    Json all = Json::array();
    for (const Residue& residue : dossier.main().residues) {
        const LinearForm grams = weighed(dossier, residue.readings);
        Json json = Json::object();
        json.set("kind", Json{wordFor(residue.kind, kResidueWords)});
        if (!residue.called.empty()) json.set("called", Json{residue.called});
        json.set("grams", Json{grams.value()}).set("u", Json{grams.uncertainty()});
        all.append(std::move(json));
    }
    return all;
}

}  // namespace nettare
