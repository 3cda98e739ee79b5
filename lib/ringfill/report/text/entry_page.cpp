#include <ringfill/report/text/entry_page.hpp>

#include <ringfill/report/text/columns.hpp>

namespace ringfill {

void EntryPage::row(std::string name, std::string value, const std::string& source) {
    rows_.push_back({std::move(name), std::move(value), "[" + source + "]"});
    keys_.insert(source);
}

void EntryPage::composition(const Composition& composition, std::string_view before, std::string_view least) {
    for (const auto& [element, percent] : composition)
        row(fmt::format("{}{}", before, element), fmt::format("{}{:.4g} %", least, percent.value),
            percent.source);
}

void EntryPage::say(const std::string& text, const std::string& source) {
    said_ += wrapped(fmt::format("{} [{}]", text, source), "- ");
    keys_.insert(source);
}

std::string EntryPage::text(const Bibliography& sources) const {
    std::string text;
    for (const std::string& line : columns(rows_, {false, false, false}))
        text += fmt::format("  {}\n", line);
    text += said_ + "\nSOURCES\n";
    for (const std::string& key : keys_)
        if (const auto found = sources.find(key); found != sources.end())
            text += wrapped(fmt::format("[{}] {}; edition {}; {}; kind: {}; known by: {}.", key,
                                        found->second.title, found->second.edition, found->second.place,
                                        found->second.kind, found->second.seen),
                            "- ");
    return text;
}

} // namespace ringfill
