#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/food/component.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

struct FiguresCommand {
    std::vector<std::string> documents;
    Basis per = Basis::Portion;
    bool json = false;
};

struct StatementCommand {
    std::string document;
    std::string pieces = "1,2,3";
    std::string component = "ENERC_KCAL";
};

struct PanelCommand {
    std::string document;
    std::string rules = "us";
    std::string out;
};

struct FoodsCommand {
    std::vector<std::string> words;
};

struct DemoCommand {
    std::string out;
};

/// Nothing to run: a text to print and the exit code (help, version, wrong usage).
struct PrintAndExit {
    std::string text;
    int code = 0;
};

using Command = std::variant<PrintAndExit, FiguresCommand, StatementCommand, PanelCommand,
                             FoodsCommand, DemoCommand>;

/// Reads the arguments of the command line, without the program's name.
[[nodiscard]] Command readArguments(const std::vector<std::string>& arguments);

}  // namespace nettare
