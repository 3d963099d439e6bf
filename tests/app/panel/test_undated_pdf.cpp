#include <catch2/catch.hpp>

#include "app/panel/undated_pdf.h"

#include <string_view>

using namespace nettare;

namespace {

/// A file of two objects, as far as offsets go: one before and one behind the date.
std::string datedPdf(std::string_view date) {
    std::string pdf = "%PDF-1.4\n1 0 obj\n<<\n/Title (x)\n" + std::string{date} + ">>\nendobj\n";
    const std::size_t second = pdf.size();
    pdf += "2 0 obj\nendobj\n";
    const std::size_t table = pdf.size();
    const std::string offset = std::to_string(second);
    pdf += "xref\n0 3\n0000000000 65535 f \n0000000009 00000 n \n" +
           std::string(10 - offset.size(), '0') + offset + " 00000 n \n";
    return pdf + "trailer\n<<\n/Size 3\n>>\nstartxref\n" + std::to_string(table) + "\n%%EOF\n";
}

}  // namespace

TEST_CASE("a PDF loses its date and its offsets follow", "[panel]") {
    const std::string undated = datedPdf("");
    CHECK(undatedPdf(datedPdf("/CreationDate (D:20261125155715Z)\n")) == undated);
    CHECK(undatedPdf(datedPdf("/CreationDate (D:20261126005738+09'00')\n")) == undated);
}

TEST_CASE("a PDF of another make comes back as it was", "[panel]") {
    const std::string undated = datedPdf("");
    CHECK(undatedPdf(undated) == undated);
    CHECK(undatedPdf("").empty());
    const std::string noTable = "%PDF-1.4\n/CreationDate (D:20261125155715Z)\nstartxref\n7\n";
    CHECK(undatedPdf(noTable) == noTable);
    const std::string noEnd = "/CreationDate (D:2026)\nxref\n0 1\n";
    CHECK(undatedPdf(noEnd) == noEnd);
    const std::string open = "/CreationDate (D:2026";
    CHECK(undatedPdf(open) == open);
}
