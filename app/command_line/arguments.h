#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "app/command_line/bench_commands.h"
#include "core/food/component.h"
#include "core/nutrition/source.h"
#include "core/recipe/recipe_document.h"
#include "db/import/import_table.h"

namespace nettare {

// A recipe is the path of a document; with a kitchen it is an id or the start of a title there.
// `revision` is of a kitchen's recipe; nothing means the draft.

struct FiguresCommand {
    std::vector<std::string> recipes;
    std::optional<int> revision;
    Basis per = Basis::Portion;
    Meaning of = Meaning::ThisBatch;
    bool json = false;
    bool all = false;  ///< every kept revision of a kitchen; no recipe is named
    int jobs = 0;      ///< threads that compute all of them; 0 = one for each core
};

struct PathCommand {
    std::string recipe;
    std::optional<int> revision;
    std::string component;
    Basis per = Basis::Portion;
    Meaning of = Meaning::ThisBatch;
    bool json = false;
    bool simulate = false;  ///< also where the interval does not ask for it
};

struct StatementCommand {
    std::string recipe;
    std::optional<int> revision;
    std::string pieces = "1,2,3";
    std::string component = "ENERC_KCAL";
};

struct PanelCommand {
    std::string recipe;
    std::optional<int> revision;
    std::string rules = "us";
    std::string out;
};

struct FoodsCommand {
    std::vector<std::string> words;
};

struct FoodCommand {
    std::vector<std::string> number;  ///< the number alone, or table, release and number
    bool json = false;
};

struct LabelCommand {
    std::string document;  ///< path; with a kitchen and without `keep` the name of a labelled food
    bool json = false;
    bool keep = false;       ///< the document's label in the kitchen
    std::string of;          ///< the labelled food that it is the next version of; empty: a new one
    std::string photo;       ///< path of a photograph of the package; empty: none
    std::string writePhoto;  ///< path for the one that the kitchen keeps; empty: not wanted
};

struct ImportCommand {
    ImportKind kind = ImportKind::Sr28;
    std::string path;
    bool dryRun = false;
    std::string mapping;  ///< path of a saved mapping of columns; empty: none
};

struct LineCommand {
    std::vector<std::string> words;
    std::string measures = "us";
};

struct DemoCommand {
    std::string out;
};

struct AddCommand {
    std::vector<std::string> documents;
};

struct ListCommand {};

struct RevisionsCommand {
    std::string recipe;
};

struct BackupCommand {
    std::string out;
};

/// Nothing to run: a text to print and the exit code (help, version, wrong usage).
struct PrintAndExit {
    std::string text;
    int code = 0;
};

using Command =
    std::variant<PrintAndExit, FiguresCommand, PathCommand, StatementCommand, PanelCommand,
                 FoodsCommand, FoodCommand, LabelCommand, ImportCommand, LineCommand, DemoCommand,
                 AddCommand, ListCommand, RevisionsCommand, VerifyCommand, BackupCommand,
                 ReadingCommand, ScaleCommand, VesselCommand, SeriesCommand, LedgerCommand>;

/// One call of the program. Commands that need a kitchen come with one.
struct Call {
    Command command;
    std::optional<std::string> kitchen;  ///< path; nothing where recipes are documents
};

/// Reads the arguments of the command line, without the program's name.
[[nodiscard]] Call readArguments(const std::vector<std::string>& arguments);

}  // namespace nettare
