// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of an .ods workbook (OASIS Open Document Format 1.3, part 3, chapters 9 and 19).
#include "core/exchange/cells.h"
#include "core/exchange/sheetparts.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace slopebook::exchange {

namespace {

const std::string content = "content.xml";
constexpr long mostRows = 2'000'000;
constexpr std::size_t mostRepeated = 500; // cells that say something

long countOf(const XmlElement& element, std::string_view name) {
    return std::max(1L, element.number(name, 1));
}

// Names of tables, in their order; hidden by the style that they have.
struct OdsNames final : XmlVisitor {
    std::vector<SheetName> names;
    std::set<std::string, std::less<>> hiddenStyles;
    std::string style;
    int tables = 0;

    void begin(const XmlElement& element) override {
        if (element.name() == "style")
            style = element.attribute("name", ":style:").value_or("");
        if (element.name() == "table-properties" &&
            element.attribute("display", ":table:") == "false")
            hiddenStyles.insert(style);
        if (element.name() != "table" || tables++ > 0)
            return;
        names.push_back(
            {.name = std::string(element.attribute("name", ":table:").value_or("")),
             .hidden = hiddenStyles.contains(element.attribute("style-name").value_or(""))});
    }
    void end(std::string_view name) override { tables -= name == "table"; }
};

// "PT10H30M00S" as "10:30:00"; as it is where it is written otherwise.
std::string durationText(std::string_view iso) {
    std::string_view left = iso;
    if (!left.starts_with("PT"))
        return std::string(iso);
    left.remove_prefix(2);
    double seconds = 0;
    for (const auto& [unit, length] : {std::pair{'H', 3600.0}, {'M', 60.0}, {'S', 1.0}}) {
        double value = 0;
        const auto read = std::from_chars(left.data(), left.data() + left.size(), value);
        if (read.ec != std::errc{} || read.ptr == left.data() + left.size() || *read.ptr != unit)
            continue;
        seconds += value * length;
        left.remove_prefix(static_cast<std::size_t>(read.ptr - left.data()) + 1);
    }
    return left.empty() ? elapsedText(seconds / 86400) : std::string(iso);
}

class OdsCells final : public XmlVisitor {
public:
    OdsCells(std::string_view sheet, SheetRows& rows) : m_sheet(sheet), m_rows(rows) {}

    void begin(const XmlElement& element) override {
        ++m_depth;
        const std::string_view name = element.name();
        if (name == "table" && m_tableDepth == 0) {
            if (element.attribute("name", ":table:") == m_sheet && !m_found) {
                m_tableDepth = m_depth;
                m_found = true;
            }
        } else if (m_tableDepth == 0) {
            return;
        } else if (m_cellDepth > 0) {
            beginWithin(element);
        } else if (name == "table-row") {
            m_repeatRow = countOf(element, "number-rows-repeated");
            m_next = 0;
            m_put.clear();
        } else if (name == "table-cell" || name == "covered-table-cell") {
            beginCell(element);
        }
    }

    void end(std::string_view name) override {
        if (m_depth == m_cellDepth) {
            m_cellDepth = 0;
            take();
        } else if (m_cellDepth > 0) {
            if (m_depth == m_paragraphDepth)
                m_paragraphDepth = 0;
        } else if (m_tableDepth > 0 && name == "table-row") {
            handOver();
        } else if (m_depth == m_tableDepth) {
            m_tableDepth = 0;
        }
        --m_depth;
    }

    void text(std::string_view piece) override {
        if (m_paragraphDepth > 0)
            m_text += piece;
    }

private:
    struct Put {
        std::size_t column;
        std::string text;
        Words fault;
    };

    void beginCell(const XmlElement& element) {
        m_cellDepth = m_depth;
        m_paragraphDepth = 0;
        m_paragraphs = 0;
        m_text.clear();
        m_repeat = static_cast<std::size_t>(countOf(element, "number-columns-repeated"));
        m_formula = element.attribute("formula", ":table:").has_value();
        const auto type = element.attribute("value-type", ":office:");
        m_isError = element.attribute("value-type", ":calcext:") == "error";
        m_type = type.value_or("");
        m_value = element
                      .attribute(m_type == "date"      ? "date-value"
                                 : m_type == "time"    ? "time-value"
                                 : m_type == "boolean" ? "boolean-value"
                                 : m_type == "string"  ? "string-value"
                                                       : "value",
                                 ":office:")
                      .value_or("");
    }

    // Only paragraphs of the cell itself: a note or a drawing in it has some of its own.
    void beginWithin(const XmlElement& element) {
        const std::string_view name = element.name();
        if (name == "p" && m_depth == m_cellDepth + 1) {
            m_paragraphDepth = m_depth;
            if (m_paragraphs++ > 0)
                m_text += '\n';
        } else if (m_paragraphDepth > 0 && name == "s") {
            m_text.append(static_cast<std::size_t>(std::min(countOf(element, "c"), 1000L)), ' ');
        } else if (m_paragraphDepth > 0 && name == "tab") {
            m_text += '\t';
        } else if (m_paragraphDepth > 0 && name == "line-break") {
            m_text += '\n';
        }
    }

    void take() {
        const std::size_t column = m_next;
        m_next += m_repeat;
        Words fault;
        std::string said = cellText(fault);
        if (said.empty())
            return;
        if (m_repeat > mostRepeated)
            m_rows.refuse(column, say("a cell beyond the 500th column"), say("at most 500"));
        for (std::size_t i = 0; i < m_repeat; ++i)
            m_put.push_back({column + i, said, fault});
    }

    std::string cellText(Words& fault) const {
        if (m_isError) {
            fault = errorFound(m_text);
            return m_text.empty() ? "=" : m_text;
        }
        if (m_formula && m_type.empty() && m_text.empty()) {
            fault = formulaFound();
            return "=";
        }
        if (m_type == "float" || m_type == "percentage" || m_type == "currency") {
            if (const auto value = readNumber(m_value))
                return sheetNumber(*value);
            fault = say("\"%1\", which is no number", m_value);
            return m_value.empty() ? "=" : m_value;
        }
        if (m_type == "date")
            return isoMomentText(m_value);
        if (m_type == "time")
            return durationText(m_value);
        if (m_type == "boolean")
            return m_value == "true" ? "1" : "0";
        return m_value.empty() ? m_text : m_value;
    }

    void handOver() {
        const long last = m_row + m_repeatRow;
        if (m_put.empty()) {
            m_row = last;
            return;
        }
        while (m_row < last) {
            m_rows.begin(++m_row);
            if (m_row > mostRows)
                m_rows.refuse(0, say("more than 2,000,000 rows"), say("fewer"));
            for (const Put& put : m_put)
                if (put.fault.empty())
                    m_rows.put(put.column, put.text);
                else
                    m_rows.putFault(put.column, put.text, put.fault);
            m_rows.end();
        }
    }

    std::string m_sheet;
    SheetRows& m_rows;
    int m_depth = 0, m_tableDepth = 0, m_cellDepth = 0, m_paragraphDepth = 0, m_paragraphs = 0;
    bool m_found = false, m_formula = false, m_isError = false;
    long m_row = 0, m_repeatRow = 1;
    std::size_t m_next = 0, m_repeat = 1;
    std::string m_type, m_value, m_text;
    std::vector<Put> m_put;
};

class OdsReader final : public BookReader {
public:
    explicit OdsReader(const ZipParts& zip) : m_zip(zip) {}

    std::vector<SheetName> sheets() const override {
        OdsNames names;
        walkPart(m_zip, content, names);
        return std::move(names.names);
    }

    void read(const std::string& sheet, SheetRows& rows, const Progress& progress) override {
        OdsCells cells(sheet, rows);
        walkPart(m_zip, content, cells, progress);
    }

private:
    const ZipParts& m_zip;
};

} // namespace

std::unique_ptr<BookReader> odsReader(const ZipParts& zip) {
    return std::make_unique<OdsReader>(zip);
}

} // namespace slopebook::exchange
