// Planted: a second reader of JSON.
#include <nlohmann/json.hpp>
