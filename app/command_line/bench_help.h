#pragma once

#include <string_view>

namespace nettare {

// What --help says beside the options of the bench's commands.

inline constexpr std::string_view kReadingExamples =
    "The ledger is only ever added to: a reading that was wrong is taken back or replaced, and "
    "stays\n"
    "visible. Ids may be cut short.\n"
    "Examples:\n"
    "  nettare --kitchen spring.nettare reading \"prawn meat\" 271.1 --tare 212.2 --pieces 6 \\\n"
    "      --per-piece prawn --tag \"size 16/20\"\n"
    "  nettare --kitchen spring.nettare reading butter 340.5 --after 3f2b8c1e\n"
    "  nettare --kitchen spring.nettare reading honey 412.0 --from 5c7d8a90\n"
    "  nettare --kitchen spring.nettare reading fennel 382 --ratio \"edible / bought\" --before "
    "1f0c\n"
    "  nettare --kitchen spring.nettare reading fennel 391 --instead-of 5b6a --because misread\n"
    "  nettare --kitchen spring.nettare reading --take-back 3f2b8c1e --because \"slip of the "
    "hand\"\n"
    "  nettare --kitchen spring.nettare reading --as-weighed 3f2b8c1e";

inline constexpr std::string_view kScaleExamples =
    "A check that fails marks what the scale showed since its last good one.\n"
    "Examples:\n"
    "  nettare --kitchen spring.nettare scale counter --step 0.1 --capacity 3000\n"
    "  nettare --kitchen spring.nettare scale counter --mass 200 --showed 200.1\n"
    "  nettare --kitchen spring.nettare scale";

inline constexpr std::string_view kVesselExamples =
    "Example:\n"
    "  nettare --kitchen spring.nettare vessel \"steel bowl\" 212.2";

inline constexpr std::string_view kSeriesExamples =
    "Intervals are 95 %. A table is held against the series where its readings name their row.\n"
    "Examples:\n"
    "  nettare --kitchen spring.nettare series\n"
    "  nettare --kitchen spring.nettare series \"prawn meat\" --others 36 --within 5\n"
    "  nettare --kitchen spring.nettare series fennel --of \"edible / bought\" --json\n"
    "  nettare --kitchen spring.nettare series \"prawn meat\" --tag 2026 --pool-tag 2025\n"
    "  nettare --kitchen spring.nettare series \"prawns, peeled\" --for Charred";

inline constexpr std::string_view kLedgerExamples =
    "Examples:\n"
    "  nettare --kitchen spring.nettare ledger\n"
    "  nettare --kitchen spring.nettare ledger --csv --out ledger.csv";

inline constexpr std::string_view kVerifyExamples =
    "Every fault is one sentence; the exit code is 1 where there is any. --head also finds a "
    "ledger\n"
    "whose end is lost, or that is another one.\n"
    "Examples:\n"
    "  nettare --kitchen spring.nettare verify\n"
    "  nettare --kitchen spring.nettare verify --head HASH";

}  // namespace nettare
