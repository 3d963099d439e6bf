#include "app/gui/path/sample_path.h"
#include "app/gui/support/gui.h"
#include "app/gui/support/sample_session.h"
#include "app/path/path_screen.h"
#include "app/path/sheet_blocks.h"
#include "app/path/working_sheet.h"
#include "app/support/run_tool.h"
#include "app/widgets/message_line.h"

#include <QFile>
#include <QPrinter>
#include <QPushButton>
#include <QTemporaryDir>

namespace nettare {

namespace {

std::vector<PaperBlock> blocksHigh(const std::vector<double>& heights, std::size_t heading) {
    std::vector<PaperBlock> blocks;
    for (std::size_t i = 0; i < heights.size(); ++i)
        blocks.push_back({heights[i], {}, i == heading});
    return blocks;
}

/// The screen with printing into a file.
struct PrintingScreen {
    explicit PrintingScreen(const QString& path)
        : screen{*kitchen, [path](QWidget*, QPrinter& printer) {
                     printer.setOutputFormat(QPrinter::PdfFormat);
                     printer.setOutputFileName(path);
                     printer.setPageSize(QPageSize{QPageSize::A4});
                     return true;
                 }} {
        screen.setTrials(100'000);
        showReady(screen, {1280, 740});
        REQUIRE(waitUntil([this] { return screen.isCalm(); }));
        kitchen->settle();
        settle();
    }

    std::unique_ptr<KitchenSession> kitchen = sampleSession();
    PathScreen screen;
};

}  // namespace

TEST_CASE("a page of the working sheet ends before what does not fit") {
    CHECK(pagesOf(blocksHigh({40, 40, 40, 40}, 9), 100) == std::vector<std::size_t>{0, 2});
    CHECK(pagesOf(blocksHigh({300, 40}, 9), 100) == std::vector<std::size_t>{0, 1});
}

TEST_CASE("a heading of the working sheet is never left alone at the foot of a page") {
    CHECK(pagesOf(blocksHigh({60, 20, 40, 40}, 1), 100) == std::vector<std::size_t>{0, 1});
}

TEST_CASE("the working sheet holds every step with the letter of its way") {
    const auto kitchen = sampleSession();
    const WorkingSheet sheet =
        workingSheetOf({}, *kitchen->draft()->evaluation(), samplePath(3), {});
    REQUIRE(sheet.steps.size() == 13);
    CHECK(sheet.steps[0].spread == QStringLiteral(" ± 5"));
    CHECK(sheet.steps[4].mark == QStringLiteral("W"));
    CHECK(sheet.steps[4].depth == 4);
    CHECK(sheet.steps[5].mark == QStringLiteral("T"));
    CHECK(sheet.steps[7].mark == QStringLiteral("L"));
    CHECK(sheet.steps[12].value == QStringLiteral("no data"));
}

TEST_CASE("the working sheet is printed with the path, its shares and the head of the ledger") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    PrintingScreen printing{path};
    click(child<QPushButton>(printing.screen, "printPath"));
    CHECK(child<MessageLine>(printing.screen, "pathReport").kind() == MessageKind::Done);
    const std::string text =
        printedByTool("poppler-utils", "pdftotext -layout '" + path.toStdString() + "' -");
    CHECK_THAT(text, Catch::Contains("Charred prawn") && Catch::Contains("Working sheet: energy") &&
                         Catch::Contains("What makes it unsure") &&
                         Catch::Contains("draft on revision") && Catch::Contains("Ledger head ") &&
                         Catch::Contains("page 1 of "));
    const QString kept = qEnvironmentVariable("NETTARE_PICTURES");
    if (!kept.isEmpty()) QFile::copy(path, kept + QStringLiteral("/working-sheet.pdf"));
}

TEST_CASE("a working sheet that no file takes says so") {
    const QTemporaryDir folder;
    PrintingScreen printing{folder.filePath(QStringLiteral("gone/sheet.pdf"))};
    click(child<QPushButton>(printing.screen, "printPath"));
    CHECK(child<MessageLine>(printing.screen, "pathReport").kind() == MessageKind::Error);
}

}  // namespace nettare
