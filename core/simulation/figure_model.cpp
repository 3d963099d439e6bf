#include "core/simulation/figure_model.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/simulation/draws.h"
#include "core/simulation/sum_tile.h"

namespace nettare {

namespace {

/// So many trials at once that the rows of a tile stay near the processor.
constexpr std::size_t kTileTrials = 256;

/// Draws the trials of a chunk, tile by tile; every tile is drawn whole, so that the last trials of
/// a simulation do not depend on how many there are.
class ChunkOfFigures {
public:
    ChunkOfFigures(const FigurePlan& plan, std::uint64_t chunk, std::uint32_t seed)
        : plan_{plan},
          draws_{seed, chunk},
          tile_{plan, kTileTrials},
          spreads_(plan.pools.size() * kTileTrials),
          deviations_(kTileTrials),
          figures_(kTileTrials) {}

    void fill(std::span<double> values) {
        while (!values.empty()) {
            drawTile();
            const std::size_t count = std::min(values.size(), kTileTrials);
            std::copy_n(figures_.begin(), count, values.begin());
            values = values.subspan(count);
        }
    }

private:
    [[nodiscard]] std::span<double> spreadsOf(std::size_t pool) {
        return {&spreads_[pool * kTileTrials], kTileTrials};
    }

    void drawTile() {
        for (std::size_t pool = 0; pool < plan_.pools.size(); ++pool)
            draws_.spreadFactors(plan_.pools[pool], spreadsOf(pool));
        tile_.reset();
        for (const FigurePlan::DrawnSource& drawn : plan_.sources) {
            deviate(drawn);
            tile_.move(drawn, deviations_);
        }
        tile_.figures(figures_);
    }

    void deviate(const FigurePlan::DrawnSource& drawn) {
        const Source& source = drawn.source;
        if (source.law == Law::Rectangle) {
            const double width = rectangleWidth(source);
            draws_.uniforms(deviations_);
            for (double& each : deviations_) each = source.offset + width * (each - 0.5);
            return;
        }
        draws_.normals(deviations_);
        if (!drawn.pool) {
            for (double& each : deviations_) each *= source.u;
            return;
        }
        const std::span<const double> spreads = spreadsOf(*drawn.pool);
        for (std::size_t t = 0; t < kTileTrials; ++t) deviations_[t] *= source.u * spreads[t];
    }

    /// u^2 = width^2 / 12 + offset^2.
    static double rectangleWidth(const Source& source) {
        return std::sqrt(12 * std::max(0.0, source.u * source.u - source.offset * source.offset));
    }

    const FigurePlan& plan_;
    Draws draws_;
    SumTile tile_;
    std::vector<double> spreads_;  ///< [pool][trial]
    std::vector<double> deviations_;
    std::vector<double> figures_;
};

}  // namespace

DrawChunk figureModel(Component component, const Figures& figures, const Dossier& dossier,
                      const Cooked& cooked) {
    const auto plan =
        std::make_shared<const FigurePlan>(planOf(component, figures, dossier, cooked));
    return [plan](std::uint64_t chunk, std::uint32_t seed, std::vector<double>& values) {
        ChunkOfFigures{*plan, chunk, seed}.fill(values);
    };
}

}  // namespace nettare
