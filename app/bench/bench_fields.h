#pragma once

#include "app/bench/bench_type.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace nettare {

/// A label that wraps, of plain text that is read at a metre.
[[nodiscard]] QLabel* benchLabel(Weight weight = Weight::Regular);
/// The same in the second ink.
[[nodiscard]] QLabel* benchNote();

/// A field or box for wet hands. `spoken` is for screen readers, `name` its object name.
[[nodiscard]] QLineEdit* benchField(const QString& spoken, const char* name);
[[nodiscard]] QComboBox* benchBox(const QString& spoken, const char* name);

}  // namespace nettare
