#include "app/bench/ledger_row.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/bench/bench_words.h"

namespace nettare {

namespace {

struct RowText {
    Q_DECLARE_TR_FUNCTIONS(LedgerRow)
};

QString plainOf(const std::string& text) {
    return QString::fromStdString(text);
}

QString nameOf(const LedgerEntry& entry) {
    switch (entry.kind) {
        case EntryKind::Checked:
            return RowText::tr("check mass %1").arg(benchMass(entry.mass, entry.unit));
        case EntryKind::Vessel:
            return RowText::tr("%1, empty").arg(plainOf(entry.vessel));
        default:
            break;
    }
    QString name = plainOf(entry.what);
    if (name.isEmpty())
        name = entry.state == WeighedState::Empty ? RowText::tr("empty") : RowText::tr("a reading");
    if (entry.pieces > 1) name = RowText::tr("%1, %2 pieces").arg(name).arg(entry.pieces);
    if (entry.series)
        for (const std::string& tag : entry.series->tags)
            name = RowText::tr("%1, %2").arg(name, plainOf(tag));
    return name;
}

QString becameOf(const LedgerReading& reading) {
    const QString reason = plainOf(reading.reason);
    if (!reading.supersededBy.empty())
        return reading.successor.empty() ? RowText::tr("taken back: %1").arg(reason)
                                         : RowText::tr("replaced: %1").arg(reason);
    if (reading.leftOut) return RowText::tr("left out: %1").arg(reason);
    QStringList doubts;
    if (reading.beforeOverruled)
        doubts += RowText::tr("what went in was taken back: %1").arg(plainOf(reading.beforeReason));
    if (reading.tareOverruled)
        doubts += (reading.entry().takenFrom.empty()
                       ? RowText::tr("its tare was taken back: %1")
                       : RowText::tr("what the jar showed before was taken back: %1"))
                      .arg(plainOf(reading.tareReason));
    if (reading.suspect) doubts += RowText::tr("in doubt: a check of the scale failed");
    if (!doubts.isEmpty()) return doubts.join(QStringLiteral("; "));
    switch (reading.entry().kind) {
        case EntryKind::Checked:
            return RowText::tr("scale checked");
        case EntryKind::Vessel:
            return RowText::tr("vessel");
        default:
            break;
    }
    if (reading.net) return RowText::tr("weighed");
    return reading.entry().state == WeighedState::Empty ? RowText::tr("tare")
                                                        : RowText::tr("shown");
}

}  // namespace

LedgerRow ledgerRowOf(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    const auto mass = [&entry](const std::optional<Decimal>& number) {
        return number ? benchMass(*number, entry.unit) : QString{};
    };
    return {dayAndTime(entry.at),
            nameOf(entry),
            mass(entry.shown),
            mass(reading.tare),
            mass(reading.net),
            becameOf(reading),
            !reading.supersededBy.empty(),
            reading.net.has_value() && reading.counts()};
}

QString spokenRow(const LedgerRow& row) {
    QStringList parts{row.time, row.what, RowText::tr("gross %1").arg(row.gross)};
    if (!row.tare.isEmpty()) parts += RowText::tr("tare %1").arg(row.tare);
    if (!row.net.isEmpty()) parts += RowText::tr("net %1").arg(row.net);
    parts += row.became;
    return parts.join(QStringLiteral(", "));
}

bool hasRow(const LedgerReading& reading) {
    const LedgerEntry& entry = reading.entry();
    return !(reading.usedAsTare && entry.kind == EntryKind::Shown &&
             entry.state == WeighedState::Empty && entry.shown == Decimal{} && reading.counts());
}

}  // namespace nettare
