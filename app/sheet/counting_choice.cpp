#include "app/sheet/counting_choice.h"

#include <QHBoxLayout>

#include "app/theme/type.h"

namespace nettare {

CountingChoice::CountingChoice(QWidget* parent)
    : QWidget{parent},
      label_{new QLabel{tr("Counts")}},
      button_{new QPushButton},
      menu_{new QMenu{this}},
      options_{new QActionGroup{this}} {
    label_->setProperty("tone", QStringLiteral("secondary"));
    label_->setBuddy(button_);
    button_->setFont(figureFont(TypeSize::Body));
    button_->setProperty("quiet", true);
    button_->setStyleSheet(
        QStringLiteral("QPushButton { padding: 0 3px; min-height: 22px; border-width: 2px; }"));
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2);
    row->addWidget(label_);
    row->addWidget(button_);
    connect(button_, &QPushButton::clicked, this, [this] {
        menu_->popup(button_->mapToGlobal(QPoint{0, button_->height()}));
        if (options_->checkedAction() != nullptr) menu_->setActiveAction(options_->checkedAction());
    });
}

void CountingChoice::setRule(const ShownRule& rule, bool first, bool editable) {
    const CountingOption& held = rule.options[rule.current];
    label_->setVisible(first);
    button_->setText(QString{held.text}.replace(QLatin1Char{'&'}, QStringLiteral("&&")));
    button_->setAccessibleName(tr("%1: %2, change it").arg(rule.name, held.offer));
    button_->setEnabled(editable);
    fillMenu(rule);
}

void CountingChoice::fillMenu(const ShownRule& rule) {
    menu_->clear();
    menu_->setAccessibleName(rule.name);
    menu_->addSection(rule.name);
    for (std::size_t i = 0; i < rule.options.size(); ++i) {
        QAction* option = menu_->addAction(rule.options[i].offer);
        option->setCheckable(true);
        option->setChecked(i == rule.current);
        options_->addAction(option);
        connect(option, &QAction::triggered, this,
                [this, which = rule.rule, word = QString::fromStdString(rule.options[i].word)] {
                    emit chosen(which, word);
                });
    }
}

}  // namespace nettare
