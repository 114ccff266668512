// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/xlsxbook.h"

#include "core/model/errors.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <charconv>

namespace slopebook::exchange {

namespace {

constexpr std::size_t mostShared = 256UL << 20;

bool isTrue(std::optional<std::string_view> text) {
    return text == "1" || text == "true" || text == "on";
}

// A target as a part's name: "/xl/a.xml", or "../a.xml" as seen from its folder.
std::string partOfTarget(const std::string& folder, std::string_view target) {
    if (target.starts_with('/'))
        return std::string(target.substr(1));
    std::string base = folder;
    while (target.starts_with("../") || target.starts_with("./")) {
        if (target.starts_with("../")) {
            base.pop_back();
            const auto slash = base.rfind('/');
            base.erase(slash == std::string::npos ? 0 : slash + 1);
            target.remove_prefix(1);
        }
        target.remove_prefix(2);
        if (base.empty())
            break;
    }
    return base + std::string(target);
}

struct Relations final : XmlVisitor {
    struct One {
        std::string type, target;
    };
    std::map<std::string, One, std::less<>> byId;

    void begin(const XmlElement& element) override {
        const auto target = element.attribute("Target");
        if (element.name() == "Relationship" && target)
            byId[std::string(element.attribute("Id").value_or(""))] = {
                std::string(element.attribute("Type").value_or("")), std::string(*target)};
    }

    /// The target of the first relation whose type ends so; types differ by edition before that.
    std::optional<std::string> ofType(std::string_view end) const {
        for (const auto& [id, one] : byId)
            if (one.type.ends_with(end))
                return one.target;
        return {};
    }
};

struct WorkbookPart final : XmlVisitor {
    struct Sheet {
        SheetName name;
        std::string id;
    };
    std::vector<Sheet> sheets;
    bool from1904 = false;

    void begin(const XmlElement& element) override {
        if (element.name() == "workbookPr")
            from1904 = isTrue(element.attribute("date1904"));
        if (element.name() != "sheet")
            return;
        const auto state = element.attribute("state");
        sheets.push_back({{.name = std::string(element.attribute("name").value_or("")),
                           .hidden = state == "hidden" || state == "veryHidden"},
                          std::string(element.attribute("id", "relationships").value_or(""))});
    }
};

struct SharedTexts final : XmlVisitor {
    const ZipParts& zip;
    std::vector<std::string> texts;
    std::string now;
    std::size_t bytes = 0;
    bool inText = false;
    int spoken = 0; // within rPh

    explicit SharedTexts(const ZipParts& of) : zip(of) {}

    void begin(const XmlElement& element) override {
        if (element.name() == "si")
            now.clear();
        spoken += element.name() == "rPh";
        inText = element.name() == "t" && spoken == 0;
    }
    void end(std::string_view name) override {
        inText = false;
        spoken -= name == "rPh";
        if (name == "si")
            texts.push_back(unescapedText(now));
    }
    void text(std::string_view piece) override {
        if (!inText)
            return;
        bytes += piece.size();
        if (bytes > mostShared)
            throw BadInput({.file = zip.file().string(), .line = 0, .column = {}},
                           say("a workbook with more than 256 MB of text"),
                           say("a table of people and speeds"));
        now += piece;
    }
};

struct Styles final : XmlVisitor {
    std::map<long, SheetFormat> own;
    std::vector<SheetFormat> formats;
    std::vector<long> ids;
    bool inCells = false;

    void begin(const XmlElement& element) override {
        if (element.name() == "numFmt")
            own[element.number("numFmtId", -1)] =
                formatOfCode(element.attribute("formatCode").value_or(""));
        inCells = inCells || element.name() == "cellXfs";
        if (inCells && element.name() == "xf")
            ids.push_back(element.number("numFmtId", -1));
    }
    void end(std::string_view name) override {
        if (name == "cellXfs")
            inCells = false;
    }
};

} // namespace

std::string unescapedText(std::string text) {
    for (std::size_t at = text.find("_x"); at != std::string::npos; at = text.find("_x", at)) {
        unsigned code = 0;
        const char* const digits = text.data() + at + 2;
        const bool whole = text.size() >= at + 7 && text[at + 6] == '_' &&
                           std::from_chars(digits, digits + 4, code, 16).ptr == digits + 4;
        if (whole && code > 0 && code < 0x80)
            text.replace(at, 7, 1, static_cast<char>(code));
        ++at;
    }
    return text;
}

XlsxBook xlsxBook(const ZipParts& zip) {
    Relations top;
    walkPart(zip, "_rels/.rels", top);
    const auto document = top.ofType("/officeDocument");
    const std::string part = partOfTarget("", document.value_or("xl/workbook.xml"));
    const auto slash = part.rfind('/');
    const std::string folder = slash == std::string::npos ? "" : part.substr(0, slash + 1);
    if (!part.ends_with(".xml") || !zip.has(part))
        throw BadInput({.file = zip.file().string(), .line = 0, .column = {}},
                       say("a package without a workbook that can be read"),
                       say("an .xlsx or .ods file without a password, or CSV"));
    WorkbookPart workbook;
    walkPart(zip, part, workbook);
    Relations relations;
    walkPart(zip, folder + "_rels/" + part.substr(folder.size()) + ".rels", relations);
    XlsxBook book{.sheets = {}, .from1904 = workbook.from1904, .sharedTexts = {}, .styles = {}};
    for (const auto& sheet : workbook.sheets) {
        const auto at = relations.byId.find(sheet.id);
        if (at != relations.byId.end() && at->second.type.ends_with("/worksheet"))
            book.sheets.push_back({sheet.name, partOfTarget(folder, at->second.target)});
    }
    if (const auto target = relations.ofType("/sharedStrings"))
        book.sharedTexts = partOfTarget(folder, *target);
    if (const auto target = relations.ofType("/styles"))
        book.styles = partOfTarget(folder, *target);
    return book;
}

std::vector<std::string> sharedTexts(const ZipParts& zip, const std::string& part) {
    SharedTexts shared(zip);
    if (!part.empty())
        walkPart(zip, part, shared);
    return std::move(shared.texts);
}

std::vector<SheetFormat> cellFormats(const ZipParts& zip, const std::string& part) {
    Styles styles;
    if (!part.empty())
        walkPart(zip, part, styles);
    for (const long id : styles.ids) {
        const auto own = styles.own.find(id);
        styles.formats.push_back(own != styles.own.end() ? own->second : builtInFormat(id));
    }
    return std::move(styles.formats);
}

} // namespace slopebook::exchange
