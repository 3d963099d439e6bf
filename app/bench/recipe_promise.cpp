#include "app/bench/recipe_promise.h"

#include <QTimer>

#include "app/bench/bench_desk.h"
#include "app/bench/series_words.h"
#include "app/session/kitchen_session.h"
#include "core/ledger/followed_in.h"
#include "core/publish/enough_text.h"

namespace nettare {

namespace {

constexpr int kPauseMs = 200;

QStringList sentencesOn(const Evaluation& recipe, const SeriesKey& key,
                        const std::vector<std::string>& tags) {
    const auto series = followedIn(recipe.dossier, key, tags);
    if (!series) return {};
    const auto answers = enoughWeighings(recipe.dossier, recipe.cooked, *series);
    if (!answers) return {};
    QStringList sentences;
    for (const EnoughWeighings& answer : *answers)
        sentences << unbroken(enoughText(answer, recipe.dossier.main()));
    return sentences;
}

}  // namespace

RecipePromise::RecipePromise(BenchDesk& desk, QObject* parent)
    : QObject{parent}, desk_{desk}, soon_{new QTimer{this}} {
    soon_->setSingleShot(true);
    soon_->setInterval(kPauseMs);
    connect(soon_, &QTimer::timeout, this, &RecipePromise::ask);
    connect(&desk_, &BenchDesk::seriesChanged, this, &RecipePromise::followSeries);
    connect(&desk_.kitchen(), &KitchenSession::draftOpened, this, &RecipePromise::followDraft);
    followDraft();
}

void RecipePromise::look(bool isLookedAt) {
    isLookedAt_ = isLookedAt;
    askSoon();
}

void RecipePromise::followDraft() {
    disconnect(draft_);
    if (const DraftSession* const draft = desk_.kitchen().draft())
        draft_ = connect(draft, &DraftSession::evaluationChanged, this, &RecipePromise::askSoon);
    askSoon();
}

// What was said of another series is not said of this one.
void RecipePromise::followSeries() {
    const BenchSeries* const series = desk_.series();
    if (series != nullptr && !(series->key == key_ && series->tags == tags_)) {
        key_ = series->key;
        tags_ = series->tags;
        ++asked_;
        say({});
    }
    askSoon();
}

void RecipePromise::askSoon() {
    if (isLookedAt_) soon_->start();
}

void RecipePromise::ask() {
    const DraftSession* const draft = desk_.kitchen().draft();
    const BenchSeries* const series = desk_.series();
    const int asked = ++asked_;
    if (draft == nullptr || series == nullptr || !draft->evaluation()) {
        say({});
        return;
    }
    // One after the other: what is asked meanwhile is asked once, when that is done.
    if (tasks_.busy()) return;
    tasks_.run(
        tr("Seeing what more weighings would tell"), *this,
        [recipe = draft->evaluation(), key = series->key, tags = series->tags](const Progress&) {
            return sentencesOn(*recipe, key, tags);
        },
        [this, asked](const QStringList& sentences) {
            if (asked == asked_)
                say(sentences);
            else
                askSoon();
        });
}

void RecipePromise::say(const QStringList& sentences) {
    if (sentences_ == sentences) return;
    sentences_ = sentences;
    emit changed();
}

}  // namespace nettare
