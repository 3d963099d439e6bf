#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/wording/line_reading.h"

namespace nettare {

/// The fields of a reading by the keys of the case files; flags have an empty value.
using LineFields = std::map<std::string, std::string>;

/// A line with what it should be read as: one line of tests/data/lines/*.txt.
struct LineCase {
    std::string text;
    LineFields fields;
};

/// All cases of a file, in order; notes ("# ") are passed by.
std::vector<LineCase> lineCasesIn(const std::string& path);

/// The fields of a reading in the canonical forms of the case files.
LineFields fieldsOf(const LineReading& reading);

/// "unit: tbsp, not tsp" for each field that differs; empty where none does.
std::string differences(const LineFields& expected, const LineFields& read);

/// The bytes of all parts, one after the other.
std::string writtenParts(const LineReading& reading);

}  // namespace nettare
