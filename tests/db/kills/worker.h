#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

/// The program work_in_kitchen in a process of its own.
class Worker {
public:
    Worker(const std::string& kitchen, unsigned seed);
    ~Worker();
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    /// Waits until it says "ready"; false where it never does.
    [[nodiscard]] bool isReady();
    /// Kills it (SIGKILL) and answers every whole line that it said.
    [[nodiscard]] std::vector<std::string> killed();

private:
    bool readMore();

    pid_t process_ = -1;
    int pipe_ = -1;
    std::string said_;
};
