#include "app/path/path_side.h"

#include <QVBoxLayout>

#include "app/path/share_bars.h"
#include "app/path/side_card.h"
#include "app/path/simulation_card.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

constexpr std::size_t kMostShown = 6;
constexpr double kLeastShown = 0.02;

}  // namespace

PathSide::PathSide(QWidget* parent)
    : QScrollArea{parent},
      sharesCard_{new SideCard{tr("What makes it unsure")}},
      shares_{new ShareBars},
      next_{new SideCard{tr("Weigh next")}},
      simulation_{new SimulationCard} {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    sharesCard_->column().addWidget(shares_);
    sharesCard_->setObjectName(QStringLiteral("sharesCard"));
    next_->setObjectName(QStringLiteral("nextCard"));
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(0, kSpace1Px, 0, kSpace4Px);
    column->setSpacing(kSpace4Px);
    for (QWidget* card : {static_cast<QWidget*>(sharesCard_), static_cast<QWidget*>(next_),
                          static_cast<QWidget*>(simulation_)})
        column->addWidget(card);
    column->addStretch(1);
    setWidget(page);
    page->setAutoFillBackground(false);
}

void PathSide::showShares(const QString& plusMinus, const std::vector<BudgetShare>& shares) {
    sharesCard_->setHeading(plusMinus.isEmpty() ? tr("What makes the known part unsure")
                                                : tr("What makes it %1").arg(plusMinus));
    sharesCard_->setText(shares.empty() ? tr("Nothing: every part of it is exact.") : QString{});
    shares_->show(largestShares(shares, kMostShown, kLeastShown));
}

void PathSide::showTrying() {
    next_->setHeading(tr("Next"));
    next_->setStriped(false);
    next_->setText(tr("Trying out what would narrow it…"));
}

void PathSide::showNext(const QString& act, const QString& outcome) {
    next_->setHeading(act.isEmpty() ? tr("Nothing to weigh") : tr("Next: %1").arg(act));
    next_->setStriped(!act.isEmpty());
    next_->setText(outcome);
}

}  // namespace nettare
