#include "app/bench/bench_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include "app/session/now.h"

namespace nettare {

namespace {

struct BenchText {
    Q_DECLARE_TR_FUNCTIONS(Bench)
};

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

}  // namespace

QString slipOfTheHand() {
    return BenchText::tr("slip of the hand");
}

QStringList usualReasons() {
    return {slipOfTheHand(),
            BenchText::tr("bowl was not empty"),
            BenchText::tr("scale was not at zero"),
            BenchText::tr("another food"),
            BenchText::tr("something was spilled"),
            BenchText::tr("pieces counted wrong")};
}

SubjectWords benchSubject(const WeighState& state, const DraftSession* draft) {
    SubjectWords words = subjectWords(state.subject, draft);
    if (!isPair(state.subject)) return words;
    const SeriesMark& ratio = *std::get<FreeSubject>(state.subject).series;
    words.what = BenchText::tr("%1, %2").arg(
        words.what, state.isBefore() ? beforeWord(ratio) : afterWord(ratio));
    return words;
}

QString benchHint(const WeighState& state, bool typed) {
    if (state.scale.name.empty()) return BenchText::tr("Add a scale to begin.");
    if (std::holds_alternative<std::monostate>(state.subject))
        return BenchText::tr("Say what it is, then type what the scale shows.");
    if (typed) return BenchText::tr("Enter or space records it.");
    if (state.isJarBefore()) return BenchText::tr("Put the full jar on the scale, and type it.");
    if (state.tare.kind == TareKind::Jar) return BenchText::tr("Take from it, then type it again.");
    return BenchText::tr("Type what the scale shows.");
}

QString recordedWords(const LedgerEntry& entry, const std::optional<Decimal>& net,
                      const QString& what) {
    return BenchText::tr("Recorded %1, %2, %3")
        .arg(benchMass(net.value_or(entry.shown), entry.unit), what, clockTime(entry.at));
}

QString takenBackWords(const LedgerEntry& entry, const std::string& reason) {
    return BenchText::tr("Taken back: %1, %2; %3")
        .arg(benchMass(entry.shown, entry.unit), plain(entry.what), plain(reason));
}

QString clockTime(const std::string& at) {
    return QDateTime::fromString(plain(at), Qt::ISODate).toString(QStringLiteral("HH:mm:ss"));
}

QString dayAndTime(const std::string& at) {
    const QDateTime time = QDateTime::fromString(plain(at), Qt::ISODate);
    if (time.date() == today()) return time.toString(QStringLiteral("HH:mm:ss"));
    return BenchText::tr("%1 %2").arg(QLocale{}.toString(time.date(), QStringLiteral("d MMM")),
                                      time.toString(QStringLiteral("HH:mm")));
}

ToGo toGo(const WeighState& state, const std::optional<Decimal>& shown) {
    const auto net = shown ? state.netOf(*shown) : std::nullopt;
    const Decimal zero{0, state.scale.readability.exponent()};
    const Decimal left = state.wanted.value_or(zero).minus(net.value_or(zero));
    const QString unit = plain(state.scale.unit);
    if (left < zero) return {benchNumber(-left), BenchText::tr("%1 over").arg(unit)};
    if (left == zero) return {benchNumber(zero), BenchText::tr("%1, there").arg(unit)};
    return {benchNumber(left), BenchText::tr("%1 to go").arg(unit)};
}

ScaleHeading scaleWords(const KnownScale* scale) {
    if (scale == nullptr) return {BenchText::tr("No scale yet"), BenchText::tr("press to add one")};
    ScaleHeading words;
    words.scale = BenchText::tr("“%1”, readability %2")
                      .arg(plain(scale->name), benchMass(scale->readability, scale->unit));
    if (!scale->lastCheck) {
        words.check = BenchText::tr("not checked yet");
        return words;
    }
    const ScaleCheck& check = *scale->lastCheck;
    const QString mass = benchMass(check.mass, check.unit);
    words.check = check.good
                      ? BenchText::tr("checked %1 with %2").arg(dayAndTime(check.at), mass)
                      : BenchText::tr("check failed %1: shows %2 for %3")
                            .arg(dayAndTime(check.at), benchMass(check.shown, check.unit), mass);
    return words;
}

}  // namespace nettare
