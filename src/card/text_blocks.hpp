// SPDX-License-Identifier: MIT
#pragma once
// The blocks of a sheet, other than tables, on a page of text.

#include "card/text_page.hpp"

namespace platewright::detail {

void print_block(TextPage& page, const Facts& facts);
void print_block(TextPage& page, const Table& table);
void print_block(TextPage& page, const Paragraphs& paragraphs);
void print_block(TextPage& page, const Steps& steps);
void print_block(TextPage& page, const Box& box);
void print_block(TextPage& page, const Bars& bars);
void print_block(TextPage& page, const Signatures& signatures);
void print_block(TextPage& page, const Part& part);

}  // namespace platewright::detail
