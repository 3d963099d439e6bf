#include "scratch.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

Scratch::Scratch() {
    folder_ = (std::filesystem::temp_directory_path() / "nettare_test_XXXXXX").string();
    if (mkdtemp(folder_.data()) == nullptr) throw std::runtime_error("no scratch folder");
}

Scratch::~Scratch() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
}

std::string Scratch::path(std::string_view name) const {
    return folder_ + "/" + std::string{name};
}

void Scratch::write(std::string_view name, std::string_view content) const {
    std::ofstream{path(name), std::ios::binary} << content;
}

std::string Scratch::read(std::string_view name) const {
    return bytesOf(path(name));
}

bool Scratch::has(std::string_view name) const {
    return std::filesystem::exists(path(name));
}

std::string bytesOf(const std::string& path) {
    std::ifstream stream{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}};
}
