#pragma once

#include <random>
#include <string>

namespace nettare {

/// Another text for a place of a document that held `text`: of the same kind (decimal, time, word,
/// name) three times out of four, right, nearly right or wrong.
[[nodiscard]] std::string oddText(const std::string& text, std::mt19937& random);

}  // namespace nettare
