#pragma once

#include <string>
#include <string_view>

#include <sys/types.h>

#include <ringfill/document/descriptor.hpp>

namespace ringfill {

/// A new file beside a target, gone again unless it became the target. It has no name until it is whole, so
/// that a program that is ended leaves nothing; where a file system has no such files it is named at once.
class Beside {
  public:
    /// @param target a path whose folder takes the new file.
    explicit Beside(std::string target);
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;
    ~Beside();

    bool made() const { return descriptor_.number() >= 0; }

    /// Appends; the error number, or 0.
    int write(std::string_view content);

    /// Brings it to the disk and renames it over the target, with that mode; the error number of the step
    /// that failed, or 0.
    int become_target(mode_t mode);

  private:
    int open();
    bool give_name();

    std::string target_;
    std::string path_;
    bool named_ = false; // stands before what sets it
    Descriptor descriptor_;
    bool renamed_ = false;
};

} // namespace ringfill
