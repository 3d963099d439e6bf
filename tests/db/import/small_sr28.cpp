#include "small_sr28.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <vector>

namespace {

void writeFile(const std::string& path, std::string_view content) {
    std::ofstream{path, std::ios::binary} << content;
}

}  // namespace

SmallSr28::SmallSr28() {
    std::filesystem::create_directory(folder());
    file("FD_GROUP.txt",
         "~0100~^~Dairy and Egg Products~\r\n~1100~^~Vegetables and Vegetable "
         "Products~\r\n~1900~^~Sweets~\r\n");
    file("SRC_CD.txt", "~1~^~Analytical or derived from analytical~\r\n~4~^~Calculated~\r\n");
    file("DERIV_CD.txt", "~A~^~Analytical data~\r\n~NC~^~Calculated from others~\r\n");
    file("NUTR_DEF.txt",
         "~203~^~g~^~PROCNT~^~Protein~^~2~^~600~\r\n"
         "~208~^~kcal~^~ENERC_KCAL~^~Energy~^~0~^~300~\r\n"
         "~324~^~IU~^~VITD~^~Vitamin D~^~0~^~8750~\r\n"
         "~328~^~\xB5g~^~VITD~^~Vitamin D (D2 + D3)~^~1~^~8700~\r\n"
         "~209~^~g~^~STARCH~^~Starch~^~2~^~2200~\r\n"
         "~573~^~mg~^~~^~Vitamin E, added~^~2~^~7920~\r\n");
    file("FOOD_DES.txt",
         "~90001~^~1100~^~Moonroots, raw~^~MOONROOTS~^~lunar radish, night root~^~~^~Y~^~Tops "
         "and peel~^12^~Luna rapum~^6.25^2.44^8.37^3.57\r\n"
         "~90002~^~1100~^~Moonroots, boiled~^~MOONROOTS,BLD~^~~^~~^~~^~~^0^~~^0.00^^^\r\n"
         "~90003~^~0100~^~Cloud egg, whole, raw~^~EGG~^~~^~~^~~^~Shell~^11^~~^6.25^4.36^9.02^3."
         "68\r\n"
         "~90004~^~1900~^~\x91Starbar\x92, caf\xE9 style~^~BAR~^~~^~Moon Works~^~~^~~^^~~^^^^\r\n"
         "~90005~^~1100~^~Moonroot fritters, fried~^~FRITTERS~^~~^~~^~~^~~^0^~~^^^^\r\n"
         "~90006~^~1100~^~Star kale, raw~^~KALE~^~~^~~^~~^~~^0^~~^6.25^2.44^8.37^3.57\r\n");
    const std::string rest = "^~~^~~^^^^^^^~~^05/2016^\r\n";
    file("NUT_DATA.txt",
         "~90001~^~203~^1.25^9^0.040^~1~^~A~" + rest + "~90001~^~208~^37^0^^~4~^~NC~" + rest +
             "~90001~^~209~^5.10^3^^~1~^~A~" + rest + "~90002~^~208~^33^0^^~4~^~NC~" + rest +
             "~90003~^~203~^12.60^12^0.120^~1~^~A~" + rest + "~90003~^~324~^82^0^^~4~^~~" + rest +
             "~90003~^~328~^2.0^4^^~1~^~A~" + rest + "~90004~^~573~^0.00^0^^~4~^~~" + rest);
    file("WEIGHT.txt",
         "~90001~^1^1^~cup, sliced~^116^22^8.5\r\n~90001~^2^1^~large (3-1/4\" dia)~^150^^\r\n"
         "~90001~^3^0.5^~tablespoon chopped~^4.2^^\r\n~90003~^1^1^~large~^50^30^2.5\r\n"
         "~90004~^1^2^~caf\xE9 cookies~^61.5^^\r\n");
}

void SmallSr28::file(const std::string& name, std::string_view content) {
    contents_[name] = content;
    writeFile(folder() + "/" + name, content);
}

void SmallSr28::addRow(const std::string& name, std::string_view row) {
    file(name, contents_[name] + std::string{row} + "\r\n");
}

void SmallSr28::remove(const std::string& name) {
    std::filesystem::remove(folder() + "/" + name);
}

nettare::ImportRequest SmallSr28::request() const {
    nettare::ImportRequest request;
    request.path = folder();
    request.folder = tables();
    return request;
}

std::string SmallSr28::listed() const {
    std::vector<std::string> names;
    std::error_code absent;
    for (const auto& entry : std::filesystem::directory_iterator{tables(), absent})
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    std::string text;
    for (const std::string& name : names) text += name + "\n";
    return text;
}
