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

constexpr QChar kBetween{0x2009};  // thin space

QString markedUp(const WordRun& run, Shade shade) {
    const QString text = run.text.toHtmlEscaped();
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
    WordsOn before = WordsOn::Both;
    for (const WordRun& run : step.runs) {
        // The old word and the new one must not read as one.
        if (before == WordsOn::LeftOnly && run.side == WordsOn::RightOnly) text += kBetween;
        text += markedUp(run, shade);
        before = run.side;
    }
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
    grid_->setContentsMargins(ringRoomPx(), ringRoomPx(), ringRoomPx(), ringRoomPx());
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
    for (QLabel* label : labels_) delete label;
    labels_.clear();
    const Shade shade = shadeOf(palette());
    QStringList spoken;
    int row = 1;
    bool changed = false;
    for (const ComparedStep& step : steps_) {
        changed = changed || step.changed();
        if (changesOnly_ && !step.changed()) continue;
        auto* const number = numberLabel(step.number);
        auto* const text = new QLabel{markedUp(step, shade)};
        text->setFont(typeFont(TypeSize::Body));
        text->setTextFormat(Qt::RichText);
        text->setWordWrap(true);
        text->setAccessibleName(step.spoken());
        grid_->addWidget(number, row, 0, Qt::AlignTop);
        grid_->addWidget(text, row++, 1, Qt::AlignTop);
        labels_.insert(labels_.end(), {number, text});
        spoken << step.spoken();
    }
    nothing_->setVisible(!changed);
    if (!changed) spoken.prepend(nothing_->text());
    setSpoken(spoken.join(u'\n'));
}

void MethodDifference::changeEvent(QEvent* event) {
    FocusGroup::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) build();
}

}  // namespace nettare
