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

/// Where a value of an entry stands: in a field, or under a name or a number in it. Its path is put together
/// only when a fault is told.
struct Spot {
    const Entry* entry = nullptr; ///< null: the outermost object, whose path stands in `whole`
    std::string_view field = {};
    std::string_view name = {};
    std::size_t index = no_index;
    std::string whole = {};

    static constexpr std::size_t no_index = static_cast<std::size_t>(-1);
    std::string path() const;
};

/// One object of a document, read against its description. Every fault goes into the Reading; a value that is
/// absent or faulty comes back as nothing, so that the reading goes on and finds the next fault too.
/// Asking for a field that the description does not have is an error of the program (std::logic_error).
/// An entry of an object within another one must not outlive the entry of that one.
class Entry {
  public:
    /// Notes each member that the description does not know, with the nearest known name, and each required
    /// one that is missing.
    Entry(Reading& reading, const Value& object, const Record& record, Spot spot);
    Entry(Reading& reading, const Value& object, const Record& record, std::string path)
        : Entry(reading, object, record, Spot{.whole = std::move(path)}) {}

    std::string path() const { return spot_.path(); }
    std::string_view name() const { return spot_.name; } ///< under which it stands, of a named object
    const Value& value() const { return *object_; }
    const Record& record() const { return *record_; }
    Reading& reading() const { return *reading_; }

    const Field& field(std::string_view name) const;
    /// The member as it stands, null when absent.
    const Value* find(const Field& field) const;
    const Value* find(std::string_view name) const { return find(field(name)); }
    bool has(std::string_view name) const { return find(name) != nullptr; }
    std::string path_of(std::string_view name) const { return member_path(path(), name); }
    Spot spot(const Field& field) const { return {.entry = this, .field = field.name}; }

    // Each by its field, or by the field's name.
    std::optional<std::string> text(const Field& field) const;
    /// One of the field's words; its fallback when absent.
    std::optional<std::string> word(const Field& field) const;
    /// The place of that word among the field's words.
    std::optional<std::size_t> word_index(const Field& field) const;
    std::vector<std::string> words(const Field& field) const;
    std::optional<bool> flag(const Field& field) const;
    std::optional<double> number(const Field& field) const;
    std::optional<int> count(const Field& field) const;
    std::vector<std::pair<std::string, double>> named_numbers(const Field& field) const;
    /// A plain number within the field's span, wherever it stands.
    std::optional<double> number_in(const Value& value, const Field& field, const Spot& spot) const;
    std::optional<double> number_in(const Value& value, const Field& field, std::string path) const {
        return number_in(value, field, Spot{.whole = std::move(path)});
    }
    std::optional<std::string> text(std::string_view name) const { return text(field(name)); }
    std::optional<std::string> word(std::string_view name) const { return word(field(name)); }
    std::vector<std::string> words(std::string_view name) const { return words(field(name)); }
    std::optional<bool> flag(std::string_view name) const { return flag(field(name)); }
    std::optional<double> number(std::string_view name) const { return number(field(name)); }
    std::optional<int> count(std::string_view name) const { return count(field(name)); }
    std::vector<std::pair<std::string, double>> named_numbers(std::string_view name) const {
        return named_numbers(field(name));
    }

    std::optional<Entry> object(const Field& field) const;
    std::optional<Entry> object(std::string_view name) const { return object(field(name)); }
    /// The objects of a list, or of an object with names; how many is checked against the description.
    std::vector<Entry> objects(const Field& field) const;
    std::vector<Entry> objects(std::string_view name) const { return objects(field(name)); }
    std::vector<std::pair<std::string, Entry>> named_objects(std::string_view name) const;
    /// The same objects once more, without noting their faults again: for what is checked when all are read.
    std::vector<Entry> objects_again(std::string_view name) const;
    /// The elements of a list with their paths; the list's length is checked against the description.
    std::vector<std::pair<std::string, const Value*>> elements(const Field& field) const;
    std::vector<std::pair<std::string, const Value*>> elements(std::string_view name) const {
        return elements(field(name));
    }

    /// Fills the row's member of each field that has one, in the order of the description, then lets the
    /// record check what several fields must keep together. `row` points to a row of the type that stands in
    /// Record::row: use fill_record() of document/described.hpp.
    void fill(void* row) const;
    /// Whether fill() gave that field a value without any fault, its fallback included.
    bool is_read(std::string_view name) const;

    /// Notes a fault at a value.
    void refuse(const Value& value, std::string path, std::string reason, std::string remedy) const;
    /// The same at no value: `shown` stands for it.
    void refuse_shown(std::string path, std::string shown, std::string reason, std::string remedy) const;
    /// Notes a fault at this object.
    void refuse(std::string reason, std::string remedy) const;
    /// Notes a fault at a member, or at this object when the member is absent.
    void refuse(std::string_view name, std::string reason, std::string remedy) const;
    /// Notes that a member is missing that is not always required.
    void refuse_missing(std::string_view name, std::string remedy) const;
    /// Notes that the fallback of a field was taken.
    void assume(const Field& field) const;

  private:
    struct Again {};
    Entry(Again, Reading& reading, const Value& object, const Record& record, Spot spot);
    void check_names() const;
    const Value* of_kind(const Field& field, bool fits, const Value* value) const;
    bool is_list_of_right_size(const Field& field, const Value& value) const;
    Spot spot_of(const Field& field, std::size_t index) const;

    Reading* reading_;
    const Value* object_;
    const Record* record_;
    Spot spot_;
    mutable std::size_t next_member_ = 0; ///< most files keep to the order of the description
    mutable std::uint64_t read_ = 0;      ///< a bit a field
};

} // namespace ringfill
