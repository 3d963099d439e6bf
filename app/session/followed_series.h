#pragma once

#include <QObject>

namespace nettare {

class KitchenSession;

/// Keeps the open draft up with the series of the ledger that its lines are bound to: when it is
/// opened, and when the ledger grew. Kept revisions stay as they were.
class FollowedSeries : public QObject {
    Q_OBJECT

public:
    explicit FollowedSeries(KitchenSession& kitchen, QObject* parent = nullptr);

    /// Brings what the draft holds of each series up to date, as one step of undo each.
    void follow();

private:
    KitchenSession& kitchen_;
};

}  // namespace nettare
