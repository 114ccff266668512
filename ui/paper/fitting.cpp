// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/fitting.h"

#include <algorithm>
#include <array>
#include <optional>

namespace slopebook::ui::page {

namespace {

struct Step {
    double air, picture;
};
constexpr std::array closer{Step{.air = 0.9, .picture = 0.95}, Step{.air = 0.8, .picture = 0.9},
                            Step{.air = 0.7, .picture = 0.85}, Step{.air = 0.6, .picture = 0.8}};
constexpr std::array smallerTypes{0.94, 0.88, 0.82, 0.76};
// Beside notes on a page of their own pictures may take what these leave.
constexpr std::array apartPictures{1.5, 1.35, 1.2, 1.1, 1.0, 0.95, 0.9, 0.85, 0.8};

class Laying {
public:
    Laying(const Print& print, const QSizeF& paper) : m_print(print), m_paper(paper) {}

    Flow laid(const Closeness& closeness) const {
        Flow flow(m_paper, m_print.style.margin, m_print.style.foot, closeness);
        m_print.fill(flow);
        return flow;
    }

    /// By as little as will do.
    std::optional<Flow> within(std::size_t most, double type) const {
        const auto by = [&](const Step& step) {
            return laid({.type = type, .air = step.air, .picture = step.picture});
        };
        if (by(closer.back()).pages().size() > most)
            return std::nullopt;
        for (const Step& step : closer)
            if (Flow flow = by(step); flow.pages().size() <= most)
                return flow;
        return std::nullopt;
    }

    std::optional<Flow> apart(std::size_t most, double type) const {
        for (int way = 1; way <= m_print.fitting.ways; ++way)
            for (const double picture : apartPictures)
                if (Flow flow = laid({.type = type, .picture = picture, .apart = way});
                    flow.pages().size() <= most)
                    return flow;
        return std::nullopt;
    }

private:
    const Print& m_print;
    QSizeF m_paper;
};

} // namespace

Flow fitted(const Print& print, const QSizeF& paper) {
    const Laying laying(print, paper);
    Flow flow = laying.laid({});
    std::size_t pages = flow.pages().size();
    if (pages == 1)
        return flow;
    const std::size_t most = print.fitting.most;
    double type = 1;
    auto less = laying.within(most > 0 ? std::min(most, pages - 1) : pages - 1, type);
    if (!less && most > 0 && pages > most)
        for (const double smaller : smallerTypes)
            if (less = laying.within(most, smaller); less) {
                type = smaller;
                break;
            }
    if (less) {
        flow = std::move(*less);
        pages = flow.pages().size();
    }
    if (pages > 1)
        if (auto parted = laying.apart(pages, type))
            return std::move(*parted);
    return flow;
}

} // namespace slopebook::ui::page
