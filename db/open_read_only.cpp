#include "db/open_read_only.h"

#include <SQLiteCpp/Database.h>
#include <fmt/core.h>

#include <filesystem>

namespace nettare {

namespace {

/// A path as a file URI; all but plain characters are percent-encoded (RFC 3986, section 2.3).
std::string fileUri(const std::string& path) {
    std::string uri = "file:";
    for (const char c : path) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                           (c >= '0' && c <= '9') || c == '/' || c == '-' || c == '.' || c == '_';
        if (plain)
            uri += c;
        else
            uri += fmt::format("%{:02X}", static_cast<unsigned>(static_cast<unsigned char>(c)));
    }
    return uri + "?immutable=1";
}

}  // namespace

bool isFile(const std::string& path) {
    std::error_code ignored;
    return std::filesystem::is_regular_file(path, ignored);
}

SQLite::Database openReadOnly(const std::string& path) {
    // An absolute path, so that "//x" or a leading "?" never reads as something else in the URI.
    const std::string absolute = std::filesystem::absolute(path).string();
    return SQLite::Database{fileUri(absolute), SQLite::OPEN_READONLY | SQLite::OPEN_URI};
}

}  // namespace nettare
