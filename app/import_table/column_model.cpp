#include "app/import_table/column_model.h"

#include <QStringList>

#include <algorithm>

#include "app/figures/figure_words.h"
#include "app/widgets/cell.h"

namespace nettare {

namespace {

constexpr int kUsesBeforeValues = static_cast<int>(ColumnUse::Value);

QString useText(ColumnUse use) {
    switch (use) {
        case ColumnUse::Number:
            return ColumnModel::tr("number of the food");
        case ColumnUse::Name:
            return ColumnModel::tr("name");
        case ColumnUse::Group:
            return ColumnModel::tr("group");
        case ColumnUse::OtherNames:
            return ColumnModel::tr("other names");
        case ColumnUse::Refuse:
            return ColumnModel::tr("refuse, %");
        default:
            return ColumnModel::tr("not taken");
    }
}

/// With its tagname, since two components may share a name in some language.
QString componentText(Component component) {
    const std::string_view tagname = factsOf(component).tagname;
    return QStringLiteral("%1 (%2)").arg(
        componentName(component),
        QString::fromUtf8(tagname.data(), static_cast<qsizetype>(tagname.size())));
}

QString textOf(const ColumnRole& role) {
    return role.use == ColumnUse::Value ? componentText(role.component) : useText(role.use);
}

QString firstValues(const ColumnRole& role) {
    QStringList values;
    for (std::size_t i = 0; i < role.firstValues.size() && i < 3; ++i)
        values += QString::fromStdString(role.firstValues[i]).left(24);
    return values.join(QStringLiteral(" · "));
}

Cell unitCell(const ColumnRole& role) {
    if (role.use != ColumnUse::Value) return textCell({});
    if (!role.unit.empty()) return textCell(QString::fromStdString(role.unit));
    Cell cell = textCell(ColumnModel::tr("choose"));
    cell.problem = ColumnModel::tr("The unit of this column is not known; choose it.");
    return cell;
}

}  // namespace

void ColumnModel::show(std::vector<ColumnRole> roles) {
    beginResetModel();
    roles_ = std::move(roles);
    endResetModel();
}

int ColumnModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(roles_.size());
}

int ColumnModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(Count);
}

QStringList ColumnModel::choices(const QModelIndex& index) const {
    const ColumnRole& role = roles_[static_cast<std::size_t>(index.row())];
    QStringList texts;
    if (index.column() == Unit && role.use == ColumnUse::Value)
        for (const std::string& unit : unitsFor(role.component))
            texts += QString::fromStdString(unit);
    if (index.column() != Use) return texts;
    for (int use = 0; use < kUsesBeforeValues; ++use) texts += useText(static_cast<ColumnUse>(use));
    for (const ComponentFacts& facts : allComponents()) texts += componentText(facts.component);
    return texts;
}

QVariant ColumnModel::data(const QModelIndex& index, int role) const {
    const ColumnRole& one = roles_[static_cast<std::size_t>(index.row())];
    if (role == kChoicesRole) return choices(index);
    switch (index.column()) {
        case Header: {
            Cell cell = textCell(QString::fromStdString(one.header));
            cell.strong = one.use != ColumnUse::NotTaken;
            return cellData(cell, role);
        }
        case First: {
            Cell cell = textCell(firstValues(one));
            cell.ink = Role::Ink2;
            return cellData(cell, role);
        }
        case Use: {
            if (role == Qt::EditRole) return textOf(one);
            Cell cell = textCell(textOf(one));
            if (one.use == ColumnUse::NotTaken) cell.ink = Role::Ink2;
            return cellData(cell, role);
        }
        default:
            if (role == Qt::EditRole) return QString::fromStdString(one.unit);
            return cellData(unitCell(one), role);
    }
}

QVariant ColumnModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Header:
            return tr("Column");
        case First:
            return tr("First values");
        case Use:
            return tr("Taken as");
        default:
            return tr("Unit");
    }
}

Qt::ItemFlags ColumnModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return choices(index).isEmpty() ? flags : flags | Qt::ItemIsEditable;
}

bool ColumnModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole) return false;
    const auto at = choices(index).indexOf(value.toString());
    if (at < 0) return false;
    ColumnRole& one = roles_[static_cast<std::size_t>(index.row())];
    if (index.column() == Unit) {
        one.unit = value.toString().toStdString();
    } else if (at < kUsesBeforeValues) {
        one.use = static_cast<ColumnUse>(at);
        one.unit.clear();
    } else {
        one.use = ColumnUse::Value;
        one.component =
            allComponents().at(static_cast<std::size_t>(at - kUsesBeforeValues)).component;
        const auto units = unitsFor(one.component);
        // Which unit a column stands in is never guessed.
        if (std::ranges::find(units, one.unit) == units.end()) one.unit.clear();
    }
    emit dataChanged(this->index(index.row(), 0), this->index(index.row(), Count - 1));
    emit rolesChanged();
    return true;
}

}  // namespace nettare
