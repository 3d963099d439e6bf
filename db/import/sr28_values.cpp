#include "db/import/sr28_parts.h"
#include "db/import/sr28_rows.h"

namespace nettare {

namespace {

enum ValueField : std::size_t {
    kValueFood,
    kNutrient,
    kValue,
    kPoints,
    kStandardError,
    kSource,
    kDerivation,
    kValueFields = 18
};

/// Takes the rows of NUT_DATA. Rows of one food stand together, so its number is looked up once.
class ValueTaking {
public:
    ValueTaking(Sr28Import& import, Sr28Rows& rows) : import_{&import}, rows_{&rows} {}

    void take() {
        const auto food = foodOfRow();
        auto& nutrients = import_->codes.nutrients;
        const auto nutrient = nutrients.find(rows_->raw(kNutrient));
        if (food && nutrient == nutrients.end()) {
            ++import_->run.report.unknownComponents[std::string{rows_->raw(kNutrient)}];
            return;
        }
        const NewValue value = food ? valueAt(nutrient->second) : NewValue{};
        if (rows_->refused()) return;
        if (import_->writer.value(*food, value)) {
            ++nutrient->second.values;
            return;
        }
        rows_->refuse(ErrorCode::RowRepeated,
                      std::string{rows_->raw(kValueFood)} + " " + nutrient->first);
        static_cast<void>(rows_->refused());
    }

private:
    std::optional<std::uint32_t> foodOfRow() {
        const std::string_view number = rows_->raw(kValueFood);
        if (number != number_) {
            number_ = number;
            food_ = import_->writer.find(number);
        }
        if (!food_) rows_->refuse(ErrorCode::RowWithoutFood, number);
        return food_;
    }

    NewValue valueAt(const Sr28Codes::Nutrient& nutrient) {
        NewValue value;
        value.component = nutrient.component;
        value.per100g = rows_->requiredNumber(kValue) * nutrient.factor;
        value.dataPoints = rows_->count(kPoints);
        if (const auto error = rows_->number(kStandardError))
            value.standardError = *error * nutrient.factor;
        value.source = idOf(kSource, import_->codes.sources, "a code of SRC_CD");
        value.derivation = idOf(kDerivation, import_->codes.derivations, "a code of DERIV_CD");
        return value;
    }

    std::optional<int> idOf(std::size_t field, const std::map<std::string, int, std::less<>>& ids,
                            std::string_view wanted) {
        const std::string_view code = rows_->raw(field);
        if (code.empty()) return std::nullopt;
        const auto found = ids.find(code);
        if (found != ids.end()) return found->second;
        rows_->refuse(code, wanted);
        return std::nullopt;
    }

    Sr28Import* import_;
    Sr28Rows* rows_;
    std::string number_;
    std::optional<std::uint32_t> food_;
};

}  // namespace

Result<void> readSr28Values(Sr28Import& import) {
    auto rows = Sr28Rows::open(import.files, "NUT_DATA.txt", kValueFields, import.run);
    if (!rows) return fail(rows.error());
    ValueTaking taking{import, *rows};
    for (;;) {
        const auto more = rows->next();
        if (!more) return fail(more.error());
        if (!*more) break;
        taking.take();
    }
    import.writer.input("NUT_DATA.txt", rows->sha256());
    for (const auto& [number, nutrient] : import.codes.nutrients)
        if (!nutrient.isOurs && nutrient.values > 0)
            import.run.report.unnamedComponents[number] = nutrient.values;
    return {};
}

}  // namespace nettare
