#pragma once

#include <cerrno>
#include <new>
#include <system_error>

#include <sys/mman.h>

namespace ringfill::cli {

/// A value that this process and those it forks share. Throws std::system_error when there is no room.
template <class Value>
class SharedMemory {
  public:
    SharedMemory() {
        void* const memory =
            ::mmap(nullptr, sizeof(Value), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
        if (memory == MAP_FAILED)
            throw std::system_error(errno, std::generic_category(), "memory to share with a process");
        value_ = new (memory) Value;
    }
    SharedMemory(const SharedMemory&) = delete;
    SharedMemory& operator=(const SharedMemory&) = delete;
    ~SharedMemory() { ::munmap(value_, sizeof(Value)); }

    Value& operator*() const { return *value_; }
    Value* operator->() const { return value_; }

  private:
    Value* value_ = nullptr;
};

} // namespace ringfill::cli
