// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/failure.h"

#include "core/model/phrases/store.h"

namespace slopebook::store {

namespace {
using Kind = StoreError::Kind;

/// The first line, without its stop: libpq's words go on with hints.
std::string firstLine(std::string_view words) {
    const auto end = words.find('\n');
    words = words.substr(0, end);
    while (!words.empty() && (words.back() == '.' || words.back() == ' '))
        words.remove_suffix(1);
    return std::string(words);
}

bool tells(const std::string& words, std::string_view what) {
    return words.find(what) != std::string::npos;
}

/// The state within "FATAL:  28P01: password authentication failed"; empty where there is none.
std::string stateWithin(const std::string& words) {
    constexpr std::size_t length = 5;
    for (auto at = words.find(":  "); at != std::string::npos; at = words.find(":  ", at + 1)) {
        const std::string state = words.substr(at + 3, length);
        const bool whole =
            state.size() == length && words.substr(at + 3 + length, 2) == ": " &&
            state.find_first_not_of("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ") == std::string::npos;
        if (whole)
            return state;
    }
    return {};
}

/// After the state.
std::string wordsAfter(const std::string& words, const std::string& state) {
    const auto at = words.find(state + ": ");
    return firstLine(std::string_view(words).substr(at + state.size() + 2));
}

StoreError letIn(const Asked& asked, std::string_view state, const std::string& words) {
    if (state == "28P01")
        return {Kind::WrongPassword,
                say("The store at %1 does not take the password of '%2', or knows no such login.",
                    asked.place, asked.login)};
    return {Kind::NotLetIn, say("The store at %1 does not let '%2' in: %3.", asked.place,
                                asked.login, firstLine(words))};
}
} // namespace

StoreError serverFailure(const Asked& asked, std::string_view state, const std::string& words) {
    const auto is = [&](auto... states) { return ((state == states) || ...); };
    if (is("28P01", "28000"))
        return letIn(asked, state, words);
    if (is("3D000"))
        return {Kind::NoSuchDatabase,
                say("There is no database '%1' at %2.", asked.database, asked.place)};
    if (is("3F000", "42P01", "42883"))
        return {Kind::NoStore, say("There is no store in the database '%1' at %2; who manages it "
                                   "makes one with: slopebook store init",
                                   asked.database, asked.place)};
    if (is("42501"))
        return {Kind::NotAllowed, say("'%1' has no right to that in the store at %2. Nothing was "
                                      "changed. Who manages the store gives it with: slopebook "
                                      "store grant",
                                      asked.login, asked.place)};
    if (is("SB004"))
        return {Kind::OtherLayout,
                say("The store at %1 was brought up to date by another version of Slopebook. "
                    "Nothing was changed; both must be of one version.",
                    asked.place)};
    if (is("53100"))
        return {Kind::Full,
                say("The disk of the store at %1 is full. Nothing was changed there, and nothing "
                    "is lost here.",
                    asked.place)};
    if (is("53300", "57P03"))
        return {Kind::Starting, say("The store at %1 is just starting or stopping, or has no room "
                                    "for one more; try again in a moment.",
                                    asked.place)};
    if (is("55P03", "57014", "40P01"))
        return {Kind::Busy, say("The store at %1 was busy with somebody else's work for too long. "
                                "Nothing was changed; try again in a moment.",
                                asked.place)};
    if (is("57P01", "57P02", "25P03", "57P05") || state.starts_with("08"))
        return lostFailure(asked, words);
    if (is("23505"))
        return {Kind::Taken, say("Something else in the store has that name or number already. "
                                 "Nothing was changed.")};
    if (is("23503", "SB002"))
        return {Kind::Orphan,
                say("What was sent belongs to something that the store does not hold, or something "
                    "still belongs to what was removed. Nothing was changed.")};
    return {Kind::Refused, say("The store at %1 refused: %2 (%3). Nothing was changed.",
                               asked.place, firstLine(words), std::string(state))};
}

StoreError lostFailure(const Asked& asked, const std::string& words) {
    if (asked.byHand)
        return {Kind::Lost,
                say("The connection to the store at %1 was lost in the middle (%2). Whether it was "
                    "done there is not known; to ask for it once more does no harm.",
                    asked.place, firstLine(words))};
    return {Kind::Lost, say("The connection to the store at %1 was lost in the middle (%2). What "
                            "was under way is sent again at the next meeting.",
                            asked.place, firstLine(words))};
}

namespace {
/// Of TLS that could not be begun.
StoreError encryptionFailure(const Asked& asked, const Attempt& attempt) {
    const std::string& words = attempt.words;
    if (tells(words, "server does not support SSL"))
        return {Kind::NoEncryption, say("The store at %1 does not encrypt (TLS), and is not on "
                                        "this machine. Nothing was sent.",
                                        asked.place)};
    if (tells(words, "certificate"))
        return {Kind::Certificate,
                say("The certificate of the store at %1 does not fit: %2. Nothing was sent. "
                    "Who runs the store knows the right name and the certificate to hold it "
                    "against (~/.postgresql/root.crt).",
                    asked.place, firstLine(words))};
    return {Kind::NoEncryption, say("The store at %1 and this machine do not agree on how to "
                                    "encrypt: %2. Nothing was sent.",
                                    asked.place, firstLine(words))};
}
} // namespace

StoreError connectFailure(const Asked& asked, const Attempt& attempt) {
    const std::string& words = attempt.words;
    if (const std::string state = stateWithin(words); !state.empty())
        return serverFailure(asked, state, wordsAfter(words, state));
    if (attempt.needsPassword)
        return {Kind::NoPassword,
                say("The store at %1 asks for a password of '%2', and there is none. It is looked "
                    "for where PostgreSQL's programs look: in a line of ~/.pgpass, or in "
                    "PGPASSWORD.",
                    asked.place, asked.login)};
    if (attempt.noServer)
        return {Kind::Unresolved,
                say("The address of the store does not lead anywhere: %1.", firstLine(words))};
    if (attempt.unknown)
        return {Kind::Unresolved, say("No machine '%1' is known here. Is its name spelled right, "
                                      "and is there a network?",
                                      asked.host)};
    if (attempt.waited > 0)
        return {Kind::Unreachable,
                say("The store at %1 did not answer within %2 s. Is it running, and is there "
                    "a network?",
                    asked.place, attempt.waited)};
    if (attempt.encrypting && !attempt.cut)
        return encryptionFailure(asked, attempt);
    if (attempt.reached)
        return {Kind::Lost, say("The connection to the store at %1 was cut while it was made (%2). "
                                "Is there a network?",
                                asked.place, firstLine(words))};
    return {Kind::Unreachable, say("Nothing answers as a store at %1. Is it running, and is there "
                                   "a network?",
                                   asked.place)};
}

} // namespace slopebook::store
