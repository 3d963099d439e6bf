#include "app/scale/mixture_panel.h"

#include <QLabel>
#include <QScrollArea>

#include <algorithm>

#include "app/scale/step_lines.h"
#include "app/sheet/document_texts.h"
#include "app/theme/spacing.h"
#include "app/widgets/plain_tip.h"

namespace nettare {

namespace {

constexpr int kMostRows = 9;
constexpr int kRowHeight = 24;
constexpr int kStepWidth = 280;

QScrollArea* scrolled(QWidget* list) {
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(list);
    list->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    return scroll;
}

}  // namespace

MixturePanel::MixturePanel(QWidget* parent)
    : QWidget{parent},
      step_{new QComboBox},
      list_{new QWidget},
      rows_{new QVBoxLayout{list_}},
      scroll_{scrolled(list_)} {
    step_->setObjectName(QStringLiteral("mixedAt"));
    step_->setAccessibleName(tr("As mixed at"));
    step_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(step_, &QComboBox::activated, this, &MixturePanel::tickStep);
    rows_->setContentsMargins(2, 2, 2, 2);
    rows_->setSpacing(kSpace1Px);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(step_);
    column->addWidget(scroll_);
    column->addStretch(1);
}

void MixturePanel::setMixture(const Json& document, const LeftOver& left) {
    fillSteps(document, left.mixedAt);
    fillLines(document, left.lines);
}

void MixturePanel::fillSteps(const Json& document, std::optional<int> mixedAt) {
    step_->clear();
    steps_ = {{0, {}}};
    step_->addItem(tr("ticked one by one"));
    int number = 0, current = 0;
    for (const Json& step : entriesIn(document, "steps")) {
        const std::string text = memberText(&step, "text");
        auto named = linesNamedIn(document, text);
        ++number;
        if (named.empty() && mixedAt != number) continue;
        if (mixedAt == number) current = step_->count();
        const QString words =
            tr("as mixed at step %1: %2").arg(number).arg(QString::fromStdString(text));
        step_->addItem(fontMetrics().elidedText(words, Qt::ElideRight, kStepWidth));
        step_->setItemData(step_->count() - 1, plainTip(QString::fromStdString(text)),
                           Qt::ToolTipRole);
        steps_.push_back({number, std::move(named)});
    }
    step_->setCurrentIndex(current);
}

void MixturePanel::fillLines(const Json& document, const std::vector<std::string>& ticked) {
    for (const TickedLine& line : lines_) delete line.box;
    lines_.clear();
    for (const Json& line : entriesIn(document, "lines")) {
        const std::string id = memberText(&line, "id");
        auto* box =
            new QCheckBox{lineName(document, id).replace(QLatin1Char{'&'}, QStringLiteral("&&"))};
        box->setObjectName(QStringLiteral("mix-") + QString::fromStdString(id));
        box->setFixedHeight(kRowHeight);
        box->setChecked(std::ranges::find(ticked, id) != ticked.end());
        connect(box, &QCheckBox::toggled, this, &MixturePanel::changed);
        rows_->addWidget(box);
        lines_.push_back({id, box});
    }
    const int rows = std::min(kMostRows, static_cast<int>(lines_.size()));
    scroll_->setFixedHeight(rows * (kRowHeight + kSpace1Px) + kSpace1Px);
}

void MixturePanel::tickStep() {
    const StepChoice& step = steps_[static_cast<std::size_t>(step_->currentIndex())];
    if (step.number > 0)
        for (const TickedLine& line : lines_) {
            const QSignalBlocker quiet{line.box};
            line.box->setChecked(std::ranges::find(step.lines, line.id) != step.lines.end());
        }
    emit changed();
}

std::vector<std::string> MixturePanel::lines() const {
    std::vector<std::string> ticked;
    for (const TickedLine& line : lines_)
        if (line.box->isChecked()) ticked.push_back(line.id);
    return ticked;
}

std::optional<int> MixturePanel::mixedAt() const {
    const int index = std::max(0, step_->currentIndex());
    const int number = steps_.empty() ? 0 : steps_[static_cast<std::size_t>(index)].number;
    return number > 0 ? std::optional{number} : std::nullopt;
}

}  // namespace nettare
