#include "app/command_line/label_command.h"

#include <fmt/format.h>

#include <filesystem>
#include <optional>
#include <ostream>

#include "app/command_line/label_page.h"
#include "app/command_line/show_recipe.h"
#include "app/files/read_file.h"
#include "app/files/write_file.h"
#include "app/kitchen/labelled_food.h"
#include "app/kitchen/moved_figures.h"
#include "app/session/now.h"
#include "app/words/error_sentence.h"
#include "core/food/label_document.h"
#include "core/label/label_refusal.h"
#include "core/recipe/read_recipe.h"
#include "core/support/text.h"
#include "db/like_density.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestName = 200;

Error inFile(Error error, const std::string& path) {
    error.file = path;
    return error;
}

bool isRecipe(const Json& json) {
    const Json* format = json.find("format");
    return format != nullptr && *format == Json{kRecipeFormat};
}

/// The foods of a recipe that state a label of their own.
Result<std::vector<OwnFood>> labelsOfRecipe(const Json& json) {
    const auto recipe = readRecipe(json);
    if (!recipe) return fail(recipe.error());
    std::vector<OwnFood> foods;
    for (std::size_t i = 0; i < recipe->foods.size(); ++i) {
        const FoodEntry& entry = recipe->foods[i];
        if (!entry.label) continue;
        auto label = labelFrom(*entry.label, pointerTo("/foods", i) + "/label");
        if (!label) return fail(label.error().with("food", entry.name));
        if (auto refusal = labelRefusal(*label)) {
            refusal->pointer = pointerTo("/foods", i) + "/label" + refusal->pointer;
            return fail(refusal->with("food", entry.name));
        }
        OwnFood own;
        own.food.name = entry.name;
        own.food.label = std::move(*label);
        foods.push_back(std::move(own));
    }
    return foods;
}

Result<std::vector<OwnFood>> labelsIn(const std::string& path) {
    const auto text = readFile(path);
    if (!text) return fail(text.error());
    const auto json = parseJson(*text);
    if (!json) return fail(inFile(json.error(), path));
    if (isRecipe(*json)) {
        auto foods = labelsOfRecipe(*json);
        return foods ? std::move(foods) : fail(inFile(foods.error(), path));
    }
    auto own = readLabelDocument(*json);
    if (!own) return fail(inFile(own.error(), path));
    return std::vector<OwnFood>{std::move(*own)};
}

Result<LabelPage> pageOf(OwnFood own, DossierLoader& loader) {
    const auto tables = loader.tables();
    if (!tables) return fail(tables.error());
    const auto like = likeDensity(**tables, own.food.name);
    if (!like) return fail(like.error());
    auto findings = checkLabel(*own.food.label, *like);
    return LabelPage{std::move(own), std::move(findings)};
}

Result<bool> show(std::vector<OwnFood> foods, bool json, DossierLoader& loader, std::ostream& out) {
    bool sound = true;
    Json all = Json::array();
    std::string text;
    for (OwnFood& own : foods) {
        const auto page = pageOf(std::move(own), loader);
        if (!page) return fail(page.error());
        sound = sound && !page->hasOpen();
        all.append(labelPageJson(*page));
        (text += text.empty() ? "" : "\n") += labelText(*page);
    }
    Json labels = Json::object();
    labels.set("labels", std::move(all));
    if (json)
        out << writeJsonIndented(labels);
    else
        out << (text.empty() ? "No food of this recipe states a label.\n" : text);
    return sound;
}

/// The one label of a label document; null: of a food that the kitchen does not have yet.
Result<OwnFood> labelToKeep(const std::string& path, const OwnFood* before) {
    const auto text = readFile(path);
    if (!text) return fail(text.error());
    const auto json = parseJson(*text);
    const auto document = json ? readLabelShape(*json) : fail(json.error());
    if (!document) return fail(inFile(document.error(), path));
    auto own = before != nullptr ? labelledFood(*document, *before) : labelledFood(*document);
    return own ? std::move(own) : fail(inFile(own.error(), path));
}

/// A photograph that the document names and nobody has would never be seen.
Result<void> checkPhoto(const Kitchen& kitchen, const LabelFacts& label,
                        const LabelCommand& command) {
    if (!label.photo || !command.photo.empty()) return {};
    const auto bytes = kitchen.photo(label.photo->sha256);
    if (!bytes) return fail(bytes.error());
    if (*bytes) return {};
    return fail(inFile(Error{ErrorCode::PhotoMissing}.at("/label/photo"), command.document));
}

Result<std::string> photoFrom(const std::string& path) {
    auto bytes = readFile(path, kMostPhotoMib * kMebibyte);
    if (bytes || bytes.error().code != ErrorCode::FileTooLarge) return bytes;
    return fail(
        inFile(Error{ErrorCode::PhotoTooLarge}.with("most", std::to_string(kMostPhotoMib)), path));
}

/// Photograph and food, both or neither; answers the row of the food.
Result<TableRow> keptFood(Kitchen& kitchen, OwnFood own, const std::string& photo) {
    TableRow row;
    const std::string at = now();
    const auto kept = kitchen.together([&]() -> Result<void> {
        if (!photo.empty()) {
            const auto bytes = photoFrom(photo);
            if (!bytes) return fail(bytes.error());
            const auto hash = kitchen.keepPhoto(*bytes, at);
            if (!hash) return fail(inFile(hash.error(), photo));
            own.food.label->photo =
                LabelPhoto{*hash, photoName(std::filesystem::path{photo}.filename().string())};
        }
        auto saved = kitchen.saveOwnFood(own, at);
        if (!saved) return fail(saved.error());
        row = std::move(*saved);
        return {};
    });
    if (!kept) return fail(kept.error());
    return row;
}

Result<void> writePhoto(const Kitchen& kitchen, const LabelFacts& label, const std::string& path) {
    Error missing = inFile({ErrorCode::PhotoMissing}, kitchen.path());
    if (!label.photo) return fail(std::move(missing));
    const auto bytes = kitchen.photo(label.photo->sha256);
    if (!bytes) return fail(bytes.error());
    if (!*bytes) return fail(std::move(missing));
    return writeFile(path, **bytes);
}

void tellMoved(const std::vector<MovedRevision>& revisions, std::ostream& out) {
    if (revisions.empty()) {
        out << "No published figure moves by more than its rounding.\n";
        return;
    }
    out << "Published figures that move by more than their rounding:\n";
    for (const MovedRevision& moved : revisions) {
        out << fmt::format("  {} ({}), revision {}\n", shortened(moved.title, kLongestName),
                           moved.recipe, moved.revision);
        if (moved.failure) out << "    no figures: " << errorSentence(*moved.failure) << '\n';
        for (std::size_t i = 0; i < moved.figures.size(); ++i)
            out << fmt::format("    {} {}: {}, now {}\n", factsOf(moved.figures[i].component).name,
                               moved.places[i], moved.figures[i].before, moved.figures[i].after);
    }
}

}  // namespace

Result<bool> showLabel(const LabelCommand& command, const Kitchen* kitchen, DossierLoader& loader,
                       std::ostream& out) {
    if (kitchen == nullptr) {
        auto foods = labelsIn(command.document);
        if (!foods) return fail(foods.error());
        return show(std::move(*foods), command.json, loader, out);
    }
    auto record = labelledFoodNamed(*kitchen, command.document);
    if (!record) return fail(record.error());
    if (!command.writePhoto.empty()) {
        const auto written = writePhoto(*kitchen, *record->current.food.label, command.writePhoto);
        if (!written) return fail(written.error());
    }
    return show({std::move(record->current)}, command.json, loader, out);
}

Result<bool> keepLabel(const LabelCommand& command, Kitchen& kitchen, DossierLoader& loader,
                       std::ostream& out) {
    std::optional<OwnFood> before;
    if (!command.of.empty()) {
        auto record = labelledFoodNamed(kitchen, command.of);
        if (!record) return fail(record.error());
        before = std::move(record->current);
    }
    const auto own = labelToKeep(command.document, before ? &*before : nullptr);
    if (!own) return fail(own.error());
    const auto photo = checkPhoto(kitchen, *own->food.label, command);
    if (!photo) return fail(photo.error());
    const auto page = pageOf(*own, loader);
    if (!page) return fail(page.error());
    if (page->hasOpen()) {
        out << labelText(*page)
            << "Not kept: put these right, or say in the document that they are as printed.\n";
        return false;
    }
    const auto moved = figuresMovedBy(kitchen, own->food.row.number, own->food);
    if (!moved) return fail(moved.error());
    const auto row = keptFood(kitchen, *own, command.photo);
    if (!row) return fail(row.error());
    out << fmt::format("Kept the label of “{}” as version {} ({})\n",
                       shortened(own->food.name, kLongestName), row->release, row->text());
    if (!command.of.empty()) tellMoved(*moved, out);
    return true;
}

}  // namespace nettare
