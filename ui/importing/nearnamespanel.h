// SPDX-License-Identifier: GPL-3.0-or-later
// Asks who new athletes of a file are whose names are nearly another's.
#pragma once

#include "core/exchange/whois.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QGridLayout;
class QScrollArea;

namespace slopebook::ui {

class NearNamesPanel final : public QWidget {
    Q_OBJECT
public:
    explicit NearNamesPanel(QWidget* parent = nullptr);

    /// Asks about names that were not asked about yet; the answers to the others stay. Beyond ten,
    /// one answer is for all the rest. Hidden while there is nothing to ask.
    void ask(const std::vector<exchange::NearName>& names);
    bool answered() const;
    exchange::WhoIsWho who() const;

Q_SIGNALS:
    void changed(); ///< another answer

private:
    struct Asked {
        exchange::NearName name;
        QComboBox* answer;
    };
    QComboBox* addQuestion(const QString& question, const QString& objectName);

    QGridLayout* m_rows;
    QScrollArea* m_scroll;
    std::vector<Asked> m_asked;
    std::vector<exchange::NearName> m_rest;
    QComboBox* m_ofRest = nullptr;
};

} // namespace slopebook::ui
