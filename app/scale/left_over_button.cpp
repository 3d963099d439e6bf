#include "app/scale/left_over_button.h"

#include "app/scale/left_over_popup.h"
#include "app/scale/left_over_words.h"
#include "app/session/kitchen_session.h"

namespace nettare {

LeftOverButton::LeftOverButton(KitchenSession& kitchen, QWidget* parent)
    : QPushButton{tr("What it is…"), parent},
      kitchen_{kitchen},
      popup_{new LeftOverPopup{kitchen, this}} {
    setObjectName(QStringLiteral("leftOver"));
    setAccessibleName(tr("What it is that is left over"));
    setAutoDefault(false);
    connect(this, &QPushButton::clicked, this, &LeftOverButton::openPopup);
    connect(popup_, &LeftOverPopup::changed, this, [this] { choose(popup_->choice()); });
    connect(popup_, &LeftOverPopup::closed, this, &LeftOverButton::done);
}

void LeftOverButton::forget() {
    byCook_ = false;
}

void LeftOverButton::follow(const std::string& line) {
    if (kitchen_.draft() == nullptr) return;
    const Json& document = kitchen_.draft()->document();
    choice_ = byCook_ ? stillThere(document, choice_) : suggestedLeftOver(document, line);
}

void LeftOverButton::choose(const LeftOver& left) {
    choice_ = left;
    byCook_ = true;
    emit chosen();
}

void LeftOverButton::openPopup() {
    popup_->open(choice_, *this);
}

std::optional<TableFood> LeftOverButton::brings() const {
    const bool row = choice_.kind == ResidueKind::Drip && choice_.drip.existing.empty();
    return row ? kitchen_.food(choice_.drip.row) : std::nullopt;
}

std::optional<double> LeftOverButton::there() const {
    const auto evaluation = kitchen_.draft() == nullptr ? nullptr : kitchen_.draft()->evaluation();
    return evaluation ? gramsThere(*evaluation, choice_) : std::nullopt;
}

QString LeftOverButton::explain(std::optional<double> grams) {
    if (kitchen_.draft() == nullptr) return {};
    QString sentence = leftOverSentence(kitchen_.draft()->document(), choice_, grams, there());
    popup_->say(sentence);
    return sentence;
}

QString LeftOverButton::caution(double grams) const {
    return tooMuchLeft(grams, there());
}

}  // namespace nettare
