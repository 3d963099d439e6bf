#include "app/panel/panel_pdf.h"

#include "panel/sample_panels.h"

#include <QGuiApplication>

#include <memory>
#include <string_view>

/// A program without an application, or with its "own", that writes a sample panel to the path it
/// is given. Fails where another application than its own stands there afterwards.
int main(int count, char** words) {
    if (count < 2) return 2;
    const bool own = count > 2 && std::string_view{words[2]} == "own";
    std::unique_ptr<QGuiApplication> application;
    if (own) application = std::make_unique<QGuiApplication>(count, words);
    const bool written = nettare::writePanelPdf(nettare::skewerPanel(), words[1]).has_value();
    const bool kept = !own || QCoreApplication::instance() == application.get();
    return written && kept ? 0 : 1;
}
