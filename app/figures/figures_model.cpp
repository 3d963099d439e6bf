#include "app/figures/figures_model.h"

#include <algorithm>
#include <array>

#include "app/figures/figure_words.h"
#include "app/widgets/cell.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

/// What every declaration shows; the others follow on demand. Energy in kcal is the headline.
constexpr std::array kMain{Component::FAT,   Component::FASAT,  Component::CHOCDF, Component::SUGAR,
                           Component::FIBTG, Component::PROCNT, Component::NA,     Component::VITD};

bool isMain(Component component) {
    return std::ranges::find(kMain, component) != kMain.end();
}

std::vector<Figure> shownOf(const Figures& figures, bool all) {
    std::vector<Figure> shown;
    shown.reserve(kComponentCount);
    for (const Component component : kMain) shown.push_back(figures[component]);
    for (const Figure& figure : figures.figures)
        if (all && !isMain(figure.component) && figure.component != Component::ENERC_KCAL)
            shown.push_back(figure);
    return shown;
}

Cell amountCell(const Figure& figure, bool dimmed) {
    const ComponentFacts& facts = factsOf(figure.component);
    const double value = figure.complete() ? figure.value : figure.atLeast;
    const Direction direction = figure.complete() ? Direction::Nearest : Direction::Floor;
    Cell cell =
        numberCell(QString::fromStdString(numberAt(facts.decimals, value, direction)),
                   QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size())));
    if (!figure.complete()) {
        cell.before = FiguresModel::tr("at least");
        cell.ink = Role::Warning;
    }
    if (dimmed) cell.ink = Role::Ink2;
    return cell;
}

Cell figureCell(const Figure& figure, int column, bool dimmed) {
    if (column == FiguresModel::Name) {
        Cell cell = textCell(componentName(figure.component));
        if (dimmed) cell.ink = Role::Ink2;
        return cell;
    }
    if (column == FiguresModel::Amount) return amountCell(figure, dimmed);
    // In the place of an interval: for how much of the weight it is known.
    Cell cell =
        textCell(figure.complete() ? figureSpread(figure)
                                   : FiguresModel::tr("%1 %").arg(QString::fromStdString(
                                         numberAt(0, 100 * figure.knownShare, Direction::Floor))));
    cell.ink = Role::Ink2;
    return cell;
}

}  // namespace

void FiguresModel::show(const std::optional<Figures>& figures, bool all, bool dimmed) {
    std::vector<Figure> shown;
    if (figures) shown = shownOf(*figures, all);
    dimmed_ = dimmed;
    if (shown.size() != figures_.size()) {
        beginResetModel();
        figures_ = std::move(shown);
        endResetModel();
        return;
    }
    figures_ = std::move(shown);
    if (!figures_.empty())
        emit dataChanged(index(0, 0), index(static_cast<int>(figures_.size()) - 1, Columns - 1));
}

int FiguresModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(figures_.size());
}

int FiguresModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

QVariant FiguresModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Figure& figure = figures_[static_cast<std::size_t>(index.row())];
    if (index.column() == Name && role == Qt::AccessibleTextRole) return spokenFigure(figure);
    if (role == Qt::ToolTipRole && !figure.complete())
        return tr("%1: %2").arg(componentName(figure.component), knownFor(figure));
    return cellData(figureCell(figure, index.column(), dimmed_), role);
}

QVariant FiguresModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant{section == Amount ? Qt::AlignRight | Qt::AlignVCenter
                                          : Qt::AlignLeft | Qt::AlignVCenter};
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case Name:
            return tr("Component");
        case Amount:
            return tr("Amount");
        default:
            return tr("± 95 %");
    }
}

Qt::ItemFlags FiguresModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

}  // namespace nettare
