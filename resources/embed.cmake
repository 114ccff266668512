# SPDX-License-Identifier: GPL-3.0-or-later
# Writes OUTPUT, a C++ source that holds the text of FILES (separated by |) as NAME().
string(REPLACE "|" ";" FILES "${FILES}")
set(text "// Made from the files named below; changes belong there.
#include \"resources/embedded.h\"

namespace slopebook::resources {

std::span<const File> ${NAME}() {
    static constexpr File files[] = {
")
foreach(file IN LISTS FILES)
    get_filename_component(base "${file}" NAME)
    file(READ "${file}" content)
    string(FIND "${content}" ")__embedded" found)
    if(NOT found EQUAL -1)
        message(FATAL_ERROR "${file} holds the mark that ends an embedded text")
    endif()
    string(APPEND text "        {\"${base}\", R\"__embedded(${content})__embedded\"},\n")
endforeach()
string(APPEND text "    };
    return files;
}

} // namespace slopebook::resources
")
file(WRITE "${OUTPUT}" "${text}")
