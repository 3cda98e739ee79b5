#include <fmt/format.h>
#include <fmt/ranges.h>

#include "identity/random_job.hpp"

namespace ringfill::testing {
namespace {

/// Writes the members of one object; lengths come in mm and go out bare, in the job's unit.
class Members {
  public:
    explicit Members(UnitSystem units) : inch_(units == UnitSystem::inch) {}

    Members& text(const char* name, const std::string& value) { return raw(name, '"' + value + '"'); }
    Members& number(const char* name, double value) { return raw(name, fmt::format("{}", value)); }
    Members& length(const char* name, double mm) { return number(name, bare(mm)); }
    Members& lengths(const char* name, const std::vector<double>& mm) {
        std::vector<double> numbers;
        for (const double one : mm)
            numbers.push_back(bare(one));
        return raw(name, fmt::format("[{}]", fmt::join(numbers, ", ")));
    }
    Members& maybe(const char* name, std::optional<double> value, const char* unit) {
        return value ? text(name, fmt::format("{} {}", *value, unit)) : *this;
    }
    Members& maybe(const char* name, std::optional<double> value) {
        return value ? number(name, *value) : *this;
    }
    Members& raw(const char* name, const std::string& json) {
        text_ += fmt::format("{}\"{}\": {}", text_.empty() ? "" : ", ", name, json);
        return *this;
    }
    std::string object() const { return "{ " + text_ + " }"; }

  private:
    double bare(double mm) const { return inch_ ? mm / 25.4 : mm; }

    bool inch_;
    std::string text_;
};

template <class Range, class Write>
std::string list_of(const Range& range, Write write) {
    std::vector<std::string> texts;
    for (const auto& one : range)
        texts.push_back(write(one));
    return fmt::format("[{}]", fmt::join(texts, ", "));
}

std::string procedure_text(const Sketch::Procedure& procedure, UnitSystem units) {
    Members members(units);
    members.text("filler", procedure.filler).length("wire", procedure.wire).text("gas", procedure.gas);
    members.maybe("wire_feed", procedure.feed, "m/min").maybe("current", procedure.current, "A");
    members.maybe("travel", procedure.travel, "mm/min").maybe("travel_max", procedure.travel_max, "mm/min");
    members.text("path", procedure.helix ? "helix" : "ring").maybe("efficiency", procedure.efficiency);
    members.maybe("bead_ratio", procedure.bead_ratio).maybe("pitch_ratio", procedure.pitch_ratio);
    members.maybe("gas_flow", procedure.gas_flow, "L/min");
    if (procedure.own_spools)
        members.raw("spools", R"(["15 kg", "5 kg"])");
    return members.object();
}

std::string worn_text(const Sketch::Bore& bore, UnitSystem units) {
    Members members(units);
    if (bore.form == Sketch::Form::diameter)
        members.length("diameter", bore.diameter);
    else
        members.raw(
            "stations", list_of(bore.stations, [&](const Sketch::Station& station) {
                const char* form = bore.form == Sketch::Form::radii ? "radii" : "diameters";
                return Members(units).length("depth", station.depth).lengths(form, station.readings).object();
            }));
    if (bore.form != Sketch::Form::radii)
        members.length("offset", bore.offset).maybe("offset_clock", bore.offset_clock, "deg");
    return members.object();
}

std::string bore_text(const Sketch::Bore& bore, UnitSystem units) {
    Members members(units);
    members.text("name", bore.name).number("count", bore.count).text("base", bore.base);
    members.text("procedure", fmt::format("p{}", bore.procedure));
    members.length("finish_diameter", bore.finish).length("length", bore.length);
    if (bore.boss)
        members.length("boss_diameter", *bore.boss);
    members.raw("worn", worn_text(bore, units));
    if (bore.skim)
        members.length("skim", *bore.skim);
    else
        members.text("skim", "none");
    members.length("stock", bore.stock).length("overhang", bore.overhang);
    if (!bore.faces.empty())
        members.raw("faces", list_of(bore.faces, [&](const Sketch::Face& face) {
                        return Members(units)
                            .length("inner", face.inner)
                            .length("outer", face.outer)
                            .length("build", face.build)
                            .object();
                    }));
    if (!bore.grooves.empty())
        members.raw("grooves", list_of(bore.grooves, [&](const Sketch::Groove& groove) {
                        return Members(units)
                            .length("diameter", groove.diameter)
                            .length("width", groove.width)
                            .object();
                    }));
    return members.object();
}

} // namespace

std::string text_of(const Sketch& sketch, UnitSystem units) {
    Members procedures(units);
    for (std::size_t i = 0; i < sketch.procedures.size(); ++i)
        procedures.raw(fmt::format("p{}", i).c_str(), procedure_text(sketch.procedures[i], units));
    return Members(units)
        .text("format", "ringfill-job/1")
        .text("title", "a random job")
        .text("units", units == UnitSystem::inch ? "inch" : "mm")
        .raw("procedures", procedures.object())
        .raw("bores", list_of(sketch.bores, [&](const Sketch::Bore& bore) { return bore_text(bore, units); }))
        .object();
}

} // namespace ringfill::testing
