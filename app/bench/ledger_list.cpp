#include "app/bench/ledger_list.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_type.h"
#include "app/bench/bench_words.h"
#include "app/bench/chain_words.h"
#include "app/bench/ledger_list_model.h"
#include "app/bench/ledger_row_delegate.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"

namespace nettare {

LedgerList::LedgerList(BenchDesk& desk, QWidget* parent)
    : Pane{tr("Ledger"), Role::Raised, parent},
      desk_{desk},
      model_{new LedgerListModel{desk, this}},
      view_{new QListView},
      head_{new QLabel},
      empty_{new QLabel},
      actions_{new QWidget},
      reasons_{new QWidget},
      reasonHead_{new QLabel},
      ownReason_{new QLineEdit} {
    setObjectName(QStringLiteral("ledgerList"));
    setEntry(view_);
    build();
    connect(&desk_, &BenchDesk::ledgerChanged, this, &LedgerList::follow);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                const LedgerReading* const reading = model_->reading(now.row());
                if (reading != nullptr) chosen_ = reading->entry().id;
                reasons_->hide();
                showActions();
            });
    follow();
}

QPushButton* LedgerList::action(const QString& text, const char* name) {
    QPushButton* button = benchButton(text, name);
    actions_->layout()->addWidget(button);
    return button;
}

void LedgerList::buildView() {
    for (QLabel* label : {head_, empty_, reasonHead_}) {
        label->setFont(benchFont());
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    head_->setObjectName(QStringLiteral("ledgerHead"));
    empty_->setProperty("tone", QStringLiteral("secondary"));
    empty_->setText(
        tr("Nothing was weighed yet. What the scale shows comes to stand here, and "
           "stays."));
    view_->setObjectName(QStringLiteral("ledgerView"));
    view_->setAccessibleName(tr("Ledger, newest reading first"));
    view_->setModel(model_);
    view_->setItemDelegate(new LedgerRowDelegate{view_});
    view_->setUniformItemSizes(true);
    view_->setResizeMode(QListView::Adjust);
    view_->setTabKeyNavigation(false);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view_->setMinimumHeight(2 * kBenchTargetPx);
}

void LedgerList::buildActions() {
    new FlowLayout{kSpace2Px, kSpace2Px, actions_};
    takeBack_ = action(tr("Take back"), "takeBackRow");
    reason_ = action(tr("Another reason"), "changeReason");
    leaveOut_ = action(tr("Leave out"), "leaveOutRow");
    takeIn_ = action(tr("Take in again"), "takeInRow");
    series_ = action(tr("Its series"), "showSeries");
    bind_ = action(tr("Bind"), "bindReading");
    bind_->setAccessibleName(tr("Bind the reading to a line of the recipe"));
    connect(takeBack_, &QPushButton::clicked, this, [this] { ask(Saying::TakeBack); });
    connect(reason_, &QPushButton::clicked, this, [this] { ask(Saying::Reason); });
    connect(leaveOut_, &QPushButton::clicked, this, [this] { ask(Saying::LeaveOut); });
    connect(takeIn_, &QPushButton::clicked, this, [this] {
        if (const LedgerReading* row = chosen()) desk_.takeIn(row->entry().id, tr("counts again"));
    });
    connect(series_, &QPushButton::clicked, this, [this] {
        const LedgerReading* const row = chosen();
        const auto key = row == nullptr ? std::nullopt : seriesKeyOf(row->entry());
        if (key) desk_.showSeries(*key);
    });
    connect(bind_, &QPushButton::clicked, this, [this] {
        if (const LedgerReading* row = chosen())
            emit bindAsked(QString::fromStdString(row->entry().id));
    });
}

void LedgerList::buildReasons() {
    auto* words = new FlowLayout{kSpace2Px, kSpace2Px, reasons_};
    words->addWidget(reasonHead_);
    for (const QString& usual : usualReasons()) {
        QPushButton* button = benchButton(usual, "usualReason");
        connect(button, &QPushButton::clicked, this, [this, usual] { say(usual); });
        words->addWidget(button);
    }
    ownReason_->setObjectName(QStringLiteral("ownReason"));
    ownReason_->setProperty("touch", true);
    ownReason_->setFont(benchFont());
    ownReason_->setMaxLength(120);
    ownReason_->setMinimumWidth(4 * kBenchTargetPx);
    ownReason_->setPlaceholderText(tr("another reason"));
    ownReason_->setAccessibleName(tr("Another reason, in your own words"));
    connect(ownReason_, &QLineEdit::returnPressed, this, [this] {
        if (const QString own = ownReason_->text().trimmed(); !own.isEmpty()) say(own);
    });
    words->addWidget(ownReason_);
    reasons_->hide();
}

void LedgerList::build() {
    buildView();
    buildActions();
    buildReasons();
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace2Px, 0, kSpace2Px);
    column->setSpacing(kSpace2Px);
    head_->setContentsMargins(kSpace4Px, 0, kSpace4Px, 0);
    empty_->setContentsMargins(kSpace4Px, 0, kSpace4Px, 0);
    actions_->setContentsMargins(kSpace4Px, 0, kSpace4Px, 0);
    reasons_->setContentsMargins(kSpace4Px, 0, kSpace4Px, 0);
    column->addWidget(head_);
    column->addWidget(empty_);
    column->addWidget(view_, 1);
    column->addWidget(actions_);
    column->addWidget(reasons_);
}

const LedgerReading* LedgerList::chosen() const {
    return model_->reading(view_->currentIndex().row());
}

void LedgerList::follow() {
    head_->setText(ledgerHead(desk_.end(), desk_.chain()));
    const bool none = model_->rowCount() == 0;
    empty_->setVisible(none);
    view_->setVisible(!none);
    if (const int row = chosen_.empty() ? -1 : model_->rowOf(chosen_); row >= 0)
        view_->setCurrentIndex(model_->index(row));
    showActions();
}

void LedgerList::showActions() {
    const LedgerReading* const row = chosen();
    actions_->setVisible(row != nullptr);
    if (row == nullptr) return;
    const bool gone = !row->supersededBy.empty();
    const bool ofSeries = seriesKeyOf(row->entry()).has_value();
    takeBack_->setVisible(!gone);
    reason_->setVisible(gone || row->leftOut);
    leaveOut_->setVisible(!gone && ofSeries && !row->leftOut);
    takeIn_->setVisible(!gone && row->leftOut);
    series_->setVisible(ofSeries);
    bind_->setVisible(row->net.has_value() && row->counts() && desk_.canBind());
}

void LedgerList::ask(Saying what) {
    saying_ = what;
    reasonHead_->setText(tr("Why?"));
    ownReason_->clear();
    reasons_->show();
    ownReason_->setFocus();
}

void LedgerList::say(const QString& reason) {
    reasons_->hide();
    const LedgerReading* const row = chosen();
    if (row == nullptr) return;
    const std::string id = row->entry().id;
    switch (saying_) {
        case Saying::TakeBack:
            return desk_.takeBack(id, reason);
        case Saying::Reason:
            return desk_.changeReason(id, reason);
        case Saying::LeaveOut:
            return desk_.leaveOut(id, reason);
    }
}

}  // namespace nettare
