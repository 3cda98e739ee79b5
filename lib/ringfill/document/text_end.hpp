#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace ringfill {
namespace as_it_is {

/// For each byte, whether it is a character of its own that stands in a JSON text as it is.
inline constexpr std::array<bool, 256> stands = [] {
    std::array<bool, 256> table = {};
    for (std::size_t code = 0x20; code < 0x7F; ++code)
        table[code] = code != '"' && code != '\\';
    return table;
}();

using Block = std::uint64_t;

/// Each byte of a block.
constexpr Block each(Block byte) {
    return byte * 0x0101010101010101U;
}

/// Whether any byte of a block of bytes under 0x80 is less than `limit`.
constexpr bool any_less(Block bytes, Block limit) {
    return ((bytes - each(limit)) & ~bytes & each(0x80)) != 0;
}

/// Whether every byte of a block stands in a JSON text as it is, as in the table, eight at a time.
constexpr bool all_stand(Block bytes) {
    return (bytes & each(0x80)) == 0 && !any_less(bytes, 0x20) && !any_less(bytes ^ each('"'), 1) &&
           !any_less(bytes ^ each('\\'), 1) && !any_less(bytes ^ each(0x7F), 1);
}

} // namespace as_it_is

/// What is put behind a text. It grows in steps and is cut at the end, so that the many short pieces of JSON
/// cost little more than their bytes.
class TextEnd {
  public:
    explicit TextEnd(std::string& text) : text_(text), used_(text.size()) {}
    TextEnd(const TextEnd&) = delete;
    TextEnd& operator=(const TextEnd&) = delete;
    ~TextEnd() { text_.resize(used_); }

    void put(char sign) {
        make_room(1);
        text_[used_++] = sign;
    }
    void put(std::string_view piece) {
        make_room(piece.size());
        std::copy(piece.begin(), piece.end(), text_.data() + used_);
        used_ += piece.size();
    }
    void put(std::size_t count, char sign) {
        make_room(count);
        std::fill_n(text_.data() + used_, count, sign);
        used_ += count;
    }

    /// Puts a text in quotation marks if all of it stands as it is; otherwise nothing, and tells so.
    bool put_quoted(std::string_view piece) {
        make_room(piece.size() + 2);
        char* const to = text_.data() + used_;
        if (!copied_as_it_is(piece, to + 1))
            return false;
        to[0] = '"';
        to[piece.size() + 1] = '"';
        used_ += piece.size() + 2;
        return true;
    }

  private:
    using Block = as_it_is::Block;

    /// Block by block, the last of them over a part of the one before it; a text of half a block in two
    /// halves.
    static bool copied_as_it_is(std::string_view piece, char* to) {
        const std::size_t size = piece.size();
        if (size >= sizeof(Block)) {
            for (std::size_t i = 0; i + sizeof(Block) <= size; i += sizeof(Block))
                if (!put_block(piece.data() + i, to + i))
                    return false;
            const std::size_t last = size - sizeof(Block);
            return put_block(piece.data() + last, to + last);
        }
        if (constexpr std::size_t half = sizeof(std::uint32_t); size >= half) {
            std::uint32_t first = 0;
            std::uint32_t second = 0;
            std::memcpy(&first, piece.data(), half);
            std::memcpy(&second, piece.data() + size - half, half);
            std::memcpy(to, &first, half);
            std::memcpy(to + size - half, &second, half);
            return as_it_is::all_stand(Block{first} | Block{second} << 32U);
        }
        for (std::size_t i = 0; i < size; ++i) {
            if (!as_it_is::stands[static_cast<unsigned char>(piece[i])])
                return false;
            to[i] = piece[i];
        }
        return true;
    }

    static bool put_block(const char* from, char* to) {
        Block block = 0;
        std::memcpy(&block, from, sizeof block);
        std::memcpy(to, &block, sizeof block);
        return as_it_is::all_stand(block);
    }

    void make_room(std::size_t bytes) {
        constexpr std::size_t step = 1'024;
        if (used_ + bytes > text_.size())
            text_.resize(used_ + bytes + step);
    }

    std::string& text_;
    std::size_t used_;
};

} // namespace ringfill
