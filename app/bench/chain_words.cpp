#include "app/bench/chain_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace nettare {

namespace {

struct ChainTexts {
    Q_DECLARE_TR_FUNCTIONS(ChainWords)
};

QString shortHash(const std::string& hash) {
    return QString::fromStdString(hash).left(8);
}

QString counted(long long number) {
    return QLocale{}.toString(number);
}

/// "chain intact, ends in 1f0c22ab"
QString chainOf(const LedgerEnd& end, const std::optional<ChainState>& checked) {
    const QString hash = shortHash(end.hash);
    if (!checked) return ChainTexts::tr("chain ends in %1").arg(hash);
    if (!checked->isIntact())
        return ChainTexts::tr("chain BROKEN at entry %1, ends in %2")
            .arg(counted(checked->broken), hash);
    if (checked->entries == end.sequence && checked->head == end.hash)
        return ChainTexts::tr("chain intact, ends in %1").arg(hash);
    return ChainTexts::tr("chain intact up to entry %1, ends in %2")
        .arg(counted(checked->entries), hash);
}

}  // namespace

QString ledgerHead(const LedgerEnd& end, const std::optional<ChainState>& checked) {
    if (end.hash.empty()) return ChainTexts::tr("Ledger · nothing is ever overwritten");
    const QString entries = end.sequence == 1
                                ? ChainTexts::tr("1 entry")
                                : ChainTexts::tr("%1 entries").arg(counted(end.sequence));
    return ChainTexts::tr("Ledger · nothing is ever overwritten · %1, %2")
        .arg(entries, chainOf(end, checked));
}

QString printedChain(const ChainState& checked) {
    if (checked.entries == 0) return ChainTexts::tr("The chain has no entry yet.");
    const QString end =
        ChainTexts::tr("%1 (%2)").arg(QString::number(checked.entries), shortHash(checked.head));
    if (checked.isIntact())
        return ChainTexts::tr(
                   "Checked while printing: the chain is intact up to entry %1. Whether more "
                   "entries followed, “nettare verify” tells.")
            .arg(end);
    return ChainTexts::tr(
               "Checked while printing: the chain is BROKEN at entry %1, which is not as it was "
               "recorded or does not follow the one before. It ends in entry %2.")
        .arg(QString::number(checked.broken), end);
}

}  // namespace nettare
