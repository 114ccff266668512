// SPDX-License-Identifier: GPL-3.0-or-later
// What goes wrong between a desk and a shared store.
#pragma once

#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view store[]{
    translate("Phrases", "an address of a store that cannot be read"),
    translate("Phrases", "postgresql://LOGIN@HOST/DATABASE, or host=HOST dbname=DATABASE "
                         "user=LOGIN, or service=NAME"),
    translate("Phrases",
              "a password in the address of a store, where everybody on this machine sees it"),
    translate("Phrases",
              "the address without it; the password in a line of ~/.pgpass, or in PGPASSWORD"),
    translate("Phrases", "The store answered '%1', which it never should. Nothing was changed."),
    translate("Phrases", "The store at %1 is of a newer Slopebook than this one (layout %2, this "
                         "one knows %3). Nothing was changed. Update Slopebook."),
    translate(
        "Phrases",
        "The store at %1 is of an older Slopebook than this one (layout %2, this one needs %3). "
        "Nothing was changed. Who manages it brings it up to date with: slopebook store init"),
    translate("Phrases",
              "The store at %1 does not take the password of '%2', or knows no such login."),
    translate("Phrases", "The store at %1 does not let '%2' in: %3."),
    translate("Phrases", "There is no database '%1' at %2."),
    translate("Phrases", "There is no store in the database '%1' at %2; who manages it makes one "
                         "with: slopebook store init"),
    translate("Phrases", "'%1' has no right to that in the store at %2. Nothing was changed. Who "
                         "manages the store gives it with: slopebook store grant"),
    translate("Phrases", "The store at %1 was brought up to date by another version of Slopebook. "
                         "Nothing was changed; both must be of one version."),
    translate("Phrases", "The disk of the store at %1 is full. Nothing was changed there, and "
                         "nothing is lost here."),
    translate("Phrases", "The store at %1 is just starting or stopping, or has no room for one "
                         "more; try again in a moment."),
    translate("Phrases", "The store at %1 was busy with somebody else's work for too long. Nothing "
                         "was changed; try again in a moment."),
    translate("Phrases",
              "Something else in the store has that name or number already. Nothing was changed."),
    translate("Phrases", "What was sent belongs to something that the store does not hold, or "
                         "something still belongs to what was removed. Nothing was changed."),
    translate("Phrases", "The store at %1 refused: %2 (%3). Nothing was changed."),
    translate("Phrases", "The connection to the store at %1 was lost in the middle (%2). What was "
                         "under way is sent again at the next meeting."),
    translate("Phrases",
              "The connection to the store at %1 was lost in the middle (%2). Whether it was done "
              "there is not known; to ask for it once more does no harm."),
    translate("Phrases", "The connection to the store at %1 was cut while it was made (%2). Is "
                         "there a network?"),
    translate("Phrases", "The store at %1 and this machine do not agree on how to encrypt: %2. "
                         "Nothing was sent."),
    translate("Phrases", "'%1' has no right to manage a store at %2: it is made and managed by who "
                         "owns the database '%3'. Nothing was changed."),
    translate("Phrases",
              "The store at %1 asks for a password of '%2', and there is none. It is looked for "
              "where PostgreSQL's programs look: in a line of ~/.pgpass, or in PGPASSWORD."),
    translate("Phrases", "The address of the store does not lead anywhere: %1."),
    translate("Phrases",
              "No machine '%1' is known here. Is its name spelled right, and is there a network?"),
    translate(
        "Phrases",
        "The store at %1 does not encrypt (TLS), and is not on this machine. Nothing was sent."),
    translate(
        "Phrases",
        "The certificate of the store at %1 does not fit: %2. Nothing was sent. Who runs the store "
        "knows the right name and the certificate to hold it against (~/.postgresql/root.crt)."),
    translate("Phrases",
              "The store at %1 did not answer within %2 s. Is it running, and is there a network?"),
    translate("Phrases",
              "Nothing answers as a store at %1. Is it running, and is there a network?"),
    translate("Phrases", "'%1', which is no JSON"),
    translate("Phrases", "what a store of this version holds"),
    translate("Phrases", "A shared store needs PostgreSQL's library for clients (libpq.so.5), "
                         "which is not on this machine."),
    translate("Phrases", "the name of a squad: '%1'"),
    translate("Phrases", "a name of at most 200 letters"),
    translate("Phrases",
              "another one: lifts, tests and devices, which are everybody's, stand under that"),
    translate("Phrases", "the squad '%1'"),
    translate("Phrases", "one that is there; slopebook store init --squad NAME makes one"),
    translate("Phrases", "one of: %1"),
    translate("Phrases", "The server at %1 is PostgreSQL %2; a store needs 15 or newer."),
    translate("Phrases", "the login '%1'"),
    translate("Phrases", "one that the server knows; who runs it makes one in psql: CREATE ROLE "
                         "... LOGIN, then \\password"),
    translate("Phrases", "an atom whose '%1' cannot be read"),
    translate("Phrases", "%1 of the store that does not say what it was sent as"),
    translate("Phrases", "what its last revision was made from"),
};

} // namespace slopebook::phrases

namespace slopebook::store {

using Phrase = Listed<phrases::store>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::store
