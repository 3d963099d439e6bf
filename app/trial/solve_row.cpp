#include "app/trial/solve_row.h"

#include "app/figures/figure_words.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

QLabel* word(const QString& text, QWidget* buddy) {
    auto* label = new QLabel{text};
    label->setProperty("tone", QStringLiteral("secondary"));
    label->setBuddy(buddy);
    label->setMinimumHeight(kControlHeightPx);
    return label;
}

/// Fills a box without a word to those who listen; what was chosen stays chosen by its text.
void refill(QComboBox& box, const QStringList& texts) {
    const QString chosen = box.currentText();
    const QSignalBlocker quiet{box};
    box.clear();
    box.addItems(texts);
    if (const int same = box.findText(chosen); same >= 0) box.setCurrentIndex(same);
}

}  // namespace

QString limitWords(const TargetEntry& target, const Recipe& recipe) {
    const ComponentFacts& facts = factsOf(target.component);
    const Decimal limit = target.atMost ? *target.atMost : *target.atLeast;
    const QString number = QString::fromStdString(limit.text() + " " + std::string{facts.unit});
    const QString end = target.atMost ? SolveRow::tr("at most %1").arg(number)
                                      : SolveRow::tr("at least %1").arg(number);
    return SolveRow::tr("%1: %2 %3")
        .arg(componentName(target.component), end, basisName(target.per, recipe));
}

SolveRow::SolveRow(QWidget* parent)
    : QWidget{parent},
      line_{new QComboBox},
      target_{new QComboBox},
      find_{new QPushButton{tr("&Find the amount")}},
      none_{new QLabel{tr("Set a ceiling or a floor under Limits, and the amount of a line that "
                          "meets it is found here.")}} {
    line_->setObjectName(QStringLiteral("solveLine"));
    line_->setAccessibleName(tr("The line to change"));
    target_->setObjectName(QStringLiteral("solveTarget"));
    target_->setAccessibleName(tr("The limit to meet"));
    find_->setObjectName(QStringLiteral("solve"));
    for (QComboBox* box : {line_, target_})
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    line_->setMinimumContentsLength(12);
    target_->setMinimumContentsLength(24);
    none_->setProperty("tone", QStringLiteral("secondary"));
    none_->setWordWrap(true);
    auto* row = new FlowLayout{kSpace2Px, kSpace1Px, this};
    for (QWidget* part :
         {static_cast<QWidget*>(word(tr("Change"), line_)), static_cast<QWidget*>(line_),
          static_cast<QWidget*>(word(tr("until"), target_)), static_cast<QWidget*>(target_),
          static_cast<QWidget*>(find_), static_cast<QWidget*>(none_)})
        row->addWidget(part);
    connect(find_, &QPushButton::clicked, this, [this] {
        const auto line = static_cast<std::size_t>(line_->currentIndex());
        const auto target = static_cast<std::size_t>(target_->currentIndex());
        if (line < lines_.size() && target < targets_.size())
            emit asked(lines_[line], targets_[target]);
    });
}

void SolveRow::offer(const Evaluation& evaluation) {
    const Recipe& recipe = evaluation.dossier.main();
    QStringList lines, targets;
    lines_.clear();
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        if (isLeftOut(evaluation.cooked.lines[i].counting)) continue;
        lines_.push_back(i);
        lines += QString::fromStdString(recipe.lines[i].name);
    }
    targets_ = recipe.targets;
    for (const TargetEntry& target : targets_) targets += limitWords(target, recipe);
    refill(*line_, lines);
    refill(*target_, targets);
    const bool any = !targets_.empty();
    for (QWidget* each : findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        each->setVisible((each == none_) != any);
}

}  // namespace nettare
