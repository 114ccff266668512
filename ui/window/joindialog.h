// SPDX-License-Identifier: GPL-3.0-or-later
// Joins the log to a shared store: its address is asked first, which squad its own things go to is
// chosen of those that it names, and nothing is written until both are right.
#pragma once

#include "core/store/exchange.h"
#include "ui/parts/loosework.h"

#include <QDialog>

#include <exception>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace slopebook::ui {

class JoinGate;

class JoinDialog final : public QDialog {
    Q_OBJECT
public:
    /// address, squad: of the store that it meets already, where it does.
    JoinDialog(std::filesystem::path log, const QString& address, const QString& squad,
               QWidget* parent = nullptr);

    void accept() override; ///< asks the store, then joins it
    void reject() override; ///< stops what is under way first

private:
    /// Of the store that was asked.
    struct Answer {
        std::vector<store::Squad> squads{};
        std::exception_ptr error{};
    };
    void build();
    void ask();
    void join();
    void answered(const Answer& answer);
    void joined(const std::exception_ptr& error);
    void work(const QString& words, LooseWork::Work work);
    void rest();
    void refuse(const std::exception_ptr& error);
    void refuse(const QString& why);
    void forget();
    void tell(const QString& words);

    std::filesystem::path m_log;
    QString m_before; ///< the squad that it went to before
    QLineEdit* m_address;
    QComboBox* m_squad;
    QLabel* m_told;
    QPushButton* m_ask = nullptr;
    QPushButton* m_join = nullptr;
    bool m_known = false;             ///< the squads of the address as it stands
    std::shared_ptr<JoinGate> m_gate; ///< of the joining under way
    LooseWork m_work;
};

} // namespace slopebook::ui
