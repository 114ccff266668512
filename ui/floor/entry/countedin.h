// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace slopebook::ui {

/// Counts up while it stands.
class CountedIn {
public:
    explicit CountedIn(int& count) : m_count(count) { ++m_count; }
    ~CountedIn() { --m_count; }
    CountedIn(const CountedIn&) = delete;
    CountedIn& operator=(const CountedIn&) = delete;

private:
    int& m_count;
};

} // namespace slopebook::ui
