#include "app/panel_screen/added_sugars_form.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

#include "app/pantry/entry_words.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/draft_sentence.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "core/edit/food_edits.h"
#include "core/publish/added_sugars_text.h"

namespace nettare {

namespace {

constexpr int kWidestFood = 320;
constexpr int kGramsWidth = 112;
constexpr int kWhyWidth = 248;

constexpr std::array kAddedSugarKinds{AddedSugarKind::AllOfItsSugars, AddedSugarKind::None,
                                      AddedSugarKind::Stated, AddedSugarKind::BetweenNoneAndAll};

/// Of the foods of a draft's own document, by their place in it; null where there is none.
const Food* foodAt(const Evaluation& evaluation, std::size_t index, std::size_t& place) {
    const auto& foods = evaluation.dossier.foods;
    const std::string pointer = pointerTo("/foods", index);
    const auto found = std::ranges::find_if(foods, [&](const Food& food) {
        return food.pointer == pointer && food.file == evaluation.dossier.main().file;
    });
    place = static_cast<std::size_t>(found - foods.begin());
    return found != foods.end() ? &*found : nullptr;
}

}  // namespace

AddedSugarsForm::AddedSugarsForm(QWidget* parent)
    : QWidget{parent},
      food_{new QComboBox},
      kind_{new QComboBox},
      amount_{new QLineEdit},
      reason_{new QLineEdit},
      now_{new QLabel},
      refusal_{new QLabel},
      answer_{new QPushButton{tr("&Say so")}} {
    setObjectName(QStringLiteral("addedSugarsForm"));
    build();
    connect(food_, &QComboBox::currentIndexChanged, this, &AddedSugarsForm::sayNow);
    connect(kind_, &QComboBox::currentIndexChanged, this, &AddedSugarsForm::followKind);
    connect(answer_, &QPushButton::clicked, this, &AddedSugarsForm::answer);
    for (QLineEdit* field : {amount_, reason_})
        connect(field, &QLineEdit::returnPressed, this, &AddedSugarsForm::answer);
    hide();
}

void AddedSugarsForm::build() {
    food_->setObjectName(QStringLiteral("sugarsFood"));
    food_->setAccessibleName(tr("Food"));
    food_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    food_->setMinimumContentsLength(18);
    food_->setMaximumWidth(kWidestFood);
    kind_->setObjectName(QStringLiteral("sugarsKind"));
    kind_->setAccessibleName(tr("What part of its sugars is added"));
    for (const AddedSugarKind kind : kAddedSugarKinds) kind_->addItem(addedSugarsName(kind));
    amount_->setObjectName(QStringLiteral("sugarsAmount"));
    amount_->setAccessibleName(tr("Added sugars, g per 100 g"));
    amount_->setPlaceholderText(tr("g per 100 g"));
    amount_->setFixedWidth(kGramsWidth);
    reason_->setObjectName(QStringLiteral("sugarsReason"));
    reason_->setAccessibleName(tr("How you know"));
    reason_->setPlaceholderText(tr("how you know"));
    reason_->setFixedWidth(kWhyWidth);
    answer_->setObjectName(QStringLiteral("saySugars"));
    for (QLabel* words : {now_, refusal_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::PlainText);
    }
    now_->setObjectName(QStringLiteral("sugarsNow"));
    now_->setProperty("tone", QStringLiteral("secondary"));
    refusal_->setProperty("tone", QStringLiteral("error"));
    refusal_->hide();
    auto* head = new QLabel{tr("Added sugars")};
    head->setFont(typeFont(TypeSize::Header));
    auto* fields = new FlowLayout{kSpace2Px, kSpace2Px};
    for (QWidget* part : {static_cast<QWidget*>(kind_), static_cast<QWidget*>(amount_),
                          static_cast<QWidget*>(reason_), static_cast<QWidget*>(answer_)})
        fields->addWidget(part);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, kSpace4Px, 0, 0);
    column->setSpacing(kSpace2Px);
    for (QWidget* part :
         {static_cast<QWidget*>(head), static_cast<QWidget*>(food_), static_cast<QWidget*>(now_)})
        column->addWidget(part);
    column->addLayout(fields);
    column->addWidget(refusal_);
    followKind();
}

void AddedSugarsForm::follow(DraftSession* draft) {
    draft_ = draft;
    fill(nullptr);
}

void AddedSugarsForm::ask(DraftSession* draft, const std::vector<std::string>& names) {
    draft_ = draft;
    fill(&names);
}

void AddedSugarsForm::fill(const std::vector<std::string>* names) {
    const std::string before = chosen();
    foods_.clear();
    refusal_->hide();
    {
        const QSignalBlocker quiet{food_};
        food_->clear();
        if (draft_ != nullptr)
            for (const Json& food : entriesIn(draft_->document(), "foods")) {
                if (food.find("recipe") != nullptr) continue;
                if (names != nullptr &&
                    std::ranges::find(*names, memberText(&food, "name")) == names->end())
                    continue;
                foods_.push_back(memberText(&food, "id"));
                food_->addItem(QString::fromStdString(memberText(&food, "name")));
            }
        const auto same = std::ranges::find(foods_, before);
        if (same != foods_.end()) food_->setCurrentIndex(static_cast<int>(same - foods_.begin()));
    }
    sayNow();
    setVisible(!foods_.empty() && !draft_->readOnly());
}

std::string AddedSugarsForm::chosen() const {
    const auto index = static_cast<std::size_t>(food_->currentIndex());
    return index < foods_.size() ? foods_[index] : std::string{};
}

void AddedSugarsForm::sayNow() {
    now_->clear();
    answer_->setEnabled(true);
    if (draft_ == nullptr || draft_->evaluation() == nullptr) return;
    const Json::Array& entries = entriesIn(draft_->document(), "foods");
    for (std::size_t i = 0; i < entries.size(); ++i) {
        if (memberText(&entries[i], "id") != chosen()) continue;
        std::size_t place = 0;
        const Food* const food = foodAt(*draft_->evaluation(), i, place);
        if (food == nullptr) return;
        // What a package prints is its own word; nothing said here would change a figure.
        answer_->setEnabled(
            draft_->evaluation()->cooked.compositions[place][Component::SUGAD].origin !=
            Origin::Label);
        now_->setText(tr("Now, per 100 g: %1")
                          .arg(QString::fromStdString(addedSugarsText(
                              *food, draft_->evaluation()->cooked.compositions[place]))));
    }
}

void AddedSugarsForm::followKind() {
    const auto index = static_cast<std::size_t>(kind_->currentIndex());
    amount_->setVisible(index < kAddedSugarKinds.size() &&
                        kAddedSugarKinds.at(index) == AddedSugarKind::Stated);
}

void AddedSugarsForm::answer() {
    const auto index = static_cast<std::size_t>(kind_->currentIndex());
    if (draft_ == nullptr || chosen().empty() || index >= kAddedSugarKinds.size()) return;
    draft_->endTyping();
    const auto edit = setAddedSugars(draft_->document(), chosen(), kAddedSugarKinds.at(index),
                                     amount_->text().toStdString(), reason_->text().toStdString());
    const auto done = edit ? draft_->apply(*edit) : fail(edit.error());
    if (!done) {
        refusal_->setText(draftSentence(draft_->document(), done.error()));
        return refusal_->show();
    }
    refusal_->hide();
    for (QLineEdit* field : {amount_, reason_}) field->clear();
    sayNow();
}

}  // namespace nettare
