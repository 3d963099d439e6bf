#include "app/bench/equipment_entry.h"

#include <QCoreApplication>

#include <algorithm>

#include "app/scale/shown_number.h"
#include "app/words/error_sentence.h"
#include "core/publish/number_text.h"

namespace nettare {

namespace {

struct EquipmentWords {
    Q_DECLARE_TR_FUNCTIONS(EquipmentPanel)
};

constexpr qsizetype kMostNameBytes = 200;

/// `what` begins the sentence where the field is empty or holds no number.
Typed<Decimal> readNumber(const QString& text, const QString& what) {
    if (text.trimmed().isEmpty())
        return {{}, EquipmentWords::tr("%1 is missing; type it as a number.").arg(what)};
    const auto number = readShown(text.trimmed().toStdString(), groupMarkHere());
    if (number) return {*number, {}};
    return {{},
            EquipmentWords::tr("%1: %2").arg(
                what, QString::fromStdString(errorSentence(number.error())))};
}

QString errorWords(const Error& error) {
    QString sentence = QString::fromStdString(errorSentence(error));
    if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
    return sentence;
}

std::string massWords(Decimal mass, const std::string& unit) {
    return printedDecimal(mass) + " " + unit;
}

/// What this scale cannot have shown; empty where it can.
QString shownRefusal(Decimal shown, const KnownScale& scale) {
    if (roundedToStep(shown, scale.readability) != shown)
        return errorWords(Error{ErrorCode::NotOfTheScale}
                              .with("found", massWords(shown, scale.unit))
                              .with("step", massWords(scale.readability, scale.unit)));
    if (scale.capacity && shown > *scale.capacity)
        return errorWords(Error{ErrorCode::AboveCapacity}
                              .with("found", massWords(shown, scale.unit))
                              .with("most", massWords(*scale.capacity, scale.unit)));
    return {};
}

QString nameRefusal(const QString& name, const QString& missing) {
    if (name.isEmpty()) return missing;
    if (name.toUtf8().size() > kMostNameBytes)
        return EquipmentWords::tr("The name is too long; 200 letters are enough.");
    return {};
}

}  // namespace

Typed<KnownScale> readScale(const TypedScale& typed, const BenchEquipment& equipment) {
    const QString name = typed.name.simplified();
    if (const QString refusal = nameRefusal(
            name, EquipmentWords::tr("The scale has no name; type one, such as “counter”."));
        !refusal.isEmpty())
        return {{}, refusal};
    if (std::ranges::any_of(equipment.scales, [&name](const KnownScale& each) {
            return QString::fromStdString(each.name).compare(name, Qt::CaseInsensitive) == 0;
        }))
        return {{},
                EquipmentWords::tr("There is a scale “%1” already; give this one another name.")
                    .arg(name)};
    const auto step = readNumber(typed.readability, EquipmentWords::tr("The readability"));
    if (!step.value) return {{}, step.refusal};
    if (*step.value <= Decimal{})
        return {{},
                EquipmentWords::tr("The readability is the least step that the scale shows; "
                                   "type a number above zero, such as 0.1.")};
    KnownScale scale{name.toStdString(), typed.unit.toStdString(), *step.value, {}, {}};
    if (typed.capacity.trimmed().isEmpty()) return {scale, {}};
    const auto most = readNumber(typed.capacity, EquipmentWords::tr("The most that it takes"));
    if (!most.value) return {{}, most.refusal};
    if (*most.value <= *step.value)
        return {{},
                EquipmentWords::tr("The most that it takes is not above its least step; look "
                                   "for “Max” on the plate of the scale.")};
    scale.capacity = most.value;
    return {scale, {}};
}

Typed<TypedCheck> readCheck(const QString& mass, const QString& shown, const KnownScale& scale) {
    const auto known = readNumber(mass, EquipmentWords::tr("The known mass"));
    if (!known.value) return {{}, known.refusal};
    if (*known.value <= Decimal{})
        return {{},
                EquipmentWords::tr("The known mass is not above zero; type what is stamped on "
                                   "it, such as 200.")};
    if (scale.capacity && *known.value > *scale.capacity)
        return {{},
                errorWords(Error{ErrorCode::AboveCapacity}
                               .with("found", massWords(*known.value, scale.unit))
                               .with("most", massWords(*scale.capacity, scale.unit)))};
    auto number = readNumber(shown, EquipmentWords::tr("What the scale shows"));
    if (!number.value) return {{}, number.refusal};
    if (const QString refusal = shownRefusal(*number.value, scale); !refusal.isEmpty())
        return {{}, refusal};
    return {TypedCheck{*known.value, *number.value}, {}};
}

Typed<Decimal> readTare(const QString& name, const QString& tare, const KnownScale* scale) {
    if (scale == nullptr)
        return {{}, EquipmentWords::tr("No scale is known yet; add the one that it stands on.")};
    if (const QString refusal = nameRefusal(
            name.simplified(),
            EquipmentWords::tr("The vessel has no name; type one, such as “steel bowl”."));
        !refusal.isEmpty())
        return {{}, refusal};
    auto number = readNumber(tare, EquipmentWords::tr("What the empty vessel weighs"));
    if (!number.value) return number;
    if (*number.value <= Decimal{})
        return {{},
                EquipmentWords::tr("An empty vessel weighs more than zero; zero the scale "
                                   "first, then put the vessel on it.")};
    if (const QString refusal = shownRefusal(*number.value, *scale); !refusal.isEmpty())
        return {{}, refusal};
    return number;
}

}  // namespace nettare
