#include <ringfill/material/image.hpp>

#include <algorithm>
#include <cerrno>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <functional>
#include <string_view>

#include <elf.h>
#include <link.h>
#include <sys/stat.h>

#include <range/v3/algorithm/find.hpp>

#include <ringfill/material/breach.hpp>

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
    /// Throws Breach for a folder or anything else that is no regular file, Faulty (Origin::file) when it
    /// cannot be read.
    explicit ElfFile(const std::string& path) {
        struct stat status = {};
        if (::stat(path.c_str(), &status) != 0) // before opening: a pipe would wait for its other end
            cannot_read(path, errno);
        refuse_if(S_ISDIR(status.st_mode), "name a file in it, such as steel.family",
                  "is a folder, not a plugin");
        refuse_if(!S_ISREG(status.st_mode), name_a_plugin, "is not a regular file");
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

  private:
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
    const std::string self = "/proc/self/exe";
    return look_at(self, [&] {
        ElfFile file(self);
        Header kind = {};
        refuse_if(!read_kind(file, kind) || !is_elf(kind), "report this with the system's name",
                  "is not understood, so no plugin can be judged");
        return kind;
    });
}

/// Whether the beginning of a file reads as text.
bool begins_as_text(ElfFile& file) {
    std::string text(static_cast<std::size_t>(std::min<std::uint64_t>(file.size(), 256)), '\0');
    return file.read(0, text.data(), text.size()) && std::all_of(text.begin(), text.end(), [](char c) {
               return c == '\n' || c == '\r' || c == '\t' || static_cast<unsigned char>(c) >= 0x20;
           });
}

void refuse_if_cut_off(bool cut_off, const ElfFile& file) {
    refuse_if(cut_off, again, "is cut off: it ends after {} bytes and needs {}", file.size(), sizeof(Header));
}

/// Refuses what is no ELF file of the kind the running program is.
void check_kind(ElfFile& file) {
    refuse_if(file.size() == 0, again, "is empty");
    Header kind = {};
    refuse_if(!file.read(0, &kind, SELFMAG) || !is_elf(kind),
              "take it out of the folder or install the plugin again", "is {}",
              begins_as_text(file) ? "a text file, not a shared library" : "not a shared library");
    refuse_if_cut_off(!read_kind(file, kind), file);
    static const Header own = own_kind();
    const auto bits = [](const Header& of) { return of.e_ident[EI_CLASS] == ELFCLASS32 ? 32 : 64; };
    refuse_if(kind.e_ident[EI_CLASS] != own.e_ident[EI_CLASS], other_build,
              "is a {}-bit library; this program is a {}-bit one", bits(kind), bits(own));
    refuse_if(kind.e_ident[EI_DATA] != own.e_ident[EI_DATA], other_build,
              "was built for a machine of the other byte order");
    refuse_if(kind.e_machine != own.e_machine, other_build,
              "was built for another machine (number {} in its header, {} in this program)", kind.e_machine,
              own.e_machine);
    refuse_if(kind.e_type == ET_EXEC, name_a_plugin, "is a program, not a library");
    refuse_if(kind.e_type != ET_DYN, "link it as a shared library",
              "is not a shared library, though it holds machine code");
}

/// The table of segments; refuses one that does not lie inside the file.
std::vector<Segment> read_segments(ElfFile& file) {
    Header header = {};
    refuse_if_cut_off(!file.read(0, &header, sizeof header), file);
    refuse_if(header.e_phnum == 0 || header.e_phnum == PN_XNUM || header.e_phentsize != sizeof(Segment),
              again, "has no table of segments that can be read");
    std::vector<Segment> segments(header.e_phnum);
    refuse_if(!file.read(header.e_phoff, segments.data(), segments.size() * sizeof(Segment)), again,
              "is cut off: its table of segments lies past its end");
    return segments;
}

constexpr std::uint64_t most_bytes = 64'000'000; ///< of symbols or names; more is no plugin

void check_readable(bool readable) {
    refuse_if(!readable, "link it again, without stripping its sections",
              "has no table of symbols that can be read");
}

template <class Row>
std::vector<Row> read_rows(ElfFile& file, std::uint64_t offset, std::uint64_t bytes) {
    check_readable(bytes <= most_bytes && bytes % sizeof(Row) == 0 && file.holds(offset, bytes));
    std::vector<Row> rows(static_cast<std::size_t>(bytes / sizeof(Row)));
    check_readable(rows.empty() || file.read(offset, rows.data(), static_cast<std::size_t>(bytes)));
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

/// The names of some symbols that the loader goes by, in alphabetical order.
std::vector<std::string> names_of(const std::string& path, const std::function<bool(const Symbol&)>& wanted) {
    return look_at(path, [&] {
        ElfFile file(path);
        Header header = {};
        check_readable(file.read(0, &header, sizeof header) && header.e_shentsize == sizeof(Section));
        const auto sections =
            read_rows<Section>(file, header.e_shoff, std::uint64_t{header.e_shnum} * sizeof(Section));
        const auto table = ranges::find(sections, std::uint32_t{SHT_DYNSYM}, &Section::sh_type);
        check_readable(table != sections.end() && table->sh_link < sections.size());
        const Section& text = sections[table->sh_link];
        const auto names = read_rows<char>(file, text.sh_offset, text.sh_size);
        std::vector<std::string> found;
        for (const Symbol& symbol : read_rows<Symbol>(file, table->sh_offset, table->sh_size))
            if (wanted(symbol))
                found.push_back(name_at(names, symbol.st_name));
        std::sort(found.begin(), found.end());
        return found;
    });
}

} // namespace

void check_image(const std::string& path) {
    look_at(path, [&] {
        ElfFile file(path);
        check_kind(file);
        bool loads = false, linked = false;
        for (const Segment& segment : read_segments(file)) {
            refuse_if(segment.p_type == PT_INTERP, name_a_plugin, "is a program, not a library");
            loads = loads || segment.p_type == PT_LOAD;
            linked = linked || segment.p_type == PT_DYNAMIC;
            if (segment.p_type != PT_LOAD && segment.p_type != PT_DYNAMIC)
                continue;
            refuse_if(!file.holds(segment.p_offset, segment.p_filesz), again,
                      "is cut off: it ends after {} bytes, inside what must be loaded", file.size());
            refuse_if(segment.p_filesz > segment.p_memsz, again,
                      "has a segment larger in the file than in memory");
        }
        refuse_if(!loads || !linked, again, "holds nothing that can be loaded");
    });
}

std::vector<std::string> exported_names(const std::string& path) {
    return names_of(path, is_exported);
}

std::vector<std::string> imported_names(const std::string& path) {
    return names_of(path, [](const Symbol& symbol) { return symbol.st_shndx == SHN_UNDEF; });
}

} // namespace ringfill
