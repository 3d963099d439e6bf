#pragma once

#include <cstdint>
#include <memory>
#include <span>

namespace nettare {

/// Random numbers of one chunk of a simulation: the same seed and chunk give the same numbers in
/// the same order. 64-bit Mersenne Twister of Boost.Random, whose distributions are fixed by its
/// version; those of the standard library differ from one library to the next.
class Draws {
public:
    Draws(std::uint32_t seed, std::uint64_t chunk);
    ~Draws();
    Draws(const Draws&) = delete;
    Draws& operator=(const Draws&) = delete;

    /// Fills with standard normal deviates.
    void normals(std::span<double> values);
    /// Fills with numbers of 0 to 1, all alike.
    void uniforms(std::span<double> values);
    /// Fills with chi-squared deviates of that many degrees of freedom, > 0: by Marsaglia and
    /// Tsang, A simple method for generating gamma variables (2000), from memory.
    void chiSquared(double freedom, std::span<double> values);
    /// Fills with sqrt(nu / chi^2): what a true standard deviation may be, as a factor of the one
    /// that was estimated with nu degrees of freedom. Times a normal deviate it is Student's t.
    void spreadFactors(double freedom, std::span<double> values);

private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
};

}  // namespace nettare
