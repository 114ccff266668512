// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/trail.h"

#include "core/model/errors.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
constexpr std::size_t stepBytes = 2 * sizeof(Sixteen);

Sixteen sixteenAt(std::string_view bytes, std::size_t at) {
    Sixteen value{};
    std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), value.size(),
                reinterpret_cast<char*>(value.data()));
    return value;
}

std::vector<Sixteen> sortedRevisions(const Trail& trail) {
    std::vector<Sixteen> all;
    all.reserve(trail.size());
    for (const Step& step : trail)
        all.push_back(step.revision);
    std::ranges::sort(all);
    return all;
}
} // namespace

Sixteen stepHash(const Sixteen& content, bool alive) {
    return alive ? content : hashOf(std::string("removed").append(viewOf(content)));
}

Sixteen revisionAfter(const std::optional<Sixteen>& before, const Sixteen& step) {
    std::string bytes(viewOf(step));
    if (before)
        bytes.append(viewOf(*before));
    return hashOf(bytes);
}

Sixteen revisionOfBoth(const Sixteen& one, const Sixteen& other, const Sixteen& step) {
    const auto [first, second] = std::minmax(one, other);
    return hashOf(std::string(viewOf(step)).append(viewOf(first)).append(viewOf(second)));
}

void extend(Trail& trail, const Sixteen& step) {
    const auto before = trail.empty() ? std::nullopt : std::optional(trail.back().revision);
    trail.push_back({.revision = revisionAfter(before, step), .hash = step});
}

Trail shortTrail(const Sixteen& content, bool alive) {
    Trail trail;
    extend(trail, stepHash(content, true));
    if (!alive)
        extend(trail, stepHash(content, false));
    return trail;
}

const Sixteen& revisionOf(const Trail& trail) {
    return trail.back().revision;
}

bool holds(const Trail& trail, const Sixteen& revision) {
    return std::ranges::find(trail, revision, &Step::revision) != trail.end();
}

const Step* lastCommon(const Trail& one, const Trail& other) {
    const std::vector<Sixteen> known = sortedRevisions(other);
    const auto common = std::find_if(one.rbegin(), one.rend(), [&](const Step& step) {
        return std::ranges::binary_search(known, step.revision);
    });
    return common == one.rend() ? nullptr : &*common;
}

Trail missingIn(const Trail& trail, const Trail& other) {
    const std::vector<Sixteen> known = sortedRevisions(trail);
    Trail missing;
    for (const Step& step : other)
        if (!std::ranges::binary_search(known, step.revision))
            missing.push_back(step);
    return missing;
}

std::string bytesOf(const Trail& trail) {
    std::string bytes;
    bytes.reserve(trail.size() * stepBytes);
    for (const Step& step : trail)
        bytes.append(viewOf(step.revision)).append(viewOf(step.hash));
    return bytes;
}

Trail readTrail(std::string_view bytes) {
    if (bytes.empty() || bytes.size() % stepBytes != 0)
        throw BadInput(say("a trail of %1 bytes", bytes.size()),
                       say("the steps of a thing, of 32 bytes each"));
    Trail trail;
    trail.reserve(bytes.size() / stepBytes);
    for (std::size_t at = 0; at < bytes.size(); at += stepBytes)
        trail.push_back(
            {.revision = sixteenAt(bytes, at), .hash = sixteenAt(bytes, at + sizeof(Sixteen))});
    if (trail.front().revision != revisionAfter({}, trail.front().hash))
        throw BadInput(say("a trail whose first step is none"),
                       say("the steps of a thing, of 32 bytes each"));
    return trail;
}

} // namespace slopebook::log
