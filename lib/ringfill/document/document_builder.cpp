#include <ringfill/document/document_builder.hpp>

#include <cmath>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>

namespace ringfill {

namespace json = boost::json;

std::string DocumentBuilder::path() const {
    std::string text;
    for (const Open& open : open_) {
        const std::string& key = &open == &open_.back() ? key_ : open.key_within;
        if (open.is_list)
            text = element_path(text, open.value.list()->size());
        else if (!key.empty())
            text = member_path(text, key);
    }
    return text;
}

bool DocumentBuilder::on_key(json::string_view s, std::size_t, json::error_code&) {
    append(s);
    key_ = std::exchange(text_, {});
    key_begin_ = std::exchange(token, nowhere);
    return true;
}

bool DocumentBuilder::on_string(json::string_view s, std::size_t, json::error_code& ec) {
    append(s);
    return add(Value(std::exchange(text_, {})), chunk_end, ec);
}

bool DocumentBuilder::append(json::string_view s) {
    text_.append(s.data(), s.size());
    return true;
}

bool DocumentBuilder::number(double d, json::error_code& ec) {
    const std::size_t begin = token;
    if (!std::isfinite(d) && faults_.size() < most_faults)
        faults_.push_back(
            fault_at(document_, begin, path(),
                     printable(std::string_view(document_.text).substr(begin, chunk_begin - begin), 60),
                     "is too large to be a number here", "write the value you measured"));
    return add(Value(std::isfinite(d) ? d : 0.0), chunk_begin, ec);
}

bool DocumentBuilder::open(Value value, json::error_code& ec) {
    if (!count(ec))
        return false;
    value.begin = std::exchange(token, nowhere);
    if (!open_.empty() && !open_.back().is_list) {
        open_.back().key_within = std::exchange(key_, {});
        open_.back().key_begin = key_begin_;
    }
    const bool is_list = value.list() != nullptr;
    open_.push_back({std::move(value), is_list, {}, 0});
    return true;
}

bool DocumentBuilder::close() {
    Open closed = std::move(open_.back());
    open_.pop_back();
    token = nowhere;
    closed.value.end = chunk_end;
    if (!open_.empty() && !open_.back().is_list) {
        key_ = std::exchange(open_.back().key_within, {});
        key_begin_ = open_.back().key_begin;
    }
    put(std::move(closed.value));
    return true;
}

bool DocumentBuilder::add(Value value, std::size_t end, json::error_code& ec) {
    if (!count(ec))
        return false;
    value.begin = std::exchange(token, nowhere);
    value.end = end;
    put(std::move(value));
    return true;
}

void DocumentBuilder::put(Value value) {
    if (open_.empty()) {
        document_.root = std::move(value);
    } else if (open_.back().is_list) {
        std::get<Value::List>(open_.back().value.held).push_back(std::move(value));
    } else {
        put_member(std::get<Value::Object>(open_.back().value.held), std::move(value));
    }
}

void DocumentBuilder::put_member(Value::Object& members, Value value) {
    for (const Member& member : members)
        if (member.name == key_) {
            if (faults_.size() >= most_faults)
                return; // finding the place of a fault reads the whole text before it
            const Place first = place_at(document_.text, member.name_begin);
            faults_.push_back(fault_at(document_, key_begin_, path(), {},
                                       fmt::format("stands here twice, first in line {}", first.line),
                                       "keep one of the two"));
            return;
        }
    if (members.size() == most_members)
        too_many_members = true;
    else
        members.push_back({std::exchange(key_, {}), std::move(value), key_begin_});
}

bool DocumentBuilder::count(json::error_code& ec) {
    too_many = too_many || values_left_ == 0;
    if (too_many || too_many_members) {
        ec = json::make_error_code(json::error::array_too_large);
        return false;
    }
    --values_left_;
    return true;
}

} // namespace ringfill
