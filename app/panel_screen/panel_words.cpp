#include "app/panel_screen/panel_words.h"

namespace nettare {

QStringList panelWordsOf(const PanelLayout& layout) {
    QStringList lines;
    int baselineCpt = -1;
    for (const PanelText& text : layout.texts) {
        const QString words = QString::fromStdString(text.text);
        if (text.baselineCpt == baselineCpt)
            lines.back() += u' ' + words;
        else
            lines << words;
        baselineCpt = text.baselineCpt;
    }
    return lines;
}

}  // namespace nettare
