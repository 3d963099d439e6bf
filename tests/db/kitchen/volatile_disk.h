#pragma once

#include <cstdint>
#include <memory>

/// A disk that forgets: while it lives, every database that SQLite opens stands on it. What is
/// written stays in a volatile copy until it is synced. At a chosen sync or write the power goes:
/// what was not synced is gone, and nothing can be read or written any more.
class VolatileDisk {
public:
    VolatileDisk();
    ~VolatileDisk();
    VolatileDisk(const VolatileDisk&) = delete;
    VolatileDisk& operator=(const VolatileDisk&) = delete;

    /// The power goes when the sync of that number, from 1, is asked for.
    void cutAtSync(int number);
    /// The power goes when the write of that number, from 1, is asked for.
    void cutAtWrite(int number);
    /// From now on a cut leaves single writes behind, as a disk with a cache may: each that was not
    /// synced survives by the toss of a coin.
    void tossWith(std::uint32_t seed);
    /// After so many writes from now the disk is full; negative: never.
    void fullAfterWrites(int number);

    /// How many syncs and writes there were.
    [[nodiscard]] int syncs() const;
    [[nodiscard]] int writes() const;
    [[nodiscard]] bool isOff() const;

    struct State;

private:
    std::unique_ptr<State> state_;
};
