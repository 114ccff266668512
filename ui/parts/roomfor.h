// SPDX-License-Identifier: GPL-3.0-or-later
// The least room of what stands on a page.
#pragma once

class QLineEdit;
class QString;
class QWidget;

namespace slopebook::ui {

/// The least height of a page's picture: a third of its window's, whatever stands beside it; and
/// so many lines of text where it cannot say all in fewer (the page is scrolled then).
int pictureHeight(const QWidget& page, int lines = 0);

/// What an empty field says of what it takes: behind the caret, which stands on no letter of it.
void setHint(QLineEdit& field, const QString& words);

/// As wide at the least as what the empty field asks for.
void fitPlaceholder(QLineEdit& field);

} // namespace slopebook::ui
