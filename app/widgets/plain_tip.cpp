#include "app/widgets/plain_tip.h"

#include <QTextDocument>

namespace nettare {

// A tool tip takes what looks like markup as markup, and has no switch for that.
QString plainTip(const QString& text) {
    if (!Qt::mightBeRichText(text)) return text;
    const QString literal = text.toHtmlEscaped().replace(QLatin1Char{'\n'}, QStringLiteral("<br>"));
    return QStringLiteral("<span>") + literal + QStringLiteral("</span>");
}

}  // namespace nettare
