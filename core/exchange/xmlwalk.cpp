// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/xmlwalk.h"

#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <expat.h>

#include <charconv>
#include <exception>

namespace slopebook::exchange {

namespace {

constexpr char divider = '|'; // between namespace and name
constexpr int mostNested = 200;

std::string_view afterSpace(std::string_view name) {
    const auto at = name.rfind(divider);
    return at == std::string_view::npos ? name : name.substr(at + 1);
}

} // namespace

std::optional<std::string_view> XmlElement::attribute(std::string_view name,
                                                      std::string_view space) const {
    for (const char** at = m_attributes; *at; at += 2) {
        const std::string_view whole(at[0]);
        const std::string_view own = afterSpace(whole);
        if (own == name &&
            (space.empty() ||
             whole.substr(0, whole.size() - own.size()).find(space) != std::string_view::npos))
            return std::string_view(at[1]);
    }
    return {};
}

long XmlElement::number(std::string_view name, long otherwise) const {
    long value = otherwise;
    if (const auto text = attribute(name))
        std::from_chars(text->data(), text->data() + text->size(), value);
    return value;
}

struct XmlWalk::Parser {
    std::string file;
    XmlVisitor& visitor;
    XML_Parser held;
    std::exception_ptr failure{};
    int depth = 0;

    Parser(std::string name, XmlVisitor& to)
        : file(std::move(name)), visitor(to), held(XML_ParserCreateNS(nullptr, divider)) {
        if (!held)
            throw LogError(LogError::Kind::Unavailable,
                           say("The reader of workbooks could not be started."));
        XML_SetUserData(held, this);
        XML_SetElementHandler(held, onBegin, onEnd);
        XML_SetCharacterDataHandler(held, onText);
        XML_SetStartDoctypeDeclHandler(held, onDoctype);
    }
    ~Parser() { XML_ParserFree(held); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;

    [[noreturn]] void refuse(Phrase found) const {
        throw BadInput({.file = file, .line = 0, .column = {}}, say(found),
                       say("a whole one (open it where it was made and save it again)"));
    }

    void take(std::string_view piece, bool last) {
        const auto ended =
            XML_Parse(held, piece.data(), static_cast<int>(piece.size()), last ? 1 : 0);
        if (failure)
            std::rethrow_exception(failure);
        if (ended == XML_STATUS_ERROR)
            refuse("a workbook that is damaged or not whole");
    }

    // What expat calls back must not throw through it: the failure waits until it has returned.
    template <class Work>
    static void keepFailure(void* self, const Work& work) noexcept {
        auto& parser = *static_cast<Parser*>(self);
        if (parser.failure)
            return;
        try {
            work(parser);
        } catch (...) {
            parser.failure = std::current_exception();
            XML_StopParser(parser.held, XML_FALSE);
        }
    }
    static void onBegin(void* self, const XML_Char* name, const XML_Char** attributes) {
        keepFailure(self, [&](Parser& parser) {
            if (++parser.depth > mostNested)
                parser.refuse("a workbook whose parts are nested beyond reason");
            parser.visitor.begin(XmlElement(afterSpace(name), attributes));
        });
    }
    static void onEnd(void* self, const XML_Char* name) {
        keepFailure(self, [&](Parser& parser) {
            --parser.depth;
            parser.visitor.end(afterSpace(name));
        });
    }
    static void onText(void* self, const XML_Char* text, int size) {
        keepFailure(self, [&](Parser& parser) {
            parser.visitor.text(std::string_view(text, static_cast<std::size_t>(size)));
        });
    }
    static void onDoctype(void* self, const XML_Char*, const XML_Char*, const XML_Char*, int) {
        keepFailure(self, [](Parser& parser) {
            parser.refuse("a workbook that brings a document type of its own");
        });
    }
};

XmlWalk::XmlWalk(std::string file, XmlVisitor& visitor)
    : m_parser(std::make_unique<Parser>(std::move(file), visitor)) {}

XmlWalk::~XmlWalk() = default;

void XmlWalk::take(std::string_view piece) {
    m_parser->take(piece, false);
}

void XmlWalk::finish() {
    m_parser->take({}, true);
}

} // namespace slopebook::exchange
