// SPDX-License-Identifier: MIT
#pragma once
// Text that was compressed by the method of most archives.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace platewright {

/// What `deflated` (RFC 1951) stands for, by zlib; nothing where it is cut short, wrong, or comes
/// to another size than `size` bytes. Throws std::bad_alloc.
std::optional<std::string> inflated(std::string_view deflated, std::size_t size);

}  // namespace platewright
