// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cells.h"

#include "core/model/phrases/exchange.h"

#include <csv.h>

#include <array>
#include <charconv>
#include <cmath>

namespace slopebook::exchange {

namespace {

// Would a spreadsheet run it, or would unguarded() take a ' off it? Then it needs a ' of its own.
bool needsGuard(std::string_view text) {
    const auto quotes = text.find_first_not_of('\'');
    if (quotes == std::string_view::npos)
        return false;
    const auto begin = text.find_first_not_of(' ', quotes);
    return begin != std::string_view::npos &&
           std::string_view("=+-@\t\r\n").find(text[begin]) != std::string_view::npos;
}

} // namespace

std::string guarded(std::string_view text) {
    return needsGuard(text) ? "'" + std::string(text) : std::string(text);
}

std::string unguarded(std::string_view cell) {
    if (cell.starts_with('\'') && needsGuard(cell.substr(1)))
        cell.remove_prefix(1);
    return std::string(cell);
}

std::optional<double> readNumber(std::string_view cell) {
    double value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<int> readCount(std::string_view cell) {
    int value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc{} || end != cell.data() + cell.size() || value < 1 || value > 1'000'000)
        return std::nullopt;
    return value;
}

std::string writeNumber(double value) {
    std::array<char, 512> text{};
    const auto [end, error] =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return error == std::errc{} ? std::string(text.data(), end) : std::string{};
}

std::string writeKilograms(Mass mass) {
    return writeNumber(kilograms(mass));
}

std::string csvText(std::string_view text) {
    const std::string safe = guarded(text);
    const bool plain = safe.find_first_of("\",\r\n\t") == std::string::npos &&
                       !safe.starts_with(' ') && !safe.ends_with(' ');
    if (plain)
        return safe;
    std::string quoted(csv_write(nullptr, 0, safe.data(), safe.size()), '\0');
    csv_write(quoted.data(), quoted.size(), safe.data(), safe.size());
    return quoted;
}

Words found(std::string_view cell) {
    constexpr std::size_t most = 60;
    if (cell.empty())
        return say("nothing");
    if (cell.size() <= most)
        return say("\"%1\"", cell);
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(cell[end]) & 0xC0) == 0x80)
        --end; // not in the middle of a character
    return say("\"%1...\"", cell.substr(0, end));
}

} // namespace slopebook::exchange
