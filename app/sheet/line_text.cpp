#include "app/sheet/line_text.h"

#include <QRegularExpression>

#include "core/food/piece_word.h"
#include "core/wording/read_line.h"

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

LineReading readNewLine(const QString& text, const std::function<bool(const QString&)>& isFood) {
    QString line = text;
    line.replace(QRegularExpression{QStringLiteral("\\s*\u00B7")}, QStringLiteral(","));
    LineReading reading = readLine(line.toStdString());
    const bool counts = reading.amount && reading.units.empty() && reading.piece.empty();
    const QString food = QString::fromStdString(reading.food);
    const QString after = withoutFirst(food);
    if (counts && !after.isEmpty() && !isFood(food) && isFood(after)) {
        reading.piece = singularOf(firstWord(food).toStdString());
        reading.food = after.toStdString();
    }
    return reading;
}

}  // namespace nettare
