#include "app/theme/pseudo_translator.h"

#include "app/gui/support/gui.h"

#include <QCoreApplication>

namespace nettare {

TEST_CASE("a text of the pseudo-language is in brackets, accented and two fifths longer") {
    const QString source = QStringLiteral("Find a recipe in this kitchen");
    const QString text = pseudoText(source);
    CHECK(text.startsWith(QStringLiteral("[Fîñd á réçîpé îñ thîš kîtçhéñ")));
    CHECK(text.endsWith(u']'));
    const double longer = static_cast<double>(text.size()) / static_cast<double>(source.size());
    CHECK(longer >= 1.35);
    CHECK(longer <= 1.5);
    CHECK(pseudoText(QString{}).isEmpty());
}

TEST_CASE("what a text is filled with and how it is operated stays whole") {
    CHECK(pseudoText(QStringLiteral("%1 of %2")).contains(QStringLiteral("%1 öf %2")));
    CHECK(pseudoText(QStringLiteral("%n line(s)")).contains(QStringLiteral("%n lîñé(š)")));
    CHECK(pseudoText(QStringLiteral("%L1 g")).contains(QStringLiteral("%L1 g")));
    CHECK(pseudoText(QStringLiteral("&Open")).contains(QStringLiteral("&Opéñ")));
    CHECK(pseudoText(QStringLiteral("E&xit")).contains(QStringLiteral("É&xît")));
    CHECK(pseudoText(QStringLiteral("<b>net</b> &amp; {name}"))
              .contains(QStringLiteral("<b>ñét</b> &amp; {name}")));
}

TEST_CASE("an installed pseudo-language reaches every translated text") {
    PseudoTranslator translator;
    REQUIRE(QCoreApplication::installTranslator(&translator));
    CHECK(QCoreApplication::translate("Test", "weighed") == QStringLiteral("[wéîghéd~]"));
    CHECK(QCoreApplication::translate("Test", "%n line(s)", nullptr, 3)
              .startsWith(QStringLiteral("[3 lîñé(š)")));
    QCoreApplication::removeTranslator(&translator);
    CHECK(QCoreApplication::translate("Test", "weighed") == QStringLiteral("weighed"));
}

}  // namespace nettare
