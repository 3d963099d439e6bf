#pragma once

#include <cstddef>
#include <string>
#include <variant>

#include "core/quantity/decimal.h"
#include "core/quantity/unit.h"

namespace nettare {

/// A kitchen scale: the step it shows and, where the cook has checked it, how well it is
/// calibrated.
struct Scale {
    std::string id;
    std::string name;
    const Unit* unit = nullptr;  ///< a mass unit; never null in a dossier
    Decimal readability;         ///< d, in that unit; > 0
    /// Relative standard uncertainty of its calibration; common to all its readings. 0 = not
    /// stated.
    double calibrationRelative = 0;
};

/// A bowl, pan or board whose empty weight is known.
struct Vessel {
    std::string id;
    std::string name;
    std::size_t scale = 0;  ///< index of the scale that weighed it
    Decimal tare;           ///< as shown, in the scale's unit
};

/// What was on the scale, as the cook declared it.
enum class WeighedState { Empty, AsPurchased, EdiblePortion, Cooked, Residue };

/// What the scale showed once: never edited. Its rounding is a source of its own,
/// rectangular, d/sqrt(12) (JCGM 100:2008, 4.3.7).
struct Indication {
    std::string id;
    std::size_t scale = 0;  ///< index
    Decimal shown;          ///< in the scale's unit
    WeighedState state = WeighedState::EdiblePortion;
    std::string at;  ///< ISO 8601 with offset, as recorded; may be empty
};

/// The difference of two indications, or of an indication and a vessel's known tare. The net is
/// computed, never stored.
struct Reading {
    std::string id;
    std::size_t gross = 0;  ///< index of an indication
    struct KnownTare {
        std::size_t vessel;  ///< index
    };
    struct ShownTare {
        std::size_t indication;  ///< index
    };
    std::variant<ShownTare, KnownTare> tare;
    int pieces = 1;  ///< how many pieces were weighed together; >= 1
};

}  // namespace nettare
