#include "app/scale/weighing_words.h"

#include <QCoreApplication>

#include "core/publish/number_text.h"
#include "core/weighing/judgement.h"

namespace nettare {

namespace {

struct WeighingWords {
    Q_DECLARE_TR_FUNCTIONS(Weighing)
};

bool isSomething(PurposeKind purpose) {
    return purpose == PurposeKind::Line || purpose == PurposeKind::Series ||
           purpose == PurposeKind::Cooked || purpose == PurposeKind::OtherCook ||
           purpose == PurposeKind::Finished;
}

}  // namespace

QString massText(Decimal shown, const ScaleEntry& scale) {
    std::string text = shown.text();
    if (text.starts_with('-')) text = "−" + text.substr(1);
    return QString::fromStdString(text + " " + scale.unit);
}

QString tareText(const Tare& tare, const ScaleEntry& scale) {
    if (const auto* vessel = std::get_if<VesselEntry>(&tare))
        return WeighingWords::tr("%1, %2 tare")
            .arg(QString::fromStdString(vessel->name), massText(vessel->tare, scale));
    if (const auto* shown = std::get_if<ShownTare>(&tare))
        return WeighingWords::tr("shown before, %1").arg(massText(shown->shown, scale));
    return WeighingWords::tr("zeroed, no tare");
}

QString weighingRefusal(const Weighing& weighing, PurposeKind purpose) {
    if (!isShowable(weighing.shown, weighing.scale))
        return WeighingWords::tr(
                   "%1 lies between two steps of this scale, which shows steps of "
                   "%2; choose another scale or type what it shows.")
            .arg(massText(weighing.shown, weighing.scale),
                 massText(weighing.scale.readability, weighing.scale));
    const Decimal net = netOf(weighing);
    if (net < Decimal{})
        return WeighingWords::tr(
                   "The tare is above the %1 shown; choose another tare or type the "
                   "number again.")
            .arg(massText(weighing.shown, weighing.scale));
    if (net == Decimal{} && isSomething(purpose))
        return WeighingWords::tr("Nothing lies on the scale: the net is zero.");
    return {};
}

QString coarseCaution(const Weighing& weighing) {
    const auto share = coarseShare(netOf(weighing).value(), weighing.scale.readability.value());
    if (!share) return {};
    return WeighingWords::tr(
               "Under 20 steps of this scale: rounding alone is %1 % of it. Weigh "
               "several together or take a finer scale.")
        .arg(QString::fromStdString(numberAt(1, 100 * *share)));
}

QString countCaution(const Weighing& weighing, std::optional<double> gramsEachBefore) {
    if (!gramsEachBefore) return {};
    const double each = netGramsOf(weighing) / weighing.pieces;
    if (each <= 2 * *gramsEachBefore && each >= *gramsEachBefore / 2) return {};
    const auto text = [](double grams) { return QString::fromStdString(numberAt(1, grams)); };
    return WeighingWords::tr("%1 g each, but %2 g each before; see that the pieces are counted.")
        .arg(text(each), text(*gramsEachBefore));
}

}  // namespace nettare
