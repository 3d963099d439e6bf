#include "app/path/simulation_card.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/path/progress_line.h"
#include "app/path/simulation_texts.h"
#include "app/theme/spacing.h"
#include "core/simulation/simulation.h"

namespace nettare {

SimulationCard::SimulationCard(QWidget* parent)
    : SideCard{tr("Checked another way"), parent},
      progress_{new ProgressLine},
      button_{new QPushButton},
      trials_{SimulationPlan{}.trials} {
    setObjectName(QStringLiteral("simulationCard"));
    button_->setObjectName(QStringLiteral("simulate"));
    button_->setAutoDefault(false);
    column().addSpacing(kSpace1Px);
    column().addWidget(progress_);
    column().addSpacing(kSpace1Px);
    column().addWidget(button_, 0, Qt::AlignLeft);
    connect(button_, &QPushButton::clicked, this, [this] {
        if (running_)
            emit cancelWanted();
        else
            emit runWanted();
    });
    setRunning(false);
}

void SimulationCard::setRunning(bool running) {
    running_ = running;
    progress_->setVisible(running);
    progress_->setShare(0);
    button_->setText(running ? tr("Cancel") : tr("Simulate %1 batches").arg(trialsText(trials_)));
    button_->show();
}

void SimulationCard::setTrials(std::uint64_t trials) {
    trials_ = trials;
    setRunning(running_);
}

void SimulationCard::offer(const QString& note) {
    setText(note);
    setRunning(false);
}

void SimulationCard::showRunning(const QString& note) {
    setText(note);
    setRunning(true);
}

void SimulationCard::setProgress(double share) {
    if (running_) progress_->setShare(share);
}

void SimulationCard::showResult(const QString& text) {
    // Whoever waited at the button keeps a place for the keys.
    const bool waited = button_->hasFocus();
    setText(text);
    setRunning(false);
    button_->hide();
    if (waited && nextInFocusChain() != nullptr) focusNextChild();
}

}  // namespace nettare
