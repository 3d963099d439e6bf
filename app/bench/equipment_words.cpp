#include "app/bench/equipment_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "app/revisions/revision_words.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct EquipmentTexts {
    Q_DECLARE_TR_FUNCTIONS(EquipmentPanel)
};

QString massHere(Decimal mass, const std::string& unit) {
    return EquipmentTexts::tr("%1 %2").arg(QString::fromStdString(printedDecimal(mass)),
                                           QString::fromStdString(unit));
}

}  // namespace

QString scaleText(const KnownScale& scale) {
    const QString step = massHere(scale.readability, scale.unit);
    if (!scale.capacity) return EquipmentTexts::tr("steps of %1").arg(step);
    return EquipmentTexts::tr("steps of %1, up to %2")
        .arg(step, massHere(*scale.capacity, scale.unit));
}

QString checkText(const KnownScale& scale) {
    if (!scale.lastCheck) return EquipmentTexts::tr("Never checked with a known mass");
    const ScaleCheck& check = *scale.lastCheck;
    const QString words = check.good ? EquipmentTexts::tr("Good: showed %1 for %2, %3")
                                     : EquipmentTexts::tr("Failed: showed %1 for %2, %3");
    return words.arg(massHere(check.shown, check.unit), massHere(check.mass, check.unit),
                     momentText(check.at));
}

QString failedCheckText(const KnownScale& scale) {
    if (!scale.lastCheck || scale.lastCheck->good) return {};
    return EquipmentTexts::tr(
        "What this scale showed since its last good check is marked as in doubt, until a check is "
        "good again. Let it stand level and clean, and check it anew; for trade, leave it to a "
        "calibration service.");
}

QString vesselText(const KnownVessel& vessel) {
    return EquipmentTexts::tr("%1, weighed empty %2 on “%3”")
        .arg(massHere(vessel.tare, vessel.unit), momentText(vessel.at),
             QString::fromStdString(vessel.scale));
}

QString momentText(const std::string& at) {
    const QDateTime moment = QDateTime::fromString(QString::fromStdString(at), Qt::ISODate);
    if (!moment.isValid()) return {};
    return EquipmentTexts::tr("%1, %2").arg(
        revisionDay(at), QLocale{}.toString(moment.time(), QStringLiteral("HH:mm")));
}

}  // namespace nettare
