# Where things lie below the prefix and, the same, below the build tree: bin/nettare finds its table
# at ../share/nettare/starter.table, seen from the folder of the program file.
set(NETTARE_PROGRAM_FOLDER bin)
set(NETTARE_SHARE_FOLDER share/nettare)
set(NETTARE_STARTER_FROM_PROGRAM ../${NETTARE_SHARE_FOLDER}/starter.table)
