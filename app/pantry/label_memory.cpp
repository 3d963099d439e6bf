#include "app/pantry/label_memory.h"

#include <QDate>

#include "app/theme/user_settings.h"
#include "core/food/label_words.h"

namespace nettare {

namespace {

const QString kRulesKey = QStringLiteral("label/rules");
const QString kPerKey = QStringLiteral("label/per");

template <class T, std::size_t N>
T meaningOf(const QString& word, const std::array<Word<T>, N>& known) {
    for (const Word<T>& each : known)
        if (word.toStdString() == each.word) return each.meaning;
    return known.front().meaning;
}

template <class T, std::size_t N>
QString wordIn(T meaning, const std::array<Word<T>, N>& known) {
    return QString::fromStdString(std::string{wordFor(meaning, known)});
}

}  // namespace

LabelTyped usualLabel() {
    const auto settings = userSettings();
    LabelTyped typed;
    typed.rules = meaningOf(settings->value(kRulesKey).toString(), kLabelRulesWords);
    typed.per = meaningOf(settings->value(kPerKey).toString(), kLabelPerWords);
    typed.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    return typed;
}

void rememberLabel(const LabelTyped& typed) {
    const auto settings = userSettings();
    settings->setValue(kRulesKey, wordIn(typed.rules, kLabelRulesWords));
    settings->setValue(kPerKey, wordIn(typed.per, kLabelPerWords));
}

}  // namespace nettare
