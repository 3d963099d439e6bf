#pragma once

#include <QObject>
#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "core/edit/edit.h"
#include "core/ledger/bench_equipment.h"
#include "core/ledger/ledger_reading.h"
#include "core/weighing/series_report.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

class KitchenSession;

/// The series that the bench shows: the readings of a key that bear all of the tags.
struct BenchSeries {
    SeriesKey key;
    std::vector<std::string> tags;        ///< asked for; empty: all readings of the key
    std::vector<std::string> knownTags;   ///< that occur in the series
    std::vector<LedgerReading> readings;  ///< with those taken back or left out, oldest first
    std::string row;                      ///< TableRow::text() of the food; may be empty
    double others = 0;                    ///< N that the report speaks of; 0: none
    bool pooled = false;                  ///< with the assumed spread
    std::optional<SeriesReport> report;   ///< of pieces and measures, where a reading counts
    std::optional<RatioReport> ratio;     ///< of ratios, likewise
};

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

    [[nodiscard]] const std::vector<SeriesSummary>& seriesKept() const { return kept_; }
    /// The series that is shown; nothing where none.
    [[nodiscard]] const std::optional<BenchSeries>& series() const { return series_; }
    void showSeries(const SeriesKey& key, const std::vector<std::string>& tags = {});
    void setOthers(double others);
    void setPooled(bool pooled);

    /// Writes entries to the ledger, all or none, and gives the edit to the open draft, where there
    /// is one. recorded() follows with the last entry.
    void record(const std::vector<LedgerEntry>& entries, const std::optional<Edit>& edit = {});
    /// Supersedes a reading; where the open draft holds it, it is taken off there.
    void takeBack(const std::string& id, const QString& reason);
    /// Another reason for what was taken back or left out.
    void changeReason(const std::string& id, const QString& reason);
    void leaveOut(const std::string& id, const QString& cause);
    void takeIn(const std::string& id, const QString& reason);
    void keepScale(const KnownScale& scale);
    void checkScale(const QString& scale, Decimal mass, Decimal shown);
    void keepVessel(const QString& name, Decimal tare);

    [[nodiscard]] KitchenSession& kitchen() { return kitchen_; }

signals:
    void equipmentChanged();
    void ledgerChanged();
    void seriesChanged();
    void recorded(const nettare::ChainedEntry& entry);
    void failed(const nettare::Error& error);

private:
    void load(long long before);
    void loadSeries();
    /// An entry of that kind with a new id and the time, as typed at the bench.
    [[nodiscard]] static LedgerEntry freshEntry(EntryKind kind);

    KitchenSession& kitchen_;
    BenchEquipment equipment_;
    std::vector<ChainedEntry> checks_;
    std::string scale_;
    std::vector<LedgerReading> ledger_;
    bool hasOlder_ = false;
    LedgerEnd end_;
    std::vector<SeriesSummary> kept_;
    std::optional<BenchSeries> series_;
};

}  // namespace nettare
