#include "app/sheet/density_offer.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/session/kitchen_session.h"
#include "app/sheet/document_texts.h"
#include "core/edit/way_edits.h"
#include "core/food/volume_measure.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct DensityWords {
    Q_DECLARE_TR_FUNCTIONS(DensityOffer)
};

bool isVolume(const Json& document, const Json& line) {
    const auto system = measureSystemNamed(memberText(&document, "measures"));
    if (!system) return false;
    const Unit* unit = findUnit(memberText(&line, "unit"), *system);
    return unit != nullptr && unit->kind == UnitKind::Volume;
}

std::optional<TableFood> foodOf(const KitchenSession& kitchen, const Json& document,
                                const Json& line) {
    const Json* food = entryIn(document, "foods", memberText(&line, "food"));
    const Json* table = food != nullptr ? food->find("table") : nullptr;
    if (table == nullptr || food->find("label") != nullptr) return std::nullopt;
    return kitchen.food(
        {memberText(table, "table"), memberText(table, "release"), memberText(table, "number")});
}

}  // namespace

std::optional<GroupDensity> densityOffer(const KitchenSession& kitchen, const std::string& line) {
    if (kitchen.draft() == nullptr) return std::nullopt;
    const Json& document = kitchen.draft()->document();
    const Json* entry = entryIn(document, "lines", line);
    if (entry == nullptr || entry->find("density") != nullptr || !isVolume(document, *entry))
        return std::nullopt;
    const auto food = foodOf(kitchen, document, *entry);
    if (!food) return std::nullopt;
    const bool hasOwn = std::ranges::any_of(food->measures, [](const HouseholdMeasure& measure) {
        return volumeOfMeasure(measure.unit).has_value();
    });
    return hasOwn ? std::nullopt : kitchen.groupDensity(food->group);
}

QString densityOfferText(const GroupDensity& density) {
    return DensityWords::tr("density of %1, %2 g/ml")
        .arg(QString::fromStdString(density.group),
             QString::fromStdString(numberAt(2, density.gramsPerMl)));
}

Result<void> stateDensity(DraftSession& draft, const std::string& line,
                          const GroupDensity& density) {
    const std::string each = numberAt(3, density.gramsPerMl),
                      within = numberAt(3, density.within());
    const auto edit = setDensity(draft.document(), line, {each, within, density.reason()});
    if (!edit) return fail(edit.error());
    draft.endTyping();
    auto done = draft.apply(edit->edit);
    draft.endTyping();
    return done;
}

}  // namespace nettare
