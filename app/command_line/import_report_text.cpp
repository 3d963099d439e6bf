#include "app/command_line/import_report_text.h"

#include <fmt/format.h>

#include "app/words/error_sentence.h"

namespace nettare {

namespace {

std::string outcome(const ImportReport& report, bool dryRun) {
    if (dryRun) return "Nothing was written, this was a dry run.\n";
    if (report.unchanged) return fmt::format("{} holds the same already.\n", report.path);
    return fmt::format("Written to {}.\n", report.path);
}

/// A heading, then "  318  120 values" for each number.
std::string listed(std::string_view heading, std::string_view what,
                   const std::map<std::string, std::size_t>& counts) {
    if (counts.empty()) return {};
    std::string text = fmt::format("{}\n", heading);
    for (const auto& [number, count] : counts)
        text += fmt::format("  {:<12} {} {}\n", number, count, what);
    return text;
}

/// Many a publisher lists a hundred components that the program does not compute with.
std::string unnamedText(const std::map<std::string, std::size_t>& counts) {
    if (counts.empty()) return {};
    std::size_t values = 0;
    for (const auto& [number, count] : counts) values += count;
    return fmt::format(
        "Stored, but no component of this program: {} values under {} of the publisher's numbers\n",
        values, counts.size());
}

std::string rejectedText(const ImportReport& report) {
    if (report.rejected == 0) return "No row was rejected.\n";
    std::string text = fmt::format("{} rejected:\n", report.rejected);
    for (const RejectedRow& row : report.rejectedRows)
        text += fmt::format("  {}\n", errorSentence(row.reason));
    if (report.rejectedRows.size() < report.rejected)
        text += fmt::format("  and {} more\n", report.rejected - report.rejectedRows.size());
    return text;
}

}  // namespace

std::string importReportText(const ImportReport& report, bool dryRun) {
    return fmt::format("{} {}: {} foods, {} values, {} measures\n", report.table, report.release,
                       report.foods, report.values, report.measures) +
           outcome(report, dryRun) + unnamedText(report.unnamedComponents) +
           listed("Not stored, the publisher's list has no such number:", "values",
                  report.unknownComponents) +
           listed("Left out on purpose:", "foods", report.leftOut) + rejectedText(report) +
           fmt::format("Source: {}\n", report.citation);
}

}  // namespace nettare
