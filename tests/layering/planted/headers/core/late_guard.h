#include <vector>

#pragma once
