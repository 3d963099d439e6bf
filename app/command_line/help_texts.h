#pragma once

#include <string_view>

namespace nettare {

// What --help says beside the options: of the program, and examples of each command.

inline constexpr std::string_view kAbout =
    "Recipe figures that can be defended: grams, figures with their uncertainty,\n"
    "the statement and the nutrition panel, of recipe documents or of the recipes\n"
    "and revisions that a kitchen keeps. Without a command the window opens.";

inline constexpr std::string_view kFooter =
    "Examples:\n"
    "  nettare figures skewers.json\n"
    "  nettare --kitchen spring.nettare add skewers.json patties.json\n"
    "  nettare --kitchen spring.nettare figures charred --revision 1\n"
    "“nettare COMMAND --help” has more.\n\n"
    "Exit codes: 0 done, 1 refused (one sentence on standard error), faults found by “verify” or\n"
    "findings of “label”, 2 wrong usage.\n"
    "Figures are estimates. Labels and claims are governed by local law; this is no medical "
    "advice.";

inline constexpr std::string_view kFiguresExamples =
    "Examples:\n"
    "  nettare figures skewers.json --per piece\n"
    "  nettare figures skewers.json patties.json --json\n"
    "  nettare --kitchen spring.nettare figures \"charred prawn\"\n"
    "  nettare --kitchen spring.nettare figures charred-prawn-fennel-skewers --revision 1\n"
    "  nettare figures skewers.json --of piece\n"
    "  nettare --kitchen spring.nettare figures --all --json --jobs 2\n"
    "Where an old revision's figures come out otherwise today, both are shown. --all computes "
    "every\n"
    "kept revision anew, as a table or with --json as one JSON object a line.";

inline constexpr std::string_view kPathExamples =
    "Every step names where its number comes from; the numbers of a formula, multiplied as\n"
    "printed, give the number before it to its last digit.\n"
    "Examples:\n"
    "  nettare path skewers.json ENERC_KCAL --per piece\n"
    "  nettare --kitchen spring.nettare path charred NA --revision 2 --of mean";

inline constexpr std::string_view kStatementExamples =
    "Examples:\n"
    "  nettare statement skewers.json --pieces 1,2,3\n"
    "  nettare --kitchen spring.nettare statement charred --component NA";

inline constexpr std::string_view kPanelExamples =
    "Examples:\n"
    "  nettare panel skewers.json --out panel.pdf\n"
    "  nettare --kitchen spring.nettare panel charred --revision 2 --out panel.pdf";

inline constexpr std::string_view kFoodsExamples =
    "Words may be unfinished, stand in any order and have one slip each; what a slip was taken as\n"
    "is said first.\n"
    "Examples:\n"
    "  nettare foods fennel raw\n"
    "  nettare foods courgete";

inline constexpr std::string_view kFoodExamples =
    "Refuse, factors, measures and every value with ±, data points and how it is known; what has\n"
    "no data is named.\n"
    "Examples:\n"
    "  nettare food 11282\n"
    "  nettare food usda-sr 28 11282 --json";

inline constexpr std::string_view kLabelExamples =
    "Shows what each printed amount stands for under the rules of its label, and which amounts\n"
    "cannot all be right, with the likeliest slip. --keep lists the published figures that a new\n"
    "package would move by more than their rounding. The exit code is 1 where a finding stands\n"
    "open; the document may say that an amount is as printed.\n"
    "Examples:\n"
    "  nettare label yogurt.label.json\n"
    "  nettare --kitchen spring.nettare label yogurt.label.json --keep\n"
    "  nettare --kitchen spring.nettare label yogurt-2.label.json --keep --of \"thick yogurt\"\n"
    "  nettare --kitchen spring.nettare label \"thick yogurt\" --json";

inline constexpr std::string_view kImportExamples =
    "sr28 is the USDA National Nutrient Database for Standard Reference, release 28 (ASCII), fdc "
    "a\n"
    "CSV download of USDA FoodData Central, csv any table by a mapping of its columns; without\n"
    "--mapping a guess of it is printed. All is imported, or nothing; Ctrl+C stops. The table "
    "goes\n"
    "to nettare/tables below your data folder, or where NETTARE_TABLES says.\n"
    "Examples:\n"
    "  nettare import sr28 sr28asc.zip --dry-run\n"
    "  nettare import fdc FoodData_Central_csv.zip\n"
    "  nettare import csv foods.csv > columns.json\n"
    "  nettare import csv foods.csv --mapping columns.json";

inline constexpr std::string_view kLineExamples =
    "Shows what was read and every way to its grams with its interval; the one with “>” counts.\n"
    "What has two meanings, such as oz, is shown for both. A temperature, length or time is\n"
    "converted.\n"
    "Examples:\n"
    "  nettare line \"1/3 cup tahini, stirred\"\n"
    "  nettare line \"2 x 400 g tins tomatoes, drained\" --measures metric\n"
    "  nettare line \"gas mark 6\"";

inline constexpr std::string_view kAddExamples =
    "Each document becomes a recipe with revision 1; recipes that it uses are added with it, and\n"
    "what the scales showed goes to the ledger. All documents are added, or none is. A kitchen\n"
    "that does not exist is made.\n"
    "Example:\n"
    "  nettare --kitchen spring.nettare add skewers.json patties.json";

inline constexpr std::string_view kListExamples =
    "Example:\n"
    "  nettare --kitchen spring.nettare list";

inline constexpr std::string_view kRevisionsExamples =
    "Example:\n"
    "  nettare --kitchen spring.nettare revisions charred";

inline constexpr std::string_view kBackupExamples =
    "Example:\n"
    "  nettare --kitchen spring.nettare backup spring-2026-05-30.nettare";

}  // namespace nettare
