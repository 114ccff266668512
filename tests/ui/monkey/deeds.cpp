// SPDX-License-Identifier: GPL-3.0-or-later
// How often the monkey does what. Weighted so that a good share really edits.
#include "tests/ui/monkey/monkey.h"

namespace slopebook::monkey {

const std::vector<Monkey::Deed>& Monkey::deeds() {
    static const std::vector<Deed> all{
        {"set typed", 18, true, &Monkey::typeSet},
        {"line refused, next on top", 5, true, &Monkey::typeRefused},
        {"doubtful line", 5, true, &Monkey::typeDoubtful},
        {"wheel under a half-typed set", 5, true, &Monkey::typeUnderTheWheel},
        {"set left half-typed", 4, true, &Monkey::leaveHalfTyped},
        {"lines pasted", 3, true, &Monkey::pasteLines},
        {"cell changed", 6, true, &Monkey::changeCell},
        {"set removed", 2, true, &Monkey::removeSet},
        {"set left out", 3, true, &Monkey::leaveSetOut},
        {"athlete chosen", 6, true, &Monkey::chooseAthlete},
        {"lift chosen", 4, true, &Monkey::chooseLift},
        {"session chosen", 3, true, &Monkey::chooseSession},
        {"session begun", 2, true, &Monkey::beginSession},
        {"session started", 3, true, &Monkey::startSession},
        {"day typed", 5, true, &Monkey::typeDay},
        {"device chosen", 3, true, &Monkey::typeDevice},
        {"place typed", 3, true, &Monkey::typePlace},
        {"body mass typed", 3, true, &Monkey::typeBodyMass},
        {"details changed", 3, true, &Monkey::changeDetails},
        {"session removed", 1, true, &Monkey::removeSession},
        {"athlete added", 1, true, &Monkey::addAthlete},
        {"device added", 1, true, &Monkey::addDevice},
        {"block added", 1, true, &Monkey::addBlock},
        {"check loads typed", 1, true, &Monkey::setCheckLoads},
        {"attempts typed", 6, true, &Monkey::typeAttempts},
        {"file imported", 1, true, &Monkey::importFile},
        {"undo", 6, true, &Monkey::undo},
        {"redo", 4, true, &Monkey::redo},
        {"wheel", 10, true, &Monkey::wheelAnywhere},
        {"page turned", 4, true, &Monkey::turnPage},
        {"Tab", 4, true, &Monkey::walkByTab},
        {"midnight", 2, true, &Monkey::sleepPastMidnight},
        {"language", 1, true, &Monkey::speakOtherwise},
        {"click anywhere", 6, false, &Monkey::clickAnywhere},
        {"menu anywhere", 5, false, &Monkey::menuAnywhere},
        {"keys anywhere", 6, false, &Monkey::keysAnywhere}};
    return all;
}

} // namespace slopebook::monkey
