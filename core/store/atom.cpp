// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/atom.h"

#include "core/store/rows.h"

namespace slopebook::store {

namespace {
void quoted(std::string& text, std::string_view value) {
    text += '"';
    text += value;
    text += '"';
}

void uuidList(std::string& text, const Atom& atom, Sixteen Step::*which, char open, char close,
              bool quotes) {
    text += open;
    for (const Step& step : atom.trail) {
        if (text.back() != open)
            text += ',';
        if (quotes)
            quoted(text, uuidText(step.*which));
        else
            text += uuidText(step.*which);
    }
    text += close;
}

/// COPY's own marks (PostgreSQL, COPY, "Text Format").
void escaped(std::string& text, std::string_view value) {
    for (const char c : value)
        switch (c) {
        case '\\':
            text += "\\\\";
            break;
        case '\n':
            text += "\\n";
            break;
        case '\r':
            text += "\\r";
            break;
        case '\t':
            text += "\\t";
            break;
        default:
            text += c;
        }
}
} // namespace

void writeJson(std::string& text, const Atom& atom) {
    text += "{\"id\":";
    quoted(text, uuidText(atom.uuid));
    text += ",\"squad\":";
    quoted(text, uuidText(atom.squad));
    text += ",\"kind\":";
    quoted(text, atom.kind); // a kind of core's: nothing in it to be escaped
    text += ",\"parent\":";
    if (atom.parent)
        quoted(text, uuidText(*atom.parent));
    else
        text += "null";
    text += atom.alive ? ",\"alive\":true,\"trail\":" : ",\"alive\":false,\"trail\":";
    uuidList(text, atom, &Step::revision, '[', ']', true);
    text += ",\"hashes\":";
    uuidList(text, atom, &Step::hash, '[', ']', true);
    if (atom.content)
        text += ",\"content\":" + *atom.content;
    text += '}';
}

void writeCopyLine(std::string& text, const Atom& atom) {
    text += uuidText(atom.uuid) + '\t' + uuidText(atom.squad) + '\t' + atom.kind + '\t';
    text += atom.parent ? uuidText(*atom.parent) : "\\N";
    text += atom.alive ? "\tt\t" : "\tf\t";
    uuidList(text, atom, &Step::revision, '{', '}', false);
    text += '\t';
    uuidList(text, atom, &Step::hash, '{', '}', false);
    text += '\t';
    if (atom.content)
        escaped(text, *atom.content);
    else
        text += "\\N";
    text += '\n';
}

bool isEverybodys(std::string_view kind) {
    return kind == "lift" || kind == "test" || kind == "device";
}

} // namespace slopebook::store
