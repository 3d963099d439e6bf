#pragma once

#include <QPushButton>

#include "app/window/pane.h"
#include "core/ledger/ledger_reading.h"

class QLabel;
class QLineEdit;
class QListView;

namespace nettare {

class BenchDesk;
class FlowLayout;
class LedgerListModel;

/// The ledger beside the scale: what was weighed, newest first, and what can be said of the row
/// that is chosen. Nothing in it is ever changed; what is said comes as another entry.
class LedgerList : public Pane {
    Q_OBJECT

public:
    explicit LedgerList(BenchDesk& desk, QWidget* parent = nullptr);

    [[nodiscard]] QListView& view() { return *view_; }
    /// Of the chosen row; null where none is chosen.
    [[nodiscard]] const LedgerReading* chosen() const;

signals:
    /// The reading is to be bound to a line of the open recipe.
    void bindAsked(const QString& id);

private:
    enum class Saying { TakeBack, Reason, LeaveOut };

    void build();
    void buildView();
    void buildActions();
    void buildReasons();
    void follow();
    void showActions();
    void ask(Saying what);
    void say(const QString& reason);
    [[nodiscard]] QPushButton* action(const QString& text, const char* name);

    BenchDesk& desk_;
    LedgerListModel* model_;
    QListView* view_;
    QLabel *head_, *empty_;
    QWidget *actions_, *reasons_;
    QLabel* reasonHead_;
    QLineEdit* ownReason_;
    QPushButton *takeBack_, *reason_, *leaveOut_, *takeIn_, *series_, *bind_;
    std::string chosen_;  ///< UUID, kept while the list is read anew
    Saying saying_ = Saying::TakeBack;
};

}  // namespace nettare
