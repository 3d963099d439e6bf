#include "app/scale/left_over_popup.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>

#include <algorithm>

#include "app/scale/left_over_popup_words.h"
#include "app/scale/mixture_panel.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "app/sheet/food_completer.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"

namespace nettare {

namespace {

constexpr int kDetailWidth = 330;
constexpr int kMostCalled = 200;

enum Page { MixturePage, LinePage, DripPage, NoPage };

Page pageOf(ResidueKind kind) {
    switch (kind) {
        case ResidueKind::Mixture:
            return MixturePage;
        case ResidueKind::Line:
            return LinePage;
        case ResidueKind::Drip:
            return DripPage;
        default:
            return NoPage;
    }
}

/// A part at the top of its page.
QWidget* atTop(QWidget* part) {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(part);
    column->addStretch(1);
    return page;
}

}  // namespace

LeftOverPopup::LeftOverPopup(KitchenSession& kitchen, QWidget* parent)
    : QFrame{parent, Qt::Popup},
      kitchen_{kitchen},
      kinds_{new QButtonGroup{this}},
      pages_{new QStackedWidget},
      mixture_{new MixturePanel},
      line_{new QComboBox},
      food_{new QLineEdit},
      called_{new QLineEdit},
      foods_{new FoodCompleter{kitchen, *food_, [](const QString& text) { return text; }}},
      sentence_{new QLabel} {
    setProperty("popup", true);
    setObjectName(QStringLiteral("leftOverPopup"));
    setAccessibleName(tr("What is left over"));
    build();
    connectParts();
}

void LeftOverPopup::build() {
    auto* kinds = new QVBoxLayout;
    kinds->setSpacing(kSpace1Px);
    for (const LeftOverKindWords& kind : leftOverKinds()) {
        auto* choice = new QRadioButton{kind.text};
        choice->setObjectName(QLatin1String{kind.name});
        choice->setMinimumHeight(kSpace6Px + kSpace1Px);
        kinds_->addButton(choice, static_cast<int>(kind.kind));
        kinds->addWidget(choice);
    }
    kinds->addStretch(1);
    line_->setObjectName(QStringLiteral("leftOfLine"));
    line_->setAccessibleName(tr("The line that something is left of"));
    food_->setObjectName(QStringLiteral("drip"));
    food_->setAccessibleName(tr("The food that ran off"));
    food_->setPlaceholderText(tr("Type a food"));
    pages_->setFixedWidth(kDetailWidth);
    for (QWidget* page : {static_cast<QWidget*>(mixture_), atTop(line_), atTop(food_), new QWidget})
        pages_->addWidget(page);
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(kSpace4Px, kSpace3Px, kSpace4Px, kSpace3Px);
    grid->setHorizontalSpacing(kSpace6Px);
    grid->setVerticalSpacing(kSpace3Px);
    grid->addLayout(kinds, 0, 0);
    grid->addWidget(pages_, 0, 1);
    grid->addLayout(buildFoot(), 1, 0, 1, 2);
}

QLayout* LeftOverPopup::buildFoot() {
    auto* words = new QLabel{tr("Called")};
    words->setProperty("tone", QStringLiteral("secondary"));
    words->setBuddy(called_);
    called_->setObjectName(QStringLiteral("called"));
    called_->setAccessibleName(tr("What you call it"));
    called_->setPlaceholderText(tr("such as marinade; may stay empty"));
    called_->setMaxLength(kMostCalled);
    auto* done = new QPushButton{tr("Done")};
    done->setObjectName(QStringLiteral("leftOverDone"));
    connect(done, &QPushButton::clicked, this, &QWidget::close);
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    row->addWidget(words);
    row->addWidget(called_, 1);
    row->addWidget(done);
    sentence_->setObjectName(QStringLiteral("leftOverSentence"));
    sentence_->setWordWrap(true);
    sentence_->setTextFormat(Qt::PlainText);
    sentence_->setProperty("tone", QStringLiteral("secondary"));
    // Room for three lines, so that the popup does not jump with every choice.
    sentence_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    sentence_->setMinimumHeight(3 * QFontMetrics{typeFont(TypeSize::Body)}.lineSpacing());
    auto* column = new QVBoxLayout;
    column->setSpacing(kSpace2Px);
    column->addWidget(sentence_);
    column->addLayout(row);
    return column;
}

void LeftOverPopup::connectParts() {
    connect(kinds_, &QButtonGroup::idToggled, this, [this](int, bool on) {
        if (on) showPage();
    });
    connect(mixture_, &MixturePanel::changed, this, &LeftOverPopup::tell);
    connect(line_, &QComboBox::currentIndexChanged, this, &LeftOverPopup::tell);
    connect(called_, &QLineEdit::textChanged, this, &LeftOverPopup::tell);
    connect(food_, &QLineEdit::textEdited, this, &LeftOverPopup::typeFood);
    connect(foods_, &FoodCompleter::chosen, this, &LeftOverPopup::chooseFood);
}

void LeftOverPopup::open(const LeftOver& left, const QWidget& above) {
    if (kitchen_.draft() == nullptr) return;
    filling_ = true;
    fill(left);
    filling_ = false;
    adjustSize();
    const QPoint corner = above.mapToGlobal(QPoint{0, 0});
    const QRect room = above.screen()->availableGeometry();
    const int x = std::clamp(corner.x() + above.width() - width(), room.left(),
                             std::max(room.left(), room.right() - width()));
    move(x, std::max(room.top(), corner.y() - height() - kSpace1Px));
    show();
    kinds_->checkedButton()->setFocus(Qt::PopupFocusReason);
}

void LeftOverPopup::fill(const LeftOver& left) {
    mixture_->setMixture(kitchen_.draft()->document(), left);
    fillLines(left.lines.empty() ? std::string{} : left.lines.front());
    drip_ = left.drip;
    shares_ = left.shares;
    food_->setText(QString::fromStdString(left.drip.name));
    called_->setText(QString::fromStdString(left.called));
    kinds_->button(static_cast<int>(left.kind))->setChecked(true);
    pages_->setCurrentIndex(pageOf(left.kind));
}

void LeftOverPopup::fillLines(const std::string& chosen) {
    line_->clear();
    lines_.clear();
    const Json& document = kitchen_.draft()->document();
    for (const Json& line : entriesIn(document, "lines")) {
        lines_.push_back(memberText(&line, "id"));
        line_->addItem(lineName(document, lines_.back()));
        if (lines_.back() == chosen) line_->setCurrentIndex(line_->count() - 1);
    }
}

LeftOver LeftOverPopup::choice() const {
    LeftOver left;
    left.kind = static_cast<ResidueKind>(kinds_->checkedId());
    left.called = called_->text().simplified().toStdString();
    if (left.kind == ResidueKind::Mixture) {
        left.lines = mixture_->lines();
        left.mixedAt = mixture_->mixedAt();
        left.shares = shares_;
    }
    if (left.kind == ResidueKind::Line && line_->currentIndex() >= 0)
        left.lines = {lines_[static_cast<std::size_t>(line_->currentIndex())]};
    if (left.kind == ResidueKind::Drip) left.drip = drip_;
    return stillThere(kitchen_.draft()->document(), std::move(left));
}

void LeftOverPopup::showPage() {
    pages_->setCurrentIndex(pageOf(static_cast<ResidueKind>(kinds_->checkedId())));
    tell();
}

// What runs off is a food; a recipe does not run off as a whole.
void LeftOverPopup::chooseFood(const FoodOffer& offer) {
    if (!offer.choice.recipe.empty()) return;
    drip_ = offer.choice;
    food_->setText(QString::fromStdString(offer.choice.name));
    tell();
}

void LeftOverPopup::say(const QString& sentence) {
    sentence_->setText(sentence);
    for (QAbstractButton* kind : kinds_->buttons()) kind->setAccessibleDescription(sentence);
}

// What is typed names no food until one is chosen.
void LeftOverPopup::typeFood(const QString& text) {
    if (text.toStdString() == drip_.name) return;
    drip_ = {};
    tell();
}

void LeftOverPopup::tell() {
    if (!filling_) emit changed();
}

void LeftOverPopup::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
        close();
        return;
    }
    QFrame::keyPressEvent(event);
}

void LeftOverPopup::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    // Whoever types a food and goes on means the best that fits.
    const bool open = choice().kind == ResidueKind::Drip && !isComplete(choice());
    if (const auto best = open ? foods_->best() : std::nullopt) chooseFood(*best);
    emit closed();
}

}  // namespace nettare
