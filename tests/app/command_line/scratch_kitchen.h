#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// What a run of the program left: exit code, standard output, standard error.
struct Outcome {
    int code = 0;
    std::string out, err;
};

/// Runs the program's command line in this process, with the starter table of the build tree.
[[nodiscard]] Outcome run(const std::vector<std::string>& arguments);

/// The text of an example recipe.
[[nodiscard]] std::string skewers();
[[nodiscard]] std::string patties();

/// A folder of its own that is the working folder while it lives, so that sentences name files
/// shortly.
class ScratchKitchen {
public:
    ScratchKitchen();
    ~ScratchKitchen();
    ScratchKitchen(const ScratchKitchen&) = delete;
    ScratchKitchen& operator=(const ScratchKitchen&) = delete;

    void write(const std::string& name, std::string_view bytes) const;

private:
    std::filesystem::path before_, folder_;
};

/// NETTARE_SHARE, set while it lives.
class ShareFolder {
public:
    explicit ShareFolder(const std::string& folder);
    ~ShareFolder();
    ShareFolder(const ShareFolder&) = delete;
    ShareFolder& operator=(const ShareFolder&) = delete;
};
