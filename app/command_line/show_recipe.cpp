#include "app/command_line/show_recipe.h"

#include <ostream>

#include "app/panel/panel_pdf.h"
#include "core/publish/figures_json.h"
#include "core/publish/figures_text.h"
#include "core/publish/panel_of.h"
#include "core/publish/path.h"
#include "core/publish/path_check.h"
#include "core/publish/statement.h"
#include "core/support/text.h"

namespace nettare {

namespace {

/// "1,2,3" as counts; the errors of readAmount and RangeNotAllowed.
Result<std::vector<Count>> piecesOf(std::string_view list) {
    std::vector<Count> pieces;
    for (const std::string_view text : split(list, ',')) {
        const auto amount = readAmount(text);
        if (!amount) return fail(amount.error());
        if (amount->isRange()) return fail(Error{ErrorCode::RangeNotAllowed}.with("found", text));
        pieces.push_back(*Count::from(amount->low()));
    }
    return pieces;
}

/// The recipe cooked for that meaning.
Result<Cooked> cookedAs(const OpenedRecipe& recipe, Meaning meaning) {
    if (meaning == recipe.cooked.meaning) return recipe.cooked;
    return cook(recipe.dossier, recipe.cooked.compositions, meaning);
}

/// What was kept with a revision is of one batch, and is compared with nothing else.
Result<void> show(const OpenedRecipe& recipe, const FiguresCommand& command, std::ostream& out) {
    const auto cooked = cookedAs(recipe, command.of);
    if (!cooked) return fail(cooked.error());
    const auto figures = figuresPer(command.per, recipe.dossier, *cooked);
    if (!figures) return fail(figures.error());
    const bool both = command.of == Meaning::ThisBatch && recipe.kept &&
                      differFromToday(*recipe.kept, recipe.dossier, recipe.cooked);
    if (command.json) {
        Json all = figuresJson(*figures, recipe.dossier, *cooked);
        if (both) all.set("kept", keptJson(*recipe.kept, command.per));
        out << writeJsonIndented(all);
        return {};
    }
    const auto verdicts = verdictsOf(recipe.dossier, *cooked);
    if (!verdicts) return fail(verdicts.error());
    out << figuresPage(*figures, recipe.dossier, *cooked, *verdicts);
    if (both) out << keptBesideToday(*recipe.kept, *figures);
    return {};
}

/// A sentence where what was kept with a revision and today's figures are two things.
void sayWhereTheyDiffer(const OpenedRecipe& recipe, std::ostream& out) {
    if (recipe.kept && differFromToday(*recipe.kept, recipe.dossier, recipe.cooked))
        out << "These are today's figures; those kept with this revision differ, and “nettare "
               "figures” shows both.\n";
}

}  // namespace

Error ofArgument(std::string_view argument, Error error) {
    error.file = argument;
    return error;
}

Result<OpenedRecipe> opened(Dossier dossier) {
    auto cooked = cook(dossier);
    if (!cooked) return fail(cooked.error());
    return OpenedRecipe{std::move(dossier), std::move(*cooked), {}};
}

Result<void> showFigures(const FiguresCommand& command, const OpenRecipe& open, std::ostream& out) {
    for (const std::string& name : command.recipes) {
        const auto recipe = open(name);
        if (!recipe) return fail(recipe.error());
        if (auto shown = show(*recipe, command, out); !shown) return shown;
    }
    return {};
}

Result<void> showPath(const PathCommand& command, const OpenRecipe& open, std::ostream& out) {
    const auto component = componentNamed(command.component);
    if (!component)
        return fail(ofArgument(
            "COMPONENT", Error{ErrorCode::ComponentUnknown}.with("found", command.component)));
    const auto recipe = open(command.recipe);
    if (!recipe) return fail(recipe.error());
    const auto cooked = cookedAs(*recipe, command.of);
    if (!cooked) return fail(cooked.error());
    const auto figures = figuresPer(command.per, recipe->dossier, *cooked);
    if (!figures) return fail(figures.error());
    const PathStep path = pathOf(*component, *figures, recipe->dossier, *cooked);
    if (command.json) {
        out << writeJsonIndented(pathJson(path));
        return {};
    }
    std::optional<Simulation> simulation;
    if (command.simulate || reasonToSimulate(*component, *figures, *cooked))
        simulation =
            simulate(SimulationPlan{}, figureModel(*component, *figures, recipe->dossier, *cooked));
    const auto checks = pathCheckText(*component, *figures, recipe->dossier, *cooked, simulation);
    if (!checks) return fail(checks.error());
    out << pathText(path) << *checks;
    sayWhereTheyDiffer(*recipe, out);
    return {};
}

Result<void> showStatement(const StatementCommand& command, const OpenRecipe& open,
                           std::ostream& out) {
    const auto recipe = open(command.recipe);
    if (!recipe) return fail(recipe.error());
    const auto component = componentNamed(command.component);
    if (!component)
        return fail(ofArgument(
            "--component", Error{ErrorCode::ComponentUnknown}.with("found", command.component)));
    const auto pieces = piecesOf(command.pieces);
    if (!pieces) return fail(ofArgument("--pieces", pieces.error()));
    const auto figures = figuresPer(Basis::Piece, recipe->dossier, recipe->cooked);
    if (!figures) return fail(figures.error());
    out << statementText((*figures)[*component], recipe->dossier.main(), *pieces,
                         uncountedLines(recipe->dossier, recipe->cooked, *component))
        << '\n';
    sayWhereTheyDiffer(*recipe, out);
    return {};
}

Result<void> writePanel(const PanelCommand& command, const OpenRecipe& open, std::ostream& out) {
    const auto recipe = open(command.recipe);
    if (!recipe) return fail(recipe.error());
    const auto panel = usPanelOf(recipe->dossier, recipe->cooked);
    if (!panel) return fail(panel.error());
    if (auto written = writePanelPdf(*panel, command.out); !written) return written;
    out << "Panel written to " << command.out << '\n';
    sayWhereTheyDiffer(*recipe, out);
    return {};
}

}  // namespace nettare
