#include "formula.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <functional>
#include <numbers>
#include <stdexcept>

namespace ringfill::testing {
namespace {

using List = std::vector<double>;

List each(const List& a, const List& b, const std::function<double(double, double)>& f) {
    if (a.size() != b.size() && a.size() != 1 && b.size() != 1)
        throw std::runtime_error("lists of different lengths");
    List result(a.size() == 1 ? b.size() : a.size());
    for (std::size_t i = 0; i < result.size(); ++i)
        result[i] = f(a[a.size() == 1 ? 0 : i], b[b.size() == 1 ? 0 : i]);
    return result;
}

List each(const List& a, double (*f)(double)) {
    List result;
    for (const double value : a)
        result.push_back(f(value));
    return result;
}

double sum(const List& list) {
    double total = 0;
    for (const double value : list)
        total += value;
    return total;
}

/// A recursive descent through one formula.
class Reader {
  public:
    Reader(const std::string& text, const Symbols& symbols) : text_(text), symbols_(symbols) {}

    List whole() {
        const List result = terms();
        skip();
        if (at_ != text_.size())
            throw std::runtime_error("something stands after the formula: " + text_.substr(at_));
        if (operations_ == 0)
            throw std::runtime_error("the formula is only a word: " + text_);
        return result;
    }

  private:
    void skip() {
        while (at_ < text_.size() && text_[at_] == ' ')
            ++at_;
    }

    bool take(char sign) {
        skip();
        if (at_ == text_.size() || text_[at_] != sign)
            return false;
        ++at_;
        return true;
    }

    void expect(char sign) {
        if (!take(sign))
            throw std::runtime_error(std::string("expected ") + sign + " in " + text_);
    }

    List terms() {
        List value = factors();
        while (true) {
            if (take('+'))
                value = operate(value, factors(), [](double a, double b) { return a + b; });
            else if (take('-'))
                value = operate(value, factors(), [](double a, double b) { return a - b; });
            else
                return value;
        }
    }

    List factors() {
        List value = power();
        while (true) {
            if (take('*'))
                value = operate(value, power(), [](double a, double b) { return a * b; });
            else if (take('/'))
                value = operate(value, power(), [](double a, double b) { return a / b; });
            else
                return value;
        }
    }

    List power() {
        const List base = atom();
        return take('^') ? operate(base, power(), [](double a, double b) { return std::pow(a, b); }) : base;
    }

    List operate(const List& a, const List& b, const std::function<double(double, double)>& f) {
        ++operations_;
        return each(a, b, f);
    }

    List atom() {
        if (take('(')) {
            const List value = terms();
            expect(')');
            return value;
        }
        skip();
        if (at_ < text_.size() && (std::isdigit(static_cast<unsigned char>(text_[at_])) != 0))
            return {number()};
        const std::string name = word();
        if (take('('))
            return call(name);
        if (name == "pi")
            return {std::numbers::pi};
        return symbols_.at(name);
    }

    double number() {
        double value = 0;
        const auto end = std::from_chars(text_.data() + at_, text_.data() + text_.size(), value).ptr;
        at_ = static_cast<std::size_t>(end - text_.data());
        return value;
    }

    std::string word() {
        const std::size_t begin = at_;
        while (at_ < text_.size() &&
               (std::isalnum(static_cast<unsigned char>(text_[at_])) != 0 || text_[at_] == '_'))
            ++at_;
        if (at_ == begin)
            throw std::runtime_error("expected a name in " + text_.substr(begin));
        return text_.substr(begin, at_ - begin);
    }

    List call(const std::string& name) {
        static const std::map<std::string, double (*)(double)> of_one = {
            {"sqrt", std::sqrt},   {"cos", std::cos},   {"sin", std::sin},   {"exp", std::exp},
            {"log10", std::log10}, {"tanh", std::tanh}, {"ceil", std::ceil}, {"floor", std::floor}};
        static const std::map<std::string, double (*)(double, double)> of_two = {
            {"min", std::fmin}, {"max", std::fmax}, {"mod", std::fmod}};
        ++operations_;
        const List first = terms();
        List result;
        if (const auto one = of_one.find(name); one != of_one.end()) {
            result = each(first, one->second);
        } else if (const auto two = of_two.find(name); two != of_two.end()) {
            expect(',');
            result = each(first, terms(), two->second);
        } else if (name == "sum") {
            result = {sum(first)};
        } else if (name == "highest") {
            result = {*std::max_element(first.begin(), first.end())};
        } else if (name == "lowest") {
            result = {*std::min_element(first.begin(), first.end())};
        } else if (name == "mean") {
            result = {sum(first) / static_cast<double>(first.size())};
        } else {
            throw std::runtime_error("unknown function " + name);
        }
        expect(')');
        return result;
    }

    const std::string& text_;
    const Symbols& symbols_;
    std::size_t at_ = 0;
    int operations_ = 0;
};

} // namespace

double evaluate(const std::string& formula, const Symbols& symbols) {
    const List result = Reader(formula, symbols).whole();
    if (result.size() != 1)
        throw std::runtime_error("the formula gives a list: " + formula);
    return result.front();
}

} // namespace ringfill::testing
