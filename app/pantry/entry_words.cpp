#include "app/pantry/entry_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "app/words/error_sentence.h"
#include "core/food/label_line.h"

namespace nettare {

namespace {

struct EntryWords {
    Q_DECLARE_TR_FUNCTIONS(OwnFoodForm)
};

QString measureMember(const QString& member) {
    if (member == QStringLiteral("amount")) return EntryWords::tr("how many");
    if (member == QStringLiteral("unit")) return EntryWords::tr("of what");
    if (member == QStringLiteral("grams")) return EntryWords::tr("grams");
    return EntryWords::tr("how cut, how large");
}

/// A field of a label; empty where the sentence names it itself.
QString labelMember(const QStringList& steps) {
    const QString member = steps.value(2);
    if (member == QStringLiteral("declares")) {
        const auto line = labelLineNamed(steps.value(3).toStdString());
        if (!line) return EntryWords::tr("Amounts");
        const std::string name{nameOf(*line)};
        return QString::fromStdString(name).left(1).toUpper() + QString::fromStdString(name).mid(1);
    }
    if (member.startsWith(QStringLiteral("serving_"))) return EntryWords::tr("Serving size");
    if (member == QStringLiteral("serving")) return EntryWords::tr("Serving");
    if (member == QStringLiteral("servings_per_pack")) return EntryWords::tr("Servings per pack");
    if (member == QStringLiteral("density")) return EntryWords::tr("1 mL weighs");
    if (member == QStringLiteral("declaration_spread")) return EntryWords::tr("Declaration spread");
    return member == QStringLiteral("date") ? EntryWords::tr("Read on") : QString{};
}

/// These say themselves what they are about.
bool namesItsField(ErrorCode code) {
    using enum ErrorCode;
    return code == LabelAmountImpossible || code == LabelAmountUnreadable ||
           code == LabelNeedsServing || code == LabelNeedsDensity;
}

/// The field that a pointer of ownFoodFrom() or labelledFoodFrom() names; empty where it names
/// none.
QString fieldName(const std::string& pointer) {
    const QStringList steps = QString::fromStdString(pointer).split(u'/');
    const QString list = steps.value(1), member = steps.value(2);
    if (list == QStringLiteral("components"))
        if (const auto component = componentNamed(member.toStdString()))
            return componentName(*component);
    if (list == QStringLiteral("measures"))
        return EntryWords::tr("Measure %1, %2")
            .arg(member.toUInt() + 1)
            .arg(measureMember(steps.value(3)));
    if (list == QStringLiteral("added_sugars"))
        return member == QStringLiteral("reason") ? EntryWords::tr("Why, for added sugars")
                                                  : EntryWords::tr("Added sugars");
    if (list == QStringLiteral("label")) return labelMember(steps);
    if (list == QStringLiteral("refuse_percent")) return EntryWords::tr("Refuse");
    if (list == QStringLiteral("name")) return EntryWords::tr("Name");
    if (member == QStringLiteral("source")) return EntryWords::tr("Source");
    if (member == QStringLiteral("date")) return EntryWords::tr("Date of the source");
    if (list == QStringLiteral("date")) return EntryWords::tr("Read on");
    return member == QStringLiteral("note") || list == QStringLiteral("note")
               ? EntryWords::tr("Note")
               : QString{};
}

}  // namespace

QString addedSugarsName(AddedSugarKind kind) {
    switch (kind) {
        case AddedSugarKind::None:
            return EntryWords::tr("none");
        case AddedSugarKind::AllOfItsSugars:
            return EntryWords::tr("all of its sugars");
        case AddedSugarKind::Stated:
            return EntryWords::tr("a stated amount, g");
        case AddedSugarKind::BetweenNoneAndAll:
            break;
    }
    return EntryWords::tr("between none and all");
}

QString entrySentence(const Error& error) {
    const QString field = namesItsField(error.code) ? QString{} : fieldName(error.pointer);
    Error placeless = error;
    placeless.file.clear();
    placeless.pointer.clear();
    const QString sentence = QString::fromStdString(errorSentence(placeless));
    return field.isEmpty() ? sentence : EntryWords::tr("%1: %2").arg(field, sentence);
}

}  // namespace nettare
