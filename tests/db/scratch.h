#pragma once

#include <string>
#include <string_view>

/// A folder of its own for one test, gone at its end.
class Scratch {
public:
    Scratch();
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    [[nodiscard]] std::string path(std::string_view name) const;
    void write(std::string_view name, std::string_view content) const;
    [[nodiscard]] std::string read(std::string_view name) const;
    [[nodiscard]] bool has(std::string_view name) const;

private:
    std::string folder_;
};

/// The bytes of a file; empty where there is none.
[[nodiscard]] std::string bytesOf(const std::string& path);
