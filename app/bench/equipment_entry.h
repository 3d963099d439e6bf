#pragma once

#include <QString>

#include <optional>

#include "core/ledger/bench_equipment.h"

namespace nettare {

/// A scale as it was typed.
struct TypedScale {
    QString name, unit, readability, capacity;  ///< capacity may be empty
};

/// What was read of typed fields, or one sentence that says what is wrong.
template <class T>
struct Typed {
    std::optional<T> value;
    QString refusal;
};

[[nodiscard]] Typed<KnownScale> readScale(const TypedScale& typed, const BenchEquipment& equipment);

/// A known mass and what the scale showed for it.
struct TypedCheck {
    Decimal mass, shown;
};
[[nodiscard]] Typed<TypedCheck> readCheck(const QString& mass, const QString& shown,
                                          const KnownScale& scale);

/// The tare of an empty vessel on that scale; null: none is known yet.
[[nodiscard]] Typed<Decimal> readTare(const QString& name, const QString& tare,
                                      const KnownScale* scale);

}  // namespace nettare
