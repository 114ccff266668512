// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/source.h"

#include "core/exchange/utf8watch.h"
#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>
#include <fstream>

namespace slopebook::exchange {

namespace {

constexpr std::size_t sourcePiece = 1 << 16;

constexpr std::array<std::pair<Encoding, std::string_view>, 4> encodingWords{
    {{Encoding::Utf8, "utf-8"},
     {Encoding::Utf16Little, "utf-16le"},
     {Encoding::Utf16Big, "utf-16be"},
     {Encoding::Latin1, "latin-1"}}};

// What Windows-1252 puts where Latin-1 has control characters (Unicode's table CP1252.TXT); 0 where
// it has nothing.
constexpr std::array<char16_t, 32> windows{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

void append(std::string& text, char32_t c) {
    const auto put = [&](char32_t bits) { text += static_cast<char>(bits); };
    if (c < 0x80) {
        put(c);
    } else if (c < 0x800) {
        put(0xC0 | (c >> 6));
        put(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        put(0xE0 | (c >> 12));
        put(0x80 | ((c >> 6) & 0x3F));
        put(0x80 | (c & 0x3F));
    } else {
        put(0xF0 | (c >> 18));
        put(0x80 | ((c >> 12) & 0x3F));
        put(0x80 | ((c >> 6) & 0x3F));
        put(0x80 | (c & 0x3F));
    }
}

// The bytes of a source, a piece at a time.
void rawPieces(const Source& source, const std::function<void(std::string_view)>& piece,
               const Progress& progress) {
    if (source.file.empty()) {
        piece(source.text);
        return;
    }
    std::error_code ignored;
    const auto total = static_cast<std::int64_t>(std::filesystem::file_size(source.file, ignored));
    std::ifstream in(source.file, std::ios::binary);
    std::string bytes(sourcePiece, '\0');
    std::int64_t done = 0;
    while (in) {
        in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        piece(std::string_view(bytes.data(), static_cast<std::size_t>(in.gcount())));
        done += in.gcount();
        tell(progress, done, std::max(total, done));
    }
    if (!in.eof())
        throw LogError(LogError::Kind::Unavailable, say("\"%1\" cannot be read.", source.name()));
}

// UTF-16 to UTF-8 across the borders of pieces.
class Utf16 {
public:
    Utf16(bool bigEndian, std::string name) : m_big(bigEndian), m_name(std::move(name)) {}

    void take(std::string_view bytes, std::string& out) {
        for (const char byte : bytes) {
            const unsigned b = static_cast<unsigned char>(byte);
            if (!m_half) {
                m_half = b;
                continue;
            }
            const unsigned first = *m_half;
            m_half.reset();
            unit(static_cast<char16_t>(m_big ? first << 8 | b : b << 8 | first), out);
        }
    }
    void finish() const {
        if (m_half || m_high)
            refuse();
    }

private:
    void unit(char16_t u, std::string& out) {
        m_lines += u == u'\n';
        const bool low = u >= 0xDC00 && u < 0xE000;
        if (m_high.has_value() != low)
            refuse();
        if (low) {
            append(out, 0x10000 + ((static_cast<char32_t>(*m_high) - 0xD800) << 10) +
                            (static_cast<char32_t>(u) - 0xDC00));
            m_high.reset();
        } else if (u >= 0xD800 && u < 0xDC00) {
            m_high = u;
        } else {
            append(out, u);
        }
    }
    [[noreturn]] void refuse() const {
        throw BadInput({.file = m_name, .line = m_lines + 1, .column = {}},
                       say("UTF-16 text that is cut in half"),
                       say("whole text (save the file as CSV UTF-8)"));
    }
    bool m_big;
    std::string m_name;
    long m_lines = 0;
    std::optional<unsigned> m_half;
    std::optional<char16_t> m_high;
};

std::optional<Encoding> byMark(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE"))
        return Encoding::Utf16Little;
    if (bytes.starts_with("\xFE\xFF"))
        return Encoding::Utf16Big;
    if (bytes.starts_with("\xEF\xBB\xBF"))
        return Encoding::Utf8;
    return {};
}

// Latin letters in UTF-16 have a NUL as every second byte.
std::optional<Encoding> byNuls(std::string_view bytes) {
    bytes = bytes.substr(0, 200 & ~std::size_t{1});
    std::array<std::size_t, 2> nuls{};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        nuls[i % 2] += bytes[i] == '\0';
    const std::size_t most = bytes.size() / 2;
    if (most < 2 || nuls[0] + nuls[1] < most * 3 / 4)
        return {};
    return nuls[1] > nuls[0] ? Encoding::Utf16Little : Encoding::Utf16Big;
}

} // namespace

std::string_view word(Encoding encoding) {
    return std::ranges::find(encodingWords, encoding, &decltype(encodingWords)::value_type::first)->second;
}

std::optional<Encoding> encodingFromWord(std::string_view text) {
    const auto it = std::ranges::find(encodingWords, text, &decltype(encodingWords)::value_type::second);
    return it == encodingWords.end() ? std::nullopt : std::optional(it->first);
}

std::string Source::name() const {
    return file.empty() ? "pasted text" : file.string();
}

Encoding encodingOf(const Source& source, const Progress& progress) {
    if (source.file.empty())
        return Encoding::Utf8;
    std::optional<Encoding> found;
    Utf8Watch watch;
    bool first = true, utf8 = true;
    rawPieces(
        source,
        [&](std::string_view bytes) {
            if (std::exchange(first, false)) {
                found = byMark(bytes);
                if (!found)
                    found = byNuls(bytes);
            }
            utf8 = utf8 && (found || std::ranges::all_of(bytes, [&](char byte) {
                                return watch.take(static_cast<unsigned char>(byte));
                            }));
        },
        progress);
    if (found)
        return *found;
    return utf8 && !watch.midCharacter() ? Encoding::Utf8 : Encoding::Latin1;
}

void readPieces(const Source& source, Encoding encoding,
                const std::function<void(std::string_view)>& piece, const Progress& progress) {
    Utf16 utf16(encoding == Encoding::Utf16Big, source.name());
    std::string out;
    bool first = true;
    const auto take = [&](std::string_view bytes) {
        if (std::exchange(first, false) && encoding != Encoding::Latin1)
            if (const auto mark = byMark(bytes); mark == encoding)
                bytes.remove_prefix(encoding == Encoding::Utf8 ? 3 : 2);
        if (encoding == Encoding::Utf8 || source.file.empty()) {
            piece(bytes);
            return;
        }
        out.clear();
        if (encoding != Encoding::Latin1)
            utf16.take(bytes, out);
        else
            for (const char byte : bytes) {
                const auto b = static_cast<unsigned char>(byte);
                const bool added = b >= 0x80 && b < 0xA0 && windows[b - 0x80U] != 0;
                append(out, added ? windows[b - 0x80U] : b);
            }
        piece(out);
    };
    rawPieces(source, take, progress);
    utf16.finish();
}

} // namespace slopebook::exchange
