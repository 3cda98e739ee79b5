#include <ringfill/caution/caution.hpp>

namespace ringfill {

std::string names_of(const std::vector<Subject>& about) {
    std::string names;
    for (const Subject& one : about)
        names += (names.empty() ? "" : ", ") + one.name;
    return about.empty() ? std::string("the job") : names;
}

std::string_view name_of(Applies applies) {
    return applies == Applies::yes ? "yes" : "unknown";
}

bool is_about_bore(const Caution& caution, std::string_view bore) {
    return caution.about.size() == 1 && caution.about.front().kind == Concern::bore &&
           caution.about.front().name == bore;
}

void CautionList::add(When when, Matter matter, std::string text, std::string because, std::string source) {
    list_.push_back(
        {about_, when, matter, Applies::yes, std::move(text), std::move(because), std::move(source)});
}

void CautionList::before(std::string text, std::string because, std::string source) {
    add(When::before, matter_, std::move(text), std::move(because), std::move(source));
}

} // namespace ringfill
