#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>

// run_measured PROGRAM ARGUMENTS...: runs it and says on standard error how long it took and how
// much memory it held at most. Exits with its code.
int main(int argc, char** argv) {
    if (argc < 2) return 2;
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child < 0) return 2;
    if (child == 0) {
        execvp(argv[1], argv + 1);
        _exit(127);
    }
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) != child) return 2;
    const std::chrono::duration<double> wall_s = std::chrono::steady_clock::now() - start;
    const double processor_s =
        static_cast<double>(used.ru_utime.tv_sec + used.ru_stime.tv_sec) +
        static_cast<double>(used.ru_utime.tv_usec + used.ru_stime.tv_usec) / 1e6;
    std::fprintf(stderr, "%.2f s (%.2f s of one processor), %ld MB at most\n", wall_s.count(),
                 processor_s, used.ru_maxrss / 1024);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 1;
}
