// Planted: hashes from a second place.
#include <openssl/sha.h>
