#include <range/v3/algorithm/contains.hpp>

#include <ringfill/caution/doubt_rules.hpp>

namespace ringfill {

std::string to_string(const Doubt& doubt) {
    return fmt::format("{}: {} looks mistyped: usual is {}{}", doubt.field, doubt.value, doubt.usual,
                       doubt.like.empty() ? "." : fmt::format("; meant {}?", doubt.like));
}

void DoubtList::add(const std::string& field, std::string value, std::string usual, std::string like) {
    const std::string whole = path.empty() ? field : path + "." + field;
    if (!ranges::contains(found, whole, &Doubt::field))
        found.push_back({whole, std::move(value), std::move(usual), std::move(like)});
}

void DoubtList::judge(const std::string& field, std::optional<double> value,
                      const std::optional<Usual>& usual, Figure shown, const std::string& why) {
    if (!value || !usual || usual->holds(*value))
        return;
    std::string like;
    for (const double slipped : {*value / 10, *value * 10, *value / 100})
        if (like.empty() && usual->holds(slipped))
            like = shown(slipped, units);
    const std::string most = shown(usual->high, units);
    add(field, shown(*value, units),
        usual->low > 0 ? fmt::format("{} to {}{}", shown(usual->low, units), most, why)
                       : fmt::format("{} at most{}", most, why),
        like);
}

std::vector<Doubt> doubts(const PlannedWork& work, const Shop& shop) {
    DoubtList all{work.job.units};
    for (const TypedOddly& typed : work.job.typed_oddly)
        all.add(typed.path, typed.text, typed.usual);
    for (const Settings& settings : work.settings) {
        all.path = settings.procedure->path;
        arc_doubts(all, settings);
        approved_doubts(all, *settings.procedure, work.bores);
    }
    for (std::size_t i = 0; i < work.bores.size(); ++i) {
        const WornBore& bore = work.given[i].bore;
        all.path = bore.path;
        certificate_doubts(all, bore, work.given[i].base);
        reading_doubts(all, bore);
        size_doubts(all, bore, work.bores[i], shop.size_steps);
        length_doubts(all, bore, work.bores[i]);
    }
    all.path.clear();
    work_doubts(all, work, shop);
    return std::move(all.found);
}

} // namespace ringfill
