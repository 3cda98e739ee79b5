#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <ringfill/document/assumed.hpp>
#include <ringfill/document/document.hpp>
#include <ringfill/document/field.hpp>

namespace ringfill {

/// What the reading of one document has found so far.
struct Reading {
    const Document& document;
    std::vector<Fault> faults = {};
    std::vector<Assumed> assumed = {};
    double bare_length = 0; ///< metres that a bare number of a length means; 0: lengths need their unit
};

/// One object of a document, read against its description. Every fault goes into the Reading; a value that is
/// absent or faulty comes back as nothing, so that the reading goes on and finds the next fault too.
/// Asking for a field that the description does not have is an error of the program (std::logic_error).
class Entry {
  public:
    /// Notes each member that the description does not know, with the nearest known name, and each required
    /// one that is missing.
    Entry(Reading& reading, const Value& object, const Record& record, std::string path);

    const std::string& path() const { return path_; }
    const Value& value() const { return *object_; }
    Reading& reading() const { return *reading_; }

    /// The member as it stands, null when absent; the field must be described.
    const Value* find(std::string_view name) const;
    bool has(std::string_view name) const { return find(name) != nullptr; }
    const Field& field(std::string_view name) const;
    std::string path_of(std::string_view name) const { return member_path(path_, name); }

    std::optional<std::string> text(std::string_view name) const;
    /// One of the field's words; its fallback when absent.
    std::optional<std::string> word(std::string_view name) const;
    std::vector<std::string> words(std::string_view name) const;
    std::optional<bool> flag(std::string_view name) const;
    std::optional<double> number(std::string_view name) const;
    std::optional<int> count(std::string_view name) const;
    /// A plain number within the field's span, wherever it stands.
    std::optional<double> number_in(const Value& value, const Field& field, const std::string& path) const;
    std::vector<std::pair<std::string, double>> named_numbers(std::string_view name) const;

    std::optional<Entry> object(std::string_view name) const;
    std::vector<Entry> objects(std::string_view name) const;
    std::vector<std::pair<std::string, Entry>> named_objects(std::string_view name) const;
    /// The elements of a list with their paths; the list's length is checked against the description.
    std::vector<std::pair<std::string, const Value*>> elements(std::string_view name) const;

    /// Notes a fault at a value.
    void refuse(const Value& value, std::string path, std::string reason, std::string remedy) const;
    /// Notes a fault at a member, or at this object when the member is absent.
    void refuse(std::string_view name, std::string reason, std::string remedy) const;
    /// Notes that the fallback of a field was taken.
    void assume(const Field& field) const;

  private:
    void check_names() const;
    const Value* of_kind(std::string_view name, bool fits, const Value* value) const;

    Reading* reading_;
    const Value* object_;
    const Record* record_;
    std::string path_;
};

} // namespace ringfill
