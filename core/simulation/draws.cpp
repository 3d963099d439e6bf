#include "core/simulation/draws.h"

#include <array>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/seed_seq.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace nettare {

struct Draws::Engine {
    boost::random::mt19937_64 bits;
    boost::random::normal_distribution<double> normal;
    boost::random::uniform_01<double> uniform;

    double gamma(double shape);
};

// Shapes below 1 are those of one more, times a power of a uniform number. The squeeze accepts all
// but a few in a hundred without a logarithm.
double Draws::Engine::gamma(double shape) {
    if (shape < 1) return gamma(shape + 1) * std::pow(1 - uniform(bits), 1 / shape);
    const double d = shape - 1.0 / 3;
    const double c = 1 / std::sqrt(9 * d);
    while (true) {
        const double x = normal(bits);
        const double root = 1 + c * x;
        if (root <= 0) continue;
        const double v = root * root * root;
        const double u = 1 - uniform(bits);
        const double square = x * x;
        if (u < 1 - 0.0331 * square * square) return d * v;
        if (std::log(u) < square / 2 + d * (1 - v + std::log(v))) return d * v;
    }
}

Draws::Draws(std::uint32_t seed, std::uint64_t chunk) : engine_{std::make_unique<Engine>()} {
    const std::array<std::uint32_t, 3> words{seed, static_cast<std::uint32_t>(chunk),
                                             static_cast<std::uint32_t>(chunk >> 32U)};
    boost::random::seed_seq mixed(words.begin(), words.end());
    engine_->bits.seed(mixed);
}

Draws::~Draws() = default;

void Draws::normals(std::span<double> values) {
    for (double& value : values) value = engine_->normal(engine_->bits);
}

void Draws::uniforms(std::span<double> values) {
    for (double& value : values) value = engine_->uniform(engine_->bits);
}

void Draws::chiSquared(double freedom, std::span<double> values) {
    if (freedom == 1) {
        normals(values);
        for (double& value : values) value *= value;
        return;
    }
    for (double& value : values) value = 2 * engine_->gamma(freedom / 2);
}

void Draws::spreadFactors(double freedom, std::span<double> values) {
    chiSquared(freedom, values);
    for (double& value : values) value = std::sqrt(freedom / value);
}

}  // namespace nettare
