#pragma once

#include <cstddef>

#include <ringfill/document/whole_file.hpp>

namespace ringfill::cli {

/// Lets a long run end in good order: while it lives, the first Ctrl-C or its like (SIGINT, SIGTERM, SIGHUP)
/// does not end the program but its input; a second one ends it at once. One at a time.
class EndRequest {
  public:
    /// Throws std::system_error when the system has no descriptors left.
    EndRequest();
    EndRequest(const EndRequest&) = delete;
    EndRequest& operator=(const EndRequest&) = delete;
    ~EndRequest();

    /// Waits for bytes and reads them; 0 at the end of the input, or when the program was asked to end.
    /// Throws std::system_error when the input cannot be read.
    std::size_t read(int descriptor, char* into, std::size_t most) const;

    /// The signal that asked for the end; 0: none has.
    int signal() const;

  private:
    Descriptor bell_; // what the signal wakes a waiting read with
};

} // namespace ringfill::cli
