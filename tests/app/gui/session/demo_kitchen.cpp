#include "app/gui/session/demo_kitchen.h"

#include <catch2/catch.hpp>

#include <QCoreApplication>

#include "app/files/read_file.h"
#include "app/files/share_folder.h"
#include "app/session/now.h"

namespace nettare {

Json skewersDocument() {
    const auto text = readFile(NETTARE_RESOURCES "/demo/prawn-fennel-skewers.json");
    REQUIRE(text);
    auto json = parseJson(*text);
    REQUIRE(json);
    return std::move(*json);
}

std::string starterTable() {
    return shareFolder() + "/starter.table";
}

std::unique_ptr<KitchenSession> skewersSession() {
    auto kitchen = Kitchen::inMemory(now());
    REQUIRE(kitchen);
    const auto recipe = kitchen->addRecipe(skewersDocument(), now());
    REQUIRE(recipe);
    auto session = std::make_unique<KitchenSession>(std::move(*kitchen), starterTable(), true);
    session->openRecipe(QString::fromStdString(*recipe));
    rest(*session);
    REQUIRE(session->draft() != nullptr);
    return session;
}

void rest(KitchenSession& session) {
    session.settle();
    QCoreApplication::processEvents();
    session.settle();
}

}  // namespace nettare
