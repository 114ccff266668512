// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/importwords.h"

#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using namespace exchange;

struct ImportWords {
    Q_DECLARE_TR_FUNCTIONS(ImportWords)
};

// Roles that a preview shows always, then those in use.
std::vector<Tidy> shownRoles(const Shape& shape) {
    std::vector<Tidy> roles{TidyDate, TidyAthlete, TidyLift, TidySet, TidyLoad};
    for (const Tidy role : {TidySession, TidyDevice, TidyKind, TidySite, TidyBlock, TidyMaximum,
                            TidyBodyMass, TidyExcluded, TidySetExcluded, TidyNote, TidySessionNote,
                            TidySurface, TidyFootwear, TidyTechnique, TidyRpe})
        if (shape.has(role))
            roles.push_back(role);
    return roles;
}

} // namespace

QString roleName(Tidy role) {
    switch (role) {
    case TidyDate:
        return ImportWords::tr("Date");
    case TidyAthlete:
        return ImportWords::tr("Athlete");
    case TidyLift:
        return ImportWords::tr("Lift");
    case TidySet:
        return ImportWords::tr("Set number");
    case TidyLoad:
        return ImportWords::tr("Load");
    case TidyRep:
        return ImportWords::tr("Rep number");
    case TidyVelocity:
        return ImportWords::tr("Velocity");
    case TidySession:
        return ImportWords::tr("Session of the day (1, 2)");
    case TidyDevice:
        return ImportWords::tr("Device");
    case TidyKind:
        return ImportWords::tr("Kind of velocity");
    case TidySite:
        return ImportWords::tr("Place");
    case TidyBlock:
        return ImportWords::tr("Training block");
    case TidyBodyMass:
        return ImportWords::tr("Body mass");
    case TidyMaximum:
        return ImportWords::tr("True maximum (yes or no)");
    case TidyExcluded:
        return ImportWords::tr("Why the rep is left out");
    case TidySetExcluded:
        return ImportWords::tr("Why the set is left out");
    case TidyNote:
        return ImportWords::tr("Note on the set");
    case TidySessionNote:
        return ImportWords::tr("Note on the session");
    case TidySurface:
        return ImportWords::tr("Surface");
    case TidyFootwear:
        return ImportWords::tr("Footwear");
    case TidyTechnique:
        return ImportWords::tr("Technique");
    case TidyRpe:
        return ImportWords::tr("RPE");
    case TidyRepeatOf:
    case TidyNotComparable:
    case TidyOutcome:
    case TidyReason:
    case TidyCount:
        break;
    }
    return {};
}

QString questionText(const Question& question, const FileFacts& facts) {
    return said(questionWords(question, facts));
}

QString encodingName(Encoding encoding) {
    switch (encoding) {
    case Encoding::Utf8:
        return u"UTF-8"_s;
    case Encoding::Utf16Little:
        return u"UTF-16 LE"_s;
    case Encoding::Utf16Big:
        return u"UTF-16 BE"_s;
    case Encoding::Latin1:
        return ImportWords::tr("Latin-1 (older files)");
    }
    return {};
}

QStringList refusedHeadings() {
    return {ImportWords::tr("Line"), ImportWords::tr("Column"), ImportWords::tr("Found"),
            ImportWords::tr("Expected")};
}

TextTable::Row refusedRow(const BadInput& bad) {
    const Where& where = bad.where();
    TextTable::Row row;
    row.cells = {where.line > 0 ? QString::number(where.line) : u"–"_s, said(where.column),
                 said(bad.found()), said(bad.expected())};
    row.explanation = said(bad.expected());
    return row;
}

QStringList previewHeadings(const Shape& shape) {
    QStringList headings{ImportWords::tr("Line"), ImportWords::tr("As found")};
    for (const Tidy role : shownRoles(shape))
        headings << (role == TidyLoad ? ImportWords::tr("Load (kg)") : roleName(role));
    return headings << ImportWords::tr("Velocities (m/s)");
}

TextTable::Row previewRow(const ReadRow& row, const Shape& shape, bool read) {
    TextTable::Row shown;
    QStringList found;
    for (const std::string& cell : row.found.fields)
        found << text(cell).simplified();
    shown.cells << QString::number(row.found.line) << found.join(u" | "_s);
    const auto roles = shownRoles(shape);
    if (!read)
        return shown;
    if (row.refused) {
        shown.cells << u"\u26a0 "_s + ImportWords::tr("refused: expected %1")
                                          .arg(said(row.refused->expected()));
        shown.strong = true;
        shown.explanation = said(row.refused->expected());
        return shown;
    }
    QStringList speeds;
    for (const CsvRow& tidy : row.tidy)
        if (!tidy.fields[TidyVelocity].empty())
            speeds << text(tidy.fields[TidyVelocity]);
    if (!row.tidy.empty())
        for (const Tidy role : roles)
            shown.cells << text(row.tidy.front().fields[role]);
    shown.cells << (speeds.isEmpty() ? u"–"_s : speeds.join(u"  "_s));
    return shown;
}

} // namespace slopebook::ui
