#include "app/figures/meaning_choice.h"

#include <array>

#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr std::array kMeanings{Meaning::ThisBatch, Meaning::RecipeMean, Meaning::AnyPiece};

/// What is meant, as the list says it.
QString meaningOffer(Meaning meaning) {
    switch (meaning) {
        case Meaning::RecipeMean:
            return MeaningChoice::tr("Recipe mean: all batches made by this text");
        case Meaning::ThisBatch:
            return MeaningChoice::tr("This batch: as a laboratory would find it");
        case Meaning::AnyPiece:
            return MeaningChoice::tr("Any one piece: with its own share of the batch");
    }
    return {};
}

}  // namespace

QString meaningText(Meaning meaning) {
    switch (meaning) {
        case Meaning::RecipeMean:
            return MeaningChoice::tr("recipe mean");
        case Meaning::ThisBatch:
            return MeaningChoice::tr("this batch");
        case Meaning::AnyPiece:
            return MeaningChoice::tr("any one piece");
    }
    return {};
}

MeaningChoice::MeaningChoice(QWidget* parent)
    : QPushButton{parent}, menu_{new QMenu{this}}, options_{new QActionGroup{this}} {
    setFont(figureFont(TypeSize::Body));
    setProperty("quiet", true);
    setStyleSheet(
        QStringLiteral("QPushButton { padding: 0 3px; min-height: 22px; border-width: 2px; }"));
    menu_->setAccessibleName(tr("What the figures are of"));
    menu_->addSection(tr("What the figures are of"));
    for (const Meaning meaning : kMeanings) {
        QAction* option = menu_->addAction(meaningOffer(meaning));
        option->setCheckable(true);
        option->setData(static_cast<int>(meaning));
        options_->addAction(option);
        connect(option, &QAction::triggered, this, [this, meaning] { emit chosen(meaning); });
    }
    connect(this, &QPushButton::clicked, this, [this] {
        menu_->popup(mapToGlobal(QPoint{0, height()}));
        if (options_->checkedAction() != nullptr) menu_->setActiveAction(options_->checkedAction());
    });
    setMeaning(Meaning::ThisBatch);
}

void MeaningChoice::setMeaning(Meaning meaning) {
    for (QAction* option : options_->actions())
        option->setChecked(option->data().toInt() == static_cast<int>(meaning));
    setText(meaningText(meaning));
    setAccessibleName(tr("The figures are of: %1, change it").arg(meaningText(meaning)));
}

}  // namespace nettare
