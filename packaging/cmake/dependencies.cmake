# Every library the project uses, with a word on why. All are Debian 12 packages; the package names
# stand in packaging/packages.txt.

find_package(fmt REQUIRED)                # std::format is absent in g++ 12
find_package(tl-expected REQUIRED)        # Result<T>: std::expected is C++23
find_package(nlohmann_json 3.11 REQUIRED) # reads JSON; in core/support/json_parse.cpp only
find_package(Boost 1.74 REQUIRED)         # Boost.Math: Student t; in core/nutrition/student_t.cpp only
                                          # Boost.Random: draws; in core/simulation/draws.cpp only
find_package(Threads REQUIRED)            # a simulation on every core; in core/simulation only
find_package(OpenSSL REQUIRED)            # SHA-256; in core/support/sha256.cpp only
find_package(Qt6 6.4 REQUIRED COMPONENTS Core Gui) # paints the panel and writes its PDF
find_package(Qt6 6.4 REQUIRED COMPONENTS Widgets) # the window
find_package(Qt6 6.4 REQUIRED COMPONENTS PrintSupport) # prints the working sheet; from qt6-base-dev
find_package(Qt6 6.4 REQUIRED COMPONENTS Charts) # plots of a figure; in app/path only
find_package(Qt6 6.4 REQUIRED COMPONENTS Svg) # draws the icons; in app/icons only
find_package(Qt6 6.4 REQUIRED COMPONENTS DBus) # light or dark, by the desktop; in app/theme only
find_package(SQLite3 REQUIRED)            # kitchens and table files
find_package(SQLiteCpp REQUIRED)          # RAII over SQLite; in db only
find_package(CLI11 REQUIRED)              # the command line; in app/command_line/arguments.cpp only

# libdtl (BSD) is one header: the shortest difference of two texts; in core/publish/word_script.cpp
# only.
find_path(NETTARE_DTL_DIR dtl/dtl.hpp REQUIRED)

# Lato (Debian fonts-lato, OFL) is compiled into the program so that screen, PDF and tests agree.
find_path(NETTARE_LATO_DIR Lato-Regular.ttf PATHS /usr/share/fonts/truetype/lato NO_DEFAULT_PATH
          REQUIRED)

# libzip (BSD) unpacks downloads of public tables; in db/import/zip_archive.cpp only. Its own CMake
# file asks for tools that no build needs.
find_path(NETTARE_ZIP_DIR zip.h REQUIRED)
find_library(NETTARE_ZIP_LIBRARY zip REQUIRED)
