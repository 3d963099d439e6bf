#include "app/command_line/arguments.h"

#include "core/support/text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <sstream>

namespace nettare {

namespace {

constexpr const char* kAbout =
    "Recipe figures that can be defended: grams, figures with their uncertainty,\n"
    "the statement and the nutrition panel of a recipe document.";

constexpr const char* kFooter =
    "Exit codes: 0 done, 1 refused (one sentence on standard error), 2 wrong usage.\n"
    "Figures are estimates. Labels and claims are governed by local law; this is no medical "
    "advice.";

/// One CLI::App with all commands, bound to the values they fill.
class Parser {
public:
    Parser() {
        app_.footer(kFooter);
        app_.set_version_flag("--version", std::string{"nettare " NETTARE_VERSION});
        app_.require_subcommand(1);
        addFigures();
        addStatement();
        addPanel();
        addOthers();
    }

    Command parse(std::vector<std::string> arguments) {
        const std::string first = arguments.empty() ? std::string{} : arguments.front();
        std::reverse(arguments.begin(), arguments.end());  // CLI11 takes them last first
        try {
            app_.parse(arguments);
        } catch (const CLI::ParseError& stopped) {
            if (stopped.get_exit_code() != 0) return PrintAndExit{wrongUsage(first, stopped), 2};
            std::ostringstream text;
            app_.exit(stopped, text, text);
            return PrintAndExit{text.str(), 0};
        }
        if (*figuresCommand_) {
            figures_.per = *basisNamed(per_);
            return figures_;
        }
        if (*statementCommand_) return statement_;
        if (*panelCommand_) return panel_;
        if (*foodsCommand_) return foods_;
        return demo_;
    }

private:
    /// One sentence: what is wrong with the arguments, and where help is.
    std::string wrongUsage(const std::string& first, const CLI::ParseError& stopped) const {
        constexpr std::size_t kLongest = 200;
        std::string what = shortened(stopped.what(), kLongest);
        if (!isCommand(first)) {
            what = first.empty() ? "name a command:"
                                 : "“" + shortened(first, 60) + "” is no command, name one of:";
            std::string separator = " ";
            for (const CLI::App* command : app_.get_subcommands(nullptr)) {
                what += separator + command->get_name();
                separator = ", ";
            }
        }
        return "nettare: " + what + "; “nettare --help” explains them.\n";
    }

    bool isCommand(const std::string& word) const {
        const auto commands = app_.get_subcommands(nullptr);
        return std::ranges::any_of(
            commands, [&](const CLI::App* command) { return command->get_name() == word; });
    }

    void addFigures() {
        figuresCommand_ = app_.add_subcommand("figures", "Compute the figures of recipe documents");
        figuresCommand_->add_option("DOC", figures_.documents, "Recipe document (JSON)")
            ->required();
        figuresCommand_->add_option("--per", per_, "What the figures are per")
            ->check(CLI::IsMember({"piece", "portion", "100g", "batch"}))
            ->capture_default_str();
        figuresCommand_->add_flag("--json", figures_.json,
                                  "Unrounded values with all their sources, as JSON");
    }

    void addStatement() {
        statementCommand_ = app_.add_subcommand("statement", "Say a figure in a sentence");
        statementCommand_->add_option("DOC", statement_.document, "Recipe document")->required();
        statementCommand_->add_option("--pieces", statement_.pieces, "Numbers of pieces")
            ->capture_default_str();
        statementCommand_->add_option("--component", statement_.component, "INFOODS tagname")
            ->capture_default_str();
    }

    void addPanel() {
        panelCommand_ = app_.add_subcommand("panel", "Print the nutrition panel of one portion");
        panelCommand_->add_option("DOC", panel_.document, "Recipe document")->required();
        panelCommand_->add_option("--rules", panel_.rules, "Whose rules")
            ->check(CLI::IsMember({"us"}))
            ->capture_default_str();
        panelCommand_->add_option("--out", panel_.out, "PDF file to write")->required();
    }

    void addOthers() {
        foodsCommand_ = app_.add_subcommand("foods", "Find foods in the table");
        foodsCommand_->add_option("WORDS", foods_.words, "Words of the name, in any order")
            ->required();
        demoCommand_ =
            app_.add_subcommand("demo", "Show the example recipes and write their panels");
        demoCommand_->add_option("--out", demo_.out, "Folder for the panels (default: here)");
    }

    CLI::App app_{kAbout, "nettare"};
    CLI::App* figuresCommand_ = nullptr;
    CLI::App* statementCommand_ = nullptr;
    CLI::App* panelCommand_ = nullptr;
    CLI::App* foodsCommand_ = nullptr;
    CLI::App* demoCommand_ = nullptr;
    std::string per_ = "portion";
    FiguresCommand figures_;
    StatementCommand statement_;
    PanelCommand panel_;
    FoodsCommand foods_;
    DemoCommand demo_;
};

}  // namespace

Command readArguments(const std::vector<std::string>& arguments) {
    return Parser{}.parse(arguments);
}

}  // namespace nettare
