#include <ringfill/material/image.hpp>

#include <algorithm>
#include <cerrno>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <string_view>

#include <elf.h>
#include <link.h>
#include <sys/stat.h>

#include <fmt/format.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/fault/fault.hpp>

namespace ringfill {
namespace {

constexpr std::string_view again = "install it again";
constexpr std::string_view other_build = "build or install it for this machine";
constexpr std::string_view name_a_plugin = "name a plugin, such as steel.family";

[[noreturn]] void cannot_read(const std::string& path, int error) {
    throw Faulty(Origin::file,
                 fault_in_file(path, fmt::format("cannot be read: {}", std::strerror(error)),
                               error == ENOENT ? "check the name" : "choose a file that you may read"));
}

/// A file opened to look at its headers; nothing of it is mapped or run, and no offset it states is trusted.
class ElfFile {
  public:
    /// Throws Faulty: Origin::table for a folder or anything else that is no regular file, Origin::file when
    /// it cannot be read.
    explicit ElfFile(const std::string& path) : path_(path) {
        struct stat status = {};
        if (::stat(path.c_str(), &status) != 0) // before opening: a pipe would wait for its other end
            cannot_read(path, errno);
        refuse_if(S_ISDIR(status.st_mode), "is a folder, not a plugin",
                  "name a file in it, such as steel.family");
        refuse_if(!S_ISREG(status.st_mode), "is not a regular file", name_a_plugin);
        file_.open(path, std::ios::binary);
        if (!file_)
            cannot_read(path, errno);
        size_ = static_cast<std::uint64_t>(status.st_size);
    }

    std::uint64_t size() const { return size_; }

    /// Whether a part lies inside the file, whatever its offset and size claim.
    bool holds(std::uint64_t offset, std::uint64_t bytes) const {
        return offset <= size_ && bytes <= size_ - offset;
    }

    /// Reads a part; false when it does not lie inside the file.
    bool read(std::uint64_t offset, void* into, std::size_t bytes) {
        return holds(offset, bytes) && file_.seekg(static_cast<std::streamoff>(offset)) &&
               file_.read(static_cast<char*>(into), static_cast<std::streamsize>(bytes));
    }

    /// Throws Faulty (Origin::table) of this file.
    [[noreturn]] void refuse(std::string reason, std::string_view remedy) const {
        throw Faulty(Origin::table, fault_in_file(path_, std::move(reason), std::string(remedy)));
    }
    void refuse_if(bool wrong, std::string_view reason, std::string_view remedy) const {
        if (wrong)
            refuse(std::string(reason), remedy);
    }

  private:
    std::string path_;
    std::ifstream file_;
    std::uint64_t size_ = 0;
};

using Header = ElfW(Ehdr);
using Segment = ElfW(Phdr);
using Section = ElfW(Shdr);
using Symbol = ElfW(Sym);

/// Reads what every ELF file begins with, whatever machine it is for: its kind, type and machine.
bool read_kind(ElfFile& file, Header& header) {
    return file.read(0, &header, offsetof(Header, e_version));
}

bool is_elf(const Header& header) {
    return std::memcmp(header.e_ident, ELFMAG, SELFMAG) == 0;
}

/// The kind of the running program, which a library must match.
Header own_kind() {
    ElfFile self("/proc/self/exe");
    Header kind = {};
    self.refuse_if(!read_kind(self, kind) || !is_elf(kind), "is not understood, so no plugin can be judged",
                   "report this with the system's name");
    return kind;
}

/// Whether the beginning of a file reads as text.
bool begins_as_text(ElfFile& file) {
    std::string text(static_cast<std::size_t>(std::min<std::uint64_t>(file.size(), 256)), '\0');
    return file.read(0, text.data(), text.size()) && std::all_of(text.begin(), text.end(), [](char c) {
               return c == '\n' || c == '\r' || c == '\t' || static_cast<unsigned char>(c) >= 0x20;
           });
}

[[noreturn]] void refuse_cut_off(const ElfFile& file) {
    file.refuse(fmt::format("is cut off: it ends after {} bytes and needs {}", file.size(), sizeof(Header)),
                again);
}

/// Refuses what is no ELF file of the kind the running program is.
void check_kind(ElfFile& file) {
    file.refuse_if(file.size() == 0, "is empty", again);
    Header kind = {};
    if (!file.read(0, &kind, SELFMAG) || !is_elf(kind))
        file.refuse(begins_as_text(file) ? "is a text file, not a shared library" : "is not a shared library",
                    "take it out of the folder or install the plugin again");
    if (!read_kind(file, kind))
        refuse_cut_off(file);
    static const Header own = own_kind();
    const auto bits = [](const Header& of) { return of.e_ident[EI_CLASS] == ELFCLASS32 ? 32 : 64; };
    if (kind.e_ident[EI_CLASS] != own.e_ident[EI_CLASS])
        file.refuse(fmt::format("is a {}-bit library; this program is a {}-bit one", bits(kind), bits(own)),
                    other_build);
    file.refuse_if(kind.e_ident[EI_DATA] != own.e_ident[EI_DATA],
                   "was built for a machine of the other byte order", other_build);
    if (kind.e_machine != own.e_machine)
        file.refuse(fmt::format("was built for another machine (number {} in its header, {} in this program)",
                                kind.e_machine, own.e_machine),
                    other_build);
    file.refuse_if(kind.e_type == ET_EXEC, "is a program, not a library", name_a_plugin);
    file.refuse_if(kind.e_type != ET_DYN, "is not a shared library, though it holds machine code",
                   "link it as a shared library");
}

/// The table of segments; refuses one that does not lie inside the file.
std::vector<Segment> read_segments(ElfFile& file) {
    Header header = {};
    if (!file.read(0, &header, sizeof header))
        refuse_cut_off(file);
    file.refuse_if(header.e_phnum == 0 || header.e_phnum == PN_XNUM || header.e_phentsize != sizeof(Segment),
                   "has no table of segments that can be read", again);
    std::vector<Segment> segments(header.e_phnum);
    file.refuse_if(!file.read(header.e_phoff, segments.data(), segments.size() * sizeof(Segment)),
                   "is cut off: its table of segments lies past its end", again);
    return segments;
}

constexpr std::uint64_t most_bytes = 64'000'000; ///< of symbols or names; more is no plugin

void check_readable(bool readable, const ElfFile& file) {
    file.refuse_if(!readable, "has no table of symbols that can be read",
                   "link it again, without stripping its sections");
}

template <class Row>
std::vector<Row> read_rows(ElfFile& file, std::uint64_t offset, std::uint64_t bytes) {
    check_readable(bytes <= most_bytes && bytes % sizeof(Row) == 0 && file.holds(offset, bytes), file);
    std::vector<Row> rows(static_cast<std::size_t>(bytes / sizeof(Row)));
    check_readable(rows.empty() || file.read(offset, rows.data(), static_cast<std::size_t>(bytes)), file);
    return rows;
}

/// Whether others can find a symbol: defined here, and neither local nor hidden. Bits as the ELF format has
/// them, the same for 32 and 64 bits.
bool is_exported(const Symbol& symbol) {
    const unsigned binding = symbol.st_info >> 4U;
    const unsigned visibility = symbol.st_other & 3U;
    return symbol.st_shndx != SHN_UNDEF && binding != STB_LOCAL &&
           (visibility == STV_DEFAULT || visibility == STV_PROTECTED);
}

std::string name_at(const std::vector<char>& names, std::size_t offset) {
    const std::string_view rest(names.data(), names.size());
    return offset < rest.size() ? std::string(rest.substr(offset, rest.find('\0', offset) - offset)) : "";
}

} // namespace

void check_image(const std::string& path) {
    ElfFile file(path);
    check_kind(file);
    bool loads = false, linked = false;
    for (const Segment& segment : read_segments(file)) {
        file.refuse_if(segment.p_type == PT_INTERP, "is a program, not a library", name_a_plugin);
        loads = loads || segment.p_type == PT_LOAD;
        linked = linked || segment.p_type == PT_DYNAMIC;
        if (segment.p_type != PT_LOAD && segment.p_type != PT_DYNAMIC)
            continue;
        if (!file.holds(segment.p_offset, segment.p_filesz))
            file.refuse(
                fmt::format("is cut off: it ends after {} bytes, inside what must be loaded", file.size()),
                again);
        file.refuse_if(segment.p_filesz > segment.p_memsz, "has a segment larger in the file than in memory",
                       again);
    }
    file.refuse_if(!loads || !linked, "holds nothing that can be loaded", again);
}

std::vector<std::string> exported_names(const std::string& path) {
    ElfFile file(path);
    Header header = {};
    check_readable(file.read(0, &header, sizeof header) && header.e_shentsize == sizeof(Section), file);
    const auto sections =
        read_rows<Section>(file, header.e_shoff, std::uint64_t{header.e_shnum} * sizeof(Section));
    const auto table = ranges::find(sections, std::uint32_t{SHT_DYNSYM}, &Section::sh_type);
    check_readable(table != sections.end() && table->sh_link < sections.size(), file);
    const Section& text = sections[table->sh_link];
    const auto names = read_rows<char>(file, text.sh_offset, text.sh_size);
    std::vector<std::string> exported;
    for (const Symbol& symbol : read_rows<Symbol>(file, table->sh_offset, table->sh_size))
        if (is_exported(symbol))
            exported.push_back(name_at(names, symbol.st_name));
    std::sort(exported.begin(), exported.end());
    return exported;
}

} // namespace ringfill
