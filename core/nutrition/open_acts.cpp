#include "core/nutrition/open_acts.h"

#include <algorithm>

namespace nettare {

namespace {

class ActList {
public:
    void add(ActKind kind, std::size_t index = 0) {
        const Act act{kind, index};
        if (std::ranges::find(acts_, act) == acts_.end()) acts_.push_back(act);
    }
    [[nodiscard]] std::vector<Act> take() { return std::move(acts_); }

private:
    std::vector<Act> acts_;
};

const OpenWay* chosenWay(const LineReport& line) {
    return line.ways.ways.empty() ? nullptr : &line.ways.way();
}

/// Whether the line counts at all and its grams do not come from a scale.
bool canBeWeighed(const Line& line, const LineReport& report) {
    if (report.asUsed.value() <= 0) return false;
    const OpenWay* way = chosenWay(report);
    return way != nullptr ? way->way != Way::Weighed && !way->wholeLot : line.weighed.empty();
}

/// Of a lot that was weighed whole nothing is left to weigh.
std::optional<std::size_t> openSeries(const Line& line, const LineReport& report) {
    const OpenWay* way = chosenWay(report);
    const bool open = way != nullptr && way->way == Way::Series && !way->wholeLot;
    return open && report.asUsed.value() > 0 ? std::optional{line.series->series} : std::nullopt;
}

/// Two or more pieces that only a table's measure counts.
bool isCountedByTable(const Line& line, const LineReport& report) {
    const OpenWay* way = chosenWay(report);
    return way != nullptr && way->way == Way::Table && line.unit == nullptr && !line.series &&
           line.amount.middle() >= 2 && report.asUsed.value() > 0;
}

void addLineActs(const Dossier& dossier, const Cooked& cooked, ActList& acts) {
    const std::vector<Line>& lines = dossier.main().lines;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (canBeWeighed(lines[i], cooked.lines[i])) acts.add(ActKind::WeighLine, i);
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (const auto series = openSeries(lines[i], cooked.lines[i]))
            acts.add(ActKind::WeighTwoMore, *series);
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (isCountedByTable(lines[i], cooked.lines[i])) acts.add(ActKind::WeighTwo, i);
}

/// Foods whose table values are a share of the figure and that show no label.
void addLabels(const Dossier& dossier, const std::vector<BudgetShare>& shares, ActList& acts) {
    for (const BudgetShare& share : shares)
        for (const Contribution& part : share.parts) {
            const SourceKey& key = part.source.key;
            if (share.kind == ShareKind::Table && key.kind == SourceKind::Composition &&
                !dossier.foods[key.first].label)
                acts.add(ActKind::ReadLabel, key.first);
        }
}

bool dividesByPieces(Basis basis, const Recipe& recipe) {
    return basis == Basis::Piece || (basis == Basis::Portion && recipe.portionPieces);
}

void addDish(Basis basis, const Recipe& recipe, Meaning meaning, ActList& acts) {
    if (basis == Basis::Hundred && recipe.cooked.empty()) acts.add(ActKind::WeighDish);
    if (!dividesByPieces(basis, recipe)) return;
    if (meaning == Meaning::AnyPiece) acts.add(ActKind::WeighPieces);
    if (recipe.piecesRange) acts.add(ActKind::CountPieces);
}

}  // namespace

bool labelsPrint(Component component) {
    using enum Component;
    static constexpr std::array kPrinted{ENERC_KCAL, FAT,   FASAT,  FATRN, CHOLE, NA, CHOCDF, FIBTG,
                                         SUGAR,      SUGAD, PROCNT, VITD,  CA,    FE, K};
    return std::ranges::find(kPrinted, component) != kPrinted.end();
}

std::vector<Act> openActs(Component component, Basis basis, const Dossier& dossier,
                          const Cooked& cooked, const std::vector<BudgetShare>& shares) {
    ActList acts;
    addLineActs(dossier, cooked, acts);
    if (labelsPrint(component) || component == Component::ENERC_KJ)
        addLabels(dossier, shares, acts);
    addDish(basis, dossier.main(), cooked.meaning, acts);
    const std::vector<Residue>& residues = dossier.main().residues;
    for (std::size_t i = 0; i < residues.size(); ++i)
        if (residues[i].kind == ResidueKind::Unknown) acts.add(ActKind::SayResidue, i);
    return acts.take();
}

}  // namespace nettare
