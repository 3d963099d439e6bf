#pragma once

#include <string>

namespace nettare {

/// A PDF without its creation date, so that the same panel gives the same bytes at any hour and in
/// any time zone. Takes the date from the information dictionary and moves the offsets of the
/// cross-reference table, ISO 32000-1, 7.5.4 (from memory), by its length. For a file with one such
/// table, as Qt writes it; any other comes back as it was.
[[nodiscard]] std::string undatedPdf(std::string pdf);

}  // namespace nettare
