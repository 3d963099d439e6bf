#pragma once

#include <QString>
#include <QStringList>

#include "core/label/check_label.h"
#include "core/label/label_lines.h"

namespace nettare {

/// "United States", "EU and UK"
[[nodiscard]] QString rulesName(LabelRules rules);
/// "as sold", "prepared", "drained"
[[nodiscard]] QString stateName(LabelState state);

/// A line as packages call it, with the unit where two lines are called alike: "Energy, kJ".
[[nodiscard]] QString calledName(LabelRules rules, const LabelLine& line);
/// The unit that packages of these rules print behind it: "g", "mcg"; empty for none.
[[nodiscard]] QString calledUnit(LabelRules rules, const LabelLine& line);

/// What an amount stands for, short: "95–105", "< 0.5"; what is wrong where it stands for nothing.
struct StandsFor {
    QString text;
    bool wrong = false;
};
[[nodiscard]] StandsFor standsFor(const LabelFacts& label, const LabelAmount& amount);

/// Above the sentence of a finding: "These cannot all be right".
[[nodiscard]] QString findingTitle(LabelFindingKind kind);
/// What takes a likely slip: "Use 6 g".
[[nodiscard]] QString slipAction(const LabelFacts& label, const LabelSlip& slip);

/// "United States, per serving 1 tbsp (14 g), drained"
[[nodiscard]] QString labelBasis(const LabelFacts& label);

/// Text that somebody typed, for a place inside of our own: its writing direction ends with it.
[[nodiscard]] QString isolated(const QString& text);
[[nodiscard]] QString isolated(const std::string& text);

}  // namespace nettare
