#pragma once

namespace nettare {

/// The application_id in the header of a table file of ours: "NtTb" in ASCII.
inline constexpr int kTableApplicationId = 0x4E745462;

/// The format this program writes, and the only one that it reads (user_version of the file). A
/// table file can be made again at any time, so there is no way from an older one to this.
inline constexpr int kTableFormat = 3;

}  // namespace nettare
