#include "app/sheet/line_note.h"

#include <QVBoxLayout>

#include "app/session/kitchen_session.h"
#include "app/sheet/assume_bar.h"
#include "app/sheet/bind_bar.h"
#include "app/sheet/density_offer.h"
#include "app/sheet/flow_layout.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/mark_icon.h"
#include "app/widgets/plain_tip.h"
#include "app/widgets/way_mark.h"

namespace nettare {

LineNote::LineNote(KitchenSession& kitchen, QWidget* parent)
    : QFrame{parent},
      kitchen_{kitchen},
      mark_{new WayMark},
      sentence_{new QLabel},
      othersLabel_{new QLabel{tr("Other ways")}},
      others_{new QWidget},
      flow_{new FlowLayout{kSpace1Px, kSpace1Px, others_}},
      density_{new QPushButton},
      assume_{new QPushButton{tr("Assume grams…")}},
      bind_{new QPushButton{tr("From the ledger…")}},
      rows_{new QPushButton{tr("Which row…")}},
      finding_{new MessageLine},
      bar_{new AssumeBar},
      binding_{new BindBar{kitchen}} {
    setObjectName(QStringLiteral("lineNote"));
    sentence_->setObjectName(QStringLiteral("waySentence"));
    finding_->setObjectName(QStringLiteral("lineFinding"));
    assume_->setObjectName(QStringLiteral("assumeGrams"));
    bind_->setObjectName(QStringLiteral("bindLine"));
    bind_->setToolTip(tr("Take its weight from a series or a reading, or weigh it now"));
    rows_->setObjectName(QStringLiteral("whichRow"));
    rows_->setToolTip(tr("Rows of the tables that this food could be, side by side"));
    sentence_->setWordWrap(true);
    sentence_->setTextFormat(Qt::PlainText);
    sentence_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    sentence_->setFocusPolicy(Qt::NoFocus);
    othersLabel_->setProperty("tone", QStringLiteral("secondary"));
    density_->setObjectName(QStringLiteral("stateDensity"));
    for (QPushButton* button : {density_, assume_, bind_, rows_})
        button->setProperty("quiet", true);
    auto* how = new QHBoxLayout;
    how->setSpacing(kSpace3Px);
    how->addWidget(mark_, 0, Qt::AlignTop);
    how->addWidget(sentence_, 1);
    // The label stands on the line of the buttons' text.
    othersLabel_->setMinimumHeight(assume_->sizeHint().height());
    flow_->addWidget(othersLabel_);
    flow_->addWidget(density_);
    flow_->addWidget(assume_);
    flow_->addWidget(bind_);
    flow_->addWidget(rows_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(kSpace2Px, kSpace2Px, kSpace2Px, 0);
    column->setSpacing(kSpace1Px);
    column->addWidget(finding_);
    column->addLayout(how);
    column->addWidget(others_);
    column->addWidget(bar_);
    column->addWidget(binding_);
    connect(density_, &QPushButton::clicked, this, &LineNote::takeDensity);
    connect(assume_, &QPushButton::clicked, this, &LineNote::assume);
    connect(bind_, &QPushButton::clicked, this, &LineNote::bind);
    connect(binding_, &BindBar::bound, this, [this] { follow(); });
    connect(binding_, &BindBar::weighAsked, this, &LineNote::weighAsked);
    connect(rows_, &QPushButton::clicked, this, &LineNote::rowsAsked);
    connect(finding_, &MessageLine::actionTriggered, this, &LineNote::takeBetter);
    connect(bar_, &AssumeBar::assumed, this, [this] { follow(); });
}

void LineNote::setDraft(DraftSession* draft) {
    if (draft_ != nullptr) draft_->disconnect(this);
    draft_ = draft;
    if (draft != nullptr) connect(draft, &DraftSession::evaluationChanged, this, &LineNote::follow);
    bar_->leave();
    binding_->leave();
    follow();
}

void LineNote::setLine(const std::string& line) {
    if (line_ == line) return;
    line_ = line;
    bar_->leave();
    binding_->leave();
    follow();
}

void LineNote::follow() {
    const LineNoteTexts texts = draft_ == nullptr ? LineNoteTexts{} : lineNoteTexts(*draft_, line_);
    setVisible(!texts.sentence.isEmpty());
    if (texts.sentence.isEmpty()) return;
    mark_->setMark(texts.mark, texts.word);
    sentence_->setText(texts.sentence);
    showOthers(texts.others);
    showFindings(texts.findings);
    showDensity();
    for (QPushButton* button : {assume_, bind_}) button->setVisible(!draft_->readOnly());
}

// The buttons stay while the ways are as many, so that one that has the focus keeps it.
void LineNote::showOthers(const std::vector<OtherWay>& others) {
    while (buttons_.size() > others.size()) {
        delete buttons_.back();
        buttons_.pop_back();
    }
    while (buttons_.size() < others.size()) {
        auto* button = new QPushButton;
        button->setProperty("quiet", true);
        button->setAutoDefault(false);
        flow_->addWidget(button);
        buttons_.push_back(button);
    }
    for (QPushButton* button : {density_, assume_, bind_, rows_}) {
        flow_->removeWidget(button);
        flow_->addWidget(button);
    }
    for (std::size_t i = 0; i < others.size(); ++i) {
        QPushButton& button = *buttons_[i];
        button.disconnect(this);
        button.setText(others[i].text);
        button.setIcon(iconOf(others[i].mark));
        button.setToolTip(plainTip(others[i].sentence));
        button.setAccessibleDescription(others[i].sentence);
        button.setEnabled(!draft_->readOnly());
        connect(&button, &QPushButton::clicked, this, [this, way = others[i].way] { take(way); });
    }
    othersLabel_->setText(others.empty() ? tr("No other way is open") : tr("Other ways (F4)"));
}

// One finding is told at a time: once it is settled, the next one is.
void LineNote::showFindings(const std::vector<FindingText>& findings) {
    better_.reset();
    if (findings.empty()) return finding_->clear();
    better_ = findings.front().better;
    QStringList sentences;
    for (const FindingText& finding : findings) sentences += finding.sentence;
    const bool offer = better_.has_value() && !draft_->readOnly();
    finding_->say(MessageKind::Warning, sentences.join(QLatin1Char{'\n'}),
                  offer ? tr("Take %1 (F9)").arg(wordOf(*better_)) : QString{});
}

void LineNote::showDensity() {
    const auto offer = draft_->readOnly() ? std::nullopt : densityOffer(kitchen_, line_);
    density_->setVisible(offer.has_value());
    if (!offer) return;
    density_->setText(densityOfferText(*offer));
    density_->setAccessibleDescription(QString::fromStdString(offer->reason()));
    density_->setToolTip(plainTip(QString::fromStdString(offer->reason())));
}

void LineNote::takeDensity() {
    const auto offer = densityOffer(kitchen_, line_);
    if (draft_ == nullptr || !offer) return;
    if (const auto done = stateDensity(*draft_, line_, *offer); !done) emit failed(done.error());
}

void LineNote::take(Way way) {
    if (draft_ == nullptr || draft_->readOnly()) return;
    run(setWay(draft_->document(), line_, way));
}

void LineNote::takeNext(bool back) {
    emit touched();
    if (draft_ == nullptr) return;
    if (const auto way = wayBeside(*draft_, line_, back)) take(*way);
}

void LineNote::takeBetter() {
    emit touched();
    if (better_) take(*better_);
}

void LineNote::assume() {
    if (draft_ == nullptr || draft_->readOnly() || isHidden()) return;
    bar_->ask(*draft_, line_);
    emit touched();
}

void LineNote::bind() {
    if (draft_ == nullptr || draft_->readOnly() || isHidden()) return;
    binding_->ask(*draft_, line_);
    emit touched();
}

void LineNote::run(const Result<LineEdit>& edit) {
    if (!edit) return emit failed(edit.error());
    draft_->endTyping();
    if (const auto done = draft_->apply(edit->edit); !done) emit failed(done.error());
    draft_->endTyping();
}

}  // namespace nettare
