#pragma once

#include <QWidget>

#include <vector>

#include "core/ledger/ledger_reading.h"

class QVBoxLayout;

namespace nettare {

/// What was left out of a series, each with its cause and a way back. Takes no room where there is
/// none.
class LeftOutList : public QWidget {
    Q_OBJECT

public:
    explicit LeftOutList(QWidget* parent = nullptr);

    void show(const std::vector<LedgerReading>& readings);

signals:
    /// It is to count again.
    void takenIn(const QString& id);

private:
    QVBoxLayout* column_;
};

}  // namespace nettare
