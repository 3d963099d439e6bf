#pragma once

#include <QFrame>

#include <functional>

#include "app/bench/ledger_source.h"
#include "app/bench/print_ledger.h"
#include "app/work/task_runner.h"
#include "core/ledger/chain_check.h"

class QLabel;
class QPushButton;

namespace nettare {

class KitchenSession;
class MessageLine;
class PathAsker;
class ProgressLine;

/// Brings the ledger on paper or into a file while the bench goes on: a line that says how far it
/// is, with a button that ends it, then what became of it. Takes no room while there is nothing to
/// say.
class LedgerOutput : public QFrame {
    Q_OBJECT

public:
    LedgerOutput(KitchenSession& kitchen, PathAsker& paths, QWidget* parent = nullptr);
    ~LedgerOutput() override;

    /// Asks for printer and paper, then prints. Nothing while other output is under way.
    void print();
    /// Asks for a file, then saves all entries as CSV.
    void saveCsv();
    void cancel();
    [[nodiscard]] bool busy() const { return busy_; }

signals:
    /// The chain was checked on the way.
    void chainChecked(const nettare::ChainState& state);

private:
    using Work = std::function<LedgerWritten(const LedgerSource&, const Progress&)>;
    /// Gets at the ledger, then runs the work beside the window.
    void start(const QString& what, Work work, const QString& done);
    void run(const LedgerSource& ledger, Work work, const QString& done);
    void show(const LedgerWritten& written, const QString& done);
    void showBusy(bool busy);
    [[nodiscard]] QString kitchenName() const;

    KitchenSession& kitchen_;
    PathAsker& paths_;
    QLabel* words_;
    ProgressLine* progress_;
    QPushButton* cancel_;
    QWidget* running_;
    MessageLine* message_;
    bool busy_ = false, wanted_ = false;
    TaskRunner tasks_;
};

}  // namespace nettare
