#include "app/command_line/document_commands.h"

#include <fmt/core.h>

#include <filesystem>
#include <ostream>

#include "app/files/share_folder.h"
#include "core/publish/number_text.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kMostHits = 20;
constexpr std::size_t kLongestQuote = 200;

}  // namespace

OpenRecipe documentsOf(DossierLoader& loader) {
    return [&loader](const std::string& path) -> Result<OpenedRecipe> {
        auto dossier = loader.load(path);
        if (!dossier) return fail(dossier.error());
        return opened(std::move(*dossier));
    };
}

Result<void> showFoods(const FoodsCommand& command, DossierLoader& loader, std::ostream& out) {
    std::string words;
    for (const std::string& word : command.words) (words += words.empty() ? "" : " ") += word;
    if (trimmed(words).empty()) return fail(ofArgument("WORDS", {ErrorCode::EmptyText}));
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto found = (*tables)->search(words, kMostHits);
    if (!found) return fail(found.error());
    if (found->hits.empty())
        out << "No food of the table matches “" << shortened(words, kLongestQuote) << "”.\n";
    for (const FoodHit& hit : found->hits)
        out << fmt::format("{:<18} {:>5} kcal/100 g  {} of {} known  {}\n", hit.row.text(),
                           hit.energyKcalPer100g ? numberAt(0, *hit.energyKcalPer100g) : "?",
                           hit.knownComponents, kComponentCount, hit.name);
    return {};
}

Result<void> showDemo(const DemoCommand& command, DossierLoader& loader, std::ostream& out) {
    const std::filesystem::path folder = command.out.empty() ? "." : command.out;
    const OpenRecipe open = documentsOf(loader);
    for (const char* name : {"prawn-fennel-skewers", "barley-beetroot-patties"}) {
        const std::string document = shareFolder() + "/demo/" + name + ".json";
        FiguresCommand figures;
        figures.recipes = {document};
        if (auto shown = showFigures(figures, open, out); !shown) return shown;
        PanelCommand panel;
        panel.recipe = document;
        panel.out = (folder / (std::string{name} + ".pdf")).string();
        if (auto written = writePanel(panel, open, out); !written) return written;
        out << '\n';
    }
    return {};
}

}  // namespace nettare
