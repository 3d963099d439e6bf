#include "app/sheet/line_text.h"

#include <QRegularExpression>

#include "core/edit/line_amount.h"

namespace nettare {

namespace {

QString dot() {
    return QStringLiteral(" · ");
}

/// The place where the food ends: at a dot, or else at the first comma.
qsizetype endOfFood(const QString& text) {
    const qsizetype middleDot = text.indexOf(QChar{0x00B7});
    return middleDot >= 0 ? middleDot : text.indexOf(QLatin1Char{','});
}

QString firstWord(const QString& text) {
    return text.section(QLatin1Char{' '}, 0, 0);
}

QString withoutFirst(const QString& text) {
    return text.section(QLatin1Char{' '}, 1).trimmed();
}

}  // namespace

IngredientText splitIngredient(const QString& text, const QString& currentName) {
    qsizetype end = endOfFood(text);
    if (!currentName.isEmpty() && text.startsWith(currentName)) {
        const QString rest = text.mid(currentName.size()).trimmed();
        const bool ends =
            rest.isEmpty() || rest.startsWith(QChar{0x00B7}) || rest.startsWith(QLatin1Char{','});
        if (ends) return {currentName, rest.mid(1).trimmed()};
    }
    if (end < 0) return {text.trimmed(), {}};
    return {text.left(end).trimmed(), text.mid(end + 1).trimmed()};
}

QString ingredientText(const QString& food, const QString& preparation) {
    return preparation.isEmpty() ? food : food + dot() + preparation;
}

NewLineText splitNewLine(const QString& text, const std::function<bool(const QString&)>& isFood) {
    // Digits, fractions, ranges, and marks between them; "400g" has its unit at once.
    static const QRegularExpression number{
        QStringLiteral(
            "^\\s*([0-9¼-¾⅐-⅞][0-9¼-¾⅐-⅞.,/⁄–-]*(?:\\s+[0-9¼-¾⅐-⅞][0-9¼-¾⅐-⅞/⁄–-]*)*)\\s*"),
        QRegularExpression::UseUnicodePropertiesOption};
    const auto match = number.match(text);
    const QString head = match.hasMatch() ? match.captured(1) : QString{};
    const QString rest = match.hasMatch() ? text.mid(match.capturedEnd()) : text;
    const IngredientText parts = splitIngredient(rest);
    NewLineText line{head, parts.food, parts.preparation};
    if (head.isEmpty()) return line;
    const QString word = firstWord(line.food);
    const auto read = readLineAmount((head + QLatin1Char{' '} + word).toStdString());
    const QString after = withoutFirst(line.food);
    const bool unit = read.unit.has_value();
    const bool piece = !unit && !after.isEmpty() && !isFood(line.food) && isFood(after);
    if (unit || piece) {
        line.amount = head + QLatin1Char{' '} + word;
        line.food = after;
    }
    return line;
}

}  // namespace nettare
