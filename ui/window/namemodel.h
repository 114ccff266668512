// SPDX-License-Identifier: GPL-3.0-or-later
// Names in their order, read page by page: a log may hold many thousands.
#pragma once

#include <QAbstractListModel>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace slopebook::ui {

/// Keys and names, in order: those that hold `find` (letter case aside; empty: all), after that
/// name (absent: from the first), so many at most. May throw.
using Names = std::vector<std::pair<qint64, QString>>;
using NameSource =
    std::function<Names(const QString& find, const std::optional<QString>& after, int most)>;

/// A source over names that are all at hand.
NameSource sourceOf(Names names);

/// Qt::UserRole gives the key.
class NameModel final : public QAbstractListModel {
    Q_OBJECT
public:
    static constexpr int pageRows = 100;

    using QAbstractListModel::QAbstractListModel;

    /// Reads the first page. Throws what the source throws.
    void setSource(NameSource source, const QString& find = {});
    /// Shows what that one shows, from its source, without asking it.
    void setSameAs(const NameModel& other);
    /// No view reads on by itself then, readOn() alone does.
    void setReadOnDemand() { m_onDemand = true; }
    /// One page more; whether there was one.
    bool readOn();
    /// Narrows the same source down. A source that throws leaves nothing.
    void setFind(const QString& find);
    /// Of the names that hold what was typed: the name itself, letter case aside, else the first.
    std::optional<qint64> bestMatch(const QString& typed);
    const NameSource& source() const { return m_source; }
    /// The row of that key, read if need be; -1 where it is not there.
    int rowOf(qint64 key);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

private:
    Names nextPage();

    NameSource m_source;
    QString m_find;
    Names m_names;
    bool m_more = false;
    bool m_onDemand = false;
};

} // namespace slopebook::ui
