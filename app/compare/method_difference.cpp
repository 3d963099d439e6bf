#include "app/compare/method_difference.h"

#include "app/theme/palette.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QStringList>

namespace nettare {

namespace {

QString markedUp(const WordRun& run, Shade shade) {
    QString text = run.text.toHtmlEscaped();
    switch (run.side) {
        case WordsOn::Both:
            break;
        case WordsOn::LeftOnly:
            return QStringLiteral("<span style=\"text-decoration:line-through;color:%1\">%2</span>")
                .arg(colour(Role::Error, shade).name(), text);
        case WordsOn::RightOnly:
            return QStringLiteral("<span style=\"text-decoration:underline;color:%1\">%2</span>")
                .arg(colour(Role::Done, shade).name(), text);
    }
    return text;
}

QString markedUp(const ComparedStep& step, Shade shade) {
    QString text;
    for (const WordRun& run : step.runs) text += markedUp(run, shade);
    return text;
}

QLabel* numberLabel(const QString& number) {
    auto* const label = new QLabel{number};
    label->setFont(figureFont(TypeSize::Body));
    label->setAlignment(Qt::AlignRight | Qt::AlignTop);
    return label;
}

}  // namespace

MethodDifference::MethodDifference(QWidget* parent)
    : FocusGroup{tr("Method"), parent}, grid_{new QGridLayout{this}}, nothing_{new QLabel} {
    grid_->setContentsMargins(0, ringRoomPx(), 0, ringRoomPx());
    grid_->setHorizontalSpacing(kSpace2Px);
    grid_->setVerticalSpacing(kSpace2Px);
    grid_->setColumnStretch(1, 1);
    grid_->setAlignment(Qt::AlignTop);
    nothing_->setProperty("tone", QStringLiteral("secondary"));
    nothing_->setText(tr("The method is the same word for word."));
    grid_->addWidget(nothing_, 0, 0, 1, 2);
}

void MethodDifference::show(std::vector<ComparedStep> steps) {
    steps_ = std::move(steps);
    build();
}

void MethodDifference::setChangesOnly(bool changesOnly) {
    changesOnly_ = changesOnly;
    build();
}

void MethodDifference::build() {
    for (QLabel* label : numbers_) delete label;
    for (const auto& [step, label] : texts_) delete label;
    numbers_.clear();
    texts_.clear();
    QStringList spoken;
    int row = 1;
    bool changed = false;
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const ComparedStep& step = steps_[i];
        changed = changed || step.changed();
        if (changesOnly_ && !step.changed()) continue;
        auto* const number = numberLabel(step.number);
        auto* const text = new QLabel;
        text->setFont(typeFont(TypeSize::Body));
        text->setTextFormat(Qt::RichText);
        text->setWordWrap(true);
        text->setAccessibleName(step.spoken());
        grid_->addWidget(number, row, 0, Qt::AlignTop);
        grid_->addWidget(text, row++, 1, Qt::AlignTop);
        numbers_.push_back(number);
        texts_.emplace_back(i, text);
        spoken << step.spoken();
    }
    recolour();
    nothing_->setVisible(!changed);
    if (!changed) spoken.prepend(nothing_->text());
    setSpoken(spoken.join(u'\n'));
}

// In place: while a palette spreads, no child may come or go.
void MethodDifference::recolour() {
    const Shade shade = shadeOf(palette());
    for (const auto& [step, label] : texts_) label->setText(markedUp(steps_[step], shade));
}

void MethodDifference::changeEvent(QEvent* event) {
    FocusGroup::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) recolour();
}

}  // namespace nettare
