#include "app/pantry/food_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "core/publish/measure_text.h"

namespace nettare {

namespace {

struct PantryWords {
    Q_DECLARE_TR_FUNCTIONS(PantryWords)
};

const QString kBetween = QStringLiteral(" · ");

QString recipesText(int recipes) {
    if (recipes == 0) return PantryWords::tr("not used yet");
    // Without a translation %n has one form only.
    return recipes == 1 ? PantryWords::tr("used in 1 recipe")
                        : PantryWords::tr("used in %n recipes", nullptr, recipes);
}

QString ediblePart(const TableFood& food) {
    if (!food.refusePercent) return {};
    const QString share = QString::fromStdString(percent(1 - *food.refusePercent / 100));
    return food.refuseNote.empty()
               ? PantryWords::tr("edible portion %1").arg(share)
               : PantryWords::tr("edible portion %1, without %2")
                     .arg(share, QString::fromStdString(food.refuseNote).toLower());
}

}  // namespace

QString sourceName(const TableRow& row) {
    if (isOwn(row)) return PantryWords::tr("own food");
    const QString release = QString::fromStdString(row.release);
    if (row.table == "usda-sr") return QStringLiteral("SR") + release;
    return QString::fromStdString(row.table) + u' ' + release;
}

QString hitNote(const FoodHit& hit, int recipes, bool labelled) {
    QStringList parts{labelled ? PantryWords::tr("label") : sourceName(hit.row)};
    if (!hit.group.empty()) parts += QString::fromStdString(hit.group);
    if (recipes == 1) parts += PantryWords::tr("in 1 recipe");
    if (recipes > 1) parts += PantryWords::tr("in %n recipes", nullptr, recipes);
    return parts.join(kBetween);
}

QString foodFacts(const TableFood& food, int recipes) {
    QStringList parts;
    if (!isOwn(food.row)) parts += PantryWords::tr("public table %1").arg(sourceName(food.row));
    if (!isOwn(food.row))
        parts += PantryWords::tr("number %1").arg(QString::fromStdString(food.row.number));
    if (!food.group.empty()) parts += QString::fromStdString(food.group);
    if (const QString edible = ediblePart(food); !edible.isEmpty()) parts += edible;
    if (recipes >= 0) parts += recipesText(recipes);
    return parts.join(kBetween);
}

QString originText(const OwnFoodRecord& record) {
    const OwnFoodOrigin& origin = record.current.origin;
    QStringList lines;
    lines += PantryWords::tr("Own food, version %1 of %2: %3, %4")
                 .arg(QString::fromStdString(record.current.food.row.release))
                 .arg(record.versions)
                 .arg(QString::fromStdString(origin.source), QString::fromStdString(origin.date));
    if (origin.copiedFrom) {
        QStringList changed;
        for (const Component component : origin.changed) changed += componentName(component);
        const QString from =
            PantryWords::tr("Copied from %1, %2 %3")
                .arg(QString::fromStdString(origin.copiedName), sourceName(*origin.copiedFrom),
                     QString::fromStdString(origin.copiedFrom->number));
        lines += changed.isEmpty() ? PantryWords::tr("%1; all values as there").arg(from)
                                   : PantryWords::tr("%1; other than there: %2")
                                         .arg(from, changed.join(QStringLiteral(", ")));
    }
    if (!origin.note.empty()) lines += QString::fromStdString(origin.note);
    return lines.join(u'\n');
}

QString groupedCount(std::size_t count) {
    QString digits = QString::number(count);
    for (qsizetype at = digits.size() - 3; at > 0; at -= 3) digits.insert(at, QChar{0x202F});
    return digits;
}

QString pantryCounts(const std::vector<TableCount>& tables, std::size_t labels, std::size_t own) {
    std::size_t all = labels + own;
    QStringList parts;
    for (const TableCount& table : tables) {
        all += table.foods;
        parts += PantryWords::tr("%1 from %2").arg(groupedCount(table.foods), table.name);
    }
    if (labels == 1) parts += PantryWords::tr("1 label");
    if (labels > 1) parts += PantryWords::tr("%1 labels").arg(groupedCount(labels));
    if (own > 0) parts += PantryWords::tr("%1 own").arg(groupedCount(own));
    return PantryWords::tr("%1 foods · %2")
        .arg(groupedCount(all), parts.join(QStringLiteral(", ")));
}

QString slipText(const std::vector<ForgivenSlip>& slips) {
    QStringList taken;
    for (const ForgivenSlip& slip : slips) {
        QStringList words;
        for (const std::string& word : slip.taken) words += QString::fromStdString(word);
        if (words.isEmpty()) continue;
        const QString first = words.takeFirst();
        taken += words.isEmpty()
                     ? first
                     : PantryWords::tr("%1, also %2").arg(first, words.join(QStringLiteral(", ")));
    }
    if (taken.isEmpty()) return {};
    return taken.size() == 1
               ? PantryWords::tr("one slip forgiven: %1").arg(taken.front())
               : PantryWords::tr("slips forgiven: %1").arg(taken.join(QStringLiteral("; ")));
}

QString useText(const FoodUse& use) {
    QStringList parts;
    if (use.inDraft)
        parts += isOwn(use.draftRow) ? PantryWords::tr("draft with version %1")
                                           .arg(QString::fromStdString(use.draftRow.release))
                                     : PantryWords::tr("draft");
    if (use.newestRevision) parts += PantryWords::tr("revision %1").arg(*use.newestRevision);
    return parts.join(QStringLiteral(", "));
}

}  // namespace nettare
