#include "app/bench/weigh_pane.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>
#include <utility>

#include "app/bench/bench_desk.h"
#include "app/bench/bench_type.h"
#include "app/bench/bench_words.h"
#include "app/bench/feedback.h"
#include "app/bench/tare_row.h"
#include "app/bench/two_line_button.h"
#include "app/bench/weigh_display.h"
#include "app/bench/weigh_entries.h"
#include "app/bench/weigh_pane_parts.h"
#include "app/scale/last_readings.h"
#include "app/scale/shown_number.h"
#include "app/scale/weighing.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/sheet/draft_sentence.h"
#include "app/words/error_sentence.h"
#include "core/quantity/unit.h"

namespace nettare {

namespace {

constexpr std::size_t kMostSitting = 200;  // readings that can be taken back one after the other

bool isSameTare(const BenchTare& a, const BenchTare& b) {
    return a.kind == b.kind && a.vessel == b.vessel && a.entry == b.entry;
}

}  // namespace

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
      pairWith_{new TwoLineButton},
      piecesBox_{new QWidget},
      addTo_{benchButton({}, "addToWeighed")},
      takeBack_{benchButton(tr("Take back"), "takeBackLast")},
      record_{benchButton(tr("Record · Enter"), "recordReading")},
      next_{benchButton(tr("Next food"), "nextFood")},
      feedback_{new Feedback} {
    setObjectName(QStringLiteral("weighPane"));
    setEntry(gross_);
    buildWeighPane(*this, {*tareRow_, *display_, *gross_, *sum_, *subject_, *pairWith_, *piecesBox_,
                           *pieces_, *addTo_, *takeBack_, *record_, *next_, *feedback_});
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
    connect(addTo_, &QPushButton::clicked, this, [this](bool add) {
        state_.add = add;
        said_.clear();
        show();
        gross_->setFocus();
    });
    connect(pairWith_, &QPushButton::clicked, this, [this] {
        state_.before = pairs_.nextTo(state_.before);
        said_.clear();
        show();
        gross_->setFocus();
    });
    connect(takeBack_, &QPushButton::clicked, this, &WeighPane::takeBackLast);
    connect(record_, &QPushButton::clicked, this, &WeighPane::record);
    connect(next_, &QPushButton::clicked, this, &WeighPane::nextFood);
    connect(&desk_, &BenchDesk::equipmentChanged, this, &WeighPane::followDesk);
    connect(&desk_, &BenchDesk::ledgerChanged, this, &WeighPane::lookForPairs);
    connect(&desk_, &BenchDesk::recorded, this, &WeighPane::recorded);
    connect(&desk_, &BenchDesk::notRecorded, this, &WeighPane::notRecorded);
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
        state_.add = false;
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
        if (vessel.unit == state_.scale.unit) tares_.push_back(tareOf(vessel));
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
    addByDefault();
    show();
}

void WeighPane::weigh(const WeighSubject& subject, std::optional<double> wantedGrams) {
    const bool isOther = !isSame(subject, state_.subject);
    state_.subject = subject;
    pairs_.look(subject, desk_.ledger());
    if (isOther) state_.before = pairs_.ofToday();
    state_.wanted.reset();
    addByDefault();
    const Unit* const unit = findUnit(state_.scale.unit, MeasureSystem::Metric);
    if (wantedGrams && unit != nullptr && hasSteps(state_.scale))
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
    if (!shown || !hasSteps(state_.scale) ||
        roundedToStep(*shown, state_.scale.readability) != *shown)
        return false;
    shownTare_ = BenchTare{TareKind::Shown, {}, *shown, freshUuid(), now(), false};
    state_.tare = *shownTare_;
    gross_->clear();
    fillTares();
    addByDefault();
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

void WeighPane::lookForPairs() {
    pairs_.look(state_.subject, desk_.ledger());
    show();
}

void WeighPane::show() {
    const auto shown = typed();
    const QString refusal = shown ? benchRefusal(state_, *shown) : QString{};
    const SubjectWords words = benchSubject(state_, kitchen_.draft());
    subject_->setTexts(words.what, words.why);
    piecesBox_->setVisible(countsPieces(state_.subject) && !state_.isJarBefore());
    showAddTo();
    const SubjectWords pair = pairs_.words(state_.before);
    pairWith_->setTexts(pair.what, pair.why);
    pairWith_->setVisible(isPair(state_.subject) && !pairs_.isEmpty());
    sum_->setText(tareSum(state_));
    showNumber(shown);
    const bool ready = !state_.scale.name.empty() && !writing_;
    record_->setEnabled(ready && shown && refusal.isEmpty());
    takeBack_->setEnabled(!sitting_.empty() && !writing_);
    next_->setEnabled(kitchen_.draft() != nullptr && !stillToWeigh(*kitchen_.draft()).empty());
    showHint(shown, refusal);
    emit stateChanged();
}

QString WeighPane::weighedSoFar() const {
    const auto* const purpose = std::get_if<Purpose>(&state_.subject);
    if (purpose == nullptr || kitchen_.draft() == nullptr) return {};
    const auto evaluation = kitchen_.draft()->evaluation();
    return evaluation ? weighedBefore(*evaluation, *purpose) : QString{};
}

// A second weighing is most often a second try; another portion into the same bowl is not.
void WeighPane::addByDefault() {
    const auto last = std::ranges::find_if(
        sitting_, [this](const Sitting& each) { return each.entry.id == state_.tare.entry; });
    state_.add = state_.tare.kind == TareKind::SameBowl && last != sitting_.end() &&
                 isSame(last->state.subject, state_.subject);
}

void WeighPane::showAddTo() {
    const QString before = weighedSoFar();
    addTo_->setText(tr("Add to %1").arg(before));
    addTo_->setChecked(state_.add);
    addTo_->setVisible(!before.isEmpty() && !state_.isJarBefore());
}

void WeighPane::showNumber(const std::optional<Decimal>& shown) {
    const auto net = shown ? state_.netOf(*shown) : std::nullopt;
    if (state_.scale.name.empty()) return display_->show({}, {}, {});
    if (!state_.wanted)
        return display_->show(net ? benchNumber(*net) : QString{}, unitWithin(state_),
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
    const QString before = weighedSoFar();
    if (before.isEmpty() || state_.scale.name.empty() || state_.isJarBefore())
        return feedback_->say(FeedbackKind::Hint, benchHint(state_, shown.has_value()));
    feedback_->say(FeedbackKind::Hint,
                   state_.add ? tr("%1 so far · the next is added").arg(before)
                              : tr("%1 so far · the next takes its place").arg(before));
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
    // The next number can be typed before the ledger answers.
    writing_ = Sitting{recording->entries.back(), state_, gross_->text()};
    gross_->clear();
    show();
    desk_.record(recording->entries, recording->edit);
}

void WeighPane::recorded(const ChainedEntry& chained) {
    const LedgerEntry& entry = chained.entry;
    if (entry.kind == EntryKind::Superseded) return tookBack(entry);
    if (!writing_ || entry.id != writing_->entry.id) return;
    const Sitting done = *std::exchange(writing_, std::nullopt);
    const auto net = done.state.netOf(entry.shown);
    said_ = recordedWords(entry, net, benchSubject(done.state, kitchen_.draft()).what);
    sitting_.push_back(done);
    if (sitting_.size() > kMostSitting) sitting_.erase(sitting_.begin());
    goOn(done);
    show();
    feedback_->say(FeedbackKind::Recorded, said_);
}

// Another tare or food may have been chosen since the press; that stays.
void WeighPane::goOn(const Sitting& done) {
    const LedgerEntry& entry = done.entry;
    const BenchTare& used = done.state.tare;
    if (used.kind == TareKind::Shown && shownTare_ && shownTare_->entry == used.entry)
        shownTare_->inLedger = true;
    const WeighState after = afterRecording(done.state, entry);
    if (isSameTare(state_.tare, used)) state_.tare = after.tare;
    if (isSame(state_.subject, done.state.subject)) {
        state_.before = pairs_.goOn(done.state, after.before);
        if (state_.wanted == done.state.wanted) state_.wanted = after.wanted;
    }
    bowl_.reset();
    if (used.kind != TareKind::Jar && state_.scale.unit == entry.unit)
        bowl_ = BenchTare{TareKind::SameBowl, {}, entry.shown, entry.id, entry.at, true};
    fillTares();
    addByDefault();
}

// Here or in the list of the ledger.
void WeighPane::tookBack(const LedgerEntry& about) {
    if (about.refersTo == takingBack_) takingBack_.clear();
    const auto taken = std::ranges::find_if(
        sitting_, [&about](const Sitting& each) { return each.entry.id == about.refersTo; });
    if (taken != sitting_.end()) {
        said_ = takenBackWords(taken->entry, about.reason);
        const Sitting back = *taken;
        sitting_.erase(taken);
        stepBack(back);
    } else {
        said_ = tr("Taken back: %1").arg(QString::fromStdString(about.reason));
    }
    show();
    feedback_->say(FeedbackKind::TakenBack, said_);
}

// Bowl, jar and pair are again as they were before the reading that was taken back.
void WeighPane::stepBack(const Sitting& taken) {
    const auto stands = std::ranges::find_if(
        sitting_, [&taken](const Sitting& each) { return each.entry.id == taken.state.before; });
    if (state_.before == taken.entry.id) state_.before.clear();
    if (isPair(state_.subject) && isSame(taken.state.subject, state_.subject) &&
        state_.before.empty() && stands != sitting_.end())
        state_.before = taken.state.before;
    const BenchTare& earlier = taken.state.tare;
    if (bowl_ && bowl_->entry == taken.entry.id) {
        bowl_.reset();
        if (earlier.kind == TareKind::SameBowl) bowl_ = earlier;
    }
    if (state_.tare.entry == taken.entry.id) {
        state_.tare = earlier;
        if (earlier.kind == TareKind::Shown) state_.tare.inLedger = true;
    }
    fillTares();
    addByDefault();
}

void WeighPane::refuse(const QString& sentence) {
    said_ = sentence;
    feedback_->say(FeedbackKind::Refused, sentence);
}

// What was typed stays, to be tried again.
void WeighPane::notRecorded(const LedgerEntry& last) {
    if (last.refersTo == takingBack_) takingBack_.clear();
    if (!writing_ || last.id != writing_->entry.id) return;
    const Sitting undone = *std::exchange(writing_, std::nullopt);
    if (gross_->text().isEmpty()) gross_->setText(undone.typed);
}

void WeighPane::failed(const Error& error) {
    show();
    const DraftSession* const draft = kitchen_.draft();
    refuse(draft == nullptr ? QString::fromStdString(errorSentence(error))
                            : draftSentence(draft->document(), error));
}

void WeighPane::takeBackLast() {
    if (writing_ || !takingBack_.empty()) return;
    if (sitting_.empty()) return refuse(tr("Nothing was recorded here yet."));
    takingBack_ = sitting_.back().entry.id;
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
