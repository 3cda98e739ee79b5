#include <ringfill/document/scan.hpp>

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/document/number_text.hpp>

namespace ringfill {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\n' || c == '\r' || c == '\t';
}

} // namespace

bool Scanner::is_open_comment(std::size_t begin) const {
    return text_.substr(std::min(begin, text_.size()), 2) == "/*" &&
           text_.find("*/", begin + 2) == std::string_view::npos;
}

bool Scanner::stop(Broken why, std::size_t offset) {
    if (!is_in_text_ && is_open_comment(offset))
        return stop_at_end();
    broken_ = why;
    at_ = offset;
    return false;
}

std::string Scanner::path() const {
    std::string path;
    for (const Open& open : open_)
        if (open.is_list)
            path = element_path(path, open.index);
        else if (!open.key.empty())
            path = member_path(path, open.key);
    return path;
}

bool Scanner::read() {
    if (!skip_blanks_before_more() || !value(document_.root) || !skip_blanks())
        return false;
    if (at_ < text_.size())
        return stop(Broken::goes_on, at_);
    return !has_too_many_members_ || stop(Broken::too_many_members, text_.size());
}

/// Goes over blanks and comments. A comment that is not closed runs to the end.
bool Scanner::skip_blanks() {
    for (;;) {
        while (at_ < text_.size() && is_blank(text_[at_]))
            ++at_;
        const std::string_view two = text_.substr(at_, 2);
        if (two == "//") {
            at_ = std::min(text_.size(), text_.find('\n', at_));
        } else if (two == "/*") {
            const std::size_t close = text_.find("*/", at_ + 2);
            if (close == std::string_view::npos)
                return stop_at_end();
            at_ = close + 2;
        } else {
            return true;
        }
    }
}

/// Goes over a sign that must stand here.
bool Scanner::sign(char wanted) {
    if (at_ == text_.size())
        return stop_at_end();
    if (text_[at_] != wanted)
        return stop(Broken::syntax, at_);
    ++at_;
    return true;
}

bool Scanner::count(std::size_t offset) {
    if (has_too_many_members_)
        return stop(Broken::too_many_members, offset);
    if (values_left_ == 0)
        return stop(Broken::too_many_values, offset);
    --values_left_;
    return true;
}

bool Scanner::value(Value& to) {
    to.begin = at_;
    const bool is_read = held(to);
    to.end = at_;
    return is_read;
}

bool Scanner::held(Value& to) {
    const char first = text_[at_];
    if (first == '{')
        return object(to);
    if (first == '[')
        return list(to);
    if (first == '"')
        return text(to.held.emplace<std::string>(), longest_text) && count(at_ - 1);
    if (first == '-' || is_digit(first))
        return number(to);
    return first == 'n' ? literal(to, "null") : literal(to, first == 't' ? "true" : "false");
}

bool Scanner::literal(Value& to, std::string_view word) {
    const std::string_view rest = text_.substr(at_);
    if (rest.front() != word.front())
        return stop(Broken::syntax, at_);
    if (!rest.starts_with(word)) {
        // A word as long as this one is wrong from its begin, a shorter one where it differs.
        const std::size_t end = std::min(rest.size(), rest.find_first_of(" \t\r\n:,{}[]\"/", 1));
        std::size_t same = 1;
        while (end < word.size() && same < end && rest[same] == word[same])
            ++same;
        if (end < word.size() && at_ + same == text_.size())
            return stop_at_end();
        return stop(Broken::syntax, end < word.size() ? at_ + same : at_);
    }
    if (!count(at_))
        return false;
    if (word != "null")
        to.held = word == "true";
    at_ += word.size();
    return true;
}

/// A list or an object, whose elements or members `read_one` reads one by one.
template <class Held, class ReadOne>
bool Scanner::bracketed(Value& to, char close, ReadOne read_one) {
    if (depth_left_ == 0)
        return stop(Broken::too_deep, at_);
    if (!count(at_))
        return false;
    Held& held = to.held.emplace<Held>();
    held.reserve(close == ']' ? 3 : 4); // a range and its source
    --depth_left_;
    ++at_;
    open_.push_back({close == ']'});
    while (skip_blanks_before_more() && text_[at_] != close) {
        if (!read_one(held) || !skip_blanks_before_more())
            return false;
        if (text_[at_] == close)
            break;
        if (!sign(','))
            return false;
    }
    if (broken_ != Broken::nothing)
        return false;
    open_.pop_back();
    ++depth_left_;
    ++at_;
    return true;
}

bool Scanner::list(Value& to) {
    return bracketed<Value::List>(to, ']', [&](Value::List& elements) {
        const bool is_read = value(elements.emplace_back());
        open_.back().index += is_read ? 1 : 0;
        return is_read;
    });
}

bool Scanner::object(Value& to) {
    Places places;
    return bracketed<Value::Object>(to, '}', [&](Value::Object& members) { return member(members, places); });
}

bool Scanner::member(Value::Object& members, Places& places) {
    if (text_[at_] != '"')
        return stop(Broken::syntax, at_);
    Member& read = members.emplace_back();
    read.name_begin = at_;
    if (!text(read.name, longest_key))
        return false;
    open_.back().key = read.name;
    if (!skip_blanks_before_more() || !sign(':') || !skip_blanks_before_more() || !value(read.value))
        return false;
    const std::size_t before = first_place(members, places);
    const bool is_twice = before + 1 < members.size();
    if (is_twice && faults_.size() < most_faults) // finding the place of a fault reads the whole text before
        faults_.push_back(fault_at(document_, read.name_begin, path(), {},
                                   fmt::format("stands here twice, first in line {}",
                                               place_at(document_.text, members[before].name_begin).line),
                                   "keep one of the two"));
    has_too_many_members_ = has_too_many_members_ || (!is_twice && members.size() > most_members);
    if (is_twice || members.size() > most_members)
        members.pop_back();
    else
        open_.back().key.clear();
    return true;
}

/// The place of the first member that has the name of the last one: its own, unless the name stands twice.
std::size_t Scanner::first_place(const Value::Object& members, Places& places) {
    constexpr std::size_t few = 64; // are compared sooner than put in order
    const std::size_t last = members.size() - 1;
    if (last < few)
        return static_cast<std::size_t>(ranges::find(members, members[last].name, &Member::name) -
                                        members.begin());
    for (std::size_t i = places.size(); i < last; ++i)
        places.emplace(members[i].name, i);
    return places.emplace(members[last].name, last).first->second;
}

} // namespace ringfill
