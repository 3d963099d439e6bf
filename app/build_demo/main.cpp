#include <filesystem>
#include <iostream>
#include <string>
#include <system_error>

#include "app/kitchen/sample.h"
#include "app/words/error_sentence.h"

namespace {

using nettare::Result;

/// The file is replaced whole: the copy takes its name when it is complete.
Result<void> write(const nettare::Kitchen& kitchen, const std::string& path) {
    const std::string beside = path + ".new";
    std::error_code failure;
    std::filesystem::remove(beside, failure);
    if (auto written = kitchen.backUp(beside); !written) return written;
    std::filesystem::rename(beside, path, failure);
    if (!failure) return {};
    nettare::Error error{nettare::ErrorCode::FileNotWritable};
    error.file = path;
    return nettare::fail(error.with("reason", failure.message()));
}

}  // namespace

/// Makes the demo kitchen: nettare_build_demo FOLDER TABLE KITCHEN.
int main(int argc, char** argv) {
    if (argc != 4) {
        std::cerr << "nettare_build_demo: give the demo's folder, the table of foods and the "
                     "kitchen to write.\n";
        return 2;
    }
    nettare::DossierLoader loader{std::string{argv[2]}};
    const auto kitchen = nettare::buildSample(argv[1], loader);
    const auto written = kitchen ? write(*kitchen, argv[3]) : nettare::fail(kitchen.error());
    if (written) return 0;
    std::cerr << "nettare_build_demo: " << nettare::errorSentence(written.error()) << '\n';
    return 1;
}
