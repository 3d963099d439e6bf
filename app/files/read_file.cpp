#include "app/files/read_file.h"

#include <filesystem>
#include <fstream>
#include <optional>
#include <system_error>

namespace nettare {

namespace {

Error refusal(ErrorCode code, const std::string& path, std::string_view reason) {
    Error error{code};
    error.file = path;
    return error.with("reason", reason);
}

/// Why that path cannot be opened for reading; nothing where it can be tried. Only plain files are
/// read: a pipe or a device could keep the program waiting for ever.
std::optional<std::string_view> reasonAgainst(const std::string& path) {
    if (path.empty()) return "the path is empty";
    std::error_code failure;
    const auto status = std::filesystem::status(path, failure);
    if (failure == std::errc::permission_denied) return "permission is denied";
    if (failure == std::errc::filename_too_long) return "the path is too long";
    if (failure == std::errc::too_many_symbolic_link_levels) return "the link leads to itself";
    if (!std::filesystem::exists(status)) return "there is no such file";
    if (std::filesystem::is_directory(status)) return "it is a folder";
    if (!std::filesystem::is_regular_file(status)) return "it is a device or a pipe";
    return std::nullopt;
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::size_t most) {
    if (const auto reason = reasonAgainst(path))
        return fail(refusal(ErrorCode::FileNotReadable, path, *reason));
    std::ifstream file(path, std::ios::binary);
    if (!file) return fail(refusal(ErrorCode::FileNotReadable, path, "permission is denied"));
    std::string bytes(most + 1, '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    if (file.bad()) return fail(refusal(ErrorCode::FileNotReadable, path, "reading it failed"));
    if (bytes.size() > most) {
        Error error{ErrorCode::FileTooLarge};
        error.file = path;
        return fail(error.with("most", std::to_string(most / kMebibyte) + " MiB"));
    }
    return bytes;
}

}  // namespace nettare
