#include "app/files/read_file.h"

#include <filesystem>
#include <fstream>
#include <system_error>

namespace nettare {

namespace {

Error refusal(ErrorCode code, const std::string& path, std::string_view reason) {
    Error error{code};
    error.file = path;
    return error.with("reason", reason);
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::size_t most) {
    std::error_code failure;
    const auto status = std::filesystem::status(path, failure);
    if (!std::filesystem::exists(status))
        return fail(refusal(ErrorCode::FileNotReadable, path, "there is no such file"));
    if (std::filesystem::is_directory(status))
        return fail(refusal(ErrorCode::FileNotReadable, path, "it is a folder"));
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
