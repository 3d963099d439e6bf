#include "app/pantry/merge_bar.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/session/kitchen_session.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"

namespace nettare {

namespace {

/// Of a name that a box shows; longer ones are cut there, and stand whole in its list.
constexpr int kNameLetters = 20;

}  // namespace

MergeBar::MergeBar(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      other_{new QComboBox},
      stays_{new QComboBox},
      merge_{new QPushButton{tr("Merge")}},
      leave_{new QPushButton{tr("Leave as they are")}} {
    other_->setObjectName(QStringLiteral("mergeOther"));
    other_->setAccessibleName(tr("The own food that is the same thing"));
    stays_->setObjectName(QStringLiteral("mergeStays"));
    stays_->setAccessibleName(tr("Which of the two stays"));
    merge_->setObjectName(QStringLiteral("mergeFoods"));
    merge_->setProperty("primary", true);
    leave_->setObjectName(QStringLiteral("leaveMerge"));
    for (QComboBox* box : {other_, stays_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(kNameLetters);
    }
    auto* words = new QLabel{tr(
        "Both are one food. Searches then show the one that stays, drafts that use the other are "
        "offered to move, and undo parts them again.")};
    words->setWordWrap(true);
    words->setProperty("tone", QStringLiteral("secondary"));
    auto* row = new FlowLayout{kSpace2Px, kSpace2Px};
    const auto word = [row](const QString& text) {
        auto* label = new QLabel{text};
        label->setMinimumHeight(kControlHeightPx);
        row->addWidget(label);
    };
    word(tr("Same as"));
    row->addWidget(other_);
    word(tr("stays:"));
    row->addWidget(stays_);
    row->addWidget(merge_);
    row->addWidget(leave_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addWidget(words);
    column->addLayout(row);
    connect(other_, &QComboBox::currentIndexChanged, this, &MergeBar::follow);
    connect(merge_, &QPushButton::clicked, this, &MergeBar::merge);
    connect(leave_, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void MergeBar::ask(const std::string& id) {
    id_ = id;
    others_.clear();
    const QSignalBlocker quiet{other_};
    other_->clear();
    for (const OwnFoodRecord& record : kitchen_.ownFoods().all()) {
        if (!record.inUse() || record.id() == id) continue;
        others_.push_back(record.id());
        other_->addItem(QString::fromStdString(record.current.food.name));
    }
    follow();
    setVisible(!others_.empty());
    other_->setFocus(Qt::TabFocusReason);
}

void MergeBar::follow() {
    const OwnFoodRecord* const here = kitchen_.ownFoods().record(id_);
    const int at = stays_->currentIndex();
    stays_->clear();
    if (here == nullptr || other_->currentIndex() < 0) return;
    stays_->addItem(QString::fromStdString(here->current.food.name));
    stays_->addItem(other_->currentText());
    stays_->setCurrentIndex(at < 0 ? 0 : at);
}

void MergeBar::merge() {
    const auto at = static_cast<std::size_t>(other_->currentIndex());
    if (at >= others_.size()) return;
    const bool hereStays = stays_->currentIndex() == 0;
    const std::string stays = hereStays ? id_ : others_[at];
    kitchen_.ownFoods().merge(hereStays ? others_[at] : id_, stays);
    hide();
    emit merged(QString::fromStdString(stays));
}

}  // namespace nettare
