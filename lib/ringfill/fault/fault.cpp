#include <ringfill/fault/fault.hpp>

#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/stable_sort.hpp>
#include <range/v3/range/conversion.hpp>
#include <range/v3/view/join.hpp>
#include <range/v3/view/transform.hpp>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

Fault fault_in_file(std::string file, std::string reason, std::string remedy) {
    return {{.file = std::move(file)}, {}, std::move(reason), std::move(remedy), {}};
}

Fault fault_at_path(std::string path, std::string value, std::string reason, std::string remedy) {
    return {{.path = std::move(path)}, std::move(value), std::move(reason), std::move(remedy), {}};
}

std::string to_string(const Fault& fault) {
    constexpr std::size_t longest_words = 1'000;
    std::string text = to_string(fault.place);
    if (!text.empty())
        text += ": ";
    if (!fault.value.empty())
        text += fault.value + ' ';
    text += printable(fault.reason, longest_words); // names of the user's choosing stand in both
    if (!fault.remedy.empty())
        text += "; " + printable(fault.remedy, longest_words);
    if (!fault.excerpt.empty())
        text += '\n' + fault.excerpt;
    return text;
}

Faulty::Faulty(Origin origin, std::vector<Fault> faults) : origin_(origin), faults_(std::move(faults)) {
    ranges::stable_sort(faults_, {},
                        [](const Fault& fault) { return std::pair(fault.place.line, fault.place.column); });
    text_ = faults_ | ranges::views::transform([](const Fault& fault) { return to_string(fault); }) |
            ranges::views::join('\n') | ranges::to<std::string>();
    if (faults_.size() >= most_faults)
        text_ += fmt::format("\nonly the first {} faults are told; put these right first", most_faults);
}

Faulty::Faulty(Origin origin, Fault fault) : Faulty(origin, std::vector<Fault>{std::move(fault)}) {}

void refuse_if_any(Origin origin, const std::vector<Fault>& faults) {
    if (!faults.empty())
        throw Faulty(origin, faults);
}

} // namespace ringfill
