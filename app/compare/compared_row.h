#pragma once

#include <QString>

#include <optional>

namespace nettare {

/// How an ingredient line stands in the two states.
enum class RowKind { Same, Changed, Added, Removed, Total };

/// A line as one state has it; numbers as they are shown.
struct ComparedSide {
    QString amount, food, preparation;
    QString grams, energyKcal;  ///< empty energy where there is no data
    bool energyAtLeast = false;

    friend bool operator==(const ComparedSide&, const ComparedSide&) = default;
};

/// One row of the comparison: a line of the left state, of the right one, or of both.
struct ComparedRow {
    RowKind kind = RowKind::Same;
    std::optional<ComparedSide> left, right;
    QString gramsChange, energyChange;  ///< right less left, signed; empty where nothing changed

    [[nodiscard]] bool differs() const { return kind != RowKind::Same; }
};

}  // namespace nettare
