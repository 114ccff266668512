// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/monkey/book.h"

#include <algorithm>
#include <iterator>

namespace slopebook::monkey {

namespace {

std::string joined(std::initializer_list<std::string> parts) {
    std::string all;
    for (const std::string& part : parts)
        all += (all.empty() ? "" : "|") + part;
    return all;
}

std::string rowOf(const SetEntry& set) {
    std::string row = std::to_string(set.grams) + (set.maximum ? " g!" : " g");
    for (const RepEntry& rep : set.reps)
        row += " " + std::to_string(rep.micro) + (rep.out.empty() ? "" : "x(" + rep.out + ")");
    return joined({row, "out " + set.out, "note " + set.note});
}

} // namespace

int Book::nextOrdinal(const std::string& athlete, const std::string& day) const {
    int last = 0;
    for (const auto& [key, session] : sessions)
        if (session.athlete == athlete && session.day == day)
            last = std::max(last, session.ordinal);
    return last + 1;
}

Key Book::latest(const std::string& athlete, const std::string& day) const {
    Key found = keyToCome;
    int last = 0;
    for (const auto& [key, session] : sessions)
        if (session.athlete == athlete && session.day == day && session.ordinal > last) {
            last = session.ordinal;
            found = key;
        }
    return found;
}

std::vector<std::string> Book::athletes() const {
    const std::string begin = "athletes|";
    std::vector<std::string> names;
    for (const std::string& row : rest)
        if (row.starts_with(begin))
            names.push_back(row.substr(begin.size(), row.find('|', begin.size()) - begin.size()));
    return names;
}

std::vector<std::string> rowsOf(const Book& book) {
    std::vector<std::string> rows(book.rest.begin(), book.rest.end());
    for (const auto& [key, session] : book.sessions) {
        const std::string head = joined(
            {"session", session.athlete, session.day, "#" + std::to_string(session.ordinal)});
        rows.push_back(joined(
            {head, "body " + std::to_string(session.bodyGrams) + " g", "note " + session.note}));
        for (const auto& [lift, under] : session.under)
            rows.push_back(joined({head, lift, "device " + under.device, "place " + under.place}));
        for (const auto& [lift, sets] : session.sets)
            for (std::size_t i = 0; i < sets.size(); ++i)
                rows.push_back(
                    joined({head, lift, "set " + std::to_string(i + 1), rowOf(sets[i])}));
        for (const auto& [test, attempts] : session.attempts)
            for (std::size_t i = 0; i < attempts.size(); ++i)
                rows.push_back(joined({head, test, "attempt " + std::to_string(i + 1),
                                       attempts[i].side, std::to_string(attempts[i].micro),
                                       "out " + attempts[i].out, "note " + attempts[i].note}));
    }
    std::ranges::sort(rows);
    return rows;
}

unsigned long long digestOf(const Book& book) {
    unsigned long long hash = 0xcbf29ce484222325; // FNV-1a
    for (const std::string& row : rowsOf(book))
        for (const char c : row + '\n')
            hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
    return hash;
}

std::string difference(const Book& from, const Book& to) {
    const auto before = rowsOf(from), after = rowsOf(to);
    std::string all;
    std::vector<std::string> some;
    std::ranges::set_difference(before, after, std::back_inserter(some));
    for (const std::string& row : some)
        all += "  - " + row + "\n";
    some.clear();
    std::ranges::set_difference(after, before, std::back_inserter(some));
    for (const std::string& row : some)
        all += "  + " + row + "\n";
    return all.empty() ? "  the same rows under other keys\n" : all;
}

std::set<std::string> owners(const Book& from, const Book& to) {
    std::set<std::string> names;
    const auto compare = [&names](const Book& one, const Book& other) {
        for (const auto& [key, session] : one.sessions) {
            const auto there = other.sessions.find(key);
            if (there == other.sessions.end() || there->second != session)
                names.insert(session.athlete);
        }
    };
    compare(from, to);
    compare(to, from);
    return names;
}

} // namespace slopebook::monkey
