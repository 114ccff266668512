// SPDX-License-Identifier: GPL-3.0-or-later
// How far two devices agree: the difference of each set against the mean of both, with the bias and
// the limits of agreement (Bland and Altman 1986).
#pragma once

#include "core/answers/agreement.h"
#include "ui/charts/paintedchart.h"

#include <QPainter>
#include <QString>

#include <optional>
#include <vector>

namespace slopebook::ui {

struct AgreementData {
    struct Set {
        double mean = 0, difference = 0; ///< m/s
        friend bool operator==(const Set&, const Set&) = default;
    };
    std::vector<Set> sets{};
    QString first{}, second{}; ///< the devices
    double bias = 0;
    stats::Interval biasInterval{}, limits{}, lower{}, upper{};
    double level = 0.95;
    friend bool operator==(const AgreementData&, const AgreementData&) = default;
};

AgreementData agreementData(const answers::AgreementStudy& study, const QString& first,
                            const QString& second);

void paintAgreement(QPainter& painter, const QRectF& target, const AgreementData& data,
                    const look::Ground& ground, double textSize, std::optional<int> ringed = {});

class AgreementChart final : public charts::PaintedChart {
    Q_OBJECT
public:
    using PaintedChart::PaintedChart;
    void setData(AgreementData data);
    const AgreementData& data() const { return m_data; }
    void setRinged(std::optional<int> set);
    charts::FigureTable figures() const override;

protected:
    void paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                    double textSize, bool onScreen) const override;

private:
    AgreementData m_data;
    std::optional<int> m_ringed;
};

} // namespace slopebook::ui
