#include "app/bench/left_out_list.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/bench/bench_fields.h"
#include "app/bench/series_words.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr std::size_t kMostListed = 5;

}  // namespace

LeftOutList::LeftOutList(QWidget* parent) : QWidget{parent}, column_{new QVBoxLayout{this}} {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(kSpace1Px);
    hide();
}

void LeftOutList::show(const std::vector<LedgerReading>& readings) {
    while (QLayoutItem* const item = column_->takeAt(0)) {
        if (item->widget() != nullptr) item->widget()->deleteLater();
        delete item;
    }
    std::size_t listed = 0, all = 0;
    // The newest first: it is the one that may have been a slip.
    for (auto reading = readings.rbegin(); reading != readings.rend(); ++reading) {
        if (!reading->leftOut || !reading->supersededBy.empty()) continue;
        if (++all > kMostListed) continue;
        ++listed;
        auto* const row = new QWidget;
        auto* const line = new QHBoxLayout{row};
        line->setContentsMargins(0, 0, 0, 0);
        QLabel* const words = benchNote();
        words->setText(tr("Left out: %1, %2")
                           .arg(readingText(*reading), QString::fromStdString(reading->reason)));
        auto* const back = benchButton(tr("Count it again"), "takeIn");
        back->setAccessibleName(tr("Count %1 again").arg(readingText(*reading)));
        connect(back, &QPushButton::clicked, this,
                [this, id = QString::fromStdString(reading->entry().id)] { emit takenIn(id); });
        line->addWidget(words, 1);
        line->addWidget(back);
        column_->addWidget(row);
    }
    if (all > listed) {
        QLabel* const rest = benchNote();
        rest->setText(tr("The ledger has others that were left out: %1").arg(all - listed));
        column_->addWidget(rest);
    }
    setVisible(all > 0);
}

}  // namespace nettare
