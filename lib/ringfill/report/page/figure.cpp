#include <ringfill/report/page/figure.hpp>

#include <fmt/format.h>

#include <ringfill/fault/place.hpp>

namespace ringfill {
namespace {

std::string_view name_of(Shown how) {
    switch (how) {
    case Shown::twice:
        return "twice";
    case Shown::up:
        return "up";
    case Shown::down:
        return "down";
    case Shown::clock:
        return "clock";
    case Shown::count:
        return "count";
    case Shown::plainly:
        break;
    }
    return "";
}

Attributes attributes_of(const Sentence& sentence, const std::string& bore) {
    Attributes attributes{{"class", sentence.begin == "! " ? "told stop" : "told"}};
    std::string figures;
    for (const std::string& path : sentence.figures)
        figures += (figures.empty() ? "" : " ") + member_path(bore, path);
    if (!figures.empty())
        attributes.emplace_back("data-figures", figures);
    return attributes;
}

} // namespace

Markup figure(const std::string& path, const std::string& shown, Shown how) {
    Attributes attributes{{"data-figure", path}};
    if (how != Shown::plainly)
        attributes.emplace_back("data-shown", name_of(how));
    return element("span", shown, attributes);
}

Markup given(const std::string& path, const std::string& shown) {
    return element("span", shown, {{"data-given", path}});
}

Markup as_told(const std::string& path, const std::string& text) {
    return element("span", text, {{"data-text", path}});
}

Markup filler_figure(const std::string& path, const BorePlan& bore, UnitSystem units) {
    return bore.deposition.piece
               ? figure(path + ".pieces", fmt::format("{}", bore.metal.pieces)) + words(" pieces")
               : figure(path + ".wire_kg", show(bore.metal.wire, units));
}

Markup paragraphs(const Sentences& sentences, const std::string& bore) {
    Markup all;
    Markup list;
    const auto end_list = [&] {
        if (!list.empty())
            all += element("ul", list);
        list = {};
    };
    for (const Sentence& sentence : sentences) {
        const Attributes attributes = attributes_of(sentence, bore);
        if (sentence.begin == "  - ") {
            list += element("li", sentence.text, attributes);
            continue;
        }
        end_list();
        all += element("p", sentence.text, attributes);
    }
    end_list();
    return all;
}

} // namespace ringfill
