#pragma once

#include <optional>
#include <string>
#include <vector>

namespace nettare {

// Commands of the bench. Numbers stay as typed: the scale's own digits are kept.

/// Records what a scale shows, or speaks of a reading that is there. A reading is named by its id
/// or by how that begins.
struct ReadingCommand {
    std::string what, gross;
    std::string scale;          ///< may be empty where the kitchen has one alone
    std::string tare;           ///< as the scale showed it; empty: zeroed
    std::string vessel;         ///< that stands on the scale, by its known tare
    std::string after;          ///< the reading that showed the bowl before this addition
    std::string from;           ///< the reading that showed the jar before
    std::optional<int> pieces;  ///< weighed together; not said: 1
    std::string perPiece, perMeasure, ratio;  ///< the series; at most one of them
    std::string before;                       ///< of a ratio: the reading of what went in
    std::vector<std::string> tags;
    std::string state;  ///< word of WeighedState; empty: edible portion
    std::string why, row;
    /// The reading that this one corrects; what is not said is taken over from it.
    std::string insteadOf;
    /// The reading that is spoken of; at most one of them.
    std::string takeBack, leaveOut, takeIn, asWeighed;
    std::string because;  ///< why
};

/// Lists scales and vessels without a name; else keeps a scale (with its step) or checks it (with a
/// known mass and what it showed).
struct ScaleCommand {
    std::string name;
    std::string unit = "g";
    std::string step, capacity;
    std::string mass, showed;
};

/// Keeps the tare of an empty vessel.
struct VesselCommand {
    std::string name, shown;
    std::string scale;
};

struct SeriesCommand {
    std::string food;  ///< empty: all series are listed
    std::string of;
    std::vector<std::string> tags;
    double others = 0;  ///< 0: not asked for
    double within = 0;  ///< g; 0: not asked for
    bool pool = false;
    std::string recipe;             ///< whose ceilings it is held against; may be empty
    std::string poolWith, poolTag;  ///< an earlier series, and the condition of its readings
    bool json = false;
};

struct LedgerCommand {
    bool csv = false;
    std::string out;  ///< path; empty: standard output
};

struct VerifyCommand {
    std::string head;  ///< hash that a printout names as the ledger's; may be empty
};

}  // namespace nettare
