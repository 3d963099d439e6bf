#include "app/gui/window/demo_window.h"

#include "app/files/read_file.h"
#include "app/gui/support/gui.h"
#include "core/support/json.h"

#include <QLineEdit>
#include <QTableView>

namespace nettare {

namespace {

constexpr auto kWindowAt = "2026-05-23T12:00:00+02:00";

Kitchen windowKitchen(bool withRecipes) {
    auto kitchen = Kitchen::inMemory(kWindowAt);
    REQUIRE(kitchen);
    if (!withRecipes) return std::move(*kitchen);
    for (const char* name : {"prawn-fennel-skewers", "barley-beetroot-patties"}) {
        const auto text = readFile(std::string{NETTARE_RESOURCES} + "/demo/" + name + ".json");
        REQUIRE(text);
        const auto document = parseJson(*text);
        REQUIRE(document);
        REQUIRE(kitchen->addRecipe(*document, kWindowAt));
    }
    return std::move(*kitchen);
}

}  // namespace

DemoWindow::DemoWindow(QSize size, bool withRecipes)
    : theme_{QDBusConnection{QStringLiteral("no bus")}},
      kitchen_{std::make_unique<KitchenSession>(windowKitchen(withRecipes),
                                                TablePlaces{NETTARE_STARTER_TABLE}, true)},
      window_{std::make_unique<MainWindow>(*kitchen_, theme_)} {
    showReady(*window_, size);
    if (!withRecipes) return;
    REQUIRE(waitUntil([this] { return kitchen_->shelf().size() == 2; }));
    for (const ShelvedRecipe& recipe : kitchen_->shelf())
        if (recipe.title.starts_with("Charred")) open(QString::fromStdString(recipe.id));
}

void DemoWindow::open(const QString& id) {
    kitchen_->openRecipe(id);
    REQUIRE(waitUntil([&] { return kitchen_->draft() != nullptr && draft().recipe() == id; }));
    settle();
}

QString DemoWindow::lineText(int row, int column) {
    const auto& view = child<QTableView>(*window_, "lines");
    return view.model()->index(row, column).data(Qt::DisplayRole).toString();
}

QWidget& DemoWindow::edit(int row, int column) {
    auto& view = child<QTableView>(*window_, "lines");
    view.setFocus();
    view.setCurrentIndex(view.model()->index(row, column));
    view.edit(view.currentIndex());
    QWidget* editor = view.viewport()->findChild<QLineEdit*>();
    REQUIRE(editor != nullptr);
    return *editor;
}

double DemoWindow::kcal() {
    return (*draft().evaluation())[Basis::Portion].value()[Component::ENERC_KCAL].value;
}

}  // namespace nettare
