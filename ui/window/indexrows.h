// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of an index: names of athletes as far as they are read, and pages: under the chosen
// athlete, or before all.
#pragma once

#include "ui/window/namemodel.h"
#include "ui/window/pagetable.h"

namespace slopebook::ui {

class IndexRows final : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        KeyRole = Qt::UserRole, ///< of an athlete
        PageRole,               ///< a Page as int
        ChosenRole,             ///< the athlete or page that is shown
        HereRole,               ///< the one of them that opens onto the page
        InnerRole               ///< a page under an athlete
    };
    struct Shown {
        NameModel* names = nullptr;        ///< nothing: no athletes
        std::optional<qint64> chosen = {}; ///< among them
        std::vector<Page> pages = {};
        bool unfolded = false; ///< the pages stand under the chosen athlete, else before all
        Page page{};
    };

    using QAbstractListModel::QAbstractListModel;

    void show(Shown shown);
    int rowOf(std::optional<qint64> athlete) const; ///< -1: not read, or not there
    int rowOf(Page page) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

private:
    struct Row {
        bool page = false;
        int at = 0; ///< in pages, or among the names
    };
    std::vector<Row> rows() const;
    void reread();
    void readOn();
    std::optional<qint64> keyAt(int name) const;

    Shown m_shown;
    std::vector<Row> m_rows;
};

} // namespace slopebook::ui
