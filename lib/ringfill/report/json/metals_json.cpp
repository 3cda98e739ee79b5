#include <ringfill/report/json/metals_json.hpp>

namespace ringfill {
namespace {

Value suits_object(const BorePlan& bore) {
    Value::Object object{{"filler", bore.filler}, {"base", bore.base}};
    if (!bore.suit) {
        object.push_back({"verdict", "no table says"});
        return object;
    }
    object.push_back({"verdict", bore.suit->verdict == Verdict::recommended   ? "recommended"
                                 : bore.suit->verdict == Verdict::with_buffer ? "with a buffer"
                                                                              : "not advised"});
    object.push_back({"why", bore.suit->why});
    if (!bore.buffer.empty()) {
        Value::List buffer;
        for (const std::string& name : bore.buffer)
            buffer.push_back(Value(name));
        object.push_back({"buffer", std::move(buffer)});
    }
    object.push_back({"source", bore.suit->source});
    return object;
}

Value layer_object(const BorePlan& bore, std::size_t i) {
    Value::Object object{{"layer", static_cast<double>(i + 1)}, {"base_left", bore.dilution->base_left[i]}};
    const auto& metals = bore.layer_metals;
    if (!metals || i >= metals->layers.size())
        return object;
    const Equivalents found = schaeffler(metals->layers[i]);
    object.push_back({"cr_eq_pct", found.chromium});
    object.push_back({"ni_eq_pct", found.nickel});
    object.push_back({"ferrite_pct", ferrite(found)});
    if (metals->wrc) {
        const Equivalents wrc = wrc_1992(metals->layers[i]);
        object.push_back({"wrc_cr_eq_pct", wrc.chromium});
        object.push_back({"wrc_ni_eq_pct", wrc.nickel});
    }
    return object;
}

Value dilution_object(const BorePlan& bore) {
    const Dilution& dilution = *bore.dilution;
    Value::Object object{{"share", dilution.share.value}};
    if (dilution.range) {
        object.push_back({"share_low", dilution.range->value.first});
        object.push_back({"share_high", dilution.range->value.second});
    }
    object.push_back({"base_left_limit", dilution.limit.value});
    object.push_back({"layers_needed", static_cast<double>(dilution.needed)});
    if (dilution.finish_layer > 0)
        object.push_back(
            {"finish", Value::Object{{"layer", static_cast<double>(dilution.finish_layer)},
                                     {"base_left", base_left(dilution.share.value, dilution.finish_layer)}}});
    Value::List layers;
    for (std::size_t i = 0; i < dilution.base_left.size(); ++i)
        layers.push_back(layer_object(bore, i));
    object.push_back({"layers", std::move(layers)});
    if (!bore.no_ferrite.empty())
        object.push_back({"no_ferrite", bore.no_ferrite});
    return object;
}

} // namespace

void put_metals(Value::Object& object, const BorePlan& bore) {
    object.push_back({"suits", suits_object(bore)});
    if (bore.dilution)
        object.push_back({"dilution", dilution_object(bore)});
}

} // namespace ringfill
