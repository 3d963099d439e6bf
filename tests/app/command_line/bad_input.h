#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/support/json.h"

/// A change to a document: the value at a JSON pointer (RFC 6901), which may be new; "-" appends to
/// a list. Empty JSON text removes the member.
struct DocumentEdit {
    std::string pointer, json;
};

/// The document with the edits made, as JSON text.
[[nodiscard]] std::string edited(const std::string& document,
                                 const std::vector<DocumentEdit>& edits);

/// Writes the document as doc.json, runs `arguments` and checks that the run is refused with
/// exactly that sentence, exit code 1 and nothing on standard output.
void checkRefused(const std::string& document, const std::string& sentence,
                  const std::vector<std::string>& arguments = {"figures", "doc.json"});

/// The same for files that are there already.
void checkRun(const std::vector<std::string>& arguments, const std::string& sentence, int code = 1);
