#include "import/download/fdc_download.h"

#include <array>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <random>
#include <string_view>

namespace nettare {

namespace {

constexpr std::uint32_t kFirstId = 170'000;

/// A file that is written through a large buffer.
class CsvOut {
public:
    CsvOut(const std::string& folder, std::string_view name)
        : file_{std::fopen((folder + "/" + std::string{name}).c_str(), "wb")} {
        buffer_.reserve(kBuffer + 4096);
    }
    CsvOut(const CsvOut&) = delete;
    CsvOut& operator=(const CsvOut&) = delete;
    ~CsvOut() {
        if (file_ != nullptr) std::fclose(file_);
    }

    CsvOut& text(std::string_view text) {
        buffer_ += text;
        if (buffer_.size() >= kBuffer) flush();
        return *this;
    }
    /// A field between quotes, as all fields of the download are.
    CsvOut& field(std::string_view content) {
        if (!first_) buffer_ += ',';
        first_ = false;
        buffer_ += '"';
        buffer_ += content;
        buffer_ += '"';
        return *this;
    }
    template <class Number>
    CsvOut& number(Number value) {
        std::array<char, 32> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
        return field({digits.data(), static_cast<std::size_t>(end - digits.data())});
    }
    void endRow() {
        first_ = true;
        text("\n");
    }
    /// Writes what is left; false where anything failed.
    bool close() {
        flush();
        const bool closed = file_ != nullptr && std::fclose(file_) == 0;
        file_ = nullptr;
        return closed && good_;
    }

private:
    static constexpr std::size_t kBuffer = 1U << 20U;

    void flush() {
        const bool written = file_ != nullptr && std::fwrite(buffer_.data(), 1, buffer_.size(),
                                                             file_) == buffer_.size();
        good_ = good_ && written;
        buffer_.clear();
    }

    std::FILE* file_;
    std::string buffer_;
    bool first_ = true, good_ = true;
};

struct Nutrient {
    std::uint32_t id;
    std::string_view name, unit, number;
};

// Ids, names and numbers as in FoodData Central, from memory.
constexpr std::array<Nutrient, 30> kNutrients{{
    {1003, "Protein", "G", "203"},
    {1004, "Total lipid (fat)", "G", "204"},
    {1005, "Carbohydrate, by difference", "G", "205"},
    {1008, "Energy", "KCAL", "208"},
    {1051, "Water", "G", "255"},
    {1079, "Fiber, total dietary", "G", "291"},
    {1087, "Calcium, Ca", "MG", "301"},
    {1089, "Iron, Fe", "MG", "303"},
    {1090, "Magnesium, Mg", "MG", "304"},
    {1091, "Phosphorus, P", "MG", "305"},
    {1092, "Potassium, K", "MG", "306"},
    {1093, "Sodium, Na", "MG", "307"},
    {1095, "Zinc, Zn", "MG", "309"},
    {1098, "Copper, Cu", "MG", "312"},
    {1104, "Vitamin A, IU", "IU", "318"},
    {1110, "Vitamin D (D2 + D3), International Units", "IU", "324"},
    {1162, "Vitamin C, total ascorbic acid", "MG", "401"},
    {1165, "Thiamin", "MG", "404"},
    {1166, "Riboflavin", "MG", "405"},
    {1167, "Niacin", "MG", "406"},
    {1175, "Vitamin B-6", "MG", "415"},
    {1177, "Folate, total", "UG", "417"},
    {1178, "Vitamin B-12", "UG", "418"},
    {1235, "Sugars, added", "G", "539"},
    {1253, "Cholesterol", "MG", "601"},
    {1257, "Fatty acids, total trans", "G", "605"},
    {1258, "Fatty acids, total saturated", "G", "606"},
    {1292, "Fatty acids, total monounsaturated", "G", "645"},
    {1293, "Fatty acids, total polyunsaturated", "G", "646"},
    {2000, "Total Sugars", "G", "269"},
}};

constexpr std::array<std::string_view, 24> kWords{
    "barley", "leek",   "fennel", "prawn",  "lentil", "yogurt", "apple",  "oat",
    "rye",    "carrot", "salmon", "turkey", "cheese", "almond", "tomato", "basil",
    "squash", "rice",   "bean",   "cocoa",  "honey",  "pepper", "onion",  "quince"};
constexpr std::array<std::string_view, 6> kKinds{"raw", "soup", "bar", "spread", "drink", "mix"};

bool isBranded(std::size_t food) {
    return food % 10 != 0;
}

std::string brandOf(std::size_t food) {
    return "Maker " + std::to_string(food % 5000);
}

bool writeNutrients(const std::string& folder) {
    CsvOut out{folder, "nutrient.csv"};
    out.text("\"id\",\"name\",\"unit_name\",\"nutrient_nbr\",\"rank\"\n");
    for (const Nutrient& nutrient : kNutrients) {
        out.number(nutrient.id).field(nutrient.name).field(nutrient.unit).field(nutrient.number);
        out.field("1").endRow();
    }
    return out.close();
}

bool writeLists(const std::string& folder) {
    CsvOut categories{folder, "food_category.csv"};
    categories.text(
        "\"id\",\"code\",\"description\"\n\"1\",\"0100\",\"Dairy and Egg Products\"\n"
        "\"11\",\"1100\",\"Vegetables and Vegetable Products\"\n");
    CsvOut units{folder, "measure_unit.csv"};
    units.text(
        "\"id\",\"name\"\n\"1000\",\"cup\"\n\"1001\",\"tablespoon\"\n"
        "\"9999\",\"undetermined\"\n");
    CsvOut derivations{folder, "food_nutrient_derivation.csv"};
    derivations.text(
        "\"id\",\"code\",\"description\"\n\"1\",\"A\",\"Analytical\"\n\"70\",\"LCCS\","
        "\"Calculated from value per serving size measure\"\n");
    const bool all = categories.close() && units.close();
    return derivations.close() && all;
}

bool writeFoods(const std::string& folder, std::size_t foods, std::mt19937& random) {
    CsvOut out{folder, "food.csv"};
    CsvOut brands{folder, "branded_food.csv"};
    out.text(
        "\"fdc_id\",\"data_type\",\"description\",\"food_category_id\",\"publication_date\"\n");
    brands.text(
        "\"fdc_id\",\"brand_owner\",\"brand_name\",\"ingredients\",\"serving_size\","
        "\"serving_size_unit\",\"household_serving_fulltext\",\"branded_food_category\"\n");
    for (std::size_t food = 0; food < foods; ++food) {
        const auto id = kFirstId + static_cast<std::uint32_t>(food);
        std::string name{kWords[random() % kWords.size()]};
        for (const auto& list :
             {kWords[random() % kWords.size()], kKinds[random() % kKinds.size()]})
            (name += ' ') += list;
        name += " no. " + std::to_string(food);
        out.number(id).field(isBranded(food) ? "branded_food" : "sr_legacy_food").field(name);
        out.field(isBranded(food) ? "" : "11").field("2019-04-01").endRow();
        if (!isBranded(food)) continue;
        brands.number(id).field(brandOf(food)).field("");
        brands.field("BARLEY, WATER, \"\"SEA\"\" SALT, OATS, LEEK POWDER, APPLE JUICE.");
        brands.field("30.0").field("g").field("1 cup").field("Soups").endRow();
    }
    const bool written = out.close();
    return brands.close() && written;
}

bool writeValues(const std::string& folder, const DownloadSize& size, std::mt19937& random) {
    CsvOut out{folder, "food_nutrient.csv"};
    out.text(
        "\"id\",\"fdc_id\",\"nutrient_id\",\"amount\",\"data_points\",\"derivation_id\","
        "\"min\",\"max\",\"median\",\"footnote\",\"min_year_acquired\"\n");
    std::size_t row = 0;
    for (std::size_t food = 0; food < size.foods; ++food) {
        const std::size_t end = size.values * (food + 1) / size.foods;
        for (std::size_t place = 0; row < end; ++row, ++place) {
            const Nutrient& nutrient = kNutrients[place % kNutrients.size()];
            out.number(row + 1).number(kFirstId + static_cast<std::uint32_t>(food));
            out.number(nutrient.id).number(static_cast<double>(random() % 10'000) / 100);
            out.field("").field("70").field("").field("").field("").field("").field("");
            out.endRow();
        }
    }
    return out.close();
}

bool writePortions(const std::string& folder, std::size_t foods) {
    CsvOut out{folder, "food_portion.csv"};
    out.text(
        "\"id\",\"fdc_id\",\"seq_num\",\"amount\",\"measure_unit_id\","
        "\"portion_description\",\"modifier\",\"gram_weight\",\"data_points\"\n");
    for (std::size_t food = 0; food < foods; food += 10) {
        out.number(food + 1).number(kFirstId + static_cast<std::uint32_t>(food)).field("1");
        out.field("1.0").field("9999").field("").field("cup, chopped").field("128.0").field("");
        out.endRow();
    }
    return out.close();
}

}  // namespace

bool writeFdcDownload(const std::string& folder, const DownloadSize& size) {
    std::mt19937 random{20261126};
    const bool lists = writeNutrients(folder) && writeLists(folder);
    return lists && writeFoods(folder, size.foods, random) && writeValues(folder, size, random) &&
           writePortions(folder, size.foods);
}

}  // namespace nettare
