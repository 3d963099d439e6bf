#include "app/command_line/all_figures.h"

#include <algorithm>
#include <ostream>
#include <thread>
#include <vector>

#include "app/command_line/in_order.h"
#include "app/command_line/kept_revisions.h"
#include "app/command_line/revision_line.h"
#include "app/command_line/show_recipe.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

/// LinesInOrder that may wait for one before them, for each thread.
constexpr std::size_t kRoomPerJob = 16;

using LinesInOrder = InOrder<Result<std::string>>;

Error notTaken() {
    return ofArgument("standard output", Error{ErrorCode::FileNotWritable}.with(
                                             "reason", "the disk may be full or its reader gone"));
}

/// Each thread reads through a connection of its own; so many are added.
Result<void> openMore(std::vector<Kitchen>& kitchens, std::size_t number, const std::string& path) {
    for (std::size_t i = 0; i < number; ++i) {
        auto kitchen = Kitchen::open(path, KitchenAccess::Read);
        if (!kitchen) return fail(kitchen.error());
        kitchens.push_back(std::move(*kitchen));
    }
    return {};
}

std::size_t threadsFor(const FiguresCommand& command, std::size_t revisions) {
    const unsigned cores = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t wanted = command.jobs > 0 ? static_cast<std::size_t>(command.jobs) : cores;
    return std::clamp<std::size_t>(revisions, 1, wanted);
}

Result<int> printLines(LinesInOrder& lines, std::ostream& out, std::ostream& err) {
    int code = 0;
    while (const auto line = lines.next()) {
        if (!*line) {
            err << "nettare: " << errorSentence(line->error()) << '\n';
            code = 1;
        } else if (!(out << **line << std::flush)) {
            return fail(notTaken());
        }
    }
    return code;
}

}  // namespace

Result<int> showAllFigures(const FiguresCommand& command, const std::string& path,
                           std::ostream& out, std::ostream& err) {
    std::vector<Kitchen> kitchens;
    if (auto opened = openMore(kitchens, 1, path); !opened) return fail(opened.error());
    const auto revisions = KeptRevisions::of(kitchens.front());
    if (!revisions) return fail(revisions.error());
    const std::size_t jobs = threadsFor(command, revisions->size());
    if (auto opened = openMore(kitchens, jobs - 1, path); !opened) return fail(opened.error());
    if (!(out << headingOfRows(command) << std::flush)) return fail(notTaken());
    LinesInOrder lines{revisions->size(), kRoomPerJob * jobs};
    std::vector<std::jthread> threads;
    threads.reserve(jobs);
    for (const Kitchen& kitchen : kitchens)
        threads.emplace_back([&command, &kitchen, &revisions, &lines] {
            while (const auto task = lines.take())
                lines.put(*task, revisionLine(command, kitchen, revisions->at(*task)));
        });
    auto code = printLines(lines, out, err);
    lines.stop();
    return code;
}

}  // namespace nettare
