#include "app/command_line/run.h"

#include <ostream>
#include <sstream>

#include "app/command_line/all_figures.h"
#include "app/command_line/arguments.h"
#include "app/command_line/document_commands.h"
#include "app/command_line/equipment_command.h"
#include "app/command_line/food_command.h"
#include "app/command_line/import_command.h"
#include "app/command_line/kitchen_commands.h"
#include "app/command_line/kitchen_recipes.h"
#include "app/command_line/label_command.h"
#include "app/command_line/ledger_command.h"
#include "app/command_line/line_command.h"
#include "app/command_line/reading_command.h"
#include "app/command_line/series_command.h"
#include "app/files/table_places.h"
#include "app/words/error_sentence.h"

namespace nettare {

namespace {

/// Runs one command. Each `run` answers the exit code, or the error that refused it.
class CommandRun {
public:
    CommandRun(std::optional<std::string> kitchen, std::ostream& out, std::ostream& err)
        : path_{std::move(kitchen)}, out_{out}, err_{err}, loader_{tablePlaces()} {}

    Result<int> run(const Command& command) {
        return std::visit([this](const auto& one) { return this->one(one); }, command);
    }

private:
    Result<int> one(const PrintAndExit& text) { return text.code; }
    Result<int> one(const FiguresCommand& command) {
        return done(recipes(command.revision),
                    [&](const OpenRecipe& open) { return showFigures(command, open, out_); });
    }
    Result<int> one(const PathCommand& command) {
        return done(recipes(command.revision),
                    [&](const OpenRecipe& open) { return showPath(command, open, out_); });
    }
    Result<int> one(const StatementCommand& command) {
        return done(recipes(command.revision),
                    [&](const OpenRecipe& open) { return showStatement(command, open, out_); });
    }
    Result<int> one(const PanelCommand& command) {
        return done(recipes(command.revision),
                    [&](const OpenRecipe& open) { return writePanel(command, open, out_); });
    }
    Result<int> one(const FoodsCommand& command) { return done(showFoods(command, loader_, out_)); }
    Result<int> one(const FoodCommand& command) { return done(showFood(command, loader_, out_)); }
    Result<int> one(const LabelCommand& command) {
        const auto sound = command.keep ? keptLabel(command) : shownLabel(command);
        if (!sound) return fail(sound.error());
        return *sound ? 0 : 1;
    }
    Result<int> one(const ImportCommand& command) { return done(importFoods(command, out_, err_)); }
    Result<int> one(const LineCommand& command) { return done(showLine(command, loader_, out_)); }
    Result<int> one(const DemoCommand& command) { return done(showDemo(command, loader_, out_)); }
    Result<int> one(const AddCommand& command) {
        return done(addToKitchen(command, *path_, loader_, out_));
    }
    Result<int> one(const ListCommand& /*command*/) {
        return done(toRead(),
                    [&](const Kitchen* kitchen) { return listRecipes(*kitchen, loader_, out_); });
    }
    Result<int> one(const RevisionsCommand& command) {
        return done(toRead(),
                    [&](const Kitchen* kitchen) { return listRevisions(command, *kitchen, out_); });
    }
    Result<int> one(const VerifyCommand& command) {
        const auto kitchen = toRead();
        if (!kitchen) return fail(kitchen.error());
        const auto faults = verifyKitchen(command, **kitchen, out_);
        if (!faults) return fail(faults.error());
        return *faults == 0 ? 0 : 1;
    }
    Result<int> one(const BackupCommand& command) {
        return done(toRead(),
                    [&](const Kitchen* kitchen) { return backUpKitchen(command, *kitchen, out_); });
    }

    Result<int> one(const ReadingCommand& command) {
        return done(toWrite(), [&](Kitchen* kitchen) {
            return command.what.empty() ? speakOfReading(command, *kitchen, out_)
                                        : recordReading(command, *kitchen, loader_, out_);
        });
    }
    Result<int> one(const ScaleCommand& command) {
        if (command.name.empty())
            return done(toRead(),
                        [&](const Kitchen* kitchen) { return listEquipment(*kitchen, out_); });
        return done(toWrite(),
                    [&](Kitchen* kitchen) { return keepScale(command, *kitchen, out_); });
    }
    Result<int> one(const VesselCommand& command) {
        return done(toWrite(),
                    [&](Kitchen* kitchen) { return keepVessel(command, *kitchen, out_); });
    }
    Result<int> one(const SeriesCommand& command) {
        return done(toRead(), [&](const Kitchen* kitchen) {
            return showSeries(command, *kitchen, loader_, recipesOf(*kitchen, loader_, {}), out_);
        });
    }
    Result<int> one(const LedgerCommand& command) {
        return done(toRead(),
                    [&](const Kitchen* kitchen) { return showLedger(command, *kitchen, out_); });
    }

    Result<bool> shownLabel(const LabelCommand& command) {
        if (!path_) return showLabel(command, nullptr, loader_, out_);
        const auto kitchen = toRead();
        if (!kitchen) return fail(kitchen.error());
        return showLabel(command, *kitchen, loader_, out_);
    }
    Result<bool> keptLabel(const LabelCommand& command) {
        const auto kitchen = toWrite();
        if (!kitchen) return fail(kitchen.error());
        return keepLabel(command, **kitchen, loader_, out_);
    }

    static Result<int> done(const Result<void>& result) {
        if (!result) return fail(result.error());
        return 0;
    }
    /// What `work` makes of the thing, where there is one.
    template <class Thing, class Work>
    static Result<int> done(const Result<Thing>& thing, const Work& work) {
        if (!thing) return fail(thing.error());
        return done(work(*thing));
    }

    /// The kitchen, opened once.
    Result<const Kitchen*> toRead() { return opened(KitchenAccess::Read); }
    Result<Kitchen*> toWrite() { return opened(KitchenAccess::Write); }
    Result<Kitchen*> opened(KitchenAccess access) {
        if (!kitchen_) {
            auto kitchen = Kitchen::open(*path_, access);
            if (!kitchen) return fail(kitchen.error());
            kitchen_ = std::move(*kitchen);
        }
        return &*kitchen_;
    }

    /// The recipes that the command line names: documents or those of the kitchen.
    Result<OpenRecipe> recipes(std::optional<int> revision) {
        if (!path_) return documentsOf(loader_);
        const auto kitchen = toRead();
        if (!kitchen) return fail(kitchen.error());
        return recipesOf(**kitchen, loader_, revision);
    }

    std::optional<std::string> path_;
    std::ostream& out_;
    std::ostream& err_;
    DossierLoader loader_;
    std::optional<Kitchen> kitchen_;
};

/// The exit code, after a sentence where there is none.
int codeOf(const Result<int>& code, std::ostream& err) {
    if (code) return *code;
    err << "nettare: " << errorSentence(code.error()) << '\n';
    return 1;
}

}  // namespace

int runCommandLine(const std::vector<std::string>& arguments, std::ostream& out,
                   std::ostream& err) {
    const Call call = readArguments(arguments);
    if (const auto* text = std::get_if<PrintAndExit>(&call.command)) {
        (text->code == 0 ? out : err) << text->text;
        return text->code;
    }
    if (const auto* figures = std::get_if<FiguresCommand>(&call.command);
        figures != nullptr && figures->all)
        return codeOf(showAllFigures(*figures, *call.kitchen, out, err), err);
    // Results go out whole or not at all: what one document refuses, no other has half written.
    std::ostringstream results;
    Result<int> code = CommandRun{call.kitchen, results, err}.run(call.command);
    if (code && !(out << results.view() << std::flush))
        code = fail(ofArgument("standard output", Error{ErrorCode::FileNotWritable}.with(
                                                      "reason", "the disk may be full")));
    return codeOf(code, err);
}

}  // namespace nettare
