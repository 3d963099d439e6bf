#include "app/command_line/arguments.h"

#include "app/command_line/bench_arguments.h"
#include "app/command_line/help_texts.h"
#include "core/support/text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <sstream>

namespace nettare {

namespace {

constexpr std::size_t kLongestWord = 60;

/// "nettare: what; “nettare --help” explains them."
PrintAndExit wrongCall(const std::string& what) {
    return {"nettare: " + what + "; “nettare --help” explains them.\n", 2};
}

/// The first argument that is not the kitchen.
std::string commandWord(const std::vector<std::string>& arguments) {
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        if (arguments[i] == "--kitchen")
            ++i;
        else if (!arguments[i].starts_with("--kitchen="))
            return arguments[i];
    }
    return {};
}

/// The meaning of "mean", "batch" or "piece".
Meaning meaningOf(std::string_view word) {
    return word == "mean"    ? Meaning::RecipeMean
           : word == "piece" ? Meaning::AnyPiece
                             : Meaning::ThisBatch;
}

ImportKind importKindNamed(std::string_view word) {
    return word == "fdc" ? ImportKind::Fdc : word == "csv" ? ImportKind::Csv : ImportKind::Sr28;
}

/// One CLI::App with all commands, bound to the values they fill.
class Parser {
public:
    Parser() {
        app_.footer(std::string{kFooter});
        app_.set_version_flag("--version", std::string{"nettare " NETTARE_VERSION});
        kitchenOption_ =
            app_.add_option("--kitchen", kitchen_, "Kitchen (*.nettare) that the command works on")
                ->type_name("FILE");
        app_.require_subcommand(1);
        app_.fallthrough();  // its commands take --kitchen behind them as well
        addFigures();
        addPath();
        addStatement();
        addPanel();
        addOthers();
        addImport();
        addKitchenCommands();
    }

    Call parse(std::vector<std::string> arguments) {
        const std::string word = commandWord(arguments);
        std::reverse(arguments.begin(), arguments.end());  // CLI11 takes them last first
        try {
            app_.parse(arguments);
        } catch (const CLI::ParseError& stopped) {
            if (stopped.get_exit_code() != 0) return {wrongUsage(word, stopped), {}};
            std::ostringstream text;
            app_.exit(stopped, text, text);
            return {PrintAndExit{text.str(), 0}, {}};
        }
        if (auto wrong = wrongKitchen(word)) return {*wrong, {}};
        Call call{command(), {}};
        if (*kitchenOption_) call.kitchen = kitchen_;
        return call;
    }

private:
    Command command() {
        const std::optional<int> revision =
            revision_ > 0 ? std::optional<int>{revision_} : std::nullopt;
        figures_.revision = path_.revision = statement_.revision = panel_.revision = revision;
        import_.kind = importKindNamed(importKind_);
        figures_.per = path_.per = *basisNamed(per_);
        figures_.of = path_.of = meaningOf(of_);
        if (*figuresCommand_) return figures_;
        if (*pathCommand_) return path_;
        if (*statementCommand_) return statement_;
        if (*panelCommand_) return panel_;
        if (*foodsCommand_) return foods_;
        if (*foodCommand_) return food_;
        if (*labelCommand_) return label_;
        if (*importCommand_) return import_;
        if (*lineCommand_) return line_;
        if (*addCommand_) return add_;
        if (*listCommand_) return ListCommand{};
        if (*revisionsCommand_) return revisions_;
        if (*backupCommand_) return backup_;
        if (auto bench = bench_.given()) return *bench;
        return demo_;
    }

    /// One sentence: what is wrong with the arguments, and where help is.
    PrintAndExit wrongUsage(const std::string& word, const CLI::ParseError& stopped) const {
        constexpr std::size_t kLongest = 200;
        if (isCommand(word)) return wrongCall(shortened(stopped.what(), kLongest));
        std::string what =
            word.empty() ? "name a command:"
                         : "“" + shortened(word, kLongestWord) + "” is no command, name one of:";
        std::string separator = " ";
        for (const CLI::App* command : app_.get_subcommands(nullptr)) {
            what += separator + command->get_name();
            separator = ", ";
        }
        return wrongCall(what);
    }

    /// A command without the kitchen it needs, or with one that it has no use for.
    std::optional<PrintAndExit> wrongKitchen(const std::string& word) const {
        const auto isGiven = [](const CLI::App* command) { return bool{*command}; };
        const bool given = bool{*kitchenOption_};
        if (auto wrong = wrongAll(given)) return wrong;
        if (auto wrong = wrongLabel(given)) return wrong;
        if (!given && std::ranges::any_of(kitchenCommands_, isGiven))
            return wrongCall("“" + word + "” works on a kitchen, name it: nettare --kitchen FILE " +
                             word);
        if (!given && revision_ > 0)
            return wrongCall("a document has no revisions, --revision needs --kitchen FILE");
        if (given &&
            (*foodsCommand_ || *foodCommand_ || *importCommand_ || *lineCommand_ || *demoCommand_))
            return wrongCall("“" + word + "” works on no kitchen, leave --kitchen out");
        if (*importCommand_ && importKind_ != "csv" && !import_.mapping.empty())
            return wrongCall("--mapping is for csv, leave it out");
        if (given && kitchen_.empty())
            return wrongCall("--kitchen names no file, give the path of one");
        if (auto wrong = bench_.wrong()) return wrongCall(*wrong);
        if (*backupCommand_ && backup_.out.empty())
            return wrongCall("“backup” names no file, give the path of a new one");
        return std::nullopt;
    }

    /// `figures` without a recipe, or with --all and what contradicts it.
    std::optional<PrintAndExit> wrongAll(bool kitchenGiven) const {
        if (!*figuresCommand_) return std::nullopt;
        if (!figures_.all && figures_.recipes.empty()) return wrongCall("RECIPE is required");
        if (!figures_.all) return std::nullopt;
        if (!kitchenGiven)
            return wrongCall(
                "--all goes through a kitchen, name it: nettare --kitchen FILE figures --all");
        if (!figures_.recipes.empty())
            return wrongCall("--all takes every recipe of the kitchen, name none beside it");
        if (revision_ > 0)
            return wrongCall("--all takes every revision of a recipe, leave --revision out");
        if (of_ != "batch")
            return wrongCall(
                "--all gives figures of this batch, as they were kept, leave --of out");
        return std::nullopt;
    }

    /// `label` with what only a kitchen can do, or with options that contradict each other.
    std::optional<PrintAndExit> wrongLabel(bool kitchenGiven) const {
        if (!*labelCommand_) return std::nullopt;
        if (label_.keep && !kitchenGiven)
            return wrongCall(
                "--keep works on a kitchen, name it: nettare --kitchen FILE label DOC --keep");
        if (!label_.writePhoto.empty() && !kitchenGiven)
            return wrongCall("--write-photo works on a kitchen, name it with --kitchen FILE");
        if (label_.keep && label_.json) return wrongCall("--keep has no JSON, leave --json out");
        return std::nullopt;
    }

    bool isCommand(const std::string& word) const {
        const auto commands = app_.get_subcommands(nullptr);
        return std::ranges::any_of(
            commands, [&](const CLI::App* command) { return command->get_name() == word; });
    }

    CLI::App* addCommand(const char* name, const char* about, std::string_view examples) {
        CLI::App* command = app_.add_subcommand(name, about);
        command->footer(std::string{examples});
        return command;
    }

    /// The recipe of a command, and which of its revisions.
    template <class Value>
    void addRecipe(CLI::App* command, Value& recipe) {
        command
            ->add_option("RECIPE", recipe,
                         "Recipe document (JSON); with --kitchen the id or the start of the title "
                         "of a recipe there")
            ->required();
        command
            ->add_option("--revision", revision_, "Revision of a kitchen's recipe, not its draft")
            ->check(CLI::Range(1, kLargestRevision));
    }

    void addFigures() {
        figuresCommand_ = addCommand("figures", "Compute the figures of recipes", kFiguresExamples);
        addRecipe(figuresCommand_, figures_.recipes);
        addBasisAndMeaning(figuresCommand_);
        figuresCommand_->add_flag("--json", figures_.json,
                                  "Unrounded values with all their sources, as JSON");
        addAll();
    }

    /// With --all the kitchen's own recipes take the place of those named.
    void addAll() {
        figuresCommand_->get_option("RECIPE")->required(false);
        CLI::Option* all = figuresCommand_->add_flag(
            "--all", figures_.all,
            "Every kept revision of the kitchen, computed anew, a line each");
        figuresCommand_
            ->add_option("--jobs", figures_.jobs, "Threads for --all (default: one for each core)")
            ->check(CLI::Range(1, kMostJobs))
            ->needs(all);
    }

    void addBasisAndMeaning(CLI::App* command) {
        command->add_option("--per", per_, "What the figures are per")
            ->check(CLI::IsMember({"piece", "portion", "100g", "batch"}))
            ->capture_default_str();
        command
            ->add_option("--of", of_,
                         "What the figures are of: the mean of all batches, this batch, any one "
                         "piece of it")
            ->check(CLI::IsMember({"mean", "batch", "piece"}))
            ->capture_default_str();
    }

    void addPath() {
        pathCommand_ = addCommand("path", "Show where a figure comes from", kPathExamples);
        addRecipe(pathCommand_, path_.recipe);
        pathCommand_->add_option("COMPONENT", path_.component, "INFOODS tagname")->required();
        addBasisAndMeaning(pathCommand_);
        pathCommand_->add_flag("--json", path_.json, "The same for other programs, as JSON");
        pathCommand_->add_flag("--simulate", path_.simulate,
                               "Check the interval by a million simulated batches; done anyway "
                               "where one rectangle or few readings rule it");
    }

    void addStatement() {
        statementCommand_ =
            addCommand("statement", "Say a figure in a sentence", kStatementExamples);
        addRecipe(statementCommand_, statement_.recipe);
        statementCommand_->add_option("--pieces", statement_.pieces, "Numbers of pieces")
            ->capture_default_str();
        statementCommand_->add_option("--component", statement_.component, "INFOODS tagname")
            ->capture_default_str();
    }

    void addPanel() {
        panelCommand_ =
            addCommand("panel", "Print the nutrition panel of one portion", kPanelExamples);
        addRecipe(panelCommand_, panel_.recipe);
        panelCommand_->add_option("--rules", panel_.rules, "Whose rules")
            ->check(CLI::IsMember({"us"}))
            ->capture_default_str();
        panelCommand_->add_option("--out", panel_.out, "PDF file to write")->required();
    }

    void addOthers() {
        addFoods();
        addLabel();
        lineCommand_ =
            addCommand("line", "Read an ingredient line, and find its grams", kLineExamples);
        lineCommand_->add_option("LINE", line_.words, "The line as a cook writes it")->required();
        lineCommand_->add_option("--measures", line_.measures, "Whose spoons, cups and pints")
            ->check(CLI::IsMember({"us", "label", "metric", "imperial", "australian"}))
            ->capture_default_str();
        demoCommand_ =
            app_.add_subcommand("demo", "Show the example recipes and write their panels");
        demoCommand_->add_option("--out", demo_.out, "Folder for the panels (default: here)");
    }

    void addFoods() {
        foodsCommand_ = addCommand("foods", "Find foods in the tables", kFoodsExamples);
        foodsCommand_->add_option("WORDS", foods_.words, "Words of the name, in any order")
            ->required();
        foodCommand_ = addCommand("food", "Show all that a table says of a food", kFoodExamples);
        foodCommand_
            ->add_option("NUMBER", food_.number,
                         "Its number, alone or behind its table and release, as “foods” shows them")
            ->required();
        foodCommand_->add_flag("--json", food_.json, "The same for other programs, as JSON");
    }

    void addLabel() {
        labelCommand_ =
            addCommand("label", "Check the label of a package, or keep it", kLabelExamples);
        labelCommand_
            ->add_option("DOC", label_.document,
                         "Label or recipe document (JSON); with --kitchen and without --keep the "
                         "name of a labelled food there")
            ->required();
        labelCommand_->add_flag("--json", label_.json, "The same for other programs, as JSON");
        CLI::Option* keep = labelCommand_->add_flag(
            "--keep", label_.keep, "Keep it in the kitchen, unless a finding stands open");
        labelCommand_
            ->add_option("--of", label_.of,
                         "The labelled food that this is a new package of (default: a new food)")
            ->type_name("NAME")
            ->needs(keep);
        labelCommand_
            ->add_option("--photo", label_.photo, "Photograph of the package (JPEG or PNG)")
            ->type_name("FILE")
            ->needs(keep);
        labelCommand_
            ->add_option("--write-photo", label_.writePhoto,
                         "File for the photograph that the kitchen keeps of it")
            ->type_name("FILE")
            ->excludes(keep);
    }

    void addImport() {
        importCommand_ = addCommand("import", "Import a public table of foods", kImportExamples);
        importCommand_->add_option("KIND", importKind_, "What it is: sr28, fdc or csv")
            ->check(CLI::IsMember({"sr28", "fdc", "csv"}))
            ->required();
        importCommand_
            ->add_option("PATH", import_.path,
                         "The download as its publisher hands it out, a zip or a folder; for csv "
                         "the file")
            ->required();
        importCommand_->add_flag("--dry-run", import_.dryRun, "Read and report all, write nothing");
        importCommand_
            ->add_option("--mapping", import_.mapping, "For csv: what its columns are (JSON)")
            ->type_name("FILE");
    }

    void addKitchenCommands() {
        addCommand_ = addCommand("add", "Add recipe documents to a kitchen", kAddExamples);
        addCommand_->add_option("DOC", add_.documents, "Recipe document (JSON)")->required();
        listCommand_ = addCommand("list", "List the recipes of a kitchen", kListExamples);
        revisionsCommand_ =
            addCommand("revisions", "List the revisions of a kitchen's recipe", kRevisionsExamples);
        revisionsCommand_->add_option("RECIPE", revisions_.recipe, "Its id, or start of its title")
            ->required();
        bench_.addTo(app_);
        backupCommand_ = addCommand("backup", "Write a whole copy of a kitchen", kBackupExamples);
        backupCommand_->add_option("FILE", backup_.out, "New file to write")->required();
        kitchenCommands_ = bench_.commands();
        kitchenCommands_.insert(kitchenCommands_.end(),
                                {addCommand_, listCommand_, revisionsCommand_, backupCommand_});
    }

    static constexpr int kLargestRevision = 1'000'000;
    static constexpr int kMostJobs = 256;

    CLI::App app_{std::string{kAbout}, "nettare"};
    CLI::Option* kitchenOption_ = nullptr;
    CLI::App* figuresCommand_ = nullptr;
    CLI::App* pathCommand_ = nullptr;
    CLI::App* statementCommand_ = nullptr;
    CLI::App* panelCommand_ = nullptr;
    CLI::App* foodsCommand_ = nullptr;
    CLI::App* foodCommand_ = nullptr;
    CLI::App* labelCommand_ = nullptr;
    CLI::App* importCommand_ = nullptr;
    CLI::App* lineCommand_ = nullptr;
    CLI::App* demoCommand_ = nullptr;
    CLI::App* addCommand_ = nullptr;
    CLI::App* listCommand_ = nullptr;
    CLI::App* revisionsCommand_ = nullptr;
    CLI::App* backupCommand_ = nullptr;
    std::vector<CLI::App*> kitchenCommands_;
    std::string kitchen_;
    std::string per_ = "portion";
    std::string of_ = "batch";
    std::string importKind_ = "sr28";
    int revision_ = 0;
    FiguresCommand figures_;
    PathCommand path_;
    StatementCommand statement_;
    PanelCommand panel_;
    FoodsCommand foods_;
    FoodCommand food_;
    LabelCommand label_;
    ImportCommand import_;
    LineCommand line_;
    DemoCommand demo_;
    AddCommand add_;
    RevisionsCommand revisions_;
    BackupCommand backup_;
    BenchArguments bench_;
};

}  // namespace

Call readArguments(const std::vector<std::string>& arguments) {
    return Parser{}.parse(arguments);
}

}  // namespace nettare
