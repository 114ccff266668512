// SPDX-License-Identifier: GPL-3.0-or-later
// A log that comes into being whole: made and filled under another name beside its own, then put in
// place without replacing anything.
#pragma once

#include "core/log/durable.h"

namespace slopebook::log {

struct Layout;

class NewLog {
public:
    /// Makes an empty log beside the target, which must not exist (LogError, Conflict). It is gone
    /// again with this object unless place() was called.
    explicit NewLog(const std::filesystem::path& target);
    NewLog(const std::filesystem::path& target, const Layout& layout);

    /// Where it is to be opened and filled.
    const std::filesystem::path& file() const { return m_file.path(); }
    /// Gives it its name, once all that had it open have closed it. LogError (Conflict) where
    /// somebody has made a file of that name meanwhile: theirs stays as it is.
    void place() { m_file.giveName(); }

private:
    NewFile m_file;
};

} // namespace slopebook::log
