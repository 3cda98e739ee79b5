#include "own_names.hpp"

#include <deque>
#include <fstream>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

#include <zip.h>

#include <fmt/format.h>

#include <ringfill/version.hpp>

namespace ringfill::cli {
namespace {

/// A theme says what its parts must say by the standard (ECMA-376, part 1, 20.1.6.9): twelve colours, two
/// fonts, three each of fills, lines, effects and grounds. Nothing of a quote asks for more than its black.
std::string theme() {
    std::string colours;
    for (const auto& [name, colour] : {std::pair{"dk1", "000000"},
                                       {"lt1", "FFFFFF"},
                                       {"dk2", "333333"},
                                       {"lt2", "EEEEEE"},
                                       {"accent1", "404040"},
                                       {"accent2", "606060"},
                                       {"accent3", "808080"},
                                       {"accent4", "A0A0A0"},
                                       {"accent5", "C0C0C0"},
                                       {"accent6", "E0E0E0"},
                                       {"hlink", "0000FF"},
                                       {"folHlink", "800080"}})
        colours += fmt::format("<a:{0}><a:srgbClr val=\"{1}\"/></a:{0}>", name, colour);
    std::string fonts;
    for (const char* const use : {"major", "minor"})
        fonts += fmt::format(
            "<a:{0}Font><a:latin typeface=\"{1}\"/><a:ea typeface=\"\"/><a:cs typeface=\"\"/></a:{0}Font>",
            use, own_font);
    const std::string_view fill = "<a:solidFill><a:schemeClr val=\"phClr\"/></a:solidFill>";
    const auto thrice = [](std::string_view list, std::string_view entry) {
        return fmt::format("<a:{0}>{1}{1}{1}</a:{0}>", list, entry);
    };
    return fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
        "<a:theme xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\" "
        "name=\"ringfill\"><a:themeElements>"
        "<a:clrScheme name=\"ringfill\">{}</a:clrScheme><a:fontScheme name=\"ringfill\">{}</a:fontScheme>"
        "<a:fmtScheme name=\"ringfill\">{}{}{}{}</a:fmtScheme></a:themeElements></a:theme>",
        colours, fonts, thrice("fillStyleLst", fill),
        thrice("lnStyleLst", fmt::format("<a:ln w=\"9525\">{}</a:ln>", fill)),
        thrice("effectStyleLst", "<a:effectStyle><a:effectLst/></a:effectStyle>"),
        thrice("bgFillStyleLst", fill));
}

/// The version in the two parts that a document may tell, 1.02.3 as 1.0203.
std::string document_version() {
    const std::string_view all = version;
    const std::size_t dot = all.find('.');
    const std::size_t second = all.find('.', dot + 1);
    const auto two_digits = [](std::string_view number) { return fmt::format("{:0>2}", number); };
    return fmt::format("{}.{}{}", all.substr(0, dot), two_digits(all.substr(dot + 1, second - dot - 1)),
                       two_digits(all.substr(second + 1)));
}

/// The text with `own` where it has something between `begin` and `end`.
std::string with_own(std::string text, std::string_view begin, std::string_view end, std::string_view own) {
    const std::size_t from = text.find(begin);
    const std::size_t to = from == std::string::npos ? from : text.find(end, from + begin.size());
    if (to != std::string::npos)
        text.replace(from + begin.size(), to - from - begin.size(), own);
    return text;
}

using Archive = std::unique_ptr<zip_t, void (*)(zip_t*)>;
using Source = std::unique_ptr<zip_source_t, void (*)(zip_source_t*)>;

/// The text of a member; empty when it cannot be read.
std::string text_of(zip_t* archive, zip_uint64_t member) {
    zip_stat_t stat;
    const std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> file(zip_fopen_index(archive, member, 0),
                                                                 zip_fclose);
    if (!file || zip_stat_index(archive, member, 0, &stat) != 0)
        return {};
    std::string text(stat.size, '\0');
    const bool whole = zip_fread(file.get(), text.data(), stat.size) == static_cast<zip_int64_t>(stat.size);
    return whole ? text : std::string();
}

/// A member as it shall be.
std::string own_text(std::string_view name, std::string text) {
    if (name == "xl/theme/theme1.xml")
        return theme();
    if (name == "xl/workbook.xml")
        return with_own(std::move(text), "<fileVersion ", "/>", "appName=\"ringfill\"");
    if (name == "docProps/app.xml")
        return with_own(with_own(std::move(text), "<Application>", "</Application>", "ringfill"),
                        "<AppVersion>", "</AppVersion>", document_version());
    return text;
}

/// Fills a package from another, with the names as they shall be. @param texts of its members, which must
/// live until it is closed.
bool fill(zip_t* package, zip_t* from, std::deque<std::string>& texts) {
    const zip_int64_t members = zip_get_num_entries(from, 0);
    for (zip_uint64_t i = 0; i < static_cast<zip_uint64_t>(members); ++i) {
        const char* const name = zip_get_name(from, i, 0);
        texts.push_back(name ? own_text(name, text_of(from, i)) : std::string());
        if (texts.back().empty())
            return false;
        zip_source_t* const source = zip_source_buffer(package, texts.back().data(), texts.back().size(), 0);
        const zip_int64_t added = zip_file_add(package, name, source, ZIP_FL_ENC_UTF_8);
        if (added < 0) {
            zip_source_free(source);
            return false;
        }
        // The first day that a package can tell, as its writer has it: the hour of writing is nobody's
        // business.
        if (zip_file_set_dostime(package, static_cast<zip_uint64_t>(added), 0, 0x21, 0) != 0)
            return false;
    }
    return members > 0;
}

/// All that was written to a source; empty when it cannot be read.
std::string bytes_of(zip_source_t* source) {
    zip_stat_t stat;
    if (zip_source_stat(source, &stat) != 0 || zip_source_open(source) != 0)
        return {};
    std::string bytes(stat.size, '\0');
    const bool whole =
        zip_source_read(source, bytes.data(), stat.size) == static_cast<zip_int64_t>(stat.size);
    zip_source_close(source);
    return whole ? bytes : std::string();
}

} // namespace

bool put_own_names(const char* file) {
    std::deque<std::string> texts;
    const Archive from(zip_open(file, ZIP_RDONLY, nullptr), zip_discard);
    const Source made(zip_source_buffer_create(nullptr, 0, 0, nullptr), zip_source_free);
    Archive package(made ? zip_open_from_source(made.get(), ZIP_TRUNCATE, nullptr) : nullptr, zip_discard);
    if (package)
        zip_source_keep(made.get()); // the package owns it, too
    if (!from || !package)
        return false;
    if (!fill(package.get(), from.get(), texts) || zip_close(package.get()) != 0)
        return false;
    (void)package.release();
    const std::string bytes = bytes_of(made.get());
    std::ofstream stream(file, std::ios::binary | std::ios::trunc);
    return !bytes.empty() &&
           stream.write(bytes.data(), static_cast<std::streamsize>(bytes.size())).flush().good();
}

} // namespace ringfill::cli
