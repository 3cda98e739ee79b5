#include <ringfill/material/exports.hpp>

#include <algorithm>
#include <cstdint>

#include <elf.h>
#include <link.h>

#include <ringfill/material/elf_file.hpp>

namespace ringfill {
namespace {

using Header = ElfW(Ehdr);
using Section = ElfW(Shdr);
using Symbol = ElfW(Sym);

constexpr std::uint64_t most_bytes = 64'000'000; ///< of symbols or names; more is no plugin

[[noreturn]] void unreadable(const ElfFile& file) {
    file.refuse("has no table of symbols that can be read", "link it again, without stripping its sections");
}

template <class Row>
std::vector<Row> read_rows(const ElfFile& file, std::uint64_t offset, std::uint64_t bytes) {
    if (bytes > most_bytes || bytes % sizeof(Row) != 0 || !file.holds(offset, bytes))
        unreadable(file);
    std::vector<Row> rows(static_cast<std::size_t>(bytes / sizeof(Row)));
    if (!rows.empty() && !file.read(offset, rows.data(), static_cast<std::size_t>(bytes)))
        unreadable(file);
    return rows;
}

std::vector<Section> read_sections(const ElfFile& file) {
    Header header = {};
    if (!file.read(0, &header, sizeof header) || header.e_shentsize != sizeof(Section))
        unreadable(file);
    return read_rows<Section>(file, header.e_shoff, std::uint64_t{header.e_shnum} * sizeof(Section));
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
    if (offset >= names.size())
        return {};
    const auto begin = names.begin() + static_cast<std::ptrdiff_t>(offset);
    return std::string(begin, std::find(begin, names.end(), '\0'));
}

} // namespace

std::vector<std::string> exported_names(const std::string& path) {
    const ElfFile file(path);
    const std::vector<Section> sections = read_sections(file);
    const auto table = std::find_if(sections.begin(), sections.end(),
                                    [](const Section& section) { return section.sh_type == SHT_DYNSYM; });
    if (table == sections.end() || table->sh_link >= sections.size())
        unreadable(file);
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
