// SPDX-License-Identifier: GPL-3.0-or-later
// Walks through an XML text that comes in pieces, through expat: no document type, no entities of
// its own, nothing fetched.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook::exchange {

/// Where an element begins: its name without prefix, its attributes by theirs.
class XmlElement {
public:
    XmlElement(std::string_view name, const char** attributes)
        : m_name(name), m_attributes(attributes) {}
    std::string_view name() const { return m_name; }
    /// space: a part of the attribute's namespace, such as ":office:", where two may be alike.
    std::optional<std::string_view> attribute(std::string_view name,
                                              std::string_view space = {}) const;
    /// An attribute that is a whole number; otherwise where it is not there, or none.
    long number(std::string_view name, long otherwise) const;

private:
    std::string_view m_name;
    const char** m_attributes;
};

struct XmlVisitor {
    virtual void begin(const XmlElement& element) = 0;
    virtual void end(std::string_view /*name*/) {}
    virtual void text(std::string_view /*text*/) {}

protected:
    ~XmlVisitor() = default;
};

class XmlWalk {
public:
    /// file: for messages.
    XmlWalk(std::string file, XmlVisitor& visitor);
    ~XmlWalk();
    XmlWalk(const XmlWalk&) = delete;
    XmlWalk& operator=(const XmlWalk&) = delete;

    /// BadInput for what is no XML, declares a document type, or is nested more than 200 deep; what
    /// the visitor throws.
    void take(std::string_view piece);
    void finish();

private:
    struct Parser;
    std::unique_ptr<Parser> m_parser;
};

} // namespace slopebook::exchange
