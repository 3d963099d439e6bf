#include "app/window/about_page.h"

namespace nettare {

AboutPage::AboutPage(QWidget* parent) : Page{tr("About Nettare"), parent} {
    addText(tr("Nettare %1. Recipe figures that can be defended: every figure leads down to the "
               "scale reading, label or table row that it rests on, with an interval.")
                .arg(QStringLiteral(NETTARE_VERSION)));
    addHeading(tr("Cautions"));
    addText(
        tr("Figures are estimates from tables, labels and your own weighings. They are no "
           "laboratory analysis and no medical advice. People on a diet for their health ask "
           "those who treat them."));
    addText(
        tr("Nettare does not know allergens. Read every package, and never take a missing "
           "word for “free from”."));
    addText(
        tr("Labels and claims are governed by local law. Whoever sells food asks the authority "
           "or a licensed laboratory."));
    addText(
        tr("Cook safely: follow your food authority on temperatures, cooling, canning and hot "
           "fat. Scaling a recipe does not scale its times."));
    addHeading(tr("Sources and licence"));
    addText(
        tr("Starter table: USDA National Nutrient Database for Standard Reference, Release 28 "
           "(US Department of Agriculture, Agricultural Research Service, Nutrient Data "
           "Laboratory, 2015; public domain)."));
    addText(
        tr("Free software under the GNU General Public License, version 3 or later. Typeface: "
           "Lato, SIL Open Font License."));
}

}  // namespace nettare
