#include "app/panel_screen/panel_trouble.h"

#include "app/words/error_sentence.h"

#include <QStringList>

#include "core/publish/number_text.h"
#include "core/quantity/decimal.h"

namespace nettare {

namespace {

QString errorValue(const Error& error, std::string_view name) {
    const std::string_view value = error.value(name);
    return QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size()));
}

QStringList foodsOf(const Error& error) {
    QStringList foods;
    for (const ErrorValue& value : error.values)
        if (value.name == "food") foods << QString::fromStdString(value.text);
    return foods;
}

/// An end of a line's amount, rounded outwards to what is read at a glance.
QString amountText(const Error& error, std::string_view name, Direction direction) {
    const auto exact = Decimal::read(error.value(name));
    if (!exact) return errorValue(error, name);
    const double value = exact->value();
    const int decimals = value >= 10 ? 0 : value >= 1 ? 1 : 2;
    return QString::fromStdString(numberAt(decimals, value, direction)) + u' ' +
           errorValue(error, "unit");
}

QString sentence(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

PanelTrouble openLineTrouble(const Error& error) {
    const QString line = errorValue(error, "line");
    const QString least = amountText(error, "at_least", Direction::Floor);
    const QStringList foods = foodsOf(error);
    PanelTrouble trouble;
    if (error.value("at_most") == "unknown")
        trouble.what = PanelTrouble::tr(
                           "%1 cannot be printed: a portion has at least %2, and how "
                           "much more is not known.")
                           .arg(line, least);
    else
        trouble.what = PanelTrouble::tr(
                           "%1 cannot be printed: a portion has between %2 and %3, "
                           "which print differently.")
                           .arg(line, least, amountText(error, "at_most", Direction::Ceiling));
    trouble.what +=
        u' ' + PanelTrouble::tr("No value is known for: %1.").arg(foods.join(QStringLiteral(", ")));
    if (error.value("component") == "SUGAD") {
        trouble.advice = PanelTrouble::tr(
            "Say of each of them what part of its sugars is added, and how you know.");
        return trouble;
    }
    trouble.advice = PanelTrouble::tr(
        "State a value for each of them with its reason, for example from the "
        "supplier's sheet, or use a food whose table row or label has it.");
    return trouble;
}

}  // namespace

PanelTrouble PanelTrouble::of(const Error& error) {
    if (error.code == ErrorCode::PanelLineOpen) return openLineTrouble(error);
    if (error.code == ErrorCode::PanelNeedsCookedWeight)
        return {tr("The panel gives the serving in grams as eaten, and the cooked dish was not "
                   "weighed."),
                tr("Weigh the finished batch and record the reading as its cooked weight.")};
    Error nameless = error;
    nameless.file.clear();
    nameless.pointer.clear();
    if (error.code == ErrorCode::AddedSugarsAboveSugars)
        return {sentence(QString::fromStdString(errorSentence(nameless))),
                tr("Say what part of its sugars is added, and how you know.")};
    return {sentence(QString::fromStdString(errorSentence(nameless))),
            tr("Correct it in the sheet; the panel follows.")};
}

}  // namespace nettare
