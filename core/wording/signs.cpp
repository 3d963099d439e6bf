#include "core/wording/signs.h"

#include <array>

namespace nettare {

namespace {

using namespace std::string_view_literals;

template <std::size_t count>
std::size_t lengthOfOne(const std::array<std::string_view, count>& signs, std::string_view bytes) {
    for (const std::string_view sign : signs)
        if (bytes.starts_with(sign)) return sign.size();
    return 0;
}

bool isAscii(std::string_view bytes) {
    return static_cast<unsigned char>(bytes.front()) < 0x80;
}

/// Of three bytes E2 `second` `from`..`to`.
std::size_t inBlock(std::string_view bytes, unsigned char second, unsigned char from,
                    unsigned char to) {
    if (bytes.size() < 3) return 0;
    const auto at = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
    return at(0) == 0xE2 && at(1) == second && at(2) >= from && at(2) <= to ? 3 : 0;
}

constexpr std::array kWideSpaces{"\u00a0"sv, "\u202f"sv, "\u205f"sv, "\u3000"sv, "\ufeff"sv};
constexpr std::array kVulgar{"¼"sv, "½"sv, "¾"sv, "⅓"sv, "⅔"sv, "⅕"sv, "⅖"sv, "⅗"sv,
                             "⅘"sv, "⅙"sv, "⅚"sv, "⅛"sv, "⅜"sv, "⅝"sv, "⅞"sv};
constexpr std::array kBullets{"•"sv, "·"sv, "‣"sv, "◦"sv, "▪"sv, "▫"sv, "●"sv,
                              "○"sv, "□"sv, "■"sv, "☐"sv, "▢"sv, "⁃"sv};
constexpr std::array kFootnotes{"†"sv, "‡"sv, "§"sv, "¹"sv, "²"sv, "³"sv, "⁴"sv, "⁵"sv};
constexpr std::array kOthers{"×"sv, "“"sv, "”"sv, "„"sv, "«"sv, "»"sv, "″"sv,
                             "′"sv, "≈"sv, "°"sv, "…"sv, "±"sv, "®"sv, "™"sv};

}  // namespace

std::size_t blankLength(std::string_view bytes) {
    if (isAscii(bytes))
        return " \t\r\n\f\v"sv.find(bytes.front()) == std::string_view::npos ? 0 : 1;
    if (const std::size_t length = inBlock(bytes, 0x80, 0x80, 0x8B)) return length;
    return lengthOfOne(kWideSpaces, bytes);
}

std::size_t hyphenLength(std::string_view bytes) {
    return bytes.front() == '-' ? 1 : inBlock(bytes, 0x80, 0x90, 0x91);
}

std::size_t dashLength(std::string_view bytes) {
    if (bytes.front() == '-') return 1;
    if (isAscii(bytes)) return 0;
    if (const std::size_t length = inBlock(bytes, 0x80, 0x90, 0x95)) return length;
    return inBlock(bytes, 0x88, 0x92, 0x92);
}

std::size_t vulgarLength(std::string_view bytes) {
    return isAscii(bytes) ? 0 : lengthOfOne(kVulgar, bytes);
}

std::size_t bulletLength(std::string_view bytes) {
    return isAscii(bytes) ? 0 : lengthOfOne(kBullets, bytes);
}

std::size_t footnoteLength(std::string_view bytes) {
    if (isAscii(bytes)) return bytes.front() == '*' ? 1 : 0;
    return lengthOfOne(kFootnotes, bytes);
}

std::size_t slashLength(std::string_view bytes) {
    return bytes.front() == '/' ? 1 : inBlock(bytes, 0x81, 0x84, 0x84);
}

std::size_t otherSignLength(std::string_view bytes) {
    if (!isAscii(bytes)) return lengthOfOne(kOthers, bytes);
    const char c = bytes.front();
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    const bool digit = c >= '0' && c <= '9';
    return letter || digit || c == '\'' ? 0 : 1;
}

}  // namespace nettare
