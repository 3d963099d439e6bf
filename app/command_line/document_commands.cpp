#include "app/command_line/document_commands.h"

#include <filesystem>
#include <ostream>

#include "app/files/share_folder.h"

namespace nettare {

OpenRecipe documentsOf(DossierLoader& loader) {
    return [&loader](const std::string& path) -> Result<OpenedRecipe> {
        auto dossier = loader.load(path);
        if (!dossier) return fail(dossier.error());
        return opened(std::move(*dossier));
    };
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
