#include "app/sheet/food_offers.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <functional>

#include "app/loading/kept_reference.h"
#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostOffers = 8;

struct OfferWords {
    Q_DECLARE_TR_FUNCTIONS(FoodOffers)
};

/// Each word begins a word of the name, or the whole list begins it.
bool holds(const QString& name, const QStringList& words) {
    const QStringList parts = name.split(QLatin1Char{' '}, Qt::SkipEmptyParts);
    return std::ranges::all_of(words, [&](const QString& word) {
        return std::ranges::any_of(
            parts, [&](const QString& part) { return part.startsWith(word, Qt::CaseInsensitive); });
    });
}

TableRow tableRowOf(const Json& food) {
    const Json* table = food.find("table");
    return {memberText(table, "table"), memberText(table, "release"), memberText(table, "number")};
}

/// What the cook calls a food of the table: its name up to the first comma.
std::string ownName(const std::string& name) {
    return name.substr(0, name.find(','));
}

FoodOffer offerOf(const FoodHit& hit) {
    const QString name = QString::fromStdString(hit.name);
    FoodOffer offer{{{}, hit.row, ownName(hit.name)}, name};
    if (hit.energyKcalPer100g)
        offer.text = OfferWords::tr("%1 · %2 kcal/100 g")
                         .arg(name, QString::fromStdString(numberAt(0, *hit.energyKcalPer100g)));
    return offer;
}

FoodOffer offerOf(const ShelvedRecipe& recipe) {
    const KeptReference newest{recipe.id, recipe.revisions};
    return {{{}, {}, recipe.title, newest.text()},
            OfferWords::tr("%1 · your recipe, revision %2")
                .arg(QString::fromStdString(recipe.title))
                .arg(recipe.revisions)};
}

}  // namespace

std::vector<FoodOffer> foodOffers(const KitchenSession& kitchen, const QString& words) {
    const QStringList parts = words.split(QLatin1Char{' '}, Qt::SkipEmptyParts);
    std::vector<FoodOffer> offers;
    if (parts.isEmpty() || kitchen.draft() == nullptr) return offers;
    std::vector<TableRow> known;
    for (const Json& food : entriesIn(kitchen.draft()->document(), "foods")) {
        const std::string name = memberText(&food, "name");
        if (!holds(QString::fromStdString(name), parts)) continue;
        known.push_back(tableRowOf(food));
        offers.push_back({{memberText(&food, "id"), {}, name},
                          OfferWords::tr("%1 · in this recipe").arg(QString::fromStdString(name))});
    }
    for (const ShelvedRecipe& recipe : kitchen.recipes()) {
        const bool itself = QString::fromStdString(recipe.id) == kitchen.draft()->recipe();
        if (recipe.revisions > 0 && !itself && holds(QString::fromStdString(recipe.title), parts))
            offers.push_back(offerOf(recipe));
    }
    const FoodSearch search = kitchen.searchFoods(words, kMostOffers);
    for (const FoodHit& hit : search.hits) {
        if (std::ranges::find(known, hit.row) != known.end()) continue;
        FoodOffer offer = offerOf(hit);
        offer.forgiven = !search.slips.empty();
        if (offer.forgiven) offer.text += OfferWords::tr(" · one slip forgiven");
        offers.push_back(std::move(offer));
    }
    if (offers.size() > kMostOffers) offers.erase(offers.begin() + kMostOffers, offers.end());
    return offers;
}

bool isFoodAsTyped(const KitchenSession& kitchen, const QString& words) {
    return std::ranges::any_of(foodOffers(kitchen, words), std::logical_not{},
                               &FoodOffer::forgiven);
}

void applyOffer(KitchenSession& kitchen, const Edit& edit, const FoodOffer& offer,
                std::function<void(const Result<void>&)> done) {
    DraftSession& draft = *kitchen.draft();
    if (!offer.choice.recipe.empty()) return kitchen.applyWithRecipes(edit, std::move(done));
    const auto food = offer.choice.existing.empty() ? kitchen.food(offer.choice.row) : std::nullopt;
    done(food ? draft.apply(edit, *food) : draft.apply(edit));
}

}  // namespace nettare
