#pragma once

#include <vector>

#include <ringfill/heat/boss_mesh.hpp>
#include <ringfill/heat/hot_metal.hpp>

namespace ringfill {

/// How hot the cells of a boss and its plates are, by the slots of its mesh; plain numbers in SI.
struct BossField {
    std::vector<double> kelvin;
    std::vector<double> content; ///< e, heat content over 20 °C [J/kg]
    double lost = 0;             ///< to air and into the machine, since the field began [J]
};

/// A part of the length that takes in heat through the bore.
struct BoreBand {
    double from = 0; ///< depth [m]
    double to = 0;

    double middle() const { return (from + to) / 2; }
    bool operator==(const BoreBand&) const = default;
};

/// What works on a boss for a while.
struct BossLoad {
    double heater = 0; ///< evenly into the outermost cells [W]
    double arc = 0;    ///< into the bore cells of the band, shared by overlap [W]
    BoreBand band = {};
    bool wrapped_outside = false; ///< the outside and both ends
    bool wrapped_bore = false;
    bool wrapped_plates = false;

    bool operator==(const BossLoad&) const = default;
};

/// The heat equation of a boss, stepped by RKL2 (Runge-Kutta-Legendre, second order [Meyer, Balsara, Aslam
/// 2014]) with coefficients held over the step. It keeps room for its working, so one serves one thread.
class BossEquation {
  public:
    /// @param blanket_W_m2K h_b of a wrapped face.
    BossEquation(BossMesh mesh, const HotMetal& metal, Temperature ambient, double blanket_W_m2K);

    const BossMesh& mesh() const { return mesh_; }
    const HeatCurves& metal() const { return metal_; }
    double ambient() const { return ambient_; } ///< [K]

    /// Everything at the temperature of the air.
    BossField at_ambient() const;

    /// One step of time [s], over 0.
    void step(BossField& field, const BossLoad& load, double seconds);

    /// The fastest that a cell of the boss changed in the last step [K/s].
    double fastest() const { return fastest_; }

    /// What a face loses for each square metre and kelvin over the air [W/(m² K)].
    double face_W_m2K(const BareFace& face, const BossLoad& load, double kelvin) const;

    /// Heat content over 20 °C of the boss and its plates [J].
    double content(const BossField& field) const;

  private:
    void set_coefficients(const BossField& field, const BossLoad& load);
    void set_losses(const BossField& field, const BossLoad& load);
    void set_sources(const BossLoad& load);
    int stages(double seconds) const;
    double rate(const std::vector<double>& over_air, std::vector<double>& out) const;
    void settle(BossField& field, double seconds);

    BossMesh mesh_;
    HeatCurves metal_;
    double ambient_;
    double blanket_;
    double fastest_ = 0;
    std::vector<std::size_t> losing_; ///< cells that lose heat to the air
    // Of the step in hand, by slots.
    std::vector<double> lambda_, c_, per_capacity_, outward_, farther_, loss_, source_, sum_;
    std::vector<double> link_, join_; ///< [W/K]
    // The states of its stages, in kelvin over the air, and their rates.
    std::vector<double> begin_, before_, last_, next_, begin_rate_, rate_;
};

} // namespace ringfill
