#pragma once

#include <cstddef>
#include <string>

namespace nettare {

/// How large a generated download is.
struct DownloadSize {
    std::size_t foods = 0;
    std::size_t values = 0;  ///< spread evenly over the foods
};

/// Writes a download like FoodData Central's into a folder: nine in ten foods branded, the others
/// of the Standard Reference; the same size gives the same bytes. False where a file cannot be
/// written.
[[nodiscard]] bool writeFdcDownload(const std::string& folder, const DownloadSize& size);

}  // namespace nettare
