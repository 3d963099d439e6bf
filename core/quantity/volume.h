#pragma once

#include "core/quantity/quantity.h"

namespace nettare {

/// A volume in millilitres. It becomes a mass only through a food: its household measure, its label
/// or its density.
class Volume : public Quantity<Volume> {
public:
    [[nodiscard]] static constexpr Volume fromMillilitres(double value) { return Volume{value}; }
    [[nodiscard]] constexpr double millilitres() const { return value_; }

private:
    friend class Quantity<Volume>;
    constexpr explicit Volume(double value) : Quantity{value} {}
};

}  // namespace nettare
