#include "worker.h"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <stdexcept>

Worker::Worker(const std::string& kitchen, unsigned seed) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    const std::string number = std::to_string(seed);
    process_ = ::fork();
    if (process_ == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        ::execl(NETTARE_WORK_IN_KITCHEN, NETTARE_WORK_IN_KITCHEN, kitchen.c_str(), number.c_str(),
                nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    pipe_ = ends[0];
    if (process_ < 0) throw std::runtime_error("no process");
}

Worker::~Worker() {
    static_cast<void>(killed());
    ::close(pipe_);
}

bool Worker::readMore() {
    std::array<char, 4096> bytes{};
    const ssize_t size = ::read(pipe_, bytes.data(), bytes.size());
    if (size > 0) said_.append(bytes.data(), static_cast<std::size_t>(size));
    return size > 0;
}

bool Worker::isReady() {
    while (said_.find("ready\n") == std::string::npos)
        if (!readMore()) return false;
    return true;
}

std::vector<std::string> Worker::killed() {
    if (process_ > 0) {
        ::kill(process_, SIGKILL);
        ::waitpid(process_, nullptr, 0);
        process_ = -1;
    }
    while (readMore()) {
    }
    std::vector<std::string> lines;
    std::size_t from = 0;
    for (std::size_t end = said_.find('\n'); end != std::string::npos;
         end = said_.find('\n', from)) {
        lines.push_back(said_.substr(from, end - from));
        from = end + 1;
    }
    return lines;
}
