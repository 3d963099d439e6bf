#include "app/scale/left_over_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "app/sheet/document_texts.h"
#include "core/nutrition/weigh.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

constexpr qsizetype kShortList = 2;

struct LeftOverWords {
    Q_DECLARE_TR_FUNCTIONS(LeftOver)
};

QStringList namesOf(const Json& document, const LeftOver& left) {
    QStringList names;
    for (const std::string& line : left.lines) names += lineName(document, line);
    return names;
}

/// "olive oil, garlic and 3 more"
QString shortList(const QStringList& names) {
    const QString first = names.mid(0, kShortList).join(QStringLiteral(", "));
    const auto more = static_cast<int>(names.size() - kShortList);
    return more > 0 ? LeftOverWords::tr("%1 and %2 more").arg(first).arg(more) : first;
}

QString gramsText(double grams) {
    return LeftOverWords::tr("%1 g").arg(
        QString::fromStdString(numberAt(grams < 100 ? 1 : 0, grams)));
}

QString mixtureSentence(const QString& names, std::optional<double> grams,
                        std::optional<double> there_g) {
    if (!there_g) return LeftOverWords::tr("Each of %1 loses the same share.").arg(names);
    if (!grams)
        return LeftOverWords::tr("%1 together: %2 lose the same share.")
            .arg(gramsText(*there_g), names);
    return LeftOverWords::tr("%1 of %2: %3 lose the same share, %4 %.")
        .arg(gramsText(*grams), gramsText(*there_g), names,
             QString::fromStdString(numberAt(0, 100 * *grams / *there_g)));
}

QString lineSentence(const QString& name, std::optional<double> grams,
                     std::optional<double> there_g) {
    if (!there_g) return LeftOverWords::tr("It is taken off %1.").arg(name);
    if (!grams)
        return LeftOverWords::tr("What is left is taken off %1 of %2.")
            .arg(gramsText(*there_g), name);
    return LeftOverWords::tr("%1 of %2 of %3 is left: %4 counts.")
        .arg(gramsText(*grams), gramsText(*there_g), name,
             gramsText(std::max(0.0, *there_g - *grams)));
}

}  // namespace

QString leftOverName(const Json& document, const LeftOver& left) {
    if (!left.called.empty()) return QString::fromStdString(left.called);
    switch (left.kind) {
        case ResidueKind::Line:
        case ResidueKind::Mixture:
            return left.lines.empty() ? LeftOverWords::tr("of what?")
                                      : shortList(namesOf(document, left));
        case ResidueKind::Drip:
            return left.drip.name.empty() ? LeftOverWords::tr("what ran off")
                                          : QString::fromStdString(left.drip.name);
        case ResidueKind::Water:
            return LeftOverWords::tr("cooking water");
        case ResidueKind::NotEaten:
            return LeftOverWords::tr("bones and the like");
        case ResidueKind::Unknown:
            break;
    }
    return LeftOverWords::tr("of unknown make-up");
}

QString leftOverFoods(const Json& document, const LeftOver& left) {
    return namesOf(document, left).join(QStringLiteral(", "));
}

QString leftOverSentence(const Json& document, const LeftOver& left, std::optional<double> grams,
                         std::optional<double> there_g) {
    if (QString missing = stillToSay(left); !missing.isEmpty()) return missing;
    const QString names = leftOverFoods(document, left);
    switch (left.kind) {
        case ResidueKind::Line:
            return lineSentence(names, grams, there_g);
        case ResidueKind::Mixture:
            return mixtureSentence(names, grams, there_g);
        case ResidueKind::Drip:
            return LeftOverWords::tr("It is taken off the dish as %1, by the values of that food.")
                .arg(QString::fromStdString(left.drip.name));
        case ResidueKind::Water:
            return LeftOverWords::tr(
                "Nothing but water is taken off. For water with salt or starch in it, tick its "
                "lines as a mixture.");
        case ResidueKind::NotEaten:
            return LeftOverWords::tr("It leaves the weight and takes nothing else along.");
        case ResidueKind::Unknown:
            break;
    }
    return LeftOverWords::tr(
        "Nobody knows which lines it is of: figures become an interval, from the leanest line to "
        "the richest.");
}

std::optional<double> gramsLeft(const Evaluation& evaluation, const LeftOver& left) {
    const auto& residues = evaluation.document.residues;
    for (std::size_t i = 0; i < residues.size(); ++i)
        if (isSame(residues[i], left))
            return weighed(evaluation.dossier, evaluation.dossier.main().residues[i].readings)
                .value();
    return {};
}

std::optional<double> gramsThere(const Evaluation& evaluation, const LeftOver& left) {
    if (left.kind != ResidueKind::Line && left.kind != ResidueKind::Mixture) return {};
    if (!left.shares.empty()) return {};
    const Recipe& recipe = evaluation.dossier.main();
    double grams = 0;
    std::size_t found = 0;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        if (std::ranges::find(left.lines, recipe.lines[i].id) == left.lines.end()) continue;
        grams += evaluation.cooked.lines[i].eaten.value();
        ++found;
    }
    if (found == 0 || found != left.lines.size()) return {};
    return grams + gramsLeft(evaluation, left).value_or(0);
}

QString tooMuchLeft(double grams, std::optional<double> there_g) {
    if (!there_g || grams <= *there_g) return {};
    return LeftOverWords::tr(
               "%1 is left, but only %2 was there; see that all lines of it are ticked and the "
               "tare is right.")
        .arg(gramsText(grams), gramsText(*there_g));
}

QString stillToSay(const LeftOver& left) {
    if (isComplete(left)) return {};
    if (left.kind == ResidueKind::Drip)
        return LeftOverWords::tr("Choose the food that ran off, such as rendered fat.");
    if (left.kind == ResidueKind::Line)
        return LeftOverWords::tr("Choose the line that something is left of.");
    return LeftOverWords::tr("Tick the lines that were mixed.");
}

}  // namespace nettare
