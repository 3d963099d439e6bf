#pragma once

#include <string>

/// While it lives, the folder and what is in it can be read but not written, also where the test
/// runs as root, who is asked to be somebody else for that time.
class WithoutRights {
public:
    explicit WithoutRights(std::string folder);
    ~WithoutRights();
    WithoutRights(const WithoutRights&) = delete;
    WithoutRights& operator=(const WithoutRights&) = delete;

private:
    std::string folder_;
};
