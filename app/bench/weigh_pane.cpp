#include "app/bench/weigh_pane.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_type.h"
#include "app/bench/bench_words.h"
#include "app/bench/feedback.h"
#include "app/bench/tare_row.h"
#include "app/bench/two_line_button.h"
#include "app/bench/weigh_display.h"
#include "app/bench/weigh_entries.h"
#include "app/bench/weigh_pane_parts.h"
#include "app/scale/shown_number.h"
#include "app/scale/weighing.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/sheet/draft_sentence.h"
#include "app/words/error_sentence.h"
#include "core/quantity/unit.h"

namespace nettare {

WeighPane::WeighPane(BenchDesk& desk, KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Weigh"), Role::Raised, parent},
      desk_{desk},
      kitchen_{kitchen},
      tareRow_{new TareRow},
      display_{new WeighDisplay},
      gross_{new QLineEdit},
      pieces_{new QLineEdit},
      sum_{new QLabel},
      subject_{new TwoLineButton},
      piecesBox_{new QWidget},
      takeBack_{benchButton(tr("Take back"), "takeBackLast")},
      record_{benchButton(tr("Record · Enter"), "recordReading")},
      next_{benchButton(tr("Next food"), "nextFood")},
      feedback_{new Feedback} {
    setObjectName(QStringLiteral("weighPane"));
    setEntry(gross_);
    buildWeighPane(*this, {*tareRow_, *display_, *gross_, *sum_, *subject_, *piecesBox_, *pieces_,
                           *takeBack_, *record_, *next_, *feedback_});
    connectParts();
    followDesk();
    followDraft();
}

void WeighPane::connectParts() {
    connect(tareRow_, &TareRow::chosen, this, [this](int index) {
        chooseTare(index);
        gross_->setFocus();
    });
    connect(tareRow_, &TareRow::moreAsked, this, &WeighPane::taresAsked);
    connect(subject_, &QPushButton::clicked, this, &WeighPane::subjectAsked);
    connect(gross_, &QLineEdit::textEdited, this, [this] { said_.clear(); });
    connect(gross_, &QLineEdit::textChanged, this, &WeighPane::show);
    connect(pieces_, &QLineEdit::textChanged, this, [this] {
        bool whole = false;
        const int pieces = pieces_->text().trimmed().toInt(&whole);
        state_.pieces = whole ? pieces : 0;
        show();
    });
    connect(takeBack_, &QPushButton::clicked, this, &WeighPane::takeBackLast);
    connect(record_, &QPushButton::clicked, this, &WeighPane::record);
    connect(next_, &QPushButton::clicked, this, &WeighPane::nextFood);
    connect(&desk_, &BenchDesk::equipmentChanged, this, &WeighPane::followDesk);
    connect(&desk_, &BenchDesk::recorded, this, &WeighPane::recorded);
    connect(&desk_, &BenchDesk::failed, this, &WeighPane::failed);
    connect(&kitchen_, &KitchenSession::draftOpened, this, &WeighPane::followDraft);
}

void WeighPane::followDesk() {
    const KnownScale* const scale = desk_.scale();
    if (scale != nullptr &&
        (scale->name != state_.scale.name || scale->unit != state_.scale.unit)) {
        shownTare_.reset();
        bowl_.reset();
        state_.tare = {};
        state_.wanted.reset();
    }
    state_.scale = scale == nullptr ? KnownScale{} : *scale;
    fillTares();
    show();
}

void WeighPane::followDraft() {
    if (std::holds_alternative<Purpose>(state_.subject)) {
        state_.subject = {};
        state_.wanted.reset();
    }
    if (DraftSession* draft = kitchen_.draft())
        connect(draft, &DraftSession::evaluationChanged, this, &WeighPane::show);
    show();
}

void WeighPane::setRoomy(bool roomy) {
    display_->setDigits(roomy);
}

void WeighPane::fillTares() {
    tares_ = {BenchTare{}};
    for (const KnownVessel& vessel : desk_.equipment().vessels)
        if (vessel.unit == state_.scale.unit)
            tares_.push_back(
                {TareKind::Vessel, vessel.name, vessel.tare, vessel.entry, vessel.at, true});
    if (shownTare_) tares_.push_back(*shownTare_);
    if (bowl_) tares_.push_back(*bowl_);
    tares_.push_back({TareKind::Jar, {}, {}, {}, {}, false});
    if (state_.tare.kind == TareKind::Jar) tares_.back() = state_.tare;
    QStringList texts;
    int chosen = 0;
    for (std::size_t i = 0; i < tares_.size(); ++i) {
        if (tares_[i].kind == state_.tare.kind && tares_[i].vessel == state_.tare.vessel)
            chosen = static_cast<int>(i);
        texts += tareWords(tares_[i], state_.scale.unit);
    }
    state_.tare = tares_[static_cast<std::size_t>(chosen)];
    tareRow_->setTares(texts, chosen);
}

void WeighPane::chooseTare(int index) {
    if (index < 0 || static_cast<std::size_t>(index) >= tares_.size()) return;
    state_.tare = tares_[static_cast<std::size_t>(index)];
    said_.clear();
    fillTares();
    show();
}

void WeighPane::weigh(const WeighSubject& subject, std::optional<double> wantedGrams) {
    if (!isSame(subject, state_.subject)) state_.before.clear();
    state_.subject = subject;
    state_.wanted.reset();
    const Unit* const unit = findUnit(state_.scale.unit, MeasureSystem::Metric);
    if (wantedGrams && unit != nullptr && state_.scale.readability > Decimal{})
        state_.wanted = roundedToStep(Decimal::fromDouble(*wantedGrams / unit->factor.value()),
                                      state_.scale.readability);
    said_.clear();
    setPieces(1);
    show();
    gross_->setFocus();
}

std::optional<Decimal> WeighPane::typed() const {
    const auto shown = readShown(gross_->text().toStdString(), groupMarkHere());
    return shown ? std::optional{*shown} : std::nullopt;
}

void WeighPane::setPieces(int pieces) {
    pieces_->setText(QString::number(std::clamp(pieces, 1, 9999)));
}

bool WeighPane::useAsTare() {
    const auto shown = typed();
    if (!shown || roundedToStep(*shown, state_.scale.readability) != *shown) return false;
    shownTare_ = BenchTare{TareKind::Shown, {}, *shown, freshUuid(), now(), false};
    state_.tare = *shownTare_;
    gross_->clear();
    fillTares();
    show();
    return true;
}

bool WeighPane::countDown() {
    const auto shown = typed();
    if (!shown && !state_.wanted) return false;
    state_.wanted = shown;
    gross_->clear();
    show();
    return true;
}

void WeighPane::show() {
    const auto shown = typed();
    const QString refusal = shown ? benchRefusal(state_, *shown) : QString{};
    const SubjectWords words = benchSubject(state_, kitchen_.draft());
    subject_->setTexts(words.what, words.why);
    piecesBox_->setVisible(countsPieces(state_.subject) && !state_.isJarBefore());
    sum_->setText(tareSum(state_));
    showNumber(shown);
    const bool ready = !state_.scale.name.empty() && !writing_;
    record_->setEnabled(ready && shown && refusal.isEmpty());
    takeBack_->setEnabled(!sitting_.empty() && !writing_);
    next_->setEnabled(kitchen_.draft() != nullptr && !stillToWeigh(*kitchen_.draft()).empty());
    showHint(shown, refusal);
    emit stateChanged();
}

void WeighPane::showNumber(const std::optional<Decimal>& shown) {
    const auto net = shown ? state_.netOf(*shown) : std::nullopt;
    if (state_.scale.name.empty()) return display_->show({}, {}, {});
    if (!state_.wanted)
        return display_->show(net ? benchNumber(*net) : QString{}, unitWithin(state_.scale),
                              state_.isJarBefore() ? tr("jar, before") : tr("net"));
    const ToGo left = toGo(state_, shown);
    display_->show(
        left.number, left.words,
        tr("net %1 of %2")
            .arg(net ? benchNumber(*net) : tr("–"), benchMass(*state_.wanted, state_.scale.unit)));
}

void WeighPane::showHint(const std::optional<Decimal>& shown, const QString& refusal) {
    if (!refusal.isEmpty()) return feedback_->say(FeedbackKind::Caution, refusal);
    if (!gross_->text().isEmpty() && !shown) {
        const auto read = readShown(gross_->text().toStdString(), groupMarkHere());
        return feedback_->say(FeedbackKind::Caution,
                              QString::fromStdString(errorSentence(read.error())));
    }
    if (const QString caution = shown ? benchCaution(state_, *shown) : QString{};
        !caution.isEmpty())
        return feedback_->say(FeedbackKind::Caution, caution);
    if (!said_.isEmpty()) return;
    feedback_->say(FeedbackKind::Hint, benchHint(state_, shown.has_value()));
}

void WeighPane::record() {
    if (writing_) return;
    const auto shown = typed();
    if (!shown || state_.scale.name.empty()) {
        // A key that bounces after a reading finds nothing typed and says nothing.
        if (!gross_->text().isEmpty()) refuse(feedback_->text());
        return;
    }
    if (const QString refusal = benchRefusal(state_, *shown); !refusal.isEmpty())
        return refuse(refusal);
    const auto recording = benchRecording(state_, *shown, kitchen_.draft(), now());
    if (!recording) return failed(recording.error());
    writing_ = true;
    show();
    desk_.record(recording->entries, recording->edit);
}

void WeighPane::recorded(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    if (entry.kind == EntryKind::Superseded) return tookBack(entry);
    if (entry.kind != EntryKind::Shown || !writing_) return;
    writing_ = false;
    const auto net = state_.netOf(entry.shown);
    said_ = recordedWords(entry, net, benchSubject(state_, kitchen_.draft()).what);
    sitting_.push_back(entry);
    state_ = afterRecording(std::move(state_), entry);
    if (shownTare_) shownTare_->inLedger = true;
    bowl_.reset();
    if (state_.tare.kind != TareKind::Jar)
        bowl_ = BenchTare{TareKind::SameBowl, {}, entry.shown, entry.id, entry.at, true};
    gross_->clear();
    fillTares();
    show();
    feedback_->say(FeedbackKind::Recorded, said_);
}

// Here or in the list of the ledger.
void WeighPane::tookBack(const LedgerEntry& about) {
    if (about.refersTo == takingBack_) takingBack_.clear();
    const auto taken = std::ranges::find(sitting_, about.refersTo, &LedgerEntry::id);
    if (taken != sitting_.end()) {
        said_ = takenBackWords(*taken, about.reason);
        stepBack(*taken);
        sitting_.erase(taken);
    } else {
        said_ = tr("Taken back: %1").arg(QString::fromStdString(about.reason));
    }
    show();
    feedback_->say(FeedbackKind::TakenBack, said_);
}

// Bowl, jar and pair are again as they were before the reading that was taken back.
void WeighPane::stepBack(const LedgerEntry& taken) {
    if (state_.before == taken.id) state_.before.clear();
    const bool ofTare = state_.tare.entry == taken.id;
    if (bowl_ && bowl_->entry == taken.id) bowl_.reset();
    const std::string& earlier = taken.takenFrom.empty() ? taken.tare : taken.takenFrom;
    const auto before =
        std::ranges::find_if(desk_.ledger(), [&earlier](const LedgerReading& reading) {
            return !earlier.empty() && reading.entry().id == earlier;
        });
    if (ofTare && before != desk_.ledger().end() &&
        (state_.tare.kind == TareKind::Jar || before->entry().state != WeighedState::Empty)) {
        state_.tare.shown = before->entry().shown;
        state_.tare.entry = earlier;
        state_.tare.at = before->entry().at;
        if (state_.tare.kind == TareKind::SameBowl) bowl_ = state_.tare;
    } else if (ofTare) {
        state_.tare = state_.tare.kind == TareKind::Jar
                          ? BenchTare{TareKind::Jar, {}, {}, {}, {}, false}
                          : BenchTare{};
    }
    fillTares();
}

void WeighPane::refuse(const QString& sentence) {
    said_ = sentence;
    feedback_->say(FeedbackKind::Refused, sentence);
}

// What was typed stays, to be tried again.
void WeighPane::failed(const Error& error) {
    writing_ = false;
    takingBack_.clear();
    show();
    const DraftSession* const draft = kitchen_.draft();
    refuse(draft == nullptr ? QString::fromStdString(errorSentence(error))
                            : draftSentence(draft->document(), error));
}

void WeighPane::takeBackLast() {
    if (writing_ || !takingBack_.empty()) return;
    if (sitting_.empty()) return refuse(tr("Nothing was recorded here yet."));
    takingBack_ = sitting_.back().id;
    desk_.takeBack(takingBack_, slipOfTheHand());
}

void WeighPane::nextFood() {
    if (kitchen_.draft() == nullptr) return;
    const std::vector<ToWeigh> list = stillToWeigh(*kitchen_.draft());
    if (list.empty()) return;
    const auto now = std::ranges::find_if(
        list, [this](const ToWeigh& each) { return isSame(each.purpose, state_.subject); });
    const auto next = now == list.end() || std::next(now) == list.end() ? list.begin() : now + 1;
    weigh(next->purpose, next->grams);
}

}  // namespace nettare
