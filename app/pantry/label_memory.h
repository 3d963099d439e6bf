#pragma once

#include <QString>

#include <optional>

#include "core/label/label_entry.h"

namespace nettare {

// What this machine remembers of labels, in the user's settings.

/// What a new label begins with: rules and amounts-per of the label before, and the day.
[[nodiscard]] LabelTyped usualLabel();

/// The next new label begins like this one.
void rememberLabel(const LabelTyped& typed);

/// A label that was not saved when the window closed. Of a photograph that no version has yet its
/// place on the disk is kept.
struct UnfinishedLabel {
    std::string food;  ///< UUID of the own food that it is a version of; empty for a new one
    LabelTyped typed;
    bool correction = false;  ///< of the version that counts, not another pack
    bool samePhoto = false;   ///< with the photograph of that version
    QString photoPath;        ///< of a file with another one; empty for none

    friend bool operator==(const UnfinishedLabel&, const UnfinishedLabel&) = default;
};

/// The one that belongs to the kitchen of that path; nothing where there is none.
[[nodiscard]] std::optional<UnfinishedLabel> unfinishedLabel(const QString& kitchen);
/// In the place of the one that kitchen had; those of other kitchens stay.
void keepUnfinished(const QString& kitchen, const UnfinishedLabel& label);
void forgetUnfinished(const QString& kitchen);

}  // namespace nettare
