#pragma once

#include <string_view>

namespace ringfill {

/// A file descriptor that closes itself; the standard streams stay open.
class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor();

    int number() const { return number_; }
    /// Closes now and tells whether the system took everything.
    bool close_checked();

  private:
    int number_;
};

/// Writes everything to a descriptor, and again after a signal; the error number, or 0.
int write_all(int descriptor, std::string_view content);

} // namespace ringfill
