#include <catch2/catch.hpp>

#include <array>
#include <cstring>
#include <fstream>
#include <string>

#include <elf.h>
#include <link.h>
#include <sys/stat.h>

#include <fmt/format.h>

#include <ringfill/document/whole_file.hpp>
#include <ringfill/material/image.hpp>

#include "document/own_folder.hpp"
#include "plugins/bad_plugin.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace {

const std::string again = "; install it again";
const std::string other_build = "; build or install it for this machine";
const std::string no_library = "; take it out of the folder or install the plugin again";
const std::string cut_off_headers = "is cut off: it ends after {} bytes and needs 64" + again;

std::string good_bytes() {
    return read_whole(plugin_file("good"), 10'000'000);
}

/// What some bytes are refused with as a plugin, without the file's name; "accepted" when they load.
std::string refused_bytes(const std::string& bytes) {
    const OwnFolder folder;
    folder.put("x.family", bytes);
    return refused_loading(folder / "x.family");
}

/// The good plugin with some bytes of its header changed.
std::string patched(std::size_t offset, const std::string& bytes) {
    std::string file = good_bytes();
    file.replace(offset, bytes.size(), bytes);
    return file;
}

/// The end of what the good plugin must have loaded.
std::size_t end_of_segments() {
    const std::string file = good_bytes();
    ElfW(Ehdr) header;
    std::memcpy(&header, file.data(), sizeof header);
    std::size_t end = 0;
    for (std::size_t i = 0; i < header.e_phnum; ++i) {
        ElfW(Phdr) segment;
        std::memcpy(&segment, file.data() + header.e_phoff + i * sizeof segment, sizeof segment);
        if (segment.p_type == PT_LOAD)
            end = std::max<std::size_t>(end, segment.p_offset + segment.p_filesz);
    }
    return end;
}

} // namespace

TEST_CASE("a folder, an empty file, a text and other bytes are no plugins") {
    const OwnFolder folder;
    CHECK(refused_loading(folder.path()) ==
          "is a folder, not a plugin; name a file in it, such as steel.family");
    CHECK(refused_bytes("") == "is empty" + again);
    CHECK(refused_bytes("{ \"format\": \"ringfill-family/1\" }\n") ==
          "is a text file, not a shared library" + no_library);
    CHECK(refused_bytes(std::string("\0\1\2\3\4", 5)) == "is not a shared library" + no_library);
    CHECK(refused_bytes("\x7F") == "is a text file, not a shared library" + no_library);
}

TEST_CASE("a pipe is not waited for") {
    const OwnFolder folder;
    REQUIRE(::mkfifo((folder / "x.family").c_str(), 0600) == 0);
    CHECK(refused_loading(folder / "x.family") ==
          "is not a regular file; name a plugin, such as steel.family");
}

TEST_CASE("a plugin cut off anywhere is refused before it is loaded, with its length") {
    const std::string whole = good_bytes();
    for (const std::size_t length : {std::size_t{4}, std::size_t{15}, std::size_t{63}})
        CHECK(refused_bytes(whole.substr(0, length)) == fmt::format(fmt::runtime(cut_off_headers), length));
    CHECK(refused_bytes(whole.substr(0, 64)) ==
          "is cut off: its table of segments lies past its end" + again);
    const std::size_t end = end_of_segments();
    REQUIRE(end > 1'000);
    for (const std::size_t length : {end / 8, end / 4, end / 2, end * 3 / 4, end - 1})
        if (length >= 1'000)
            CHECK(refused_bytes(whole.substr(0, length)) ==
                  fmt::format("is cut off: it ends after {} bytes, inside what must be loaded", length) +
                      again);
}

TEST_CASE("at no length does a cut-off plugin end the program") {
    const std::string whole = good_bytes();
    std::size_t refused = 0;
    for (std::size_t length = 0; length < end_of_segments(); length += 97)
        refused += refused_bytes(whole.substr(0, length)) != "accepted" ? 1U : 0U;
    CHECK(refused == (end_of_segments() + 96) / 97);
}

TEST_CASE("a library for another machine is told from a broken one") {
    CHECK(refused_bytes(patched(EI_CLASS, std::string(1, ELFCLASS32))) ==
          "is a 32-bit library; this program is a 64-bit one" + other_build);
    CHECK(refused_bytes(patched(EI_DATA, std::string(1, ELFDATA2MSB))) ==
          "was built for a machine of the other byte order" + other_build);
    ElfW(Ehdr) header;
    std::memcpy(&header, good_bytes().data(), sizeof header);
    CHECK(refused_bytes(patched(offsetof(ElfW(Ehdr), e_machine), std::string("\xF3\0", 2))) ==
          fmt::format("was built for another machine (number 243 in its header, {} in this program)",
                      header.e_machine) +
              other_build);
}

TEST_CASE("a program is no library") {
    CHECK(refused_loading(std::filesystem::canonical(RINGFILL_PROGRAM).string()) ==
          "is a program, not a library; name a plugin, such as steel.family");
    CHECK(refused_bytes(patched(offsetof(ElfW(Ehdr), e_type), std::string("\2\0", 2))) ==
          "is a program, not a library; name a plugin, such as steel.family");
    CHECK(refused_bytes(patched(offsetof(ElfW(Ehdr), e_type), std::string("\1\0", 2))) ==
          "is not a shared library, though it holds machine code; link it as a shared library");
}

TEST_CASE("offsets that would overflow are not trusted") {
    CHECK(refused_bytes(patched(offsetof(ElfW(Ehdr), e_phoff), std::string(8, '\xFF'))) ==
          "is cut off: its table of segments lies past its end" + again);
    CHECK(refused_bytes(patched(offsetof(ElfW(Ehdr), e_phnum), std::string("\0\0", 2))) ==
          "has no table of segments that can be read" + again);
    const std::string whole = good_bytes();
    ElfW(Ehdr) header;
    std::memcpy(&header, whole.data(), sizeof header);
    const std::size_t first_size = header.e_phoff + offsetof(ElfW(Phdr), p_filesz);
    CHECK(refused_bytes(patched(first_size, std::string(8, '\xFF'))) ==
          fmt::format("is cut off: it ends after {} bytes, inside what must be loaded", whole.size()) +
              again);
    const std::size_t first_offset = header.e_phoff + offsetof(ElfW(Phdr), p_offset);
    CHECK(refused_bytes(patched(first_offset, std::string(8, '\xFF'))) ==
          fmt::format("is cut off: it ends after {} bytes, inside what must be loaded", whole.size()) +
              again);
}

TEST_CASE("segments that cannot be laid out in memory are refused") {
    const std::string whole = good_bytes();
    ElfW(Ehdr) header;
    std::memcpy(&header, whole.data(), sizeof header);
    CHECK(refused_bytes(patched(header.e_phoff + offsetof(ElfW(Phdr), p_memsz), std::string(8, '\0'))) ==
          "has a segment larger in the file than in memory" + again);
    std::string unlinked = whole;
    for (std::size_t i = 0; i < header.e_phnum; ++i) {
        const std::size_t at = header.e_phoff + i * sizeof(ElfW(Phdr));
        ElfW(Phdr) segment;
        std::memcpy(&segment, whole.data() + at, sizeof segment);
        if (segment.p_type == PT_DYNAMIC)
            unlinked.replace(at, 4, std::string(4, '\0')); // PT_NULL
    }
    CHECK(refused_bytes(unlinked) == "holds nothing that can be loaded" + again);
}

TEST_CASE("a library whose table of symbols cannot be read is told to be linked again") {
    const OwnFolder folder;
    const std::string file = folder / "x.family";
    const std::string unreadable =
        file + ": has no table of symbols that can be read; link it again, without stripping its sections";
    const auto refused_exports = [&](const std::string& bytes) {
        folder.put("x.family", bytes);
        return refusal(Origin::table, [&] { exported_names(file); });
    };
    CHECK(refused_exports("") == unreadable);
    CHECK(refused_exports(patched(offsetof(ElfW(Ehdr), e_shentsize), std::string("\1\0", 2))) == unreadable);
    CHECK(refused_exports(patched(offsetof(ElfW(Ehdr), e_shnum), std::string("\0\0", 2))) == unreadable);
    CHECK(refused_exports(patched(offsetof(ElfW(Ehdr), e_shoff), std::string(8, '\xFF'))) == unreadable);
    CHECK(refused_exports(good_bytes()) == "accepted");
}

TEST_CASE("a file that is not there is told as such before anything is read of it") {
    CHECK(refusal(Origin::file, [] { check_image("/nowhere/x.family"); }) ==
          "/nowhere/x.family: cannot be read: No such file or directory; check the name");
}

TEST_CASE("what a library exports is read from the file") {
    CHECK(exported_names(plugin_file("good")) == std::vector<std::string>{"ringfill_material_v1"});
    CHECK(exported_names(plugin_file("exports_more")) ==
          std::vector<std::string>{"helper", "ringfill_material_v1"});
    CHECK(exported_names(plugin_file("other_version")) == std::vector<std::string>{"ringfill_material_v2"});
}
