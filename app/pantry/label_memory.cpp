#include "app/pantry/label_memory.h"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/session/now.h"
#include "app/theme/user_settings.h"
#include "core/food/label_words.h"

namespace nettare {

namespace {

const QString kRulesKey = QStringLiteral("label/rules");
const QString kPerKey = QStringLiteral("label/per");

/// A place of its own for each kitchen; a path is no name of a setting.
QString unfinishedKey(const QString& kitchen) {
    const QByteArray hash =
        QCryptographicHash::hash(kitchen.toUtf8(), QCryptographicHash::Sha256).toHex();
    return QStringLiteral("label/unfinished/") + QString::fromLatin1(hash);
}

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

/// The texts of a label by their names.
template <class Label>
auto textsOf(Label& typed) {
    return std::array{
        std::pair{QStringLiteral("name"), &typed.name},
        std::pair{QStringLiteral("household"), &typed.household},
        std::pair{QStringLiteral("size"), &typed.servingSize},
        std::pair{QStringLiteral("servings"), &typed.servingsPerPack},
        std::pair{QStringLiteral("density"), &typed.gramsPerMl},
        std::pair{QStringLiteral("within"), &typed.densityWithin},
        std::pair{QStringLiteral("added"), &typed.addedSugarsPer100g},
        std::pair{QStringLiteral("reason"), &typed.addedSugarsReason},
        std::pair{QStringLiteral("spread"), &typed.declarationSpreadPercent},
        std::pair{QStringLiteral("date"), &typed.date},
        std::pair{QStringLiteral("note"), &typed.note},
    };
}

QString tagnameText(const LabelLine& line) {
    return QString::fromStdString(std::string{tagnameOf(line)});
}

QJsonObject jsonOf(const LabelTyped& typed) {
    QJsonObject json;
    for (const auto& [key, text] : textsOf(typed)) json[key] = QString::fromStdString(*text);
    json[QStringLiteral("rules")] = wordIn(typed.rules, kLabelRulesWords);
    json[QStringLiteral("per")] = wordIn(typed.per, kLabelPerWords);
    json[QStringLiteral("state")] = wordIn(typed.state, kLabelStateWords);
    json[QStringLiteral("millilitres")] = typed.servingInMillilitres;
    json[QStringLiteral("plant")] = typed.plant;
    json[QStringLiteral("kind")] = static_cast<int>(typed.addedSugars);
    QJsonArray amounts, assents;
    for (const LabelAmount& amount : typed.amounts)
        amounts.append(
            QJsonArray{tagnameText(amount.line), QString::fromStdString(amount.printed)});
    for (const LabelAssent& assent : typed.assents)
        assents.append(QJsonArray{wordIn(assent.kind, kLabelFindingWords),
                                  QString::fromStdString(assent.about)});
    json[QStringLiteral("amounts")] = amounts;
    json[QStringLiteral("assents")] = assents;
    return json;
}

LabelTyped typedFrom(const QJsonObject& json) {
    LabelTyped typed;
    for (const auto& [key, text] : textsOf(typed)) *text = json[key].toString().toStdString();
    typed.rules = meaningOf(json[QStringLiteral("rules")].toString(), kLabelRulesWords);
    typed.per = meaningOf(json[QStringLiteral("per")].toString(), kLabelPerWords);
    typed.state = meaningOf(json[QStringLiteral("state")].toString(), kLabelStateWords);
    typed.servingInMillilitres = json[QStringLiteral("millilitres")].toBool();
    typed.plant = json[QStringLiteral("plant")].toBool();
    const int kind = json[QStringLiteral("kind")].toInt();
    typed.addedSugars = kind >= 0 && kind <= static_cast<int>(AddedSugarKind::BetweenNoneAndAll)
                            ? static_cast<AddedSugarKind>(kind)
                            : AddedSugarKind::BetweenNoneAndAll;
    for (const auto& each : json[QStringLiteral("amounts")].toArray()) {
        const QJsonArray amount = each.toArray();
        if (const auto line = labelLineNamed(amount.at(0).toString().toStdString()))
            typed.amounts.push_back({*line, amount.at(1).toString().toStdString()});
    }
    for (const auto& each : json[QStringLiteral("assents")].toArray()) {
        const QJsonArray assent = each.toArray();
        typed.assents.push_back({meaningOf(assent.at(0).toString(), kLabelFindingWords),
                                 assent.at(1).toString().toStdString()});
    }
    return typed;
}

}  // namespace

LabelTyped usualLabel() {
    const auto settings = userSettings();
    LabelTyped typed;
    typed.rules = meaningOf(settings->value(kRulesKey).toString(), kLabelRulesWords);
    typed.per = meaningOf(settings->value(kPerKey).toString(), kLabelPerWords);
    typed.date = today().toString(Qt::ISODate).toStdString();
    return typed;
}

void rememberLabel(const LabelTyped& typed) {
    const auto settings = userSettings();
    settings->setValue(kRulesKey, wordIn(typed.rules, kLabelRulesWords));
    settings->setValue(kPerKey, wordIn(typed.per, kLabelPerWords));
}

std::optional<UnfinishedLabel> unfinishedLabel(const QString& kitchen) {
    const QByteArray text = userSettings()->value(unfinishedKey(kitchen)).toByteArray();
    const QJsonObject json = QJsonDocument::fromJson(text).object();
    if (json.isEmpty() || json[QStringLiteral("kitchen")].toString() != kitchen)
        return std::nullopt;
    return UnfinishedLabel{json[QStringLiteral("food")].toString().toStdString(),
                           typedFrom(json[QStringLiteral("typed")].toObject()),
                           json[QStringLiteral("correction")].toBool(),
                           json[QStringLiteral("samePhoto")].toBool(),
                           json[QStringLiteral("photo")].toString()};
}

void keepUnfinished(const QString& kitchen, const UnfinishedLabel& label) {
    const QJsonObject json{{QStringLiteral("kitchen"), kitchen},
                           {QStringLiteral("food"), QString::fromStdString(label.food)},
                           {QStringLiteral("typed"), jsonOf(label.typed)},
                           {QStringLiteral("correction"), label.correction},
                           {QStringLiteral("samePhoto"), label.samePhoto},
                           {QStringLiteral("photo"), label.photoPath}};
    userSettings()->setValue(unfinishedKey(kitchen),
                             QJsonDocument{json}.toJson(QJsonDocument::Compact));
}

void forgetUnfinished(const QString& kitchen) {
    userSettings()->remove(unfinishedKey(kitchen));
}

}  // namespace nettare
