#include "app/panel/undated_pdf.h"

#include <charconv>
#include <optional>
#include <string_view>

#include <fmt/format.h>

namespace nettare {

namespace {

constexpr std::size_t kEntryBytes = 20;
constexpr std::size_t kOffsetDigits = 10;
constexpr std::string_view kTable = "\nxref\n";

struct ByteSpan {
    std::size_t start = 0;
    std::size_t end = 0;
};

/// The whole line of the date, with its line feed.
std::optional<ByteSpan> dateLine(std::string_view pdf) {
    const std::size_t start = pdf.find("/CreationDate (D:");
    if (start == std::string_view::npos) return std::nullopt;
    const std::size_t end = pdf.find(")\n", start);
    if (end == std::string_view::npos) return std::nullopt;
    return ByteSpan{start, end + 2};
}

std::size_t offsetAt(std::string_view pdf, std::size_t place) {
    std::size_t offset = 0;
    std::from_chars(pdf.data() + place, pdf.data() + place + kOffsetDigits, offset);
    return offset;
}

/// Takes `cut` bytes off every offset of the table that lies behind `from`.
void moveOffsets(std::string& pdf, std::size_t table, std::size_t from, std::size_t cut) {
    // Behind "xref" stands "0 32": first object and count of entries.
    std::size_t place = pdf.find('\n', table + kTable.size()) + 1;
    for (; pdf.compare(place, 7, "trailer") != 0; place += kEntryBytes) {
        if (place + kEntryBytes > pdf.size()) return;
        const std::size_t offset = offsetAt(pdf, place);
        if (offset > from) pdf.replace(place, kOffsetDigits, fmt::format("{:010}", offset - cut));
    }
}

}  // namespace

std::string undatedPdf(std::string pdf) {
    const auto date = dateLine(pdf);
    const std::size_t table = pdf.rfind(kTable);
    const std::size_t end = pdf.rfind("startxref\n");
    const bool known = date && table != std::string::npos && end != std::string::npos;
    if (!known || table < date->end || end < table) return pdf;
    const std::size_t cut = date->end - date->start;
    moveOffsets(pdf, table, date->start, cut);
    pdf.replace(end, std::string::npos, fmt::format("startxref\n{}\n%%EOF\n", table + 1 - cut));
    return pdf.erase(date->start, cut);
}

}  // namespace nettare
