#pragma once

#include <QObject>
#include <QString>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/bench/bench_page.h"
#include "app/bench/bench_series.h"
#include "core/edit/edit.h"
#include "core/ledger/chain_check.h"

namespace nettare {

class KitchenSession;

/// What the bench works on, without a widget: scales and vessels, the newest part of the ledger and
/// the series that is looked at. Everything comes from the kitchen's thread; what fails is told by
/// failed() and leaves all as it was.
class BenchDesk : public QObject {
    Q_OBJECT

public:
    explicit BenchDesk(KitchenSession& kitchen, QObject* parent = nullptr);

    /// Reads everything anew.
    void reload();

    [[nodiscard]] const BenchEquipment& equipment() const { return equipment_; }
    /// The scale that is weighed on; null before one is known.
    [[nodiscard]] const KnownScale* scale() const;
    void chooseScale(const QString& name);

    /// The newest part of the ledger, newest first.
    [[nodiscard]] const std::vector<LedgerReading>& ledger() const { return ledger_; }
    [[nodiscard]] bool hasOlder() const { return hasOlder_; }
    void readOlder();
    [[nodiscard]] const LedgerEnd& end() const { return end_; }
    /// What the last check of the chain in this session found; nothing before one.
    [[nodiscard]] const std::optional<ChainState>& chain() const { return chain_; }
    void setChain(const ChainState& state);

    [[nodiscard]] const std::vector<SeriesSummary>& seriesKept() const { return kept_; }
    /// The series that is shown; null where none.
    [[nodiscard]] const BenchSeries* series() const { return series_ ? &series_->shown : nullptr; }
    void showSeries(const SeriesKey& key, const std::vector<std::string>& tags = {});
    /// The same, but the series that is shown keeps the tags that it is split by.
    void showSeriesAsSplit(const SeriesKey& key);
    void setOthers(double others);
    /// Half-width of the others' total that would be enough, g; 0: none.
    void setEnough(double grams);
    /// For the series that is shown, as it is split; kept while the window is open.
    void setPool(const PoolChoice& pool);

    /// Writes entries to the ledger, all or none, and gives the edit to the open draft, where there
    /// is one. recorded() follows with the last entry. `food` is a row that the edit brings along.
    void record(const std::vector<LedgerEntry>& entries, const std::optional<Edit>& edit = {},
                const std::optional<TableFood>& food = {});
    /// Supersedes a reading; where the open draft holds it, it is taken off there.
    void takeBack(const std::string& id, const QString& reason);
    /// Another reason for what was taken back or left out.
    void changeReason(const std::string& id, const QString& reason);
    void leaveOut(const std::string& id, const QString& cause);
    void takeIn(const std::string& id, const QString& reason);
    /// Of an odd reading of a series that counts: it is not asked about again.
    void sayAsWeighed(const std::string& id, const QString& reason);
    /// True where the open draft can be changed.
    [[nodiscard]] bool canBind() const;
    /// Binds a line of the open draft to that one reading of ledger() alone, undoably.
    void bind(const std::string& id, const std::string& line);
    void keepScale(const KnownScale& scale);
    void checkScale(const QString& scale, Decimal mass, Decimal shown);
    void keepVessel(const QString& name, Decimal tare);

    [[nodiscard]] KitchenSession& kitchen() { return kitchen_; }

signals:
    void equipmentChanged();
    void ledgerChanged();
    void seriesChanged();
    void recorded(const nettare::ChainedEntry& entry);
    /// The entries that end with that one are not in the ledger; failed() follows.
    void notRecorded(const nettare::LedgerEntry& last);
    void failed(const nettare::Error& error);

private:
    void show(BenchState state);
    void loadSeries();
    /// Gives a series what the table says and a report, and shows it.
    void finishSeries(ReadSeries series);
    /// An entry of that kind about another one.
    void recordAbout(EntryKind kind, const std::string& id, const QString& reason);
    [[nodiscard]] const LedgerReading* readingOf(const std::string& id) const;
    /// The edit that takes a reading off the open draft; nothing where that does not hold it.
    [[nodiscard]] std::optional<Edit> unbinding(const std::string& id) const;
    /// An entry of that kind with a new id and the time, as typed at the bench.
    [[nodiscard]] static LedgerEntry freshEntry(EntryKind kind);

    KitchenSession& kitchen_;
    BenchEquipment equipment_;
    std::string scale_;
    std::vector<LedgerReading> ledger_, tares_;  ///< the tares that are older than the ledger read
    bool hasOlder_ = false;
    LedgerEnd end_;
    std::optional<ChainState> chain_;
    std::vector<SeriesSummary> kept_;
    std::shared_ptr<const ReadSeries> series_;
    // What was asked for last, which may be on its way.
    std::optional<SeriesKey> wanted_;
    std::vector<std::string> wantedTags_;
    double others_ = 0, enough_ = 0;
    int loads_ = 0, looks_ = 0;  ///< count, so that only the newest answer shows
};

}  // namespace nettare
