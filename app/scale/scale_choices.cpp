#include "app/scale/scale_choices.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

struct ScaleWords {
    Q_DECLARE_TR_FUNCTIONS(ScaleChoices)
};

ScaleEntry usualScale(Decimal readability) {
    const std::string step = readability.text();
    ScaleEntry scale;
    scale.id = "scale-" + step;
    std::ranges::replace(scale.id, '.', '-');
    scale.name = ScaleWords::tr("%1 g scale").arg(QString::fromStdString(step)).toStdString();
    scale.unit = "g";
    scale.readability = readability;
    return scale;
}

}  // namespace

std::vector<ScaleChoice> scaleChoices(const DraftSession& draft) {
    std::vector<ScaleChoice> choices;
    for (const Json& entry : entriesIn(draft.document(), "scales")) {
        const auto step = Decimal::read(memberText(&entry, "readability"));
        if (!step) continue;
        choices.push_back({{memberText(&entry, "id"),
                            memberText(&entry, "name"),
                            memberText(&entry, "unit"),
                            *step,
                            {}},
                           false});
    }
    for (const Decimal step : {Decimal{1, -2}, Decimal{1, -1}, Decimal{1, 0}, Decimal{5, 0}}) {
        const auto same = [step](const ScaleChoice& choice) {
            return choice.scale.unit == "g" && choice.scale.readability == step;
        };
        if (std::ranges::none_of(choices, same)) choices.push_back({usualScale(step), true});
    }
    return choices;
}

std::vector<VesselEntry> vesselChoices(const DraftSession& draft, const std::string& unit) {
    std::vector<VesselEntry> vessels;
    for (const Json& entry : entriesIn(draft.document(), "vessels")) {
        const std::string scale = memberText(&entry, "scale");
        const auto tare = Decimal::read(memberText(&entry, "tare"));
        for (const Json& known : entriesIn(draft.document(), "scales"))
            if (tare && memberText(&known, "id") == scale && memberText(&known, "unit") == unit)
                vessels.push_back(
                    {memberText(&entry, "id"), memberText(&entry, "name"), scale, *tare});
    }
    return vessels;
}

QString scaleText(const ScaleEntry& scale) {
    return ScaleWords::tr("%1, d = %2 %3")
        .arg(QString::fromStdString(scale.name), QString::fromStdString(scale.readability.text()),
             QString::fromStdString(scale.unit));
}

}  // namespace nettare
