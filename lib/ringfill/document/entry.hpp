#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/document/document.hpp>
#include <ringfill/document/field.hpp>

namespace ringfill {

struct Source;

/// The sources of figures by their keys.
using Bibliography = std::map<std::string, Source, std::less<>>;

/// What the reading of one document has found so far.
struct Reading {
    const Document& document;
    std::vector<Fault> faults = {};
    std::vector<Assumed> assumed = {};
    double bare_length = 0; ///< metres that a bare number of a length means; 0: lengths need their unit
    bool by_hand = false;   ///< no text: the values were made from rows (document/described.hpp)
    const Bibliography* sources = nullptr; ///< that the figures of a table may name
};

/// A value of an entry and where it stands: in a field, or under a name or a number in it. Its path is put
/// together only for a fault.
struct Spot {
    const Entry* entry = nullptr; ///< null: the outermost object, whose path is empty
    std::string_view field = {};
    const Value* value = nullptr;
    std::string_view name = {};
    std::size_t index = no_index;

    static constexpr std::size_t no_index = static_cast<std::size_t>(-1);
    std::string path() const;
    /// Another value in the same place: one of a pair, or a fallback.
    Spot with(const Value& other) const { return {entry, field, &other, name, index}; }
    /// A plain number within the field's span.
    std::optional<double> number_in(const Field& field) const;
    /// Notes a fault at the value. `by_hand` is shown for a number that no text holds.
    void refuse(std::string reason, std::string remedy, std::string by_hand = {}) const;
};

/// One object of a document, read against its description. Every fault goes into the Reading; a value that is
/// absent or faulty comes back as nothing, so that the reading goes on and finds the next fault too.
/// Asking for a field that the description does not have is an error of the program (std::logic_error).
/// An entry of an object within another one must not outlive the entry of that one.
class Entry {
  public:
    /// Notes each member that the description does not know, with the nearest known name, and each required
    /// one that is missing, unless it is opened again.
    Entry(Reading& reading, const Value& object, const Record& record)
        : Entry(reading, record, Spot{.value = &object}) {}
    Entry(Reading& reading, const Record& record, const Spot& object, bool again = false);

    std::string path() const { return spot_.path(); }
    std::string_view name() const { return spot_.name; } ///< under which it stands, of a named object
    const Value& value() const { return *spot_.value; }
    const Record& record() const { return *record_; }
    Reading& reading() const { return *reading_; }

    const Field& field(std::string_view name) const;
    /// The member as it stands, null when absent.
    const Value* find(const Field& field) const;
    bool has(std::string_view name) const { return find(field(name)) != nullptr; }
    std::string path_of(std::string_view name) const { return member_path(path(), name); }
    Spot spot(const Field& field, const Value& value) const { return {this, field.name, &value}; }
    /// What the member holds; of one that holds something else than its description says, null, and a fault.
    template <class Held>
    const Held* held(const Field& field) const {
        const Value* value = find(field);
        const auto* fitting = value ? std::get_if<Held>(&value->held) : nullptr;
        if (value && !fitting)
            refuse_kind(field, *value);
        return fitting;
    }

    /// A text, or one of the field's words; its fallback when absent.
    std::optional<std::string> text(const Field& field) const;
    /// The place of a word among the field's words, or that of its fallback.
    std::optional<std::size_t> word_index(const Field& field) const;
    std::optional<Entry> object(const Field& field) const;
    /// The objects of a list, or of an object with names; how many is checked against the description.
    /// @param again once more, without noting their faults again: for what is checked when all are read
    std::vector<Entry> objects(const Field& field, bool again = false) const;
    std::vector<Entry> objects_again(std::string_view name) const { return objects(field(name), true); }
    /// The values of a list, or those under names; how many is checked likewise.
    std::vector<Spot> elements(const Field& field, bool again = false) const;

    /// Fills the row's member of each field that has one, in the order of the description, then lets the
    /// record check what several fields must keep together. Throws std::logic_error unless `row_type` is the
    /// Record::row of that description: use fill_record() of document/described.hpp.
    void fill(void* row, const void* row_type) const;
    /// Whether fill() gave that field a value without any fault, its fallback included.
    bool is_read(std::string_view name) const;

    /// Notes a fault at a value. `by_hand` is shown for a number that no text holds.
    void refuse(const Value& value, std::string path, std::string reason, std::string remedy,
                std::string by_hand = {}) const;
    /// Notes a fault at this object.
    void refuse(std::string reason, std::string remedy) const;
    /// Notes a fault at a member, or at this object when the member is absent.
    void refuse(std::string_view name, std::string reason, std::string remedy) const;
    /// Notes that a member is missing that is not always required.
    void refuse_missing(std::string_view name, std::string remedy) const;
    /// Notes that the fallback of a field that is absent was taken; false: it has none.
    bool assume(const Field& field) const;

  private:
    void check_names() const;
    void refuse_kind(const Field& field, const Value& value) const;

    Reading* reading_;
    const Record* record_;
    Spot spot_;
    mutable std::size_t next_member_ = 0; ///< most files keep to the order of the description
    mutable std::uint64_t read_ = 0;      ///< a bit a field
};

} // namespace ringfill
