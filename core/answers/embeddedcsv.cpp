// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/embeddedcsv.h"

#include "core/model/errors.h"

#include <csv.h>

#include <memory>
#include <new>

namespace slopebook::answers {

std::vector<std::vector<std::string>> csvRows(std::string_view text, const char* file) {
    struct Reader {
        std::vector<std::vector<std::string>> rows;
        std::vector<std::string> row;
    } reader;
    csv_parser parser;
    if (csv_init(&parser, CSV_STRICT | CSV_APPEND_NULL) != 0)
        throw std::bad_alloc();
    const std::unique_ptr<csv_parser, void (*)(csv_parser*)> freed(&parser, csv_free);
    const auto field = [](void* data, std::size_t size, void* to) {
        static_cast<Reader*>(to)->row.emplace_back(static_cast<const char*>(data), size);
    };
    const auto rowEnd = [](int, void* to) {
        auto& r = *static_cast<Reader*>(to);
        r.rows.push_back(std::move(r.row));
        r.row.clear();
    };
    if (csv_parse(&parser, text.data(), text.size(), field, rowEnd, &reader) != text.size() ||
        csv_fini(&parser, field, rowEnd, &reader) != 0)
        throw BadInput({file, static_cast<long>(reader.rows.size()) + 1, {}}, asIs("a stray quote"),
                       asIs("CSV"));
    return std::move(reader.rows);
}

} // namespace slopebook::answers
