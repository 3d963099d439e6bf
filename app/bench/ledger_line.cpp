#include "app/bench/ledger_sheet.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct LineTexts {
    Q_DECLARE_TR_FUNCTIONS(LedgerSheet)
};

constexpr qsizetype kShortId = 8;

QString told(const std::string& text) {
    return QString::fromStdString(text);
}

QString shortId(const std::string& id) {
    return told(id).left(kShortId);
}

QString printed(const std::optional<Decimal>& number) {
    return number ? told(printedDecimal(*number)) : QString{};
}

QString whatShown(const LedgerEntry& entry) {
    QString what = entry.what.empty() ? LineTexts::tr("shown, of nothing named") : told(entry.what);
    if (entry.pieces > 1) what += LineTexts::tr(", %n pieces", nullptr, entry.pieces);
    return what;
}

QString whatOf(const LedgerEntry& entry) {
    const QString other = shortId(entry.refersTo);
    switch (entry.kind) {
        case EntryKind::Shown:
            return whatShown(entry);
        case EntryKind::Superseded:
            return LineTexts::tr("takes back %1").arg(other);
        case EntryKind::LeftOut:
            return LineTexts::tr("leaves %1 out of its series").arg(other);
        case EntryKind::TakenIn:
            return LineTexts::tr("says that %1 counts").arg(other);
        case EntryKind::Reasoned:
            return LineTexts::tr("gives another reason for %1").arg(other);
        case EntryKind::Scale:
            return LineTexts::tr("scale “%1”").arg(told(entry.scale));
        case EntryKind::Checked:
            return LineTexts::tr("check of “%1” with %2 %3")
                .arg(told(entry.scale), told(printedDecimal(entry.mass)), told(entry.unit));
        case EntryKind::Vessel:
            return LineTexts::tr("empty vessel “%1”").arg(told(entry.vessel));
    }
    return {};
}

QString scaleNote(const LedgerEntry& entry) {
    if (entry.unit.empty()) return {};
    const QString step =
        LineTexts::tr("d %1 %2").arg(told(printedDecimal(entry.readability)), told(entry.unit));
    QString note = entry.kind == EntryKind::Shown || entry.kind == EntryKind::Vessel
                       ? LineTexts::tr("“%1”, %2").arg(told(entry.scale), step)
                       : step;
    if (entry.capacity)
        note += LineTexts::tr(", up to %1 %2")
                    .arg(told(printedDecimal(*entry.capacity)), told(entry.unit));
    return note;
}

QString seriesNote(const LedgerEntry& entry) {
    if (!entry.series) return {};
    QStringList tags;
    for (const std::string& tag : entry.series->tags) tags << told(tag);
    QString note = LineTexts::tr("series: %1").arg(told(entry.series->of));
    if (!tags.isEmpty()) note += QStringLiteral(" (") + tags.join(QStringLiteral(", ")) + u')';
    return note;
}

/// What was said of it later.
QString fateNote(const WalkedEntry& walked) {
    if (walked.said == nullptr) return {};
    const QString reason = told(walked.said->reason());
    if (!walked.said->supersededBy.empty())
        return walked.said->successor.empty() ? LineTexts::tr("taken back: %1").arg(reason)
                                              : LineTexts::tr("replaced by %1: %2")
                                                    .arg(shortId(walked.said->successor), reason);
    if (walked.said->leftOut) return LineTexts::tr("left out of its series: %1").arg(reason);
    return {};
}

QString noteOf(const LedgerEntry& entry, const WalkedEntry& walked) {
    QStringList parts;
    parts << fateNote(walked);
    if (walked.ofBefore != nullptr)
        parts << LineTexts::tr("what went in was taken back: %1")
                     .arg(told(walked.ofBefore->reason()));
    if (walked.ofTare != nullptr)
        parts << (walked.jarBefore ? LineTexts::tr("what the jar showed before was taken back: %1")
                                   : LineTexts::tr("its tare was taken back: %1"))
                     .arg(told(walked.ofTare->reason()));
    if (walked.suspect) parts << LineTexts::tr("in doubt: its scale failed a check");
    parts << told(entry.reason) << told(entry.why);
    if (walked.jarBefore) parts << LineTexts::tr("taken from %1").arg(printed(walked.jarBefore));
    if (entry.kind == EntryKind::Shown && !entry.vessel.empty())
        parts << LineTexts::tr("in “%1”").arg(told(entry.vessel));
    parts << seriesNote(entry) << scaleNote(entry);
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

LedgerLine ledgerLineOf(const ChainedEntry& chained, const WalkedEntry& walked) {
    const LedgerEntry& entry = chained.entry;
    LedgerLine line;
    line.number = QString::number(chained.sequence);
    line.id = shortId(entry.id);
    line.time = told(entry.at).replace(u'T', u' ');
    line.what = whatOf(entry);
    line.note = noteOf(entry, walked);
    line.gross = printed(walked.gross);
    line.tare = printed(walked.tare);
    line.net = printed(walked.net);
    line.unit = walked.gross ? told(entry.unit) : QString{};
    line.struck = walked.said != nullptr && !walked.said->supersededBy.empty();
    return line;
}

}  // namespace nettare
