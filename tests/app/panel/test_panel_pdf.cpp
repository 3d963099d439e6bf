#include <catch2/catch.hpp>

#include "app/panel/panel_fonts.h"
#include "app/panel/panel_layout.h"
#include "app/panel/panel_pdf.h"
#include "app/panel/start_painting.h"

#include "panel/sample_panels.h"
#include "support/run_tool.h"
#include "support/scratch_folder.h"

#include <algorithm>
#include <clocale>
#include <sstream>

#include <fmt/format.h>

using namespace nettare;

namespace {

std::string poppler(const std::string& command) {
    return printedByTool("poppler-utils", command);
}

/// The page's drawing, as text.
std::string drawingOf(const std::string& path) {
    return printedByTool("qpdf", "qpdf --qdf --object-streams=disable '" + path + "' -");
}

std::vector<std::string> linesIn(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream{text};
    for (std::string line; std::getline(stream, line);)
        if (!line.empty()) lines.push_back(line);
    return lines;
}

std::size_t countOf(const std::string& text, std::string_view part) {
    std::size_t count = 0;
    for (std::size_t at = 0; (at = text.find(part, at)) != std::string::npos; at += part.size())
        ++count;
    return count;
}

std::string writtenPanel(const ScratchFolder& folder, const Panel& panel) {
    std::string path = folder.path("panel.pdf");
    REQUIRE(writePanelPdf(panel, path));
    return path;
}

PanelLayout layoutOf(const Panel& panel) {
    startPainting();
    return layOutPanel(panel, panelTextWidth);
}

/// Finds the parts one behind the other and fails at the first that is missing.
void checkInOrder(const std::string& text, const std::vector<std::string>& parts) {
    std::size_t at = 0;
    for (const std::string& part : parts) {
        INFO(part << " in\n" << text);
        const std::size_t found = text.find(part, at);
        REQUIRE(found != std::string::npos);
        at = found + part.size();
    }
}

std::vector<std::string> partsInOrder(const Panel& panel) {
    std::vector<std::string> parts{
        panel.title,           panel.servings,
        panel.servingSizeHead, panel.servingHousehold + " " + panel.servingMetric,
        panel.amountHead,      panel.caloriesName,
        panel.calories,        panel.percentHead};
    for (const auto& lines : {panel.lines, panel.vitamins}) {
        for (const PanelLine& line : lines) {
            parts.push_back(line.text());
            if (line.percent) parts.push_back(*line.percent);
        }
    }
    parts.insert(parts.end(), {"*The % Daily Value tells", "general nutrition advice.",
                               "Calculated from recipe data."});
    return parts;
}

}  // namespace

TEST_CASE("the PDF of a panel can be read in order, as plain text", "[panel][pdf]") {
    const ScratchFolder folder{"text"};
    const Panel panel = skewerPanel();
    const std::string path = writtenPanel(folder, panel);
    checkInOrder(poppler("pdftotext -raw '" + path + "' -"), partsInOrder(panel));
    const std::string columns = poppler("pdftotext -layout '" + path + "' -");
    checkInOrder(columns, partsInOrder(panel));
    // The serving reads "fiery": with a ligature it would not.
    for (const char* ligature : {"\uFB00", "\uFB01", "\uFB02", "\uFB03", "\uFB04"})
        CHECK(columns.find(ligature) == std::string::npos);
    const auto lines = linesIn(columns);
    const auto fat = std::ranges::find_if(
        lines, [](const std::string& line) { return line.find("Total Fat") != line.npos; });
    REQUIRE(fat != lines.end());
    CHECK(fat->find("17g") < fat->find("22%"));
}

TEST_CASE("the PDF embeds its three faces, each with a map to characters", "[panel][pdf]") {
    const ScratchFolder folder{"fonts"};
    const auto lines = linesIn(poppler("pdffonts '" + writtenPanel(folder, skewerPanel()) + "'"));
    REQUIRE(lines.size() == 5);  // two of them are the head
    std::vector<std::string> faces;
    for (std::size_t i = 2; i < lines.size(); ++i) {
        INFO(lines[i]);
        std::istringstream columns{lines[i]};
        std::string name, cid, type, encoding, embedded, subset, unicode;
        columns >> name >> cid >> type >> encoding >> embedded >> subset >> unicode;
        CHECK(embedded == "yes");
        CHECK(unicode == "yes");
        faces.push_back(name);
    }
    std::ranges::sort(faces);
    CHECK(faces == std::vector<std::string>{"Lato-Black", "Lato-Bold", "Lato-Regular"});
}

TEST_CASE("the page of the PDF is the layout's, in whole points", "[panel][pdf]") {
    const ScratchFolder folder{"page"};
    for (const Panel& panel : {skewerPanel(), germanPanel()}) {
        const std::string path = writtenPanel(folder, panel);
        const PanelLayout layout = layoutOf(panel);
        const std::string facts = poppler("pdfinfo '" + path + "'");
        INFO(facts);
        CHECK(facts.find(fmt::format("{} x {} pts", layout.widthCpt / 100,
                                     layout.heightCpt / 100)) != std::string::npos);
        checkInOrder(facts, {"Title:", panel.title, "Creator:", "Nettare", "Pages:", " 1\n"});
        CHECK(facts.find("CreationDate") == std::string::npos);
    }
}

TEST_CASE("the PDF is sound", "[panel][pdf]") {
    const ScratchFolder folder{"sound"};
    const std::string path = writtenPanel(folder, skewerPanel());
    CHECK(printedByTool("qpdf", "qpdf --check '" + path + "' 2>&1").find("No syntax") !=
          std::string::npos);
}

TEST_CASE("every rule is an exact rectangle in the PDF and every text is set once",
          "[panel][pdf]") {
    const ScratchFolder folder{"rules"};
    const std::string drawing = drawingOf(writtenPanel(folder, skewerPanel()));
    const PanelLayout layout = layoutOf(skewerPanel());
    // One unit is 0.01 pt, so that the integers below are centipoints.
    CHECK(drawing.find("0.010000000 0 0 -0.010000000 0 ") != std::string::npos);
    for (const PanelRule& rule : layout.rules) {
        const std::string rectangle = fmt::format("\n{} {} {} {} re\n", rule.leftCpt, rule.topCpt,
                                                  rule.widthCpt, rule.heightCpt);
        INFO(rectangle);
        CHECK(countOf(drawing, rectangle) == 1);
    }
    CHECK(countOf(drawing, " re\n") == layout.rules.size() + 1);  // and the white page
    CHECK(countOf(drawing, "\nS\n") == 0);
    // A face that Qt takes for too light would be struck twice.
    CHECK(countOf(drawing, " Tm") == layout.texts.size());
}

TEST_CASE("only black and white are used in the PDF", "[panel][pdf]") {
    const ScratchFolder folder{"black"};
    const std::string drawing = drawingOf(writtenPanel(folder, skewerPanel()));
    const auto fills = countOf(drawing, " scn\n");
    CHECK(fills > 0);
    CHECK(countOf(drawing, "/CSp cs 0 0 0 scn\n") + countOf(drawing, "/CSp cs 1 1 1 scn\n") ==
          fills);
    CHECK(countOf(drawing, "/CSp cs 1 1 1 scn\n") == 1);
}

TEST_CASE("German texts wrap in the PDF without losing a word", "[panel][pdf]") {
    const ScratchFolder folder{"german"};
    const std::string path = writtenPanel(folder, germanPanel());
    checkInOrder(poppler("pdftotext -raw '" + path + "' -"),
                 {"Durchschnittliche", "Verzehrportion", "Größe der Verzehrportion",
                  "Hähnchenspieße", "(128 g)", "Kilokalorien", "1290", "Gesamtfettgehalt", "16,5 g",
                  "21 %", "gesättigte Fettsäuren", "4 g", "20 %", "Fruchtsaftkonzentraten", "8 %",
                  "0,1 µg", "2000 Kilokalorien", "eingehalten sind."});
    const PanelLayout layout = layoutOf(germanPanel());
    for (const PanelText& text : layout.texts)
        for (const PanelText& other : layout.texts)
            if (&text < &other && text.baselineCpt == other.baselineCpt)
                CHECK(text.rightCpt < other.leftCpt);
}

TEST_CASE("the same panel gives the same bytes, also under German numbers", "[panel][pdf]") {
    const std::string bytes = panelPdf(skewerPanel());
    CHECK(panelPdf(skewerPanel()) == bytes);
    CHECK(panelPdf(germanPanel()) != bytes);
    const std::string before = std::setlocale(LC_ALL, nullptr);
    INFO("The locale de_DE.UTF-8 is missing; install the package locales-all.");
    REQUIRE(std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr);
    const std::string german = panelPdf(skewerPanel());
    std::setlocale(LC_ALL, before.c_str());
    CHECK(german == bytes);
}

TEST_CASE("the bytes do not depend on time zone, scale, locale, hashes or fonts", "[panel][pdf]") {
    const ScratchFolder folder{"bytes"};
    const std::string bytes = panelPdf(skewerPanel());
    const std::string noFonts = folder.path("fonts.conf");
    std::ofstream{noFonts} << "<fontconfig></fontconfig>\n";
    for (const std::string& variables : std::vector<std::string>{
             "QT_HASH_SEED=0", "TZ=Asia/Tokyo", "TZ=UTC QT_SCALE_FACTOR=2", "QT_FONT_DPI=180",
             "LC_ALL=de_DE.UTF-8", "-u DISPLAY -u XDG_RUNTIME_DIR -u QT_QPA_PLATFORM",
             "FONTCONFIG_FILE=" + noFonts}) {
        const std::string path = folder.path("panel.pdf");
        const std::string command =
            fmt::format("env {} {} '{}'", variables, NETTARE_WRITE_PANEL, path);
        INFO(command);
        printedByTool("coreutils", command);
        CHECK(bytesOf(path) == bytes);
    }
}

TEST_CASE("a program without display and folders writes a panel in silence", "[panel][pdf]") {
    const ScratchFolder folder{"silent"};
    const std::string printed =
        printedByTool("coreutils", std::string{"env -i "} + NETTARE_WRITE_PANEL + " '" +
                                       folder.path("panel.pdf") + "' 2>&1");
    CHECK(printed.empty());
    CHECK(folder.count() == 1);
}

TEST_CASE("an application that runs already is used and left as it is", "[panel][pdf]") {
    const ScratchFolder folder{"own"};
    const std::string path = folder.path("panel.pdf");
    printedByTool("coreutils", std::string{"env QT_QPA_PLATFORM=offscreen "} + NETTARE_WRITE_PANEL +
                                   " '" + path + "' own 2>&1");
    CHECK(bytesOf(path) == panelPdf(skewerPanel()));
}

TEST_CASE("a panel that cannot be written says why and leaves what was there", "[panel][pdf]") {
    const ScratchFolder folder{"refused"};
    const std::string missing = folder.path("missing/panel.pdf");
    const auto written = writePanelPdf(skewerPanel(), missing);
    REQUIRE_FALSE(written);
    CHECK(written.error().code == ErrorCode::FileNotWritable);
    CHECK(written.error().file == missing);
    CHECK(written.error().value("reason") == "the folder does not exist");
    CHECK(writePanelPdf(skewerPanel(), folder.path(".")).error().value("reason") ==
          "it is a folder");
    CHECK(folder.count() == 0);
}
