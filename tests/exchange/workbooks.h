// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks written part by part, as no program of ours writes them.
#pragma once

#include <zip.h>

#include <filesystem>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace slopebook::tests {

using Parts = std::vector<std::pair<std::string, std::string>>;

/// password: locks the parts.
inline void writeZip(const std::filesystem::path& file, const Parts& parts,
                     const char* password = nullptr) {
    int why = 0;
    zip_t* zip = zip_open(file.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &why);
    for (const auto& [name, bytes] : parts) {
        zip_source_t* source = zip_source_buffer(zip, bytes.data(), bytes.size(), 0);
        const auto at = zip_file_add(zip, name.c_str(), source, ZIP_FL_ENC_UTF_8);
        if (at < 0)
            throw std::runtime_error("a part cannot be written");
        if (password)
            zip_file_set_encryption(zip, static_cast<zip_uint64_t>(at), ZIP_EM_AES_256, password);
    }
    if (zip_close(zip) != 0)
        throw std::runtime_error("a workbook cannot be written");
}

struct XlsxText {
    std::string sheetData = {};   ///< <row>s
    std::string sharedTexts = {}; ///< <si>s
    std::string formats = {};     ///< <numFmt>s
    std::string styles = {};      ///< <xf>s, by their index
    std::string workbookPr = {};  ///< attributes
    std::string sheets = R"(<sheet name="Day" sheetId="1" r:id="rId1"/>)";
    std::string target = "worksheets/sheet1.xml";
    std::string part = "xl/worksheets/sheet1.xml";
    Parts more = {};
    std::string relations = {};
};

inline Parts xlsxParts(const XlsxText& text) {
    const std::string head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    const std::string main =
        " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
        " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"";
    const std::string type = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
    const std::string relations =
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">";
    Parts parts{
        {"_rels/.rels", head + relations + "<Relationship Id=\"a\" Type=\"" + type +
                            "officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"},
        {"xl/workbook.xml", head + "<workbook" + main + "><workbookPr " + text.workbookPr +
                                "/><sheets>" + text.sheets + "</sheets></workbook>"},
        {"xl/_rels/workbook.xml.rels",
         head + relations + "<Relationship Id=\"rId1\" Type=\"" + type + "worksheet\" Target=\"" +
             text.target + "\"/>" + text.relations + "<Relationship Id=\"s\" Type=\"" + type +
             "sharedStrings\" Target=\"sharedStrings.xml\"/><Relationship Id=\"f\" Type=\"" + type +
             "styles\" Target=\"styles.xml\"/></Relationships>"},
        {text.part,
         head + "<worksheet" + main + "><sheetData>" + text.sheetData + "</sheetData></worksheet>"},
        {"xl/sharedStrings.xml", head + "<sst" + main + ">" + text.sharedTexts + "</sst>"},
        {"xl/styles.xml", head + "<styleSheet" + main + "><numFmts>" + text.formats +
                              "</numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs>"
                              "<cellXfs>" +
                              text.styles + "</cellXfs></styleSheet>"},
    };
    parts.insert(parts.end(), text.more.begin(), text.more.end());
    return parts;
}

/// tables: <table:table>s.
inline Parts odsParts(const std::string& tables) {
    const std::string urn = "urn:oasis:names:tc:opendocument:xmlns:";
    return {{"mimetype", "application/vnd.oasis.opendocument.spreadsheet"},
            {"content.xml",
             "<?xml version=\"1.0\" encoding=\"UTF-8\"?><office:document-content xmlns:office=\"" +
                 urn + "office:1.0\" xmlns:table=\"" + urn + "table:1.0\" xmlns:text=\"" + urn +
                 "text:1.0\" xmlns:style=\"" + urn +
                 "style:1.0\" xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:"
                 "xmlns:calcext:1.0\"><office:automatic-styles><style:style style:name=\"ta2\" "
                 "style:family=\"table\"><style:table-properties table:display=\"false\"/>"
                 "</style:style></office:automatic-styles><office:body><office:spreadsheet>" +
                 tables + "</office:spreadsheet></office:body></office:document-content>"}};
}

} // namespace slopebook::tests
