#include "app/path/path_texts.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "app/session/draft_session.h"
#include "app/widgets/mark.h"
#include "core/publish/basis_text.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct PathTexts {
    Q_DECLARE_TR_FUNCTIONS(PathTexts)
};

QString coreText(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

}  // namespace

QString pathTitle(const Figure& figure) {
    return PathTexts::tr("Where %1 %2 comes from")
        .arg(figureValue(figure), coreText(factsOf(figure.component).unit));
}

QString figureInWords(Component component, const Figures& figures, const Recipe& recipe) {
    return PathTexts::tr("%1 %2, %3")
        .arg(coreText(factsOf(component).name), QString::fromStdString(basisText(figures, recipe)),
             coreText(nameOf(figures.block.meaning)));
}

QString draftInWords(const DraftSession& draft) {
    const auto base = draft.baseRevision();
    if (!base) return PathTexts::tr("draft");
    return PathTexts::tr("draft on revision %1").arg(*base);
}

QString stepValue(const PathStep& step) {
    return coreText(step.value + (step.value.empty() ? "" : " ") + step.unit).trimmed();
}

QString stepWords(const PathStep& step) {
    const QString words = coreText(step.words), formula = coreText(step.formula);
    if (words.isEmpty() || formula.isEmpty()) return words + formula;
    return PathTexts::tr("%1: %2").arg(words, formula);
}

QString spokenStep(const PathStep& step, const QString& interval) {
    const QString value = stepValue(step);
    QString figure = value.isEmpty() ? wordOf(Mark::NoData) : value;
    if (!interval.isEmpty())
        figure = PathTexts::tr("%1, %2").arg(figure, interval);
    else if (!step.plusMinus.empty())
        figure = PathTexts::tr("%1, plus or minus %2").arg(figure, coreText(step.plusMinus));
    QStringList parts{PathTexts::tr("%1: %2").arg(figure, stepWords(step))};
    if (step.way) parts << wordOf(*step.way);
    if (!step.more.empty()) parts << coreText(step.more);
    return parts.join(QStringLiteral("; "));
}

QString endsText(Component component, const FigureInterval& interval) {
    const int decimals = factsOf(component).decimals;
    const auto low = coreText(numberAt(decimals, interval.low, Direction::Floor));
    if (!interval.high) return PathTexts::tr("%1 or more").arg(low);
    return PathTexts::tr("%1 to %2")
        .arg(low, coreText(numberAt(decimals, *interval.high, Direction::Ceiling)));
}

}  // namespace nettare
