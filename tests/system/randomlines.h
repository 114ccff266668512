// SPDX-License-Identifier: GPL-3.0-or-later
// Random command lines over the folder that tst_commandlines builds.
#pragma once

#include <QString>
#include <QStringList>

#include <cstdint>
#include <initializer_list>
#include <random>
#include <string>
#include <vector>

namespace slopebook::test {

/// One command line, and what it may change.
struct Line {
    QStringList words;
    struct Output {
        std::string name; ///< in the folder
        bool folder = false;
    };
    std::vector<Output> outputs;
    bool replace = false;
    std::string writesTo; ///< a log that is imported into
};

class LineMonkey {
public:
    explicit LineMonkey(std::uint64_t seed) : m_random(seed) {}

    Line line() {
        Line made;
        const int which = below(16);
        if (which < 3)
            asks(made, "compare", {"--from", "2026-03-10", "--to", "2026-04-10"},
                 chance(60) ? QStringList{"--pdf"} : QStringList{"--script", "--pdf"});
        else if (which < 5)
            asks(made, "plan", {"--percent", "70", "--bar", "20", "--plates", "20x2,10x2,5x1"},
                 {"--pdf"});
        else if (which < 7)
            battery(made);
        else if (which < 9)
            folderOf(made);
        else if (which < 11)
            import(made);
        else if (which < 13)
            backup(made);
        else if (which < 15)
            asks(made, "table", {}, {"--csv"});
        else
            made.words << pick({"list", "noise", "check"}) << name(aLog());
        if (made.words[0] != u"import" && chance(40)) {
            made.replace = true;
            made.words << QStringLiteral("--replace");
        }
        if (chance(10))
            made.words << QStringLiteral("--json");
        return made;
    }

private:
    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    bool chance(int percent) { return below(100) < percent; }
    QString pick(const QStringList& from) { return from[below(static_cast<int>(from.size()))]; }
    static QString name(const std::string& name) { return QString::fromStdString(name); }
    std::string oneOf(std::initializer_list<const char*> from) {
        return *(from.begin() + below(static_cast<int>(from.size())));
    }
    std::string aLog() {
        return chance(80) ? oneOf({"a.slopebook", "b.slopebook", "link.slopebook"})
                          : oneOf({"hard.slopebook", "log without ending", "note.txt", "pipe",
                                   "sub", "absent.slopebook", "dangling", "./sub/../a.slopebook",
                                   "a.slopebook.backups/2026-03-14T00:00:00Z.slopebook"});
    }
    /// Any name at all, for what is written.
    std::string anything() {
        if (chance(25))
            return oneOf({"note.txt", "page.pdf", "to note", "sub/inner.txt", "read only.txt"});
        return chance(45)
                   ? oneOf({"new.pdf", "new two.csv", "sub/new.pdf", "sub/../new.pdf", "ü.pdf"})
                   : oneOf({"a.slopebook",
                            "b.slopebook",
                            "link.slopebook",
                            "hard.slopebook",
                            "log without ending",
                            "note.txt",
                            "page.pdf",
                            "to note",
                            "dangling",
                            "pipe",
                            "sub",
                            "empty",
                            "sub/inner.txt",
                            "a.slopebook-journal",
                            "b.slopebook-wal",
                            "a.slopebook.backups",
                            "a.slopebook.backups/2026-03-14T00:00:00Z.slopebook",
                            "good.csv",
                            "absent/new.pdf",
                            "./sub/../a.slopebook",
                            "new.slopebook",
                            "read only.txt",
                            "sub/",
                            "-",
                            "to folder/a.slopebook"});
    }
    void output(Line& made, const QString& option) {
        const std::string to = anything();
        made.words << option << name(to);
        if (to != "-")
            made.outputs.push_back({to});
    }
    void asks(Line& made, const char* command, const QStringList& how, const QStringList& outputs) {
        made.words << QString::fromUtf8(command) << name(aLog()) << QStringLiteral("--athlete")
                   << QStringLiteral("Lane 3") << QStringLiteral("--lift")
                   << QStringLiteral("Bench pull") << how;
        for (const QString& option : outputs)
            if (chance(90))
                output(made, option);
    }
    void battery(Line& made) {
        made.words << QStringLiteral("battery") << name(aLog()) << QStringLiteral("--athlete")
                   << QStringLiteral("Lane 3") << QStringLiteral("--from")
                   << QStringLiteral("2026-03-10") << QStringLiteral("--to")
                   << QStringLiteral("2026-04-10");
        if (chance(70))
            output(made, QStringLiteral("--csv"));
        if (chance(40))
            output(made, QStringLiteral("--pdf"));
    }
    void folderOf(Line& made) {
        const std::string to =
            chance(50) ? oneOf({"out", "sub/out", "empty", "p/q", "out/"})
                       : oneOf({"sub", "note.txt", "a.slopebook", "a.slopebook.backups", "tables",
                                "to folder", "dangling", "pipe", "-", "link.slopebook", "."});
        made.words << QStringLiteral("export") << name(aLog()) << pick({"--into", "--to"})
                   << name(to);
        if (to != "-")
            made.outputs.push_back({to, true});
    }
    void backup(Line& made) {
        const std::string to = chance(50) ? "copy.slopebook" : anything();
        made.words << QStringLiteral("backup") << name(aLog()) << name(to);
        if (to != "-")
            made.outputs.push_back({to});
    }
    void import(Line& made) {
        made.writesTo = chance(60) ? aLog() : oneOf({"new.slopebook", "fresh.slopebook", "empty"});
        made.words << QStringLiteral("import") << name(made.writesTo);
        for (int i = 0; i <= below(2); ++i)
            made.words << name(oneOf({"good.csv", "more.csv", "jumps.csv", "bad.csv", "note.txt",
                                      "a.slopebook", "absent.csv", "sub", "to note"}));
        if (chance(20))
            made.words << pick({"--dry-run", "--propose"});
    }

    std::mt19937_64 m_random;
};

} // namespace slopebook::test
