// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/outputs.h"

#include "core/log/failure.h"
#include "core/model/errors.h"

#include <algorithm>

namespace slopebook::app {

void Outputs::addFile(CLI::App& command, const std::string& option, std::filesystem::path& file,
                      const std::string& help) {
    command.add_option(option, file, help + "; - for standard output");
    if (m_files.empty())
        addReplace(command);
    m_files.push_back(&file);
}

void Outputs::addReplace(CLI::App& command) {
    command.add_flag("--replace", m_replace, "Writes a file that is there anew; never a log");
}

void Outputs::require(bool also) const {
    std::vector<std::filesystem::path> seen;
    int out = also ? 1 : 0;
    for (const auto* file : m_files) {
        if (file->empty())
            continue;
        if (to(*file).standardOutput()) {
            if (++out > 1)
                throw BadInput(asIs("more than one thing for standard output"),
                               asIs("one: a file, or --json"));
            continue;
        }
        sayingHow([&] {
            const auto target = log::requireWritable(*file, existing()).path;
            if (std::ranges::find(seen, target) != seen.end())
                throw BadInput(asIs("\"" + file->string() + "\" twice"), asIs("two files"));
            seen.push_back(target);
        });
    }
}

bool Outputs::textToo() const {
    return std::ranges::none_of(m_files, [](const auto* file) { return *file == "-"; });
}

log::Destination Outputs::to(const std::filesystem::path& file) const {
    return {file, existing()};
}

log::Existing Outputs::existing() const {
    return m_replace ? log::Existing::Replace : log::Existing::Refuse;
}

void sayingHow(const std::function<void()>& work) {
    try {
        work();
    } catch (const log::AlreadyThere& error) {
        const std::string said = error.what();
        throw LogError(error.kind(), asIs(said.substr(0, said.size() - 1) +
                                          ", or --replace where it is no log. Nothing was "
                                          "changed."));
    }
}

} // namespace slopebook::app
