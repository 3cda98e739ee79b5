#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <string>

#include <ringfill/document/whole_file.hpp>

#include "document/own_folder.hpp"
#include "document/refused.hpp"

using namespace ringfill;
using namespace ringfill::testing;

namespace fs = std::filesystem;

TEST_CASE("what is written is read back, byte for byte") {
    const OwnFolder folder;
    const std::string content("\0½\r\n\xFF", 6);
    write_whole(folder / "new", content);
    CHECK(read_whole(folder / "new", 100) == content);
    write_whole(folder / "new", "");
    CHECK(read_whole(folder / "new", 100).empty());
    CHECK(folder.names() == "new");
}

TEST_CASE("a file larger than the limit can be told from one of just that size") {
    const OwnFolder folder;
    write_whole(folder / "f", std::string(200'000, 'x'));
    CHECK(read_whole(folder / "f", 200'000).size() == 200'000);
    CHECK(read_whole(folder / "f", 199'999).size() > 199'999);
    CHECK(read_whole(folder / "f", 10).size() > 10);
}

TEST_CASE("a replaced file keeps its mode") {
    const OwnFolder folder;
    folder.put("f", "old");
    fs::permissions(folder / "f", fs::perms(0640));
    write_whole(folder / "f", "new");
    CHECK(read_whole(folder / "f", 100) == "new");
    CHECK(fs::status(folder / "f").permissions() == fs::perms(0640));
    CHECK(folder.names() == "f");
}

TEST_CASE("a link is followed and stays a link") {
    const OwnFolder folder;
    fs::create_directory(folder / "d");
    folder.put("d/target", "old");
    fs::create_symlink("d/target", folder / "link");
    write_whole(folder / "link", "new");
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(read_whole(folder / "d/target", 100) == "new");
    CHECK(folder.names() == "d d/target link");
}

TEST_CASE("a folder is not a file") {
    const OwnFolder folder;
    fs::create_directory(folder / "d");
    CHECK(refusal(Origin::file, [&] { write_whole(folder / "d", "x"); }) ==
          folder / "d" + ": cannot be written: Is a directory; name a file, not a folder");
    CHECK(refusal(Origin::file, [&] { read_whole(folder / "d", 10); }) ==
          folder / "d" + ": cannot be read: Is a directory; name a file, not a folder");
    CHECK(folder.names() == "d");
}

TEST_CASE("a name whose folder is missing is refused and nothing is left beside it") {
    const OwnFolder folder;
    folder.put("f", "x");
    CHECK(refusal(Origin::file, [&] { write_whole(folder / "no/f", "x"); }) ==
          folder / "no/f" +
              ": cannot be written: No such file or directory; check the name and make the folder first");
    CHECK(refusal(Origin::file, [&] { read_whole(folder / "no", 10); }) ==
          folder / "no" + ": cannot be read: No such file or directory; check the name");
    CHECK(refusal(Origin::file, [&] { write_whole(folder / "f/g", "x"); }) ==
          folder / "f/g" +
              ": cannot be written: Not a directory; a part of the name is a file, not a folder");
    CHECK(folder.names() == "f");
}
