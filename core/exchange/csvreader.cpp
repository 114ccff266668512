// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csvreader.h"

#include "core/exchange/sheet.h"
#include "core/exchange/utf8watch.h"
#include "core/model/phrases/exchange.h"

#include <csv.h>

#include <cstdlib>
#include <cstring>
#include <exception>
#include <string_view>

namespace slopebook::exchange {

namespace {

constexpr std::size_t fieldLimit = 1'000'000; // bytes
constexpr std::size_t slack = 1 << 17;        // what may be asked for beyond it

// libcsv asks for the room of one field at a time: to refuse it is to bound the field, and with it
// what a quote that never closes may swallow.
void* boundedRealloc(void* held, std::size_t size) {
    return size > fieldLimit + slack ? nullptr : std::realloc(held, size);
}

// A parser of libcsv's that is freed again.
struct Parser {
    csv_parser held{};
    explicit Parser(char delimiter) {
        if (csv_init(&held, CSV_STRICT | CSV_STRICT_FINI) != 0)
            throw LogError(LogError::Kind::Unavailable,
                           say("The CSV reader could not be started."));
        csv_set_delim(&held, static_cast<unsigned char>(delimiter));
        csv_set_realloc_func(&held, boundedRealloc);
        csv_set_blk_size(&held, 4096);
    }
    ~Parser() { csv_free(&held); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
};

class Reader {
public:
    Reader(std::string file, char delimiter, const std::function<void(const CsvRow&)>& row)
        : m_file(std::move(file)), m_visit(row), m_parser(delimiter) {}

    void read(const Source& source, Encoding encoding, const Progress& progress) {
        bool first = true;
        readPieces(
            source, encoding,
            [&](std::string_view text) {
                if (std::exchange(first, false))
                    refuseMark(text);
                takePiece(text);
            },
            progress);
        finish();
    }

private:
    [[noreturn]] void refuse(long line, Phrase found, Phrase expected) const {
        throw BadInput({.file = m_file, .line = line, .column = {}}, say(found), say(expected));
    }

    void refuseMark(std::string_view text) const {
        if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
            refuse(1, "UTF-16 text", "UTF-8 (save the file as CSV UTF-8)");
    }

    // Hands libcsv one line of the file at a time: it does not count lines itself.
    void takePiece(std::string_view text) {
        std::size_t begin = 0;
        for (std::size_t i = 0; i < text.size(); ++i) {
            const auto byte = static_cast<unsigned char>(text[i]);
            if (m_afterCr && byte != '\n')
                endLine(text, begin, i);
            m_afterCr = byte == '\r';
            watch(byte);
            if (byte == '\n')
                endLine(text, begin, i + 1);
        }
        parse(text.substr(begin));
    }

    void endLine(std::string_view text, std::size_t& begin, std::size_t end) {
        parse(text.substr(begin, end - begin));
        begin = end;
        ++m_line;
    }

    void watch(unsigned char byte) {
        if (byte == 0)
            refuse(m_line, "a NUL byte", "plain text in UTF-8 (this looks like UTF-16 or no text)");
        if (!m_utf8.take(byte))
            refuse(m_line, "bytes that are not UTF-8", "UTF-8 (save the file as CSV UTF-8)");
        if (!m_inRow && byte != '\r' && byte != '\n' && byte != ' ' && byte != '\t') {
            m_inRow = true;
            m_row.line = m_line;
        }
    }

    void parse(std::string_view text) {
        if (text.empty())
            return;
        const std::size_t taken =
            csv_parse(&m_parser.held, text.data(), text.size(), onField, onRow, this);
        if (m_failure)
            std::rethrow_exception(m_failure);
        if (taken != text.size())
            refuseParse();
    }

    void finish() {
        if (m_utf8.midCharacter())
            refuse(m_line, "a character cut in half at the end", "UTF-8, whole");
        const int failed = csv_fini(&m_parser.held, onField, onRow, this);
        if (m_failure)
            std::rethrow_exception(m_failure);
        if (failed)
            refuse(m_row.line, "a quote that never closes", "a closing quote (\") for the cell");
    }

    [[noreturn]] void refuseParse() {
        if (csv_error(&m_parser.held) == CSV_EPARSE)
            refuse(m_row.line, "a quote (\") in the middle of a cell",
                   "the whole cell in quotes, and a quote inside it written twice");
        refuse(m_row.line, "a cell of more than 1,000,000 bytes",
               "shorter cells (is there a quote that never closes?)");
    }

    // What libcsv calls back must not throw through it: the failure waits until it has returned.
    template <class Work>
    void keepFailure(const Work& work) noexcept {
        if (m_failure)
            return;
        try {
            work();
        } catch (...) {
            m_failure = std::current_exception();
        }
    }

    static void onField(void* data, std::size_t size, void* self) {
        auto& reader = *static_cast<Reader*>(self);
        reader.keepFailure([&] {
            if (size > fieldLimit)
                reader.refuse(reader.m_row.line, "a cell of more than 1,000,000 bytes",
                              "shorter cells (is there a quote that never closes?)");
            if (reader.m_fields == reader.m_row.fields.size())
                reader.m_row.fields.emplace_back();
            reader.m_row.fields[reader.m_fields++].assign(static_cast<const char*>(data), size);
        });
    }

    static void onRow(int, void* self) {
        auto& reader = *static_cast<Reader*>(self);
        reader.keepFailure([&] {
            reader.m_row.fields.resize(reader.m_fields);
            reader.m_fields = 0;
            reader.m_inRow = false;
            reader.m_visit(reader.m_row);
        });
    }

    std::string m_file;
    const std::function<void(const CsvRow&)>& m_visit;
    Parser m_parser;
    Utf8Watch m_utf8;
    CsvRow m_row; // its strings are used again from row to row
    std::size_t m_fields = 0;
    long m_line = 1;
    bool m_inRow = false;
    bool m_afterCr = false;
    std::exception_ptr m_failure;
};

} // namespace

void readCsv(const std::filesystem::path& file, char delimiter,
             const std::function<void(const CsvRow&)>& row, const Progress& progress) {
    readCsv(Source{.file = file, .text = {}}, Encoding::Utf8, delimiter, row, progress);
}

void readCsv(const Source& source, Encoding encoding, char delimiter,
             const std::function<void(const CsvRow&)>& row, const Progress& progress) {
    if (!source.file.empty() && isWorkbook(source.file))
        readSheet(source.file, source.sheet, row, progress);
    else
        Reader(source.name(), delimiter, row).read(source, encoding, progress);
}

} // namespace slopebook::exchange
