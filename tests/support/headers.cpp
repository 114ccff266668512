// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing of its own: a target needs a source before its precompiled headers can be used by others.
