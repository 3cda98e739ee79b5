#include <ringfill/document/lines.hpp>

#include <algorithm>
#include <string_view>

namespace ringfill {
namespace {

constexpr std::size_t helping_size = 65'536; // bytes, what a pipe holds

} // namespace

bool Lines::fill() {
    if (at_ < helping_.size())
        return true;
    if (ended_)
        return false; // a terminal would ask for its end again
    helping_.resize(helping_size);
    helping_.resize(source_(helping_.data(), helping_.size()));
    at_ = 0;
    ended_ = helping_.empty();
    return !ended_;
}

std::optional<Line> Lines::next() {
    if (!fill())
        return std::nullopt;
    Line line{++number_, {}, false};
    while (fill()) {
        const std::string_view rest = std::string_view(helping_).substr(at_);
        const std::size_t length = std::min(rest.find('\n'), rest.size());
        const std::size_t room = longest_ - line.text.size();
        line.text += rest.substr(0, std::min(length, room));
        line.too_long = line.too_long || length > room;
        at_ += length;
        if (length < rest.size()) {
            ++at_; // the line break
            break;
        }
    }
    if (line.text.ends_with('\r'))
        line.text.pop_back();
    return line;
}

} // namespace ringfill
