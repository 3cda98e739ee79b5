#include <ringfill/report/json/quote_json.hpp>

#include <range/v3/range/conversion.hpp>
#include <range/v3/view/transform.hpp>

namespace ringfill {
namespace {

double as_number(std::int64_t whole) {
    return static_cast<double>(whole);
}

/// An amount as a number of its smallest unit and as a text.
void put_amount(Value::Object& object, const std::string& name, Minor amount, int exponent) {
    object.push_back({name + "_minor", as_number(amount)});
    object.push_back({name, money_text(amount, exponent)});
}

Value line_object(const QuoteLine& line, int exponent) {
    Value::Object object{{"item", line.item}};
    if (line.quantity)
        object.push_back({"quantity", as_number(*line.quantity) / 1000});
    if (!line.unit.empty())
        object.push_back({"unit", line.unit});
    if (line.part && line.part->supplied)
        object.push_back({"of", as_number(*line.part->supplied) / 1000});
    if (line.price)
        object.push_back({"price", decimal_text(*line.price, exponent)});
    if (line.amount)
        put_amount(object, "amount", *line.amount, exponent);
    else
        object.push_back({"missing", line.missing});
    return object;
}

Value section_object(const QuoteSection& section, int exponent) {
    Value::List lines;
    for (const QuoteLine& line : section.lines)
        lines.push_back(line_object(line, exponent));
    Value::Object object{
        {"name", in_words(section.part)}, {"counts", section.counts}, {"lines", std::move(lines)}};
    if (section.sum)
        put_amount(object, "sum", *section.sum, exponent);
    return object;
}

Value::List texts(const std::vector<std::string>& lines) {
    return lines | ranges::views::transform([](const std::string& line) { return Value(line); }) |
           ranges::to<Value::List>();
}

} // namespace

Value quote_object(const Quote& quote) {
    const int exponent = quote.currency.exponent.value;
    Value::List sections;
    for (const QuoteSection& section : quote.sections)
        sections.push_back(section_object(section, exponent));
    Value::Object object{{"currency", quote.currency.name},
                         {"exponent", static_cast<double>(exponent)},
                         {"whole", quote.is_whole()},
                         {"missing", texts(quote.missing)},
                         {"sections", std::move(sections)}};
    if (quote.subtotal) {
        put_amount(object, "subtotal", *quote.subtotal, exponent);
        Value::List on_top;
        for (const OnTop& one : quote.on_top) {
            Value::Object share{{"name", one.name}, {"share", as_number(one.share) / whole_share}};
            put_amount(share, "amount", one.amount, exponent);
            on_top.push_back(std::move(share));
        }
        object.push_back({"on_top", std::move(on_top)});
        object.push_back({"taxed", quote.taxed});
        put_amount(object, "total", *quote.total, exponent);
    }
    object.push_back({"notes", texts(quote.notes)});
    return object;
}

} // namespace ringfill
