#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/food/component.h"
#include "scratch.h"

/// A whole, tiny table in text form (invented): 00001 carrots, 00002 carrot cake. `folder` gets
/// its nine files.
void writeSmallTable(const Scratch& folder);

/// A line of components.txt in which all values are missing but the given ones.
[[nodiscard]] std::string valuesLine(
    std::string_view number, const std::vector<std::pair<nettare::Component, std::string>>& values);

/// The header of components.txt.
[[nodiscard]] std::string valuesHeader();
