#include "plain_pass.h"

namespace nettare {

PlainPass::PlainPass(const Block& block, const std::vector<Composition>& compositions)
    : rows_{block.sensitivities} {
    for (const Source& source : block.sources) rowU_.push_back(source.u);
    for (const Block::FoodPart& part : block.foods)
        for (const CompositionSource& source : compositions[part.food].sources)
            for (const Effect& effect : source.effects)
                effects_.push_back({indexOf(effect.component),
                                    part.grams * block.scale * effect.perGram, source.source.u});
}

PerComponent<double> PlainPass::squares() const {
    PerComponent<double> squares{};
    for (std::size_t s = 0; s < rowU_.size(); ++s)
        for (std::size_t k = 0; k < kComponentCount; ++k) {
            const double part = rows_[s * kComponentCount + k] * rowU_[s];
            squares[k] += part * part;
        }
    for (const Part& effect : effects_) {
        const double part = effect.sensitivity * effect.u;
        squares[effect.component] += part * part;
    }
    return squares;
}

}  // namespace nettare
