// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/reading.h"

#include "core/model/errors.h"
#include "core/model/phrases/desks.h"

namespace slopebook::desks {

Atom atomOf(Slots& known, const log::Carried& carried) {
    Atom atom{.hash = carried.hash, .alive = carried.alive, .trail = carried.trail};
    if (!carried.content.empty())
        atom.thing = thingOf(known, carried.content);
    const std::string kind = atom.thing ? std::string(kindOf(*atom.thing)) : carried.kind;
    if (kind != carried.kind || atom.trail.empty() ||
        atom.trail.back().hash != log::stepHash(carried.hash, carried.alive))
        throw BadInput(say("a %1 whose trail does not lead to what it says", carried.kind),
                       say("the trail of that very thing"));
    return atom;
}

void putCarried(ReadDesk& read, Slots& known, const log::Carried& carried) {
    Atom atom = atomOf(known, carried);
    const Slot slot = known.of(carried.kind, carried.uuid);
    if (!read.desk.emplace(slot, std::move(atom)).second)
        throw BadInput(say("two of a %1 under one identity", carried.kind),
                       say("one kind of thing under one identity"));
    read.places.emplace(slot, carried.place);
}

ReadDesk readDesk(Slots& known, const log::Log& log) {
    ReadDesk read;
    log::visitCarried(log,
                      [&](const log::Carried& carried) { putCarried(read, known, carried); });
    return read;
}

} // namespace slopebook::desks
