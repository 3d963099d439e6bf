#pragma once

#include <optional>
#include <string>

namespace nettare {

/// The right to write a kitchen: a lock on the file "x.nettare.held" beside it, which names the
/// holder. The system gives the lock back when the process ends, however it ends.
class Hold {
public:
    Hold(Hold&& other) noexcept;
    Hold& operator=(Hold&& other) noexcept;
    Hold(const Hold&) = delete;
    Hold& operator=(const Hold&) = delete;
    /// Gives the kitchen free and removes the file.
    ~Hold();

private:
    friend struct HoldAttempt takeHold(const std::string& kitchen);
    Hold(std::string file, int descriptor) : file_{std::move(file)}, descriptor_{descriptor} {}
    void release();

    std::string file_;
    int descriptor_ = -1;
};

/// What came of asking for a kitchen.
struct HoldAttempt {
    std::optional<Hold> hold;
    std::string heldBy;  ///< "anna on counter-pc, process 1234", where another has it
};

/// Asks for the kitchen at that path. Neither hold nor holder: the file cannot be made there.
[[nodiscard]] HoldAttempt takeHold(const std::string& kitchen);

}  // namespace nettare
