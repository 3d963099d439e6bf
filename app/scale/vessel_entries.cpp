#include "app/scale/vessel_entries.h"

#include <memory>

#include "app/scale/scale_choices.h"
#include "app/session/kitchen_session.h"
#include "core/ledger/bench_equipment.h"

namespace nettare {

VesselEntries::VesselEntries(KitchenSession& kitchen, QObject* parent)
    : QObject{parent}, kitchen_{kitchen} {
    connect(&kitchen_, &KitchenSession::ledgerGrew, this, &VesselEntries::read);
    read();
}

void VesselEntries::read() {
    kitchen_.askKitchen(this, [this](const Kitchen& kitchen) -> std::function<void()> {
        auto entries =
            std::make_shared<Result<std::vector<ChainedEntry>>>(kitchen.equipmentEntries());
        return [this, entries] {
            if (!*entries) return;  // whoever records is told
            equipment_ = std::move(**entries);
            emit changed();
        };
    });
}

std::string VesselEntries::entryOf(const Tare& tare, const DraftSession& draft) const {
    const auto* const vessel = std::get_if<VesselEntry>(&tare);
    if (vessel == nullptr) return {};
    for (const ScaleChoice& choice : scaleChoices(draft)) {
        if (choice.scale.id != vessel->scale) continue;
        LedgerEntry weighed;
        weighed.vessel = vessel->name;
        weighed.shown = vessel->tare;
        weighed.scale = choice.scale.name;
        weighed.unit = choice.scale.unit;
        weighed.readability = choice.scale.readability;
        return vesselEntryOf(equipment_, weighed);
    }
    return {};
}

}  // namespace nettare
