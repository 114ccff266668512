// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/importsettings.h"

#include "core/answers/published.h"
#include "core/answers/testkinds.h"

namespace slopebook::ui {

exchange::ImportSettings importSettings(bool dryRun, const Progress& progress) {
    exchange::ImportSettings settings;
    settings.dryRun = dryRun;
    settings.progress = progress;
    settings.publishedMvt = [](const std::string& lift, VelocityKind kind) -> std::optional<Mvt> {
        const auto row = answers::published(lift, kind);
        return row ? row->mvt : std::nullopt;
    };
    settings.knownTest = [](const std::string& test) { return answers::builtInTestKind(test); };
    return settings;
}

} // namespace slopebook::ui
