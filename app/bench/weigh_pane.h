#pragma once

#include <optional>
#include <vector>

#include "app/bench/open_pairs.h"
#include "app/bench/to_weigh.h"
#include "app/bench/weigh_state.h"
#include "app/window/pane.h"
#include "core/support/error.h"
#include "db/kitchen/kitchen.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace nettare {

class BenchDesk;
class Feedback;
class KitchenSession;
class TareRow;
class TwoLineButton;
class WeighDisplay;

/// The left side of the bench: the number that the scale shows, what it is, and one big button.
class WeighPane : public Pane {
    Q_OBJECT

public:
    WeighPane(BenchDesk& desk, KitchenSession& kitchen, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& number() { return *gross_; }
    [[nodiscard]] Feedback& feedback() { return *feedback_; }
    [[nodiscard]] const WeighState& state() const { return state_; }

    /// Larger digits, for a screen that is read from further away.
    void setRoomy(bool roomy);
    void weigh(const WeighSubject& subject, std::optional<double> wantedGrams = {});
    /// Every tare that can be chosen now.
    [[nodiscard]] const std::vector<BenchTare>& tares() const { return tares_; }
    void chooseTare(int index);
    /// What is typed becomes the tare; false where nothing can.
    bool useAsTare();
    /// What is typed is the net to weigh out, or nothing is any more.
    bool countDown();
    void record();
    /// Takes the last reading of this sitting back.
    void takeBackLast();
    /// Goes to the next thing of the recipe that was not weighed.
    void nextFood();
    void setPieces(int pieces);
    [[nodiscard]] std::optional<Decimal> typed() const;

signals:
    void subjectAsked();
    void taresAsked();
    void stateChanged();

private:
    void connectParts();
    void followDesk();
    void followDraft();
    void fillTares();
    void lookForPairs();
    void show();
    void showAddTo();
    void showNumber(const std::optional<Decimal>& shown);
    void showHint(const std::optional<Decimal>& shown, const QString& refusal);
    void recorded(const ChainedEntry& entry);
    void tookBack(const LedgerEntry& about);
    /// A reading of this sitting, and the weighing as it stood at the press.
    struct Sitting {
        LedgerEntry entry;
        WeighState state;
        QString typed;
    };
    void stepBack(const Sitting& taken);
    void goOn(const Sitting& done);
    void addByDefault();
    /// What the open recipe had weighed for the same, "41 g"; empty where nothing.
    [[nodiscard]] QString weighedSoFar() const;
    void refuse(const QString& sentence);
    void notRecorded(const LedgerEntry& last);
    void failed(const Error& error);

    BenchDesk& desk_;
    KitchenSession& kitchen_;
    WeighState state_;
    std::vector<BenchTare> tares_;
    std::optional<BenchTare> shownTare_, bowl_;
    OpenPairs pairs_;
    std::vector<Sitting> sitting_;    ///< recorded here and not taken back, the newest last
    std::string takingBack_;          ///< UUID of what is being taken back
    std::optional<Sitting> writing_;  ///< until the ledger answers
    QString said_;                    ///< answer that stays until something is typed
    TareRow* tareRow_;
    WeighDisplay* display_;
    QLineEdit *gross_, *pieces_;
    QLabel* sum_;
    TwoLineButton *subject_, *pairWith_;
    QWidget* piecesBox_;
    QPushButton *addTo_, *takeBack_, *record_, *next_;
    Feedback* feedback_;
};

}  // namespace nettare
