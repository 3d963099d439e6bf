#include "house/text_rules.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace nettare {

namespace {

constexpr std::size_t kMostLines = 600;
constexpr std::array<std::string_view, 8> kBinaryEndings{".png", ".pdf", ".ttf", ".otf",
                                                         ".ico", ".gz",  ".qm",  ".nettare"};
constexpr std::array<std::string_view, 8> kSourceEndings{".cpp", ".h",   ".cmake", ".txt",
                                                         ".sh",  ".sql", ".json",  ".md"};

template <std::size_t count>
bool endsInOneOf(std::string_view name, const std::array<std::string_view, count>& endings) {
    return std::ranges::any_of(endings, [&](std::string_view e) { return name.ends_with(e); });
}

bool keepsItsBytes(const SourceFile& file) {
    return file.name.starts_with("tests/data/") || endsInOneOf(file.name, kBinaryEndings) ||
           file.bytes.find('\0') != std::string::npos;
}

std::size_t lineAt(std::string_view bytes, std::size_t position) {
    return 1 + static_cast<std::size_t>(std::ranges::count(bytes.substr(0, position), '\n'));
}

/// Position of the first blank before a line end, or npos.
std::size_t trailingBlank(std::string_view bytes) {
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const bool blank = bytes[i] == ' ' || bytes[i] == '\t';
        const bool lineEnds = i + 1 == bytes.size() || bytes[i + 1] == '\n' || bytes[i + 1] == '\r';
        if (blank && lineEnds) return i;
    }
    return std::string_view::npos;
}

void judgeLines(const SourceFile& file, std::vector<std::string>& broken) {
    const auto report = [&](std::size_t position, const std::string& what) {
        if (position != std::string::npos)
            broken.push_back(file.name + ":" + std::to_string(lineAt(file.bytes, position)) + " " +
                             what);
    };
    report(file.bytes.find('\r'), "has a carriage return; lines end in a line feed alone.");
    report(trailingBlank(file.bytes), "ends in a blank; take it away.");
    if (endsInOneOf(file.name, kSourceEndings))
        report(file.bytes.find('\t'), "has a tab; sources are indented by spaces.");
    if (!file.bytes.empty() && file.bytes.back() != '\n')
        report(file.bytes.size() - 1, "is the last line and lacks its line feed.");
}

void judgeLength(const SourceFile& file, std::vector<std::string>& broken) {
    const auto lines = static_cast<std::size_t>(std::ranges::count(file.bytes, '\n'));
    const bool code = file.name.ends_with(".cpp") || file.name.ends_with(".h");
    if (code && lines > kMostLines)
        broken.push_back(file.name + " has " + std::to_string(lines) +
                         " lines; more than 600 want to be two files, one idea each.");
}

}  // namespace

std::vector<std::string> brokenRules(const SourceFile& file) {
    std::vector<std::string> broken;
    const bool script = file.bytes.starts_with("#!");
    if (file.executable && !script)
        broken.push_back(file.name + " may be executed but is no script; take the bit away.");
    if (script && !file.executable)
        broken.push_back(file.name + " is a script but may not be executed; set the bit.");
    if (keepsItsBytes(file)) return broken;
    judgeLines(file, broken);
    judgeLength(file, broken);
    return broken;
}

}  // namespace nettare
