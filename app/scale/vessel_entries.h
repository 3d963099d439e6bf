#pragma once

#include <QObject>

#include <string>
#include <vector>

#include "app/scale/weighing.h"

namespace nettare {

class KitchenSession;

/// Knows which entries of the ledger weighed the vessels of a draft empty, so that a net over one
/// carries the rounding of the scale that the vessel was weighed on. Follows the ledger.
class VesselEntries : public QObject {
    Q_OBJECT

public:
    explicit VesselEntries(KitchenSession& kitchen, QObject* parent = nullptr);

    /// The UUID of the entry that weighed the vessel of a draft empty; empty where the tare is no
    /// vessel's, or the ledger has no such weighing.
    [[nodiscard]] std::string entryOf(const Tare& tare, const DraftSession& draft) const;

signals:
    void changed();

private:
    void read();

    KitchenSession& kitchen_;
    std::vector<ChainedEntry> equipment_;
};

}  // namespace nettare
