#include "app/compare/method_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace nettare {

namespace {

struct MethodWords {
    Q_DECLARE_TR_FUNCTIONS(MethodWords)
};

}  // namespace

bool ComparedStep::changed() const {
    return std::any_of(runs.begin(), runs.end(),
                       [](const WordRun& run) { return run.side != WordsOn::Both; });
}

QString ComparedStep::spoken() const {
    QStringList parts;
    for (const WordRun& run : runs) {
        const QString text = run.text.trimmed();
        if (text.isEmpty()) continue;
        switch (run.side) {
            case WordsOn::Both:
                parts << text;
                break;
            case WordsOn::LeftOnly:
                parts << MethodWords::tr("[removed: %1]").arg(text);
                break;
            case WordsOn::RightOnly:
                parts << MethodWords::tr("[added: %1]").arg(text);
                break;
        }
    }
    return MethodWords::tr("Step %1: %2").arg(number, parts.join(u' '));
}

}  // namespace nettare
