#include "app/pantry/entry_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/figures/figure_words.h"
#include "app/words/error_sentence.h"

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

/// The field that a pointer of ownFoodFrom() names; empty where it names none.
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
    if (list == QStringLiteral("refuse_percent")) return EntryWords::tr("Refuse");
    if (list == QStringLiteral("name")) return EntryWords::tr("Name");
    if (member == QStringLiteral("source")) return EntryWords::tr("Source");
    if (member == QStringLiteral("date")) return EntryWords::tr("Date of the source");
    return member == QStringLiteral("note") ? EntryWords::tr("Note") : QString{};
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
    const QString field = fieldName(error.pointer);
    Error placeless = error;
    placeless.file.clear();
    placeless.pointer.clear();
    const QString sentence = QString::fromStdString(errorSentence(placeless));
    return field.isEmpty() ? sentence : EntryWords::tr("%1: %2").arg(field, sentence);
}

}  // namespace nettare
