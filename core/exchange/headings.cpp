// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/headings.h"

#include "core/exchange/cells.h"
#include "core/model/names.h"

#include <algorithm>
#include <array>
#include <span>
#include <vector>

namespace slopebook::exchange {

namespace {

// A heading taken apart: what stands in brackets is a unit or a remark, the rest are words.
struct Heading {
    std::string all; ///< in lower case
    std::vector<std::string> words, inBrackets;
};

Heading takenApart(std::string_view text) {
    Heading heading{.all = foldCase(text), .words = {}, .inBrackets = {}};
    int depth = 0;
    std::string word;
    const auto end = [&] {
        if (!word.empty())
            (depth > 0 ? heading.inBrackets : heading.words).push_back(word);
        word.clear();
    };
    for (const char c : heading.all) {
        const bool opens = c == '(' || c == '[', closes = c == ')' || c == ']';
        if (opens || closes || std::string_view(" _-.,:;#\t\r\n").find(c) != std::string_view::npos)
            end();
        else
            word += c;
        depth += opens ? 1 : closes && depth > 0 ? -1 : 0;
    }
    end();
    return heading;
}

struct RoleWords {
    Tidy role;
    std::vector<std::string_view> parts; ///< anywhere in the heading
    std::vector<std::string_view> words; ///< as a word of their own
};

// The first that fits; what is narrower stands before what is wider ("body weight" before
// "weight").
const std::vector<RoleWords>& roleWords() {
    static const std::vector<RoleWords> list{
        {TidyBodyMass,
         {"bodymass", "bodyweight", "body mass", "body weight", "body_mass", "body_weight",
          "körpergewicht", "körpermasse", "koerpergewicht", "koerpermasse", "poids du corps",
          "poids de corps", "poids corporel", "masse corporelle", "peso corporal", "masa corporal"},
         {"bw"}},
        {TidySetExcluded, {"set_excluded"}, {}},
        {TidyExcluded, {"excluded", "ausgeschlossen", "exclu", "excluid"}, {}},
        {TidySessionNote, {"session_note", "session note"}, {}},
        {TidyNote,
         {"notiz", "bemerkung", "anmerkung", "comment", "kommentar", "remark", "remarque",
          "observaci", "comentario"},
         {"note", "notes"}},
        {TidyRpe, {}, {"rpe"}},
        {TidySurface, {"surface", "untergrund"}, {}},
        {TidyFootwear, {"footwear", "schuh"}, {"shoes"}},
        {TidyKind, {"velocity_kind", "velocity kind", "geschwindigkeitsart"}, {}},
        {TidyMaximum, {}, {"maximum"}},
        {TidyDevice,
         {"device", "gerät", "geraet", "sensor", "encoder", "appareil", "capteur", "dispositivo",
          "codificador"},
         {}},
        {TidyVelocity,
         {"velocity", "speed", "geschwindigkeit", "vitesse", "velocidad"},
         {"v", "mv", "mpv", "pv", "vel", "vmean", "vmax", "vmp", "vm", "vmed", "vmoy", "m/s",
          "cm/s"}},
        {TidyDate,
         {"date", "datum", "fecha", "timestamp", "zeitstempel", "horodat"},
         {"day", "tag", "jour", "día", "dia"}},
        {TidyLift,
         {"exercise", "übung", "uebung", "movement", "exercice", "ejercicio", "mouvement",
          "movimiento"},
         {"lift"}},
        {TidyAthlete,
         {"athlet", "sportler", "spieler", "player", "proband", "ruderer", "athlète", "sportif",
          "sportive", "joueur", "atleta", "deportista", "jugador"},
         {"name", "person", "rower", "lifter", "user", "benutzer", "nutzer", "utilisateur",
          "usuario", "sujet", "sujeto", "subject"}},
        {TidyLoad,
         {"gewicht", "weight", "load"},
         {"last", "kg", "mass", "masse", "lb", "lbs", "hantel", "bar", "charge", "poids", "carga",
          "peso", "masa"}},
        {TidySet,
         {"satznummer", "set number"},
         {"set", "satz", "serie", "series", "série", "séries"}},
        {TidyRep,
         {"wiederholung", "repetition", "répétition", "repetici"},
         {"rep", "reps", "wdh", "rép", "réps"}},
        {TidySession, {}, {"session", "einheit", "séance", "sesión", "sesion"}},
        {TidySite, {}, {"place", "ort", "room", "raum", "site", "location", "lieu", "lugar"}},
        {TidyBlock, {"trainingsblock"}, {"block", "phase", "bloc", "bloque", "fase"}},
    };
    return list;
}

constexpr std::array<std::string_view, 9> givenNames{"first name", "firstname",  "first_name",
                                                     "given name", "given_name", "forename",
                                                     "vorname",    "rufname",    "prenom"};
constexpr std::array<std::string_view, 11> familyNames{
    "last name",  "lastname", "last_name",    "surname", "family name", "family_name",
    "familyname", "nachname", "familienname", "zuname",  "apellido"};

// Figures that are made from others, or of something else: never a load or a speed that was lifted.
constexpr std::array<std::string_view, 26> madeFigures{
    "%",        "loss",       "verlust",     "1rm",     "e1rm",     "std",       "sd",
    "cv",       "target",     "ziel",        "percent", "prozent",  "power",     "predicted",
    "perte",    "pérdida",    "perdida",     "cible",   "objetivo", "puissance", "potencia",
    "leistung", "porcentaje", "pourcentage", "prédite", "estimada"};

bool isWord(std::span<const std::string> words, std::string_view wanted) {
    return std::ranges::find(words, wanted) != words.end();
}

// Digits at the end of a word, and what stands before them.
std::pair<std::string_view, std::string_view> split(std::string_view word) {
    const auto last = word.find_last_not_of("0123456789");
    const std::size_t begin = last == std::string_view::npos ? 0 : last + 1;
    return {word.substr(0, begin), word.substr(begin)};
}

} // namespace

std::optional<Tidy> roleOfHeading(std::string_view text) {
    // The names of tidy CSV are what they are.
    for (std::size_t i = 0; i < tidyColumns.size(); ++i)
        if (foldCase(text) == tidyColumns[i])
            return i == TidyRepeatOf || i == TidyOutcome || i == TidyReason ||
                           i == TidyNotComparable
                       ? std::nullopt
                       : std::optional(static_cast<Tidy>(i));
    const Heading heading = takenApart(text);
    for (const std::string_view made : madeFigures)
        if (isWord(heading.words, made) || isWord(heading.inBrackets, made) ||
            (made == "%" && heading.all.find('%') != std::string::npos))
            return {};
    if (namePartOf(text))
        return TidyAthlete;
    std::vector<std::string> words;
    for (const std::string& word : heading.words)
        if (const auto stem = split(word).first; !stem.empty())
            words.emplace_back(stem);
    for (const RoleWords& of : roleWords()) {
        const bool named =
            std::ranges::any_of(
                of.parts, [&](auto part) { return heading.all.find(part) != std::string::npos; }) ||
            std::ranges::any_of(of.words, [&](auto word) { return isWord(words, word); });
        if (named)
            return of.role;
    }
    if (speedUnitOf(text)) // "Tempo (m/s)"
        return TidyVelocity;
    return massUnitOf(text) ? std::optional(TidyLoad) : std::nullopt;
}

std::optional<NamePart> namePartOf(std::string_view text) {
    const Heading heading = takenApart(text);
    const auto has = [&](std::string_view part) {
        return heading.all.find(part) != std::string::npos;
    };
    if (std::ranges::any_of(givenNames, has) || isWord(heading.words, "pr\u00E9nom") ||
        isWord(heading.words, "nombre"))
        return NamePart::Given;
    if (std::ranges::any_of(familyNames, has) || isWord(heading.words, "nom"))
        return NamePart::Family;
    return {};
}

bool saysTimeOfDay(std::string_view text) {
    static constexpr std::array<std::string_view, 12> words{
        "time",  "uhrzeit", "zeit",  "tageszeit", "heure", "hora",
        "clock", "uhr",     "start", "beginn",    "began", "started"};
    static constexpr std::array<std::string_view, 9> lasts{"rest",    "pause",    "duration",
                                                           "dauer",   "repos",    "descanso",
                                                           "elapsed", "recovery", "tension"};
    const Heading heading = takenApart(text);
    const auto says = [&](std::string_view word) { return isWord(heading.words, word); };
    return std::ranges::any_of(words, says) && std::ranges::none_of(lasts, says);
}

std::optional<SpeedUnit> speedUnitOf(std::string_view text) {
    const std::string all = foldCase(text);
    if (all.find("cm/s") != std::string::npos || all.find("cm s-1") != std::string::npos)
        return SpeedUnit::CentimetresPerSecond;
    if (all.find("m/s") != std::string::npos || all.find("m s-1") != std::string::npos ||
        all.find("m·s") != std::string::npos)
        return SpeedUnit::MetresPerSecond;
    return {};
}

std::optional<MassUnit> massUnitOf(std::string_view text) {
    const Heading heading = takenApart(text);
    for (const auto& words : {heading.inBrackets, heading.words}) {
        if (isWord(words, "kg") || isWord(words, "kilograms") || isWord(words, "kilogramm"))
            return MassUnit::Kilogram;
        if (isWord(words, "lb") || isWord(words, "lbs") || isWord(words, "pounds") ||
            isWord(words, "pfund"))
            return MassUnit::Pound;
    }
    return {};
}

std::optional<VelocityKind> kindOfHeading(std::string_view text) {
    const Heading heading = takenApart(text);
    const auto has = [&](std::string_view part) {
        return heading.all.find(part) != std::string::npos;
    };
    if (has("propuls") || isWord(heading.words, "mpv") || isWord(heading.words, "vmp"))
        return VelocityKind::Propulsive;
    if (has("peak") || has("spitze") || has("maximalgeschw") || isWord(heading.words, "pv") ||
        isWord(heading.words, "vmax") || isWord(heading.words, "max") || has("maxim") ||
        has("m\u00E1xim") || isWord(heading.words, "pic") || isWord(heading.words, "pico"))
        return VelocityKind::Peak;
    if (has("mean") || has("average") || has("mittl") || has("durchschnitt") || has("moyen") ||
        has("promedio") || isWord(heading.words, "media") || isWord(heading.words, "mv") ||
        isWord(heading.words, "avg") || isWord(heading.words, "vm") ||
        isWord(heading.words, "vmed") || isWord(heading.words, "vmoy"))
        return VelocityKind::Mean;
    return {};
}

std::optional<int> numberOfHeading(std::string_view text) {
    const Heading heading = takenApart(text);
    if (heading.words.empty())
        return {};
    return readCount(split(heading.words.back()).second);
}

} // namespace slopebook::exchange
