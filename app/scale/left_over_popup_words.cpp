#include "app/scale/left_over_popup_words.h"

#include <QCoreApplication>

namespace nettare {

namespace {

struct KindWords {
    Q_DECLARE_TR_FUNCTIONS(LeftOverPopup)
};

}  // namespace

std::vector<LeftOverKindWords> leftOverKinds() {
    return {{ResidueKind::Mixture, "leftMixture", KindWords::tr("a mixture: marinade, batter")},
            {ResidueKind::Line, "leftLine", KindWords::tr("one line: frying oil, brine")},
            {ResidueKind::Drip, "leftDrip", KindWords::tr("what ran off: fat, juice")},
            {ResidueKind::Water, "leftWater", KindWords::tr("cooking water, poured off")},
            {ResidueKind::NotEaten, "leftNotEaten", KindWords::tr("bones, bay leaves: not eaten")},
            {ResidueKind::Unknown, "leftUnknown", KindWords::tr("nobody knows")}};
}

}  // namespace nettare
