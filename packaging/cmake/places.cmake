# Where things lie below the prefix and, the same, below the build tree: bin/nettare finds its
# data at ../share/nettare, seen from the folder of the program file.
set(NETTARE_PROGRAM_FOLDER bin)
set(NETTARE_SHARE_FOLDER share/nettare)
