#include <ringfill/material/image.hpp>

#include <algorithm>
#include <array>
#include <cstring>
#include <string_view>
#include <vector>

#include <elf.h>
#include <link.h>

#include <fmt/format.h>

#include <ringfill/fault/printable.hpp>
#include <ringfill/material/elf_file.hpp>

namespace ringfill {
namespace {

using Header = ElfW(Ehdr);
using Segment = ElfW(Phdr);

constexpr std::string_view again = "install it again";
constexpr std::string_view other_build = "build or install it for this machine";

/// What every ELF file begins with, whatever machine it is for.
struct Kind {
    std::array<unsigned char, EI_NIDENT> ident{};
    std::uint16_t type = 0;
    std::uint16_t machine = 0;
};

bool read_kind(const ElfFile& file, Kind& kind) {
    return file.read(0, kind.ident.data(), kind.ident.size()) && file.read(EI_NIDENT, &kind.type, 2) &&
           file.read(EI_NIDENT + 2, &kind.machine, 2);
}

bool is_elf(const Kind& kind) {
    return std::memcmp(kind.ident.data(), ELFMAG, SELFMAG) == 0;
}

/// The kind of the running program, which a library must match.
Kind own_kind() {
    const ElfFile self("/proc/self/exe");
    Kind kind;
    if (!read_kind(self, kind) || !is_elf(kind))
        self.refuse("is not understood, so no plugin can be judged", "report this with the system's name");
    return kind;
}

/// Whether the beginning of a file reads as text.
bool begins_as_text(const ElfFile& file) {
    std::string text(static_cast<std::size_t>(std::min<std::uint64_t>(file.size(), 256)), '\0');
    return file.read(0, text.data(), text.size()) && std::all_of(text.begin(), text.end(), [](char c) {
               return c == '\n' || c == '\r' || c == '\t' || static_cast<unsigned char>(c) >= 0x20;
           });
}

[[noreturn]] void refuse_cut_off(const ElfFile& file, std::uint64_t whole) {
    file.refuse(fmt::format("is cut off: it ends after {} bytes and needs {}", file.size(), whole),
                std::string(again));
}

/// Refuses what is no ELF file of the kind the running program is.
void check_kind(const ElfFile& file) {
    if (file.size() == 0)
        file.refuse("is empty", std::string(again));
    std::array<char, SELFMAG> magic{};
    if (!file.read(0, magic.data(), magic.size()) || std::memcmp(magic.data(), ELFMAG, SELFMAG) != 0)
        file.refuse(begins_as_text(file) ? "is a text file, not a shared library" : "is not a shared library",
                    "take it out of the folder or install the plugin again");
    Kind kind;
    if (!read_kind(file, kind))
        refuse_cut_off(file, sizeof(Header));
    const Kind own = own_kind();
    const auto bits = [](const Kind& of) { return of.ident[EI_CLASS] == ELFCLASS32 ? 32 : 64; };
    if (kind.ident[EI_CLASS] != own.ident[EI_CLASS])
        file.refuse(fmt::format("is a {}-bit library; this program is a {}-bit one", bits(kind), bits(own)),
                    std::string(other_build));
    if (kind.ident[EI_DATA] != own.ident[EI_DATA])
        file.refuse("was built for a machine of the other byte order", std::string(other_build));
    if (kind.machine != own.machine)
        file.refuse(fmt::format("was built for another machine (number {} in its header, {} in this program)",
                                kind.machine, own.machine),
                    std::string(other_build));
    if (kind.type == ET_EXEC)
        file.refuse("is a program, not a library", "name a plugin, such as steel.family");
    if (kind.type != ET_DYN)
        file.refuse("is not a shared library, though it holds machine code", "link it as a shared library");
}

/// The table of segments; refuses one that does not lie inside the file.
std::vector<Segment> read_segments(const ElfFile& file) {
    Header header = {};
    if (!file.read(0, &header, sizeof header))
        refuse_cut_off(file, sizeof header);
    if (header.e_phnum == 0 || header.e_phnum == PN_XNUM || header.e_phentsize != sizeof(Segment))
        file.refuse("has no table of segments that can be read", std::string(again));
    std::vector<Segment> segments(header.e_phnum);
    const std::size_t bytes = segments.size() * sizeof(Segment);
    if (!file.read(header.e_phoff, segments.data(), bytes))
        file.refuse("is cut off: its table of segments lies past its end", std::string(again));
    return segments;
}

} // namespace

void check_image(const std::string& path) {
    const ElfFile file(path);
    check_kind(file);
    bool loads = false;
    bool linked = false;
    for (const Segment& segment : read_segments(file)) {
        if (segment.p_type == PT_INTERP)
            file.refuse("is a program, not a library", "name a plugin, such as steel.family");
        loads = loads || segment.p_type == PT_LOAD;
        linked = linked || segment.p_type == PT_DYNAMIC;
        if (segment.p_type != PT_LOAD && segment.p_type != PT_DYNAMIC)
            continue;
        if (!file.holds(segment.p_offset, segment.p_filesz))
            file.refuse(
                fmt::format("is cut off: it ends after {} bytes, inside what must be loaded", file.size()),
                std::string(again));
        if (segment.p_filesz > segment.p_memsz)
            file.refuse("has a segment larger in the file than in memory", std::string(again));
    }
    if (!loads || !linked)
        file.refuse("holds nothing that can be loaded", std::string(again));
}

} // namespace ringfill
