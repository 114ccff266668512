// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/zipparts.h"

#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <zip.h>

#include <algorithm>
#include <cstdint>

namespace slopebook::exchange {

namespace {

constexpr std::uint64_t mostUnpacked = 512ULL << 20;
// Deflate reaches 1032:1. Sheets of a million alike cells come to some 100:1.
constexpr std::uint64_t mostTight = 400;
constexpr std::uint64_t tightFrom = 16ULL << 20; // below it, what is tight does no harm
constexpr std::size_t zipPieceSize = 1 << 16;

zip_t* opened(void* held) {
    return static_cast<zip_t*>(held);
}

struct PartCloser {
    void operator()(zip_file_t* part) const { zip_fclose(part); }
};

[[noreturn]] void refuse(const std::filesystem::path& file, Phrase found, Phrase expected) {
    throw BadInput({.file = file.string(), .line = 0, .column = {}}, say(found), say(expected));
}

} // namespace

ZipParts::ZipParts(std::filesystem::path file)
    : m_file(std::move(file)), m_zip(nullptr, [](void* held) { zip_discard(opened(held)); }) {
    int why = 0;
    m_zip.reset(zip_open(m_file.c_str(), ZIP_RDONLY, &why));
    if (m_zip)
        return;
    if (why == ZIP_ER_OPEN || why == ZIP_ER_READ || why == ZIP_ER_NOENT || why == ZIP_ER_MEMORY)
        throw LogError(LogError::Kind::Unavailable, say("\"%1\" cannot be read.", m_file.string()));
    refuse(m_file, "a workbook that is damaged or not whole",
           "a whole one (open it where it was made and save it again)");
}

ZipParts::~ZipParts() = default;

bool ZipParts::has(const std::string& part) const {
    return zip_name_locate(opened(m_zip.get()), part.c_str(), ZIP_FL_NOCASE) >= 0;
}

void ZipParts::read(const std::string& part, const std::function<void(std::string_view)>& piece,
                    const Progress& progress) const {
    const auto index = zip_name_locate(opened(m_zip.get()), part.c_str(), ZIP_FL_NOCASE);
    if (index < 0)
        throw BadInput({.file = m_file.string(), .line = 0, .column = {}},
                       say("no part \"%1\"", part),
                       say("a workbook (.xlsx or .ods) with its parts"));
    zip_stat_t about;
    zip_stat_init(&about);
    zip_stat_index(opened(m_zip.get()), static_cast<zip_uint64_t>(index), 0, &about);
    if ((about.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && about.encryption_method != ZIP_EM_NONE)
        refuse(m_file, "a workbook that is locked by a password", "one saved without a password");
    const std::unique_ptr<zip_file_t, PartCloser> open(
        zip_fopen_index(opened(m_zip.get()), static_cast<zip_uint64_t>(index), 0));
    const auto damaged = [this] {
        refuse(m_file, "a workbook that is damaged or not whole",
               "a whole one (open it where it was made and save it again)");
    };
    if (!open)
        damaged();
    // What the package says of its sizes may be untrue: what comes out is counted.
    const std::uint64_t packed = (about.valid & ZIP_STAT_COMP_SIZE) != 0 ? about.comp_size : 0;
    std::string bytes(zipPieceSize, '\0');
    std::uint64_t done = 0;
    while (true) {
        const auto got = zip_fread(open.get(), bytes.data(), bytes.size());
        if (got < 0)
            damaged();
        if (got == 0)
            break;
        done += static_cast<std::uint64_t>(got);
        if (done > mostUnpacked || (done > tightFrom && done / mostTight > packed))
            refuse(m_file, "a workbook that unpacks to far more than it holds",
                   "a table of at most 512 MB");
        piece(std::string_view(bytes.data(), static_cast<std::size_t>(got)));
        tell(progress, static_cast<std::int64_t>(done),
             static_cast<std::int64_t>(std::max<std::uint64_t>(done, about.size)));
    }
}

} // namespace slopebook::exchange
