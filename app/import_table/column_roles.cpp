#include "app/import_table/column_roles.h"

#include <QCoreApplication>

#include <algorithm>

#include "core/food/own_food.h"

namespace nettare {

namespace {

struct RoleWords {
    Q_DECLARE_TR_FUNCTIONS(ColumnRoles)
};

void setUse(ColumnRole& role, const CsvMapping& mapping) {
    if (role.header.empty()) return;
    const auto value = std::ranges::find(mapping.components, role.header, &MappedComponent::column);
    if (role.header == mapping.numberColumn)
        role.use = ColumnUse::Number;
    else if (role.header == mapping.nameColumn)
        role.use = ColumnUse::Name;
    else if (role.header == mapping.groupColumn)
        role.use = ColumnUse::Group;
    else if (role.header == mapping.otherNamesColumn)
        role.use = ColumnUse::OtherNames;
    else if (role.header == mapping.refuseColumn)
        role.use = ColumnUse::Refuse;
    else if (value != mapping.components.end()) {
        role.use = ColumnUse::Value;
        role.component = value->component;
        role.unit = value->unit;
    }
}

std::string headerOf(const std::vector<ColumnRole>& roles, ColumnUse use) {
    const auto found = std::ranges::find(roles, use, &ColumnRole::use);
    return found == roles.end() ? std::string{} : found->header;
}

}  // namespace

std::vector<ColumnRole> columnRoles(const std::vector<std::vector<std::string>>& preview,
                                    const CsvMapping& mapping) {
    std::vector<ColumnRole> roles;
    if (preview.empty()) return roles;
    for (std::size_t column = 0; column < preview.front().size(); ++column) {
        ColumnRole role;
        role.header = preview.front()[column];
        for (std::size_t row = 1; row < preview.size(); ++row)
            role.firstValues.push_back(column < preview[row].size() ? preview[row][column] : "");
        setUse(role, mapping);
        roles.push_back(std::move(role));
    }
    return roles;
}

CsvMapping withRoles(CsvMapping mapping, const std::vector<ColumnRole>& roles) {
    mapping.numberColumn = headerOf(roles, ColumnUse::Number);
    mapping.nameColumn = headerOf(roles, ColumnUse::Name);
    mapping.groupColumn = headerOf(roles, ColumnUse::Group);
    mapping.otherNamesColumn = headerOf(roles, ColumnUse::OtherNames);
    mapping.refuseColumn = headerOf(roles, ColumnUse::Refuse);
    mapping.components.clear();
    for (const ColumnRole& role : roles) {
        const bool taken =
            std::ranges::find(mapping.components, role.component, &MappedComponent::component) !=
            mapping.components.end();
        if (role.use == ColumnUse::Value && !taken)
            mapping.components.push_back({role.header, role.component, role.unit});
    }
    return mapping;
}

std::vector<std::string> unitsFor(Component component) {
    if (component == Component::ENERC_KCAL || component == Component::ENERC_KJ)
        return {"kcal", "kJ"};
    return {"g", "mg", "µg"};
}

QString missingOf(const CsvMapping& mapping) {
    if (mapping.table.empty() || mapping.release.empty() || mapping.citation.empty())
        return RoleWords::tr("Name the table, its release and how it is to be cited.");
    if (mapping.table == kOwnTable)
        return RoleWords::tr("“own” names your own foods; give the table another name.");
    if (mapping.numberColumn.empty() || mapping.nameColumn.empty())
        return RoleWords::tr("Say which column holds the number of a food, and which its name.");
    if (mapping.components.empty())
        return RoleWords::tr("Say of at least one column which component it holds.");
    const auto unitless = std::ranges::find(mapping.components, "", &MappedComponent::unit);
    if (unitless != mapping.components.end())
        return RoleWords::tr("Choose the unit of “%1”.")
            .arg(QString::fromStdString(unitless->column));
    return {};
}

}  // namespace nettare
