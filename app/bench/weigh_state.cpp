#include "app/bench/weigh_state.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "app/words/error_sentence.h"
#include "core/publish/number_text.h"
#include "core/quantity/unit.h"
#include "core/weighing/judgement.h"

namespace nettare {

namespace {

struct BenchWords {
    Q_DECLARE_TR_FUNCTIONS(WeighState)
};

constexpr int kMostAtOnce = 9999;
QString sentence(const Error& error) {
    return QString::fromStdString(errorSentence(error));
}

bool isLeftOver(const WeighSubject& subject) {
    const auto* const purpose = std::get_if<Purpose>(&subject);
    return purpose != nullptr &&
           (purpose->kind == PurposeKind::LeftOver || purpose->kind == PurposeKind::NotEaten);
}

QString scaleRefusal(const KnownScale& scale, Decimal shown) {
    if (!hasSteps(scale)) return {};
    const auto text = [&scale](Decimal number) {
        return benchMass(number, scale.unit).toStdString();
    };
    if (roundedToStep(shown, scale.readability) != shown)
        return sentence(Error{ErrorCode::NotOfTheScale}
                            .with("step", text(scale.readability))
                            .with("found", text(shown)));
    if (scale.capacity && *scale.capacity < shown)
        return sentence(Error{ErrorCode::AboveCapacity}
                            .with("most", text(*scale.capacity))
                            .with("found", text(shown)));
    return {};
}

QString subjectRefusal(const WeighState& state) {
    if (std::holds_alternative<std::monostate>(state.subject))
        return BenchWords::tr("Say what it is first.");
    const auto* const free = std::get_if<FreeSubject>(&state.subject);
    if (free != nullptr && free->what.empty()) return sentence(Error{ErrorCode::ReadingOfNothing});
    if (countsPieces(state.subject) && (state.pieces < 1 || state.pieces > kMostAtOnce))
        return BenchWords::tr("Count the pieces: 1 to %1.").arg(kMostAtOnce);
    return {};
}

QString netRefusal(const WeighState& state, Decimal net) {
    if (net < Decimal{})
        return state.tare.kind == TareKind::Jar
                   ? BenchWords::tr("The jar shows more than before; type it again.")
                   : BenchWords::tr(
                         "The tare is more than that; choose another tare or type it "
                         "again.");
    if (net == Decimal{} && !isLeftOver(state.subject))
        return BenchWords::tr("Nothing lies on the scale: the net is zero.");
    return {};
}

/// Standard uncertainty of a net by its two indications, each rectangular over its step (JCGM
/// 100:2008, 4.3.7).
double netRounding(const WeighState& state) {
    return std::hypot(state.scale.readability.value(), state.tareReadability().value()) /
           std::sqrt(12.0);
}

}  // namespace

bool hasSteps(const KnownScale& scale) {
    return scale.readability > Decimal{};
}

BenchTare tareOf(const KnownVessel& vessel) {
    return {TareKind::Vessel, vessel.name, vessel.tare,  vessel.entry,
            vessel.at,        true,        vessel.scale, vessel.readability};
}

Decimal WeighState::tareReadability() const {
    return tare.kind == TareKind::Vessel && tare.readability > Decimal{} ? tare.readability
                                                                         : scale.readability;
}

std::optional<Decimal> WeighState::netOf(Decimal shown) const {
    if (isJarBefore()) return {};
    return tare.kind == TareKind::Jar ? tare.shown.minus(shown) : shown.minus(tare.shown);
}

std::optional<double> WeighState::netGramsOf(Decimal shown) const {
    const auto net = netOf(shown);
    const Unit* const unit = findUnit(scale.unit, MeasureSystem::Metric);
    if (!net || unit == nullptr) return {};
    return net->value() * unit->factor.value();
}

QString benchRefusal(const WeighState& state, Decimal shown) {
    if (QString refusal = scaleRefusal(state.scale, shown); !refusal.isEmpty()) return refusal;
    const auto net = state.netOf(shown);
    if (!net) return shown > Decimal{} ? QString{} : BenchWords::tr("Put the jar on the scale.");
    if (QString refusal = netRefusal(state, *net); !refusal.isEmpty()) return refusal;
    return subjectRefusal(state);
}

QString benchCaution(const WeighState& state, Decimal shown) {
    const auto net = state.netOf(shown);
    if (!net || *net == Decimal{} || !hasSteps(state.scale)) return {};
    const Decimal coarser = std::max(state.scale.readability, state.tareReadability());
    if (!coarseShare(net->value(), coarser.value())) return {};
    return BenchWords::tr("Under 20 steps: rounding alone is %1 % of it.")
        .arg(QString::fromStdString(numberAt(1, 100 * netRounding(state) / net->value())));
}

QString benchNumber(Decimal number) {
    return QString::fromStdString(printedDecimal(number));
}

QString benchMass(Decimal number, const std::string& unit) {
    return BenchWords::tr("%1 %2").arg(benchNumber(number), QString::fromStdString(unit));
}

QString unitWithin(const WeighState& state) {
    const Decimal tareStep = state.tareReadability();
    const int decimals = std::max(state.scale.readability.decimals(), tareStep.decimals());
    return BenchWords::tr("%1 %2").arg(
        QString::fromStdString(state.scale.unit),
        QString::fromStdString(halfWidthText(decimals, 1.96 * netRounding(state))));
}

QString tareWords(const BenchTare& tare, const std::string& unit) {
    switch (tare.kind) {
        case TareKind::Zeroed:
            return BenchWords::tr("zero now");
        case TareKind::Vessel:
            return BenchWords::tr("%1 · %2").arg(QString::fromStdString(tare.vessel),
                                                 benchMass(tare.shown, unit));
        case TareKind::Shown:
            return BenchWords::tr("as shown · %1").arg(benchMass(tare.shown, unit));
        case TareKind::SameBowl:
            return BenchWords::tr("same bowl · %1").arg(benchMass(tare.shown, unit));
        case TareKind::Jar:
            return tare.entry.empty()
                       ? BenchWords::tr("from a jar")
                       : BenchWords::tr("from the jar · %1").arg(benchMass(tare.shown, unit));
    }
    return {};
}

QString tareSum(const WeighState& state) {
    const QString mass = benchMass(state.tare.shown, state.scale.unit);
    switch (state.tare.kind) {
        case TareKind::Zeroed:
            return BenchWords::tr("no tare");
        case TareKind::SameBowl:
            return BenchWords::tr("− bowl %1").arg(mass);
        case TareKind::Jar:
            return state.isJarBefore() ? BenchWords::tr("jar, before")
                                       : BenchWords::tr("jar, was %1").arg(mass);
        default:
            return BenchWords::tr("− tare %1").arg(mass);
    }
}

}  // namespace nettare
