#pragma once

#include "app/theme/palette.h"
#include "app/widgets/mark.h"

#include <QMetaType>
#include <QString>
#include <QVariant>

#include <cstdint>

namespace nettare {

enum class CellKind : std::uint8_t {
    Text,
    Number,   ///< right-aligned on the decimal mark of its column
    Way,      ///< mark and word
    Share,    ///< bar
    NoData,   ///< hatch and the words "no data"; never an empty cell, never 0
    Finding,  ///< a sign in the margin; its text is what the sign is about, for tool tip and reader
};

/// Against another revision. Each has a leading mark besides its ground.
enum class CellChange : std::uint8_t { None, Equal, Added, Removed, Changed };

/// What one cell of any table shows. Texts are in the user's language, numbers as they are shown.
struct Cell {
    CellKind kind = CellKind::Text;
    QString text;
    QString muted;   ///< second text, after " · "
    QString before;  ///< Number: "at least", "≈"
    QString unit;    ///< Number: behind it, where the header cannot say it for the whole column
    Mark mark = Mark::None;
    double share = 0.0;  ///< Share: 0 to 1
    CellChange change = CellChange::None;
    QString was;      ///< Changed: the text of the other revision, struck through
    QString problem;  ///< what is wrong and what to do; outlines the cell
    Role ink = Role::Ink;
    bool strong = false;

    friend bool operator==(const Cell&, const Cell&) = default;
};

[[nodiscard]] Cell textCell(const QString& text, const QString& muted = {});
/// A hyphen before the number becomes a minus sign.
[[nodiscard]] Cell numberCell(const QString& number, const QString& unit = {});
/// `word` replaces the mark's own, such as "series, 6×".
[[nodiscard]] Cell wayCell(Mark mark, const QString& word = {});
/// Outside of 0 to 1 it is drawn at the nearer end.
[[nodiscard]] Cell shareCell(double share, const QString& text = {});
[[nodiscard]] Cell noDataCell();
/// No sign without a sentence.
[[nodiscard]] Cell findingCell(const QString& sentence);

/// The role under which a model gives its Cell to the delegate.
inline constexpr int kCellRole = Qt::UserRole;

/// What a model returns for a cell under any role but Qt::EditRole: the cell itself, its text for
/// copying, what a screen reader says, its problem as a tool tip.
[[nodiscard]] QVariant cellData(const Cell& cell, int role);

/// What is copied: "at least 6.6 g", "no data".
[[nodiscard]] QString plainText(const Cell& cell);

/// What a screen reader says: "353, was 300", "no data".
[[nodiscard]] QString spokenText(const Cell& cell);

}  // namespace nettare

Q_DECLARE_METATYPE(nettare::Cell)
