// SPDX-License-Identifier: MIT
#pragma once
// Where the bodies of functions stand: compiled, in the archive of platewright::core, or in the
// headers, for whoever defines PLATEWRIGHT_HEADER_ONLY (platewright::headers does).

#ifdef PLATEWRIGHT_HEADER_ONLY
#define PLATEWRIGHT_BODY inline
#else
/// Before a body in a file of its own, which its header reads where all is in the headers.
#define PLATEWRIGHT_BODY
#endif

namespace platewright::detail {

// One program is compiled in one way. Every source asks for this object as what it is in its own
// way, with or without a copy for each thread, and a linker refuses what asks for it as both.
#ifdef PLATEWRIGHT_HEADER_ONLY
[[gnu::used]] inline thread_local char where_bodies_stand = 0;
#else
extern char where_bodies_stand;
[[gnu::used]] static char* const bodies_are_compiled = &where_bodies_stand;
#endif

}  // namespace platewright::detail
