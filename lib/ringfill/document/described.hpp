#pragma once

#include <concepts>
#include <cstddef>
#include <span>
#include <stdexcept>
#include <string_view>
#include <type_traits>

#include <ringfill/document/field_of.hpp>

// A record described once, with the members that its fields fill:
//
//     constexpr Field face_fields[] = {
//         must<&Face::inner>("inner", spans::size, R"("90 mm")", "inner diameter of the pad"),
//         field<&Face::name>("name", spans::name, R"("left")", "its name"),
//         field<&read_skim>("skim", spans::distance, R"("0.5 mm")", "clean-up cut").holds(Kind::length),
//     };
//     constexpr Record face_record = record_of<Face, check_face>("a face", "a worn boss face", face_fields);
//     ...
//     Face face = read_record<Face>(entry); // fills each member in this order, then check_face(face, entry)
//
// The kind follows from the member's type (a text with words is one of them, an enumeration or a bool with
// words goes by their order); a member whose field is absent or faulty keeps the value it has. Rows in a
// vector get the name they stand under (member `name`) and the path (member `path`); a name met again takes
// the place of the row that had it. A reader of one's own, void(Row&, const Entry&, const Field&), does what
// is no plain member. Quantities: units/measured_field.hpp. Figures of tables: table/figure.hpp.

namespace ringfill {

/// What may stand in a field: a span of sizes, words, or the fields of an object.
struct Allowed {
    constexpr Allowed(Span sizes) : span(sizes) {}
    constexpr Allowed(const Record& fields) : record(&fields) {}
    template <class Words>
    requires std::convertible_to<const Words&, std::span<const std::string_view>>
    constexpr Allowed(const Words& these) : words(these) {}

    Span span = {};
    std::span<const std::string_view> words = {};
    const Record* record = nullptr;
    std::size_t least = 0; ///< of a list
    std::size_t most = 0;  ///< 0: no list
};

/// A list of so many of what may stand in one.
constexpr Allowed list_of(Allowed each, std::size_t least, std::size_t most) {
    each.least = least;
    each.most = most;
    return each;
}

/// The row and the type of a member, or the row that a reader of one's own fills.
template <class>
struct Filled;
template <class R, class T>
struct Filled<T R::*> {
    using Row = R;
    using Type = T;
};
template <class R>
struct Filled<void (*)(R&, const Entry&, const Field&)> {
    using Row = R;
};

/// The row that a function gives a field of.
template <class R>
R given_row(Value (*)(const R&));

/// A field in the making: what most fields have stands in field(), the rest is said behind it.
struct MadeField : Field {
    template <class T>
    constexpr MadeField with(T Field::*member, T value) const {
        MadeField next = *this;
        next.*member = value;
        return next;
    }
    constexpr MadeField required() const { return with(&Field::required, true); }
    /// At least one of those that stand under names.
    constexpr MadeField some() const { return with(&Field::least, std::size_t{1}); }
    /// Texts that may stand in the place of a quantity.
    constexpr MadeField or_words(std::span<const std::string_view> texts) const {
        return with(&Field::words, texts);
    }
    /// The kind and shape of a field that has a reader of its own.
    constexpr MadeField holds(Kind of_kind, Shape of_shape = Shape::one) const {
        return with(&Field::kind, of_kind).with(&Field::shape, of_shape);
    }
    /// What a field that has a reader of its own gives: by a Value(const Row&).
    template <auto Function>
    constexpr MadeField given_by() const {
        using Row = decltype(given_row(Function));
        return with<Give>(&Field::give, [](const Field&, const void* filled) {
            return Function(*static_cast<const Row*>(filled));
        });
    }
    /// The most decimals of a number that is kept as it is written.
    constexpr MadeField decimals(int most_kept) const { return with(&Field::decimals, most_kept); }
    /// SI units in a unit of a figure of a table, where the field's name does not say it.
    constexpr MadeField times(double factor_to_si) const { return with(&Field::factor, factor_to_si); }
};

/// A field that fills nothing by itself: the reader of its record takes it.
constexpr MadeField bare_field(std::string_view name, Allowed allowed, std::string_view sample,
                               std::string_view help = {}) {
    MadeField made{{.name = name, .span = allowed.span, .help = help, .sample = sample}};
    made.kind = allowed.record ? Kind::object : allowed.words.empty() ? Kind::text : Kind::word;
    made.words = allowed.words;
    made.record = allowed.record;
    made.least = allowed.least;
    made.most = allowed.most;
    return made;
}

template <auto Member>
constexpr MadeField field(std::string_view name, Allowed allowed, std::string_view sample = {},
                          std::string_view help = {}) {
    using Whose = Filled<decltype(Member)>;
    using Row = typename Whose::Row;
    MadeField made = bare_field(name, allowed, sample, help);
    made.row = &row_tag<Row>;
    if constexpr (requires { typename Whose::Type; }) {
        using How = FieldOf<typename Whose::Type>;
        made.kind = How::kind;
        if constexpr (requires { How::shape; })
            made.shape = How::shape;
        if constexpr (requires { How::complete(made); })
            How::complete(made);
        made.fill = [](const Entry& entry, const Field& read, void* row) {
            return How::fill(entry, read, static_cast<Row*>(row)->*Member);
        };
        if constexpr (requires(const Field& f, const typename Whose::Type& value) { How::give(f, value); })
            made.give = [](const Field& given, const void* row) {
                return Value(How::give(given, static_cast<const Row*>(row)->*Member));
            };
    } else {
        made.fill = [](const Entry& entry, const Field& read, void* row) {
            Member(*static_cast<Row*>(row), entry, read);
            return entry.find(read) != nullptr;
        };
    }
    if (!allowed.words.empty() && (made.kind == Kind::text || made.kind == Kind::flag))
        made.kind = Kind::word;
    if (allowed.most > 0)
        made.shape = Shape::list;
    if (made.kind == Kind::object && !made.record)
        throw std::logic_error("an object without the description of its fields");
    return made;
}

/// Of what needs no limits, as a flag does.
template <auto Member>
constexpr MadeField field(std::string_view name, std::string_view sample, std::string_view help = {}) {
    return field<Member>(name, Span{}, sample, help);
}

/// A field that must be there.
template <auto Member, class... Parts>
constexpr MadeField must(const Parts&... parts) {
    return field<Member>(parts...).required();
}

/// Not required, yet a starter job has it.
template <auto Member, class... Parts>
constexpr MadeField shown(const Parts&... parts) {
    return field<Member>(parts...).with(&Field::starts, true);
}
/// A field whose sample practice takes when it is absent.
template <auto Member>
constexpr MadeField by_practice(std::string_view name, Allowed allowed, std::string_view sample,
                                std::string_view help) {
    return field<Member>(name, allowed, sample, help)
        .with(&Field::fallback, sample.substr(1, sample.size() - 2)) // without its quotes
        .with(&Field::fallback_source, std::string_view("practice"));
}

template <class Row>
void fill_block(Row& row, const Entry& entry, const Field& field) {
    FieldOf<Row>::fill(entry, field, row);
}

/// An object whose fields fill the row around it.
template <class Row>
constexpr MadeField block(std::string_view name, const Record& record, std::string_view sample = {}) {
    return field<&fill_block<Row>>(name, record, sample).holds(Kind::object);
}

/// Describes a record whose fields fill a Row; Check, a void(Row&, const Entry&), then judges what several
/// fields must keep together. Does not compile with a field of another row.
template <class Row, auto Check = nullptr>
consteval Record record_of(std::string_view name, std::string_view help, std::span<const Field> fields) {
    Record record{name, help, fields, &row_tag<Row>};
    for (const Field& one : fields)
        if (one.fill && one.row != &row_tag<Row>)
            throw std::logic_error("a field of another row");
    if (fields.size() > 64)
        throw std::logic_error("more fields than Entry::is_read() can tell apart");
    if constexpr (!std::is_null_pointer_v<decltype(Check)>)
        record.check = [](const Entry& entry, void* row) { Check(*static_cast<Row*>(row), entry); };
    return record;
}

} // namespace ringfill
