// SPDX-License-Identifier: GPL-3.0-or-later
// The cells of an .xlsx sheet (ECMA-376 part 1, 18.3).
#include "core/exchange/cells.h"
#include "core/exchange/xlsxbook.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <charconv>

namespace slopebook::exchange {

namespace {

/// What all sheets of a workbook share.
struct XlsxShared {
    XlsxShared(const XlsxBook& book, std::vector<std::string> shared,
               std::vector<SheetFormat> cells)
        : from1904(book.from1904), texts(std::move(shared)), formats(std::move(cells)) {}
    bool from1904;
    std::vector<std::string> texts;
    std::vector<SheetFormat> formats;
};

class XlsxCells final : public XmlVisitor {
public:
    XlsxCells(const XlsxShared& shared, SheetRows& rows) : m_shared(shared), m_rows(rows) {}

    void begin(const XmlElement& element) override {
        const std::string_view name = element.name();
        if (name == "sheetData")
            m_inData = true;
        if (!m_inData)
            return;
        if (name == "row") {
            m_row = element.number("r", m_row + 1);
            m_next = 0;
            m_rows.begin(m_row);
        } else if (name == "c") {
            beginCell(element);
        } else if (name == "f") {
            m_formula = true;
        } else if (name == "rPh") {
            ++m_spoken;
        }
        m_inText = m_spoken == 0 && (name == "v" || (name == "t" && m_type == "inlineStr"));
    }

    void end(std::string_view name) override {
        m_inText = false;
        if (!m_inData)
            return;
        if (name == "rPh")
            --m_spoken;
        else if (name == "c")
            take();
        else if (name == "row")
            m_rows.end();
        else if (name == "sheetData")
            m_inData = false;
    }

    void text(std::string_view piece) override {
        if (m_inText)
            m_value += piece;
    }

private:
    void beginCell(const XmlElement& element) {
        const auto reference = element.attribute("r");
        m_column = reference ? columnOfCell(*reference).value_or(m_next) : m_next;
        m_next = m_column + 1;
        m_type = element.attribute("t").value_or("n");
        m_style = static_cast<std::size_t>(element.number("s", 0));
        m_value.clear();
        m_formula = false;
    }

    void take() {
        if (m_type == "s") {
            std::size_t index = m_shared.texts.size();
            std::from_chars(m_value.data(), m_value.data() + m_value.size(), index);
            if (!m_value.empty() && index >= m_shared.texts.size())
                m_rows.refuse(m_column, say("a text that the workbook does not hold"),
                              say("a whole one (open it where it was made and save it again)"));
            if (!m_value.empty())
                m_rows.put(m_column, m_shared.texts[index]);
        } else if (m_type == "e") {
            m_rows.putFault(m_column, m_value, errorFound(m_value));
        } else if (m_value.empty() && m_formula && m_type != "str") {
            m_rows.putFault(m_column, "=", formulaFound());
        } else if (m_type == "str" || m_type == "inlineStr") {
            m_rows.put(m_column, unescapedText(m_value));
        } else if (m_type == "d") {
            m_rows.put(m_column, isoMomentText(m_value));
        } else if (m_type == "b") {
            m_rows.put(m_column, m_value == "true" ? "1" : m_value == "false" ? "0" : m_value);
        } else if (!m_value.empty()) {
            takeNumber();
        }
    }

    void takeNumber() {
        const auto read = readNumber(m_value);
        if (!read) {
            m_rows.putFault(m_column, m_value, say("\"%1\", which is no number", m_value));
            return;
        }
        const double value = *read;
        const SheetFormat format =
            m_style < m_shared.formats.size() ? m_shared.formats[m_style] : SheetFormat::Number;
        m_rows.put(m_column, format == SheetFormat::Moment    ? momentText(value, m_shared.from1904)
                             : format == SheetFormat::Elapsed ? elapsedText(value)
                                                              : sheetNumber(value));
    }

    const XlsxShared& m_shared;
    SheetRows& m_rows;
    long m_row = 0;
    std::size_t m_column = 0, m_next = 0, m_style = 0;
    std::string m_type = "n", m_value;
    bool m_inData = false, m_inText = false, m_formula = false;
    int m_spoken = 0;
};

class XlsxReader final : public BookReader {
public:
    explicit XlsxReader(const ZipParts& zip) : m_zip(zip), m_book(xlsxBook(zip)) {}

    std::vector<SheetName> sheets() const override {
        std::vector<SheetName> names;
        for (const XlsxSheet& sheet : m_book.sheets)
            names.push_back(sheet.name);
        return names;
    }

    void read(const std::string& sheet, SheetRows& rows, const Progress& progress) override {
        const auto at = std::ranges::find_if(
            m_book.sheets, [&](const XlsxSheet& each) { return each.name.name == sheet; });
        if (at == m_book.sheets.end())
            return;
        // Styles and texts may come behind the cells in the package: they are read first all the
        // same, and once.
        if (!m_cells)
            m_cells.emplace(m_book, sharedTexts(m_zip, m_book.sharedTexts),
                            cellFormats(m_zip, m_book.styles));
        XlsxCells cells(*m_cells, rows);
        walkPart(m_zip, at->part, cells, progress);
    }

private:
    const ZipParts& m_zip;
    XlsxBook m_book;
    std::optional<XlsxShared> m_cells;
};

} // namespace

std::unique_ptr<BookReader> xlsxReader(const ZipParts& zip) {
    return std::make_unique<XlsxReader>(zip);
}

} // namespace slopebook::exchange
