#include <ringfill/heat/boss_field.hpp>

#include <algorithm>
#include <cmath>

#include <ringfill/heat/surface_loss.hpp>

namespace ringfill {
namespace {

/// Room left under the limit of stability.
constexpr double safety = 1.02;

bool is_wrapped(FaceKind kind, const BossLoad& load) {
    switch (kind) {
    case FaceKind::bore:
        return load.wrapped_bore;
    case FaceKind::outside:
    case FaceKind::end:
        return load.wrapped_outside;
    case FaceKind::plate:
        return load.wrapped_plates;
    case FaceKind::wrapped_plate:
        return true;
    }
    return false;
}

} // namespace

BossEquation::BossEquation(BossMesh mesh, const HotMetal& metal, Temperature ambient, double blanket_W_m2K)
    : mesh_(std::move(mesh)), metal_(heat_curves(metal)), ambient_(ambient.value()), blanket_(blanket_W_m2K) {
    const std::size_t slots = mesh_.volume.size();
    for (std::vector<double>* of_slots : {&lambda_, &c_, &outward_, &farther_, &loss_, &source_, &sum_,
                                          &begin_, &before_, &last_, &next_, &begin_rate_, &rate_})
        of_slots->assign(slots, 0);
    per_capacity_.assign(slots, 0);
    link_.assign(mesh_.links.size(), 0);
    join_.assign(mesh_.joins.size(), 0);
    for (const BareFace& face : mesh_.faces)
        losing_.push_back(face.cell);
    std::sort(losing_.begin(), losing_.end());
    losing_.erase(std::unique(losing_.begin(), losing_.end()), losing_.end());
}

BossField BossEquation::at_ambient() const {
    BossField field;
    field.kelvin.assign(mesh_.volume.size(), ambient_);
    field.content.assign(mesh_.volume.size(), metal_.e(ambient_));
    return field;
}

double BossEquation::face_W_m2K(const BareFace& face, const BossLoad& load, double kelvin) const {
    return is_wrapped(face.kind, load) ? blanket_ : bare_W_m2K(face.emissivity, kelvin, ambient_);
}

void BossEquation::set_losses(const BossField& field, const BossLoad& load) {
    for (const std::size_t cell : losing_)
        loss_[cell] = 0;
    for (const BareFace& face : mesh_.faces)
        loss_[face.cell] += face.area * face_W_m2K(face, load, field.kelvin[face.cell]);
    for (std::size_t k = 0; k < mesh_.along; ++k)
        loss_[mesh_.slot(mesh_.across - 1, k)] += mesh_.carry_off;
}

void BossEquation::set_sources(const BossLoad& load) {
    std::fill(source_.begin(), source_.end(), 0.0);
    const double span = load.band.to - load.band.from;
    for (std::size_t k = 0; k < mesh_.along; ++k) {
        const double near = static_cast<double>(k) * mesh_.cell_length;
        const double overlap =
            std::min(load.band.to, near + mesh_.cell_length) - std::max(load.band.from, near);
        if (load.arc != 0 && overlap > 0)
            source_[mesh_.slot(0, k)] += load.arc * overlap / span;
        source_[mesh_.slot(mesh_.across - 1, k)] += load.heater / static_cast<double>(mesh_.along);
    }
}

/// Conductances, capacities, losses and sources as they stand at the begin of a step.
void BossEquation::set_coefficients(const BossField& field, const BossLoad& load) {
    const std::size_t slots = mesh_.volume.size();
    const std::size_t row = mesh_.across;
    const auto set_metal = [&](std::size_t from, std::size_t to) {
        for (std::size_t at = from; at < to; ++at) {
            lambda_[at] = metal_.lambda(field.kelvin[at]);
            c_[at] = metal_.c(field.kelvin[at]);
            per_capacity_[at] = 1 / (metal_.density * mesh_.volume[at] * c_[at]);
        }
    };
    set_metal(mesh_.first_cell(), mesh_.past_boss());
    set_metal(mesh_.first_of_plates(), slots);
    for (std::size_t at = mesh_.first_cell(); at < mesh_.past_boss(); ++at) {
        outward_[at] = mesh_.to_outer[at] * 0.5 * (lambda_[at] + lambda_[at + 1]);
        farther_[at] = mesh_.to_farther[at] * 0.5 * (lambda_[at] + lambda_[at + row]);
    }
    set_losses(field, load);
    set_sources(load);
    for (std::size_t at = mesh_.first_cell(); at < mesh_.past_boss(); ++at)
        sum_[at] = outward_[at] + outward_[at - 1] + farther_[at] + farther_[at - row] + loss_[at];
    for (std::size_t at = mesh_.first_of_plates(); at < slots; ++at)
        sum_[at] = loss_[at];
    for (std::size_t i = 0; i < link_.size(); ++i) {
        const PlateLink& link = mesh_.links[i];
        link_[i] = link.shape * 0.5 * (lambda_[link.inner] + lambda_[link.outer]);
        sum_[link.inner] += link_[i];
        sum_[link.outer] += link_[i];
    }
    for (std::size_t i = 0; i < join_.size(); ++i) {
        const PlateJoin& join = mesh_.joins[i];
        join_[i] = join.area / (join.boss_distance / lambda_[join.boss_cell] +
                                join.plate_distance / lambda_[join.plate_cell]);
        sum_[join.boss_cell] += join_[i];
        sum_[join.plate_cell] += join_[i];
    }
}

/// s, the least odd number of stages that is stable.
int BossEquation::stages(double seconds) const {
    double stiffest = 0;
    for (std::size_t at = 0; at < sum_.size(); ++at)
        stiffest = std::max(stiffest, sum_[at] * per_capacity_[at]);
    // (s² + s − 2)/4 ≥ x
    const double x = safety * seconds * stiffest;
    const int least = static_cast<int>(std::ceil((std::sqrt(9 + 16 * x) - 1) / 2));
    return std::max(3, least % 2 == 0 ? least + 1 : least);
}

/// How fast each cell warms at temperatures over the air [K/s]; returns what is lost there [W].
double BossEquation::rate(const std::vector<double>& over_air, std::vector<double>& out) const {
    const std::size_t row = mesh_.across;
    const double* t = over_air.data();
    for (std::size_t at = mesh_.first_cell(); at < mesh_.past_boss(); ++at)
        out[at] = (source_[at] - loss_[at] * t[at] + outward_[at] * (t[at + 1] - t[at]) +
                   outward_[at - 1] * (t[at - 1] - t[at]) + farther_[at] * (t[at + row] - t[at]) +
                   farther_[at - row] * (t[at - row] - t[at])) *
                  per_capacity_[at];
    for (std::size_t at = mesh_.first_of_plates(); at < out.size(); ++at)
        out[at] = -loss_[at] * t[at] * per_capacity_[at];
    const auto exchange = [&](std::size_t from, std::size_t to, double conductance) {
        const double flow = conductance * (t[from] - t[to]);
        out[from] -= flow * per_capacity_[from];
        out[to] += flow * per_capacity_[to];
    };
    for (std::size_t i = 0; i < link_.size(); ++i)
        exchange(mesh_.links[i].inner, mesh_.links[i].outer, link_[i]);
    for (std::size_t i = 0; i < join_.size(); ++i)
        exchange(mesh_.joins[i].boss_cell, mesh_.joins[i].plate_cell, join_[i]);
    double lost = 0;
    for (const std::size_t cell : losing_)
        lost += loss_[cell] * t[cell];
    return lost;
}

void BossEquation::step(BossField& field, const BossLoad& load, double seconds) {
    set_coefficients(field, load);
    const int s = stages(seconds);
    const std::size_t slots = begin_.size();
    for (std::size_t at = 0; at < slots; ++at)
        begin_[at] = field.kelvin[at] - ambient_;
    const auto b = [](double j) { return j < 2 ? 1.0 / 3 : (j * j + j - 2) / (2 * j * (j + 1)); };
    const double w = 4 / (1.0 * s * s + s - 2);
    const double first = w * seconds / 3;
    const double lost_at_begin = rate(begin_, begin_rate_);
    before_ = begin_;
    double lost_before = 0;
    double lost = first * lost_at_begin;
    for (std::size_t at = 0; at < slots; ++at)
        last_[at] = begin_[at] + first * begin_rate_[at];
    for (int j = 2; j <= s; ++j) {
        const double mu = (2.0 * j - 1) / j * b(j) / b(j - 1);
        const double nu = -(j - 1.0) / j * b(j) / b(j - 2);
        const double rest = 1 - mu - nu;
        const double ahead = mu * w * seconds;
        const double back = -(1 - b(j - 1)) * ahead;
        const double loss_here = rate(last_, rate_);
        for (std::size_t at = 0; at < slots; ++at)
            next_[at] = mu * last_[at] + nu * before_[at] + rest * begin_[at] + ahead * rate_[at] +
                        back * begin_rate_[at];
        const double lost_next = mu * lost + nu * lost_before + ahead * loss_here + back * lost_at_begin;
        lost_before = std::exchange(lost, lost_next);
        before_.swap(last_);
        last_.swap(next_);
    }
    field.lost += lost;
    settle(field, seconds);
}

/// Takes the last stage over: what the step gave is heat, and the temperature follows from it, so that none
/// is lost to a specific heat that varies.
void BossEquation::settle(BossField& field, double seconds) {
    double fastest = 0;
    const auto take_over = [&](std::size_t from, std::size_t to, bool counts) {
        for (std::size_t at = from; at < to; ++at) {
            const double there = ambient_ + last_[at];
            const double before = field.kelvin[at];
            field.content[at] += c_[at] * (there - before);
            field.kelvin[at] = there - (metal_.e(there) - field.content[at]) / metal_.c(there);
            if (counts)
                fastest = std::max(fastest, std::abs(field.kelvin[at] - before));
        }
    };
    take_over(mesh_.first_cell(), mesh_.past_boss(), true);
    take_over(mesh_.first_of_plates(), field.kelvin.size(), false);
    fastest_ = fastest / seconds;
}

double BossEquation::content(const BossField& field) const {
    double joules = 0;
    for (std::size_t at = 0; at < field.content.size(); ++at)
        joules += metal_.density * mesh_.volume[at] * field.content[at];
    return joules;
}

} // namespace ringfill
