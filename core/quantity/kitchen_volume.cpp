#include "core/quantity/kitchen_volume.h"

#include <array>
#include <cmath>

namespace nettare {

namespace {

constexpr double kNoise = 1e-12;

/// A tool that volumes are written with.
struct Tool {
    const Unit* unit;
    KitchenTool steps;
    double mostMillilitres;  ///< beyond, a larger tool is meant
};

using Parts = std::vector<SpoonedPart>;

/// Cup, tablespoon, teaspoon.
std::array<Tool, 3> toolsOf(MeasureSystem system) {
    const Unit* cup = findUnit("cup", system);
    const Unit* tablespoon = findUnit("tbsp", system);
    return {Tool{cup, KitchenTool::Cup, 1e9 * cup->factor.value()},
            Tool{tablespoon, KitchenTool::Tablespoon, cup->factor.value() / 2},
            Tool{findUnit("tsp", system), KitchenTool::Teaspoon, tablespoon->factor.value()}};
}

double millilitresOf(const Parts& parts) {
    double sum = 0;
    for (const SpoonedPart& part : parts)
        sum += volumeOf(part.amount.value(), *part.unit).millilitres();
    return sum;
}

/// Looks for the best way to fill a volume with so many tools.
class Filling {
public:
    Filling(double millilitres, MeasureSystem system)
        : asked_{millilitres}, tools_{toolsOf(system)} {}

    [[nodiscard]] const std::optional<SpoonedVolume>& best() const { return best_; }

    /// The parts so far, then `count` tools of those from `first` on.
    void fill(const Parts& parts, std::size_t first, std::size_t count) {
        const double rest = asked_ - millilitresOf(parts);
        for (std::size_t i = first; i < tools_.size(); ++i) {
            const double amount = rest / tools_[i].unit->factor.value();
            if (count == 1)
                finish(parts, i, amount);
            else
                leaveRest(parts, i, amount, count);
        }
    }

private:
    /// The last tool comes as near as it can.
    void finish(Parts parts, std::size_t tool, double amount) {
        const auto nearest = kitchenFraction(amount, tools_[tool].steps);
        if (!nearest || isTooMuch(nearest->amount, tools_[tool])) return;
        parts.push_back({nearest->amount, tools_[tool].unit});
        double error = millilitresOf(parts) / asked_ - 1;
        if (std::fabs(error) < kNoise) error = 0;
        if (!best_ || std::fabs(error) < std::fabs(best_->relativeError) - kNoise)
            best_ = SpoonedVolume{std::move(parts), error};
    }

    /// A tool that is filled below the volume, by its three largest amounts in turn.
    void leaveRest(const Parts& parts, std::size_t tool, double amount, std::size_t count) {
        auto below = kitchenFractionBelow(amount, tools_[tool].steps);
        for (int tries = 0; below && tries < 3; ++tries) {
            if (!isTooMuch(*below, tools_[tool])) {
                Parts more = parts;
                more.push_back({*below, tools_[tool].unit});
                fill(more, tool + 1, count - 1);
            }
            below = kitchenFractionBelow(below->value() - 1e-6, tools_[tool].steps);
        }
    }

    static bool isTooMuch(Fraction amount, const Tool& tool) {
        return volumeOf(amount.value(), *tool.unit).millilitres() >
               tool.mostMillilitres * (1 + kNoise);
    }

    double asked_;
    std::array<Tool, 3> tools_;
    std::optional<SpoonedVolume> best_;
};

std::string joined(const Parts& parts, auto write) {
    std::string text;
    for (const SpoonedPart& part : parts) {
        const bool several = part.unit->symbol == "cup" && part.amount > Fraction{1};
        text += (text.empty() ? "" : " plus ") + write(part.amount) + " " +
                std::string{part.unit->symbol} + (several ? "s" : "");
    }
    return text;
}

}  // namespace

Volume SpoonedVolume::volume() const {
    return Volume::fromMillilitres(millilitresOf(parts));
}

std::string SpoonedVolume::text() const {
    return joined(parts, [](Fraction amount) { return KitchenFraction{amount}.text(); });
}

std::string SpoonedVolume::signText() const {
    return joined(parts, [](Fraction amount) { return KitchenFraction{amount}.signText(); });
}

std::optional<SpoonedVolume> writeMeasure(Volume volume, MeasureSystem system, double tolerance) {
    Filling filling{volume.millilitres(), system};
    for (std::size_t count = 1; count <= 3; ++count) {
        filling.fill({}, 0, count);
        if (!filling.best()) return std::nullopt;
        if (std::fabs(filling.best()->relativeError) <= tolerance) break;
    }
    return filling.best();
}

}  // namespace nettare
