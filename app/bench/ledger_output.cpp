#include "app/bench/ledger_output.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/bench/bench_fields.h"
#include "app/bench/equipment_words.h"
#include "app/paper/paper_block.h"
#include "app/path/progress_line.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/theme/spacing.h"
#include "app/widgets/message_line.h"
#include "app/window/path_asker.h"
#include "app/words/error_sentence.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

LedgerOutput::LedgerOutput(KitchenSession& kitchen, PathAsker& paths, QWidget* parent)
    : QFrame{parent},
      kitchen_{kitchen},
      paths_{paths},
      words_{benchLabel()},
      progress_{new ProgressLine},
      cancel_{benchButton(tr("Cancel"), "cancelOutput")},
      running_{new QWidget},
      message_{new MessageLine} {
    message_->setObjectName(QStringLiteral("outputReport"));
    message_->setFont(benchFont());
    auto* const row = new QHBoxLayout{running_};
    row->setContentsMargins(kSpace4Px, kSpace1Px, kSpace4Px, kSpace1Px);
    row->setSpacing(kSpace3Px);
    row->addWidget(words_, 2);
    row->addWidget(progress_, 3);
    row->addWidget(cancel_);
    auto* const column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(running_);
    column->addWidget(message_);
    running_->hide();
    connect(cancel_, &QPushButton::clicked, this, &LedgerOutput::cancel);
    connect(message_, &MessageLine::actionTriggered, message_, &MessageLine::clear);
    connect(&tasks_, &TaskRunner::progressed, this,
            [this](const QString&, const QString&, double share) { progress_->setShare(share); });
}

LedgerOutput::~LedgerOutput() = default;

QString LedgerOutput::kitchenName() const {
    return kitchen_.path().isEmpty() ? tr("the sample")
                                     : QFileInfo{kitchen_.path()}.completeBaseName();
}

void LedgerOutput::print() {
    if (busy_) return;
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setDocName(tr("Ledger of %1").arg(kitchenName()));
    printer->setCreator(QStringLiteral("Nettare"));
    if (!paths_.printer(this, *printer) || busy_) return;
    // The faces are loaded here, once, before another thread wants them.
    const QFont face = paperFont(kPaperTextCpt);
    start(
        tr("Printing the ledger"),
        [printer, name = kitchenName(), at = momentText(now()), face](const LedgerSource& ledger,
                                                                      const Progress& progress) {
            return printLedger(ledger, name, at, *printer, progress);
        },
        tr("The ledger is printed; entries: %1, pages: %2."));
}

void LedgerOutput::saveCsv() {
    if (busy_) return;
    const QString path = paths_.ledgerCsv(this, tr("%1 ledger.csv").arg(kitchenName()));
    if (path.isEmpty() || busy_) return;
    start(
        tr("Saving the ledger"),
        [path](const LedgerSource& ledger, const Progress& progress) {
            return writeLedgerCsv(ledger, path, progress);
        },
        tr("The ledger is saved; entries: %1."));
}

void LedgerOutput::start(const QString& what, Work work, const QString& done) {
    words_->setText(what);
    progress_->setShare(0);
    message_->clear();
    showBusy(true);
    wanted_ = true;
    cancel_->setFocus(Qt::OtherFocusReason);
    if (!kitchen_.path().isEmpty())
        return run(ledgerOfFile(kitchen_.path().toStdString()), std::move(work), done);
    kitchen_.askKitchen(this, [this, work = std::move(work), done](const Kitchen& kitchen) {
        auto entries = std::make_shared<Result<std::vector<ChainedEntry>>>(kitchen.ledger());
        return std::function<void()>{[this, entries, work, done] {
            if (!wanted_) return;
            if (!*entries)
                return show({{}, QString::fromStdString(errorSentence(entries->error()))}, done);
            run(ledgerOf({entries, &**entries}), work, done);
        }};
    });
}

void LedgerOutput::run(const LedgerSource& ledger, Work work, const QString& done) {
    tasks_.run(
        tr("Ledger"), *this,
        [ledger, work = std::move(work)](const Progress& progress) {
            return work(ledger, progress);
        },
        [this, done](const LedgerWritten& written) { show(written, done); });
}

void LedgerOutput::show(const LedgerWritten& written, const QString& done) {
    showBusy(false);
    if (!written.whole) return message_->say(MessageKind::Error, written.refusal, tr("Close"));
    if (written.whole->checked)
        emit chainChecked({written.whole->entries, written.whole->broken, written.whole->head});
    QString text = done.arg(written.whole->entries);
    if (written.whole->pages > 0) text = text.arg(written.whole->pages);
    if (!written.whole->head.empty())
        text += u' ' + tr("Its head is %1.").arg(QString::fromStdString(written.whole->head));
    message_->say(MessageKind::Done, text, tr("Close"));
}

void LedgerOutput::cancel() {
    if (!busy_) return;
    tasks_.cancelAll();
    showBusy(false);
    message_->say(MessageKind::Info, tr("Cancelled; nothing was written."), tr("Close"));
}

void LedgerOutput::showBusy(bool busy) {
    busy_ = busy;
    if (!busy) wanted_ = false;
    running_->setVisible(busy);
}

}  // namespace nettare
