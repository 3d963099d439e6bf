#include "app/scale/scale_strip.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStyle>

#include <algorithm>

#include "app/scale/last_readings.h"
#include "app/scale/left_over_button.h"
#include "app/scale/left_over_edit.h"
#include "app/scale/scale_strip_parts.h"
#include "app/scale/shown_number.h"
#include "app/scale/vessel_entries.h"
#include "app/scale/weighing_words.h"
#include "app/session/kitchen_session.h"
#include "app/session/now.h"
#include "app/sheet/draft_sentence.h"
#include "app/theme/spacing.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

constexpr int kMostPieces = 9999;

void setRefused(QLineEdit& field, bool refused) {
    if (field.property("refused").toBool() == refused) return;
    field.setProperty("refused", refused);
    field.style()->unpolish(&field);
    field.style()->polish(&field);
}

/// Shows the texts and the chosen one; does nothing while they are as before, so that an open list
/// stays.
void fill(QComboBox& box, const QStringList& texts, int current) {
    const QSignalBlocker quiet{box};
    QStringList before;
    for (int i = 0; i < box.count(); ++i) before += box.itemText(i);
    if (before != texts) {
        box.clear();
        box.addItems(texts);
    }
    box.setCurrentIndex(current);
}

}  // namespace

ScaleStrip::ScaleStrip(KitchenSession& kitchen, QWidget* parent)
    : Pane{tr("Scale"), Role::Raised, parent},
      kitchen_{kitchen},
      scale_{new QComboBox},
      tare_{new QComboBox},
      for_{new QComboBox},
      gross_{new QLineEdit},
      pieces_{new QLineEdit},
      net_{new QLabel},
      piecesLabel_{new QLabel},
      note_{new QLabel},
      addTo_{new QCheckBox},
      leftOver_{new LeftOverButton{kitchen}},
      vessels_{new VesselEntries{kitchen, this}},
      useAsTare_{new QPushButton{tr("Use as tare")}},
      takeOff_{new QPushButton{tr("Take it off again")}},
      record_{new QPushButton{tr("Record reading")}} {
    setHairlines(Qt::TopEdge);
    setEntry(gross_);
    build();
    connectFields();
    connect(&kitchen_, &KitchenSession::draftOpened, this, &ScaleStrip::followDraft);
    connect(&kitchen_, &KitchenSession::recorded, this, [this] {
        gross_->clear();
        takeOff_->setVisible(true);
        recordedStep_ = kitchen_.draft() == nullptr ? 0 : kitchen_.draft()->undoStack().index();
        showNote(replaced_.isEmpty()
                     ? tr("Recorded, and in the ledger for good. Undo takes it off the recipe "
                          "again.")
                     : tr("Recorded in place of %1; the ledger has both. Undo brings %1 back.")
                           .arg(replaced_),
                 "done");
    });
    followDraft();
}

void ScaleStrip::build() {
    const ScaleStripParts parts{*scale_,       *tare_,    *gross_, *pieces_, *net_,
                                *piecesLabel_, *for_,     *note_,  *addTo_,  *leftOver_,
                                *useAsTare_,   *takeOff_, *record_};
    buildScaleStrip(*this, parts);
    gross_->installEventFilter(this);
    pieces_->installEventFilter(this);
    takeOff_->hide();
}

void ScaleStrip::connectFields() {
    connect(scale_, &QComboBox::currentIndexChanged, this, [this] {
        shownTare_.reset();
        fillTares();
        showNet();
    });
    connect(tare_, &QComboBox::currentIndexChanged, this, &ScaleStrip::showNet);
    connect(for_, &QComboBox::currentIndexChanged, this, [this] {
        wanted_ = purpose().kind;
        addTo_->setChecked(false);
        takeOff_->hide();
        showNet();
    });
    connect(gross_, &QLineEdit::textChanged, this, &ScaleStrip::showNet);
    connect(pieces_, &QLineEdit::textChanged, this, &ScaleStrip::showNet);
    connect(addTo_, &QCheckBox::toggled, this, &ScaleStrip::showNet);
    connect(leftOver_, &LeftOverButton::chosen, this, [this] {
        addTo_->setChecked(false);
        fillPurposes();
        showNet();
    });
    connect(leftOver_, &LeftOverButton::done, this, &ScaleStrip::begin);
    connect(useAsTare_, &QPushButton::clicked, this, &ScaleStrip::useAsTare);
    connect(takeOff_, &QPushButton::clicked, this, &ScaleStrip::takeOff);
    connect(record_, &QPushButton::clicked, this, &ScaleStrip::record);
}

bool ScaleStrip::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::KeyPress && (object == gross_ || object == pieces_)) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        // A key held down or bouncing must not record twice.
        if (enter && !key->isAutoRepeat()) record();
        if (enter) return true;
    }
    return Pane::eventFilter(object, event);
}

void ScaleStrip::followDraft() {
    DraftSession* draft = kitchen_.draft();
    shownTare_.reset();
    // Scales go by ids of their document; each draft begins with its own first one.
    scales_.clear();
    line_.clear();
    wanted_ = PurposeKind::Line;
    leftOver_->forget();
    takeOff_->hide();
    {
        const QSignalBlocker quiet{gross_};
        gross_->clear();
        pieces_->setText(QStringLiteral("1"));
    }
    if (draft != nullptr)
        connect(draft, &DraftSession::evaluationChanged, this, &ScaleStrip::follow);
    const bool editable = draft != nullptr && !draft->readOnly();
    for (QWidget* part :
         {static_cast<QWidget*>(scale_), static_cast<QWidget*>(tare_), static_cast<QWidget*>(for_),
          static_cast<QWidget*>(gross_), static_cast<QWidget*>(pieces_),
          static_cast<QWidget*>(addTo_), static_cast<QWidget*>(leftOver_)})
        part->setEnabled(editable);
    follow();
}

void ScaleStrip::follow() {
    if (kitchen_.draft() == nullptr) return;
    fillScales();
    fillPurposes();
    showNet();
}

void ScaleStrip::fillScales() {
    const int before = scale_->currentIndex();
    const std::string chosen = before < 0 || static_cast<std::size_t>(before) >= scales_.size()
                                   ? std::string{}
                                   : scales_[static_cast<std::size_t>(before)].scale.id;
    scales_ = scaleChoices(*kitchen_.draft());
    QStringList texts;
    int current = 0;
    for (const ScaleChoice& choice : scales_) {
        if (choice.scale.id == chosen) current = static_cast<int>(texts.size());
        texts += scaleText(choice.scale);
    }
    fill(*scale_, texts, current);
    fillTares();
}

void ScaleStrip::fillTares() {
    if (scale_->currentIndex() < 0) return;
    const ScaleEntry& scale = scales_[static_cast<std::size_t>(scale_->currentIndex())].scale;
    const int before = tare_->currentIndex();
    const Tare chosen = before < 0 || static_cast<std::size_t>(before) >= tares_.size()
                            ? Tare{}
                            : tares_[static_cast<std::size_t>(before)];
    tares_ = {Zeroed{}};
    if (shownTare_) tares_.emplace_back(*shownTare_);
    for (const VesselEntry& vessel : vesselChoices(*kitchen_.draft(), scale.unit))
        tares_.emplace_back(vessel);
    QStringList texts;
    for (const Tare& tare : tares_) texts += tareText(tare, scale);
    const auto text = tareText(chosen, scale);
    fill(*tare_, texts, std::max(0, static_cast<int>(texts.indexOf(text))));
}

// What was wanted last, of the line that the cursor is on now.
void ScaleStrip::fillPurposes() {
    leftOver_->follow(line_);
    purposes_ = purposesOf(*kitchen_.draft(), line_, leftOver_->choice());
    QStringList texts;
    for (const Purpose& each : purposes_) texts += purposeText(*kitchen_.draft(), each);
    const auto found = std::ranges::find(purposes_, wanted_, &Purpose::kind);
    fill(*for_, texts, found == purposes_.end() ? 0 : static_cast<int>(found - purposes_.begin()));
}

Purpose ScaleStrip::purpose() const {
    const int index = for_->currentIndex();
    return index < 0 || static_cast<std::size_t>(index) >= purposes_.size()
               ? Purpose{}
               : purposes_[static_cast<std::size_t>(index)];
}

void ScaleStrip::setLine(const QString& line) {
    const std::string id = line.toStdString();
    if (id == line_ || kitchen_.draft() == nullptr) return;
    line_ = id;
    if (wanted_ != PurposeKind::Series) wanted_ = PurposeKind::Line;
    addTo_->setChecked(false);
    takeOff_->hide();
    fillPurposes();
    showNet();
}

void ScaleStrip::begin() {
    gross_->setFocus(Qt::ShortcutFocusReason);
    gross_->selectAll();
}

void ScaleStrip::weighFor(const Purpose& purpose) {
    if (kitchen_.draft() == nullptr) return;
    wanted_ = purpose.kind;
    addTo_->setChecked(false);
    if (purpose.leftOver) leftOver_->choose(*purpose.leftOver);
    fillPurposes();
    showNet();
    begin();
}

std::optional<Weighing> ScaleStrip::typed(QString& refusal) const {
    if (scale_->currentIndex() < 0 || tare_->currentIndex() < 0) return {};
    const std::string text = gross_->text().trimmed().toStdString();
    if (text.empty()) return {};
    const auto shown = readShown(text, groupMarkHere());
    if (!shown) {
        refusal = QString::fromStdString(errorSentence(shown.error()));
        return {};
    }
    const ScaleChoice& scale = scales_[static_cast<std::size_t>(scale_->currentIndex())];
    Weighing weighing{scale.scale,
                      scale.isNew,
                      tares_[static_cast<std::size_t>(tare_->currentIndex())],
                      {},
                      *shown,
                      1,
                      !addTo_->isChecked()};
    if (purpose().kind == PurposeKind::Series) {
        bool whole = false;
        weighing.pieces = pieces_->text().trimmed().toInt(&whole);
        if (!whole || weighing.pieces < 1 || weighing.pieces > kMostPieces) {
            refusal = tr("“%1” is no number of pieces; type a whole number from 1 to %2.")
                          .arg(pieces_->text())
                          .arg(kMostPieces);
            return {};
        }
    }
    return weighing;
}

void ScaleStrip::showNet() {
    const bool pieces = purpose().kind == PurposeKind::Series;
    pieces_->setVisible(pieces);
    piecesLabel_->setVisible(pieces);
    leftOver_->setVisible(isOfLeftOver());
    showAddTo();
    QString refusal;
    const auto weighing = typed(refusal);
    net_->setText(weighing ? massText(netOf(*weighing), weighing->scale) : tr("–"));
    net_->setAccessibleName(weighing ? tr("Net %1").arg(net_->text()) : tr("Net, not known yet"));
    if (weighing) refusal = weighingRefusal(*weighing, purpose().kind);
    setRefused(*gross_, !refusal.isEmpty());
    const QString left = leftOverNote(weighing);
    useAsTare_->setEnabled(weighing.has_value());
    record_->setEnabled(weighing && refusal.isEmpty() && !purposes_.empty() && isSaid());
    if (!refusal.isEmpty()) return showNote(refusal, "error");
    if (const QString caution = weighing ? cautionOf(*weighing) : QString{}; !caution.isEmpty())
        return showNote(caution, "warning");
    if (purposes_.empty())
        return showNote(tr("What is weighed can be chosen once the recipe has a line."),
                        "secondary");
    if (gross_->text().isEmpty() && takeOff_->isVisible()) return;
    showNote(left.isEmpty() || (!weighing && addTo_->isVisible()) ? noteBefore() : left,
             "secondary");
}

bool ScaleStrip::isSaid() const {
    return !isOfLeftOver() || isComplete(leftOver_->choice());
}

double ScaleStrip::gramsWith(const Weighing& weighing) const {
    const auto evaluation = kitchen_.draft()->evaluation();
    const double before =
        evaluation && addTo_->isChecked() ? gramsBefore(*evaluation, purpose()) : 0;
    return before + netGramsOf(weighing);
}

QString ScaleStrip::leftOverNote(const std::optional<Weighing>& weighing) const {
    if (!isOfLeftOver() || kitchen_.draft() == nullptr) return {};
    return leftOver_->explain(weighing ? std::optional{gramsWith(*weighing)} : std::nullopt);
}

// A second weighing is most often a second try, so adding up is what one has to say.
void ScaleStrip::showAddTo() {
    const auto evaluation = kitchen_.draft() == nullptr ? nullptr : kitchen_.draft()->evaluation();
    const QString before = evaluation ? weighedBefore(*evaluation, purpose()) : QString{};
    addTo_->setText(tr("Add to %1").arg(before));
    addTo_->setVisible(!before.isEmpty());
}

QString ScaleStrip::cautionOf(const Weighing& weighing) const {
    const auto evaluation = kitchen_.draft() == nullptr ? nullptr : kitchen_.draft()->evaluation();
    if (isOfLeftOver())
        if (QString much = leftOver_->caution(gramsWith(weighing)); !much.isEmpty()) return much;
    const QString count =
        evaluation ? countCaution(weighing, gramsEachBefore(*evaluation, purpose())) : QString{};
    return count.isEmpty() ? coarseCaution(weighing) : count;
}

QString ScaleStrip::noteBefore() const {
    const auto evaluation = kitchen_.draft() == nullptr ? nullptr : kitchen_.draft()->evaluation();
    if (!evaluation) return {};
    QString last = lastReadings(*evaluation, purpose());
    if (weighedBefore(*evaluation, purpose()).isEmpty()) return last;
    return addTo_->isChecked() ? tr("%1 · the next is added").arg(last)
                               : tr("%1 · the next takes its place").arg(last);
}

void ScaleStrip::showNote(const QString& words, const char* tone) {
    note_->setText(words);
    gross_->setAccessibleDescription(words);
    if (note_->property("tone").toString() == QLatin1String{tone}) return;
    note_->setProperty("tone", QLatin1String{tone});
    note_->style()->unpolish(note_);
    note_->style()->polish(note_);
}

void ScaleStrip::useAsTare() {
    QString refusal;
    const auto weighing = typed(refusal);
    if (!weighing) return;
    shownTare_ = ShownTare{freshUuid(), now(), weighing->shown, false};
    gross_->clear();
    fillTares();
    tare_->setCurrentIndex(1);
    begin();
}

void ScaleStrip::record() {
    if (!record_->isEnabled()) return;
    QString refusal;
    auto weighing = typed(refusal);
    if (!weighing || kitchen_.draft() == nullptr) return;
    weighing->vesselEntry = vessels_->entryOf(weighing->tare, *kitchen_.draft());
    Recording recording = recordingOf(*weighing, *kitchen_.draft(), purpose(), now());
    const Json& document = kitchen_.draft()->document();
    const auto edit = isOfLeftOver()
                          ? leftOverEdit(document, recording.reading, leftOver_->choice())
                          : recordReading(document, recording.reading);
    if (!edit) {
        showNote(draftSentence(document, edit.error()), "error");
        return;
    }
    nameSubject(recording, document, *edit);
    recorded_ = recording.reading.gross.id;
    const auto evaluation = kitchen_.draft()->evaluation();
    replaced_ = evaluation && weighing->instead ? weighedBefore(*evaluation, purpose()) : QString{};
    if (shownTare_) shownTare_->inLedger = true;
    fillTares();
    kitchen_.record(recording.entries, *edit, isOfLeftOver() ? leftOver_->brings() : std::nullopt);
}

void ScaleStrip::takeOff() {
    takeOff_->hide();
    begin();
    if (kitchen_.draft() == nullptr) return;
    QUndoStack& steps = kitchen_.draft()->undoStack();
    if (recordedStep_ > 0 && steps.index() == recordedStep_) return steps.undo();
    const auto edit = unbindReading(kitchen_.draft()->document(), recorded_);
    if (edit && kitchen_.draft()->apply(*edit)) kitchen_.draft()->endTyping();
}

}  // namespace nettare
