#pragma once

namespace nettare {

// Distances in logical pixels. Everything stands on a grid of 4.
inline constexpr int kSpace1Px = 4;
inline constexpr int kSpace2Px = 8;
inline constexpr int kSpace3Px = 12;
inline constexpr int kSpace4Px = 16;
inline constexpr int kSpace6Px = 24;
inline constexpr int kSpace8Px = 32;

/// Least height of buttons, fields and rows at the desk.
inline constexpr int kControlHeightPx = 32;
/// Least height of what is touched at the bench and at the stove.
inline constexpr int kTouchHeightPx = 56;
/// Least side of what is touched with wet hands at the bench.
inline constexpr int kBenchTargetPx = 64;
/// The cobalt rim: above the active pane, left of the selected row.
inline constexpr int kRimPx = 4;
/// Corners of buttons and fields; panes have none.
inline constexpr int kCornerPx = 4;
/// The ring around what has the focus.
inline constexpr int kFocusRingPx = 2;

}  // namespace nettare
