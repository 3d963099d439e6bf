#include "app/command_line/import_command.h"

#include <fmt/format.h>
#include <unistd.h>

#include <csignal>
#include <ostream>

#include "app/command_line/import_report_text.h"
#include "app/command_line/show_recipe.h"
#include "app/files/read_file.h"
#include "app/files/table_places.h"

namespace nettare {

namespace {

volatile std::sig_atomic_t stopAsked = 0;

/// While it lives, Ctrl+C asks to stop instead of ending the program.
class StopByKey {
public:
    StopByKey() {
        stopAsked = 0;
        before_ = std::signal(SIGINT, [](int) { stopAsked = 1; });
    }
    StopByKey(const StopByKey&) = delete;
    StopByKey& operator=(const StopByKey&) = delete;
    ~StopByKey() { static_cast<void>(std::signal(SIGINT, before_)); }

private:
    void (*before_)(int) = SIG_DFL;
};

/// One line on a terminal that is written over until it ends.
class ProgressLine {
public:
    explicit ProgressLine(std::ostream& err) : err_{&err}, shows_{::isatty(STDERR_FILENO) == 1} {}
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;
    ~ProgressLine() { show(""); }

    void show(std::string_view text) {
        constexpr auto kEraseLine = "\r\x1b[K";
        if (shows_) *err_ << kEraseLine << text << std::flush;
    }

private:
    std::ostream* err_;
    bool shows_;
};

std::string progressText(const ImportProgress& progress) {
    if (progress.file.empty()) return "ranking the foods and writing their words …";
    const std::size_t percent =
        progress.bytesInAll == 0 ? 0 : 100 * progress.bytesDone / progress.bytesInAll;
    return fmt::format("{} % {}", percent, progress.file);
}

Result<CsvMapping> mappingIn(const std::string& path) {
    const auto inFile = [&](Error error) {
        error.file = path;
        return fail(std::move(error));
    };
    const auto text = readFile(path);
    if (!text) return fail(text.error());
    const auto json = parseJson(*text);
    if (!json) return inFile(json.error());
    auto mapping = readCsvMapping(*json);
    if (!mapping) return inFile(mapping.error());
    return mapping;
}

Result<void> showGuess(const std::string& path, std::ostream& out, std::ostream& err) {
    const auto guess = guessCsvMapping(path);
    if (!guess) return fail(guess.error());
    out << writeJsonIndented(csvMappingJson(*guess));
    err << "nettare: nothing was imported, this is a guess of the columns; complete it in a file "
           "and name that with --mapping.\n";
    return {};
}

}  // namespace

Result<void> importFoods(const ImportCommand& command, std::ostream& out, std::ostream& err) {
    ImportRequest request;
    request.kind = command.kind;
    request.path = command.path;
    request.folder = tablePlaces().folder;
    if (request.folder.empty())
        return fail(ofArgument("nettare/tables",
                               Error{ErrorCode::FileNotWritable}.with(
                                   "reason", "neither NETTARE_TABLES nor HOME says where")));
    request.dryRun = command.dryRun;
    if (command.kind == ImportKind::Csv) {
        if (command.mapping.empty()) return showGuess(command.path, out, err);
        auto mapping = mappingIn(command.mapping);
        if (!mapping) return fail(mapping.error());
        request.mapping = std::move(*mapping);
    }
    const StopByKey stop;
    ProgressLine line{err};
    const auto report = importTable(request, [&](const ImportProgress& progress) {
        line.show(progressText(progress));
        return stopAsked == 0;
    });
    line.show("");
    if (!report) return fail(report.error());
    out << importReportText(*report, command.dryRun);
    return {};
}

}  // namespace nettare
