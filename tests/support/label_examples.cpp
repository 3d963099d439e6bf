#include "label_examples.h"

#include <algorithm>

namespace nettare {

using enum Component;

LabelFacts usBiscuit() {
    LabelFacts label;
    label.servingSize = Decimal{30, 0};
    label.householdAmount = *readAmount("1");
    label.householdUnit = "biscuit";
    label.amounts = {{ENERC_KCAL, "140"}, {FAT, "6"},   {FASAT, "2.5"}, {FATRN, "0"},
                     {CHOLE, "10"},       {NA, "95"},   {CHOCDF, "20"}, {FIBTG, "1"},
                     {SUGAR, "7"},        {SUGAD, "7"}, {PROCNT, "2"},  {VITD, "0"},
                     {CA, "10"},          {FE, "1"},    {K, "60"}};
    return label;
}

LabelFacts euBiscuit() {
    LabelFacts label;
    label.rules = LabelRules::Eu;
    label.per = LabelPer::HundredGrams;
    label.amounts = {{ENERC_KJ, "1870"}, {ENERC_KCAL, "445"},       {FAT, "16"},
                     {FASAT, "7.1"},     {LabelOnly::CHOAVL, "66"}, {SUGAR, "22"},
                     {FIBTG, "3.5"},     {PROCNT, "7.5"},           {LabelOnly::NACL, "0.80"}};
    return label;
}

LabelFacts withLine(LabelFacts label, const LabelLine& line, const std::string& printed) {
    const auto found = std::ranges::find(label.amounts, line, &LabelAmount::line);
    if (found != label.amounts.end())
        found->printed = printed;
    else
        label.amounts.push_back({line, printed});
    return label;
}

LabelFacts withoutLine(LabelFacts label, const LabelLine& line) {
    std::erase_if(label.amounts, [&](const LabelAmount& amount) { return amount.line == line; });
    return label;
}

LabelFacts withServing(LabelFacts label, const char* size, const char* amount, const char* unit) {
    label.servingSize = Decimal::read(size);
    label.householdAmount = *readAmount(amount);
    label.householdUnit = unit;
    return label;
}

}  // namespace nettare
