#pragma once

#include <cstddef>
#include <exception>
#include <string>
#include <string_view>
#include <vector>

#include <ringfill/fault/place.hpp>

namespace ringfill {

/// One thing that is wrong, told so that it can be put right.
struct Fault {
    Place place;
    std::string value;   ///< what stands there, as it should be shown: quoted text or a number; may be empty
    std::string reason;  ///< what is wrong with it, as the rest of the sentence: `has no unit`
    std::string remedy;  ///< what to do: `write "90.4 mm"`; may be empty
    std::string excerpt; ///< the line and a caret; may be empty
};

/// A fault of a whole file.
Fault fault_in_file(std::string file, std::string reason, std::string remedy);

/// A fault at a path of a document that is not at hand; locate() finds the line later.
Fault fault_at_path(std::string path, std::string value, std::string reason, std::string remedy);

/// "job.json:14:22: bores[1].worn.diameter: "90.4" has no unit; write "90.4 mm"", then the excerpt if there
/// is one.
std::string to_string(const Fault& fault);

/// More faults of one file than this are not told: by then something else is wrong.
inline constexpr std::size_t most_faults = 200;

/// Who can put a fault right. The program's exit status follows from it.
enum class Origin {
    job,          ///< the job cannot be planned as written
    command_line, ///< the command was given wrongly
    table,        ///< a table or a material family is broken
    file,         ///< a file cannot be read or written
};

/// The one exception of this library: everything found wrong in one go, at least one fault, in the order of
/// the file.
class Faulty : public std::exception {
  public:
    Faulty(Origin origin, std::vector<Fault> faults);
    Faulty(Origin origin, Fault fault);

    Origin origin() const noexcept { return origin_; }
    const std::vector<Fault>& faults() const noexcept { return faults_; }

    /// All faults, one below the other.
    const char* what() const noexcept override { return text_.c_str(); }

  private:
    Origin origin_;
    std::vector<Fault> faults_;
    std::string text_;
};

/// Throws Faulty if there is any fault.
void refuse_if_any(Origin origin, const std::vector<Fault>& faults);

} // namespace ringfill
