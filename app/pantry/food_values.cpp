#include "app/pantry/food_values.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

#include "app/figures/figure_words.h"
#include "app/pantry/food_words.h"
#include "core/nutrition/student_t.h"
#include "core/publish/measure_text.h"
#include "core/publish/number_text.h"
#include "core/quantity/energy.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

namespace {

struct ValueWords {
    Q_DECLARE_TR_FUNCTIONS(FoodValues)
};

QString unitOf(const ComponentFacts& facts) {
    return QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size()));
}

const FoodValue* publishedOf(const std::vector<FoodValue>& published, const ComponentFacts& facts) {
    const auto found = std::ranges::find(published, facts.tagname, &FoodValue::tagname);
    return found == published.end() ? nullptr : &*found;
}

QString lowered(const std::string& text) {
    QString words = QString::fromStdString(text);
    if (words.size() > 1 && words[1].isLower()) words[0] = words[0].toLower();
    return words;
}

/// How the publisher says that it came about.
QString publishedHow(const FoodValue* value, const ComponentFacts& facts, const Spread& spread) {
    QStringList parts;
    if (value != nullptr && !value->derivation.empty())
        parts += lowered(value->derivation);
    else if (value != nullptr && !value->source.empty())
        parts += lowered(value->source);
    else if (facts.component == Component::CHOCDF)
        parts += ValueWords::tr("by difference");
    const int n = value != nullptr ? value->n : spread.n;
    if (n == 1) parts += ValueWords::tr("1 sample");
    if (n > 1) parts += ValueWords::tr("%n samples", nullptr, n);
    return parts.join(QStringLiteral(", "));
}

QString assumedSpread(const Spread& spread) {
    if (spread.standardError || !spread.assumedRelative) return {};
    return ValueWords::tr("spread of %1 assumed")
        .arg(QString::fromStdString(percent(*spread.assumedRelative)));
}

/// The parts that say something.
QString together(QStringList parts) {
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(", "));
}

Cell spreadCell(const Profile& profile, const ComponentFacts& facts, double value) {
    const auto half = halfWidthOf(profile, facts.component);
    if (!half || *half == 0) return {};
    const int decimals = std::max(facts.decimals, Decimal::fromDouble(value).decimals());
    QString text = QString::fromStdString(halfWidthText(decimals, *half));
    text.remove(QStringLiteral("± "));
    Cell cell = numberCell(text);
    cell.ink = Role::Ink2;
    return cell;
}

/// Added sugars go by the food's own rule and its reason.
ValueRow addedSugarsRow(const TableFood& food) {
    ValueRow row{componentName(Component::SUGAD),
                 noDataCell(),
                 {},
                 QString::fromStdString(food.addedSugars.reason)};
    const auto sugars = food.profile[Component::SUGAR];
    const auto stated = food.profile[Component::SUGAD];
    const auto grams = [](double value) {
        return numberCell(numberAsPrinted(value), QStringLiteral("g"));
    };
    switch (food.addedSugars.kind) {
        case AddedSugarKind::None:
            row.value = grams(0);
            break;
        case AddedSugarKind::AllOfItsSugars:
            if (sugars) row.value = grams(*sugars);
            break;
        case AddedSugarKind::Stated:
            row.value = grams(food.addedSugars.statedPer100g);
            break;
        case AddedSugarKind::BetweenNoneAndAll:
            if (!sugars) break;
            row.value = grams(*sugars);
            row.value.before = ValueWords::tr("0 to");
            break;
    }
    if (stated) row.value = grams(*stated);
    return row;
}

/// The two units of energy are one fact: where one is missing it is converted from the other.
std::optional<ValueRow> convertedEnergy(const TableFood& food, const ComponentFacts& facts) {
    using enum Component;
    const bool kilojoules = facts.component == ENERC_KJ;
    if (!kilojoules && facts.component != ENERC_KCAL) return std::nullopt;
    const auto other = food.profile[kilojoules ? ENERC_KCAL : ENERC_KJ];
    if (!other) return std::nullopt;
    const double value = kilojoules ? Energy::fromKilocalories(*other).kilojoules()
                                    : Energy::fromKilojoules(*other).kilocalories();
    return ValueRow{componentName(facts.component),
                    numberCell(QString::fromStdString(numberAt(0, value)), unitOf(facts)),
                    {},
                    kilojoules ? ValueWords::tr("converted from kcal, × 4.184")
                               : ValueWords::tr("converted from kJ, ÷ 4.184")};
}

using HowKnown = std::function<QString(const ComponentFacts& facts)>;

std::vector<ValueRow> rowsOfComponents(const TableFood& food, const HowKnown& how,
                                       const QString& missing) {
    std::vector<ValueRow> rows;
    for (const ComponentFacts& facts : allComponents()) {
        if (facts.component == Component::SUGAD) {
            rows.push_back(addedSugarsRow(food));
            continue;
        }
        const auto value = food.profile[facts.component];
        if (value)
            rows.push_back({componentName(facts.component),
                            numberCell(numberAsPrinted(*value), unitOf(facts)),
                            spreadCell(food.profile, facts, *value), how(facts)});
        else if (auto converted = convertedEnergy(food, facts))
            rows.push_back(std::move(*converted));
        else
            rows.push_back({componentName(facts.component), noDataCell(), {}, missing});
    }
    return rows;
}

/// What the table publishes beyond the program's components.
void addOthers(std::vector<ValueRow>& rows, const std::vector<FoodValue>& published) {
    for (const FoodValue& value : published) {
        if (!value.tagname.empty() && componentNamed(value.tagname)) continue;
        Spread spread;
        spread.standardError = value.standardError;
        rows.push_back(
            {QString::fromStdString(value.name),
             numberCell(numberAsPrinted(value.per100g), QString::fromStdString(value.unit)),
             {},
             publishedHow(&value, factsOf(Component::WATER), spread)});
    }
}

}  // namespace

QString numberAsPrinted(double value) {
    return QString::fromStdString(printedDecimal(Decimal::fromDouble(value)));
}

std::optional<double> halfWidthOf(const Profile& profile, Component component) {
    const Spread& spread = profile.spread[indexOf(component)];
    const auto value = profile[component];
    if (!value) return std::nullopt;
    if (spread.standardError && spread.n >= 2)
        return coverageFactor(spread.n - 1) * *spread.standardError;
    if (!spread.assumedRelative) return std::nullopt;
    return coverageFactor(Assumptions{}.spreadFreedom.value()) * *spread.assumedRelative * *value;
}

std::vector<ValueRow> valueRows(const TableFood& food, const std::vector<FoodValue>& published) {
    auto rows = rowsOfComponents(
        food,
        [&](const ComponentFacts& facts) {
            const Spread& spread = food.profile.spread[indexOf(facts.component)];
            const QString how = publishedHow(publishedOf(published, facts), facts, spread);
            return together(
                {how.isEmpty() ? ValueWords::tr("as published") : how, assumedSpread(spread)});
        },
        ValueWords::tr("not in the table"));
    addOthers(rows, published);
    return rows;
}

std::vector<ValueRow> valueRows(const OwnFood& own, const std::vector<FoodValue>& copied) {
    const QString typed =
        ValueWords::tr("typed, from %1").arg(QString::fromStdString(own.origin.source));
    return rowsOfComponents(
        own.food,
        [&](const ComponentFacts& facts) {
            const Spread& spread = own.food.profile.spread[indexOf(facts.component)];
            const bool changed =
                std::ranges::find(own.origin.changed, facts.component) != own.origin.changed.end();
            if (changed || !own.origin.copiedFrom) return together({typed, assumedSpread(spread)});
            return together({ValueWords::tr("as in %1").arg(sourceName(*own.origin.copiedFrom)),
                             publishedHow(publishedOf(copied, facts), facts, spread),
                             assumedSpread(spread)});
        },
        ValueWords::tr("not stated"));
}

}  // namespace nettare
