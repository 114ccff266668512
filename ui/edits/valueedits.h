// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of what stands on its own in the log: athletes, lifts, devices, training blocks,
// sets of equipment.
#pragma once

#include "ui/edits/edit.h"
#include "ui/words/format.h"

namespace slopebook::ui {

/// How an edit reads a value back and which list it belongs to.
inline Athlete stored(const log::Log& log, AthleteId id) {
    return valueOf(log.athletes(), id);
}
inline Device stored(const log::Log& log, DeviceId id) {
    return valueOf(log.devices(), id);
}
inline Block stored(const log::Log& log, BlockId id) {
    return valueOf(log.blocks(), id);
}
inline Equipment stored(const log::Log& log, EquipmentId id) {
    return valueOf(log.equipment(), id);
}
inline TestKind stored(const log::Log& log, TestKindId id) {
    return valueOf(log.testKinds(), id);
}
inline Station stored(const log::Log& log, StationId id) {
    return valueOf(log.stations(), id);
}
inline Lift stored(const log::Log& log, LiftId id) {
    return valueOf(log.lifts(), id);
}
constexpr Logbook::What whatOf(AthleteId) {
    return Logbook::What::Athletes;
}
constexpr Logbook::What whatOf(DeviceId) {
    return Logbook::What::Devices;
}
constexpr Logbook::What whatOf(BlockId) {
    return Logbook::What::Blocks;
}
constexpr Logbook::What whatOf(EquipmentId) {
    return Logbook::What::Equipment;
}
constexpr Logbook::What whatOf(TestKindId) {
    return Logbook::What::Tests;
}
constexpr Logbook::What whatOf(StationId) {
    return Logbook::What::Stations;
}
constexpr Logbook::What whatOf(LiftId) {
    return Logbook::What::Lifts;
}

/// A value that stands on its own was added; taken back only while it is as it was added.
template <class Id, class Value>
class AddEdit final : public Edit {
public:
    AddEdit(EditHost& host, const QString& text, Id id, Value value)
        : Edit(host, text), m_id(id), m_value(std::move(value)) {}
    Logbook::What what() const override { return whatOf(m_id); }
    QString object(LoadUnit /*unit*/) const override { return slopebook::ui::text(m_value.name); }

protected:
    void apply() override { log().add(m_value, m_id); }
    void takeBack() override {
        if (stored(log(), m_id) != m_value)
            refuseChangedElsewhere();
        log().remove(m_id);
    }

private:
    Id m_id;
    Value m_value;
};

/// A value was changed from before to after.
template <class Id, class Value>
class ChangeEdit final : public Edit {
public:
    ChangeEdit(EditHost& host, const QString& text, Id id, Value before, Value after)
        : Edit(host, text), m_id(id), m_before(std::move(before)), m_after(std::move(after)) {}
    Logbook::What what() const override { return whatOf(m_id); }
    QString object(LoadUnit /*unit*/) const override { return slopebook::ui::text(m_after.name); }

protected:
    void apply() override { turn(m_before, m_after); }
    void takeBack() override { turn(m_after, m_before); }

private:
    void turn(const Value& from, const Value& to) {
        if (stored(log(), m_id) != from)
            refuseChangedElsewhere();
        log().change(m_id, to);
    }
    Id m_id;
    Value m_before, m_after;
};

/// A value was removed and is put back under its own id.
template <class Id, class Value>
class RemoveEdit final : public Edit {
public:
    RemoveEdit(EditHost& host, const QString& text, Id id, Value value)
        : Edit(host, text), m_id(id), m_value(std::move(value)) {}
    Logbook::What what() const override { return whatOf(m_id); }
    QString object(LoadUnit /*unit*/) const override { return slopebook::ui::text(m_value.name); }

protected:
    void apply() override { log().remove(m_id); }
    void takeBack() override { log().add(m_value, m_id); }

private:
    Id m_id;
    Value m_value;
};

} // namespace slopebook::ui
