#include "app/window/action_words.h"

#include <QAction>

namespace nettare {

// One "&" marks the letter behind it, two stand for the sign itself.
QString actionWords(const QAction& action) {
    const QString text = action.text();
    QString words;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] == QLatin1Char{'&'} && ++i == text.size()) break;
        words += text[i];
    }
    return words;
}

}  // namespace nettare
