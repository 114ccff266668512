// SPDX-License-Identifier: GPL-3.0-or-later
// What the window shows while no log is open.
#pragma once

#include <QWidget>

class QLabel;
class QListWidget;
class QListWidgetItem;
class QPushButton;

namespace slopebook::ui {

class WelcomePage final : public QWidget {
    Q_OBJECT
public:
    explicit WelcomePage(bool hasSample, QWidget* parent = nullptr);

    void setRecent(const QStringList& files);
    /// Why a log could not be opened; empty clears it. wayBack: whether backups of it can be shown.
    void showProblem(const QString& why, bool wayBack = false);
    QString problem() const;

Q_SIGNALS:
    void sampleWanted();
    void newWanted();
    void openWanted();
    void importWanted();
    void backupsWanted();
    void recentWanted(const QString& file);
    /// Out of the list.
    void forgetWanted(const QString& file);

private:
    QWidget* buildButtons(bool hasSample);
    void openRecent(const QListWidgetItem* item);

    QLabel* m_problem;
    QPushButton* m_wayBack;
    QLabel* m_recentTitle;
    QListWidget* m_recent;
};

} // namespace slopebook::ui
