#pragma once

namespace nettare {

/// The application_id in the header of a table file of ours: "NtTb" in ASCII.
inline constexpr int kTableApplicationId = 0x4E745462;

/// The format this program writes, and the newest that it reads (user_version of the file). From 2
/// on a file holds the densities of its food groups; older ones are read as having none.
inline constexpr int kTableFormat = 2;

}  // namespace nettare
