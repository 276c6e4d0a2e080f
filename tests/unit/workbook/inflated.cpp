// SPDX-License-Identifier: MIT
// Archives' compression, undone: what it stands for was compressed by zlib (through Python's zlib).

#include "workbook/inflated.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

const std::string stored_block(
    "\001\017\000\360\377\163\141\154\164\040\141\156\144\040\160\145\160\160"
    "\145\162",
    20);
const std::string fixed_block(
    "\053\116\314\051\121\050\106\041\164\024\022\363\122\024\012\122\013\012"
    "\122\213\000",
    21);
const std::string written_codes_block(
    "\355\222\301\141\004\061\010\003\133\241\065\004\364\337\102\106\362\076"
    "\362\114\001\271\307\171\155\204\020\202\356\377\337\137\177\325\163\307"
    "\251\223\126\174\251\045\077\225\272\256\207\173\367\162\154\013\154\003"
    "\363\333\362\001\166\226\140\301\242\252\311\255\071\202\050\023\202\250"
    "\133\250\004\005\154\022\044\044\326\314\020\205\317\257\300\235\005\353"
    "\014\341\253\341\361\346\111\231\144\021\044\345\306\325\217\352\343\114"
    "\140\355\222\352\264\320\367\324\232\166\055\113\345\074\342\122\342\145"
    "\256\340\333\301\131\310\226\152\160\257\025\236\166\021\376\313\033\000"
    "\146\113\036\300\110\342\141\237\007\362\263\102\211\152\324\270\232\173"
    "\206\213\173\177\124\226\352\076\236\230\271\162\057\027\252\147\070\067"
    "\377\031\230\123\166\305\145\322\132\032\263\331\356\025\111\146\036\034"
    "\167\055\023\062\252\317\241\117\013\112\246\344\330\364\353\326\303\132"
    "\124\167\150\042\355\363\063\266\245\047\213\245\300\135\230\330\200\270"
    "\322\327\337\274\322\111\271\223\333\051\167\146\163\052\020\026\107\223"
    "\311\307\002\104\157\202\232\117\202\055\016\221\227\004\227\313\103\261"
    "\327\036\060\034\033\331\066\064\223\054\033\133\345\174\313\174\063\143"
    "\223\120\272\252\365\022\214\227\361\007",
    298);
const std::string words =
    std::string(300, 'a') +
    " "
    "aceeaaabebbdbeaababbceea ba eacabaaadcabdab acaebbcabadaebaabcdaad aa b  cbcdaaacbcb"
    "caba ebbdabc ed babdcaeacbbb abaa cccbdaacaaeaccabcbcbbadcc abe ceacecababbccacbbbbb"
    "acccecbbcaeadaccaaeceaadaaabaeeaaaaecabaaaaacadad ab bbbaaabbbeaaaa cacbaaabaa ab cd"
    "bcade cbacdabdcebddba aaaaaaaaa abcaaacacacbae ccababaacdbcabadbacbabcbaaaabeceabbaa"
    "dabcbdcbecaa aaaaacaaebccabbbaaace bacceabababeaabaccebaccacaabaccabaaeaaacdaabaeaaa"
    "ecbaabadaa abbecaca bbaadbaaaea cbbbbbaabcbaaaecec bdbaacaaaabaaaebadcdbabaababecaab"
    "acccecaaaaeabaaca aadaaeebbbaaceebacdaaeaabaa ccaaaac aebcedc  aaabcaa daaeadbebcacb"
    "cbabbaabaedbcaa bcacaaaabcbacaabaacbcdbdd aabbdba bbcc dadaaaecdbaceeaaa acba   bcaa"
    "cccbaaabac eeabdb dbbcac aca";

}  // namespace

TEST_CASE("each kind of block is what was compressed") {
  CHECK(inflated(stored_block, 15) == "salt and pepper");
  CHECK(inflated(fixed_block, 31) == "salt salt salt salt, and pepper");
  CHECK(inflated(written_codes_block, words.size()) == words);
}

TEST_CASE("what is cut short, changed or of another size is nothing") {
  CHECK_FALSE(inflated("", 0));
  CHECK_FALSE(inflated("\7", 0));
  for (std::size_t size = 0; size < written_codes_block.size(); ++size) {
    CHECK_FALSE(inflated(written_codes_block.substr(0, size), words.size()));
  }
  for (std::size_t size = 0; size < stored_block.size(); ++size) {
    CHECK_FALSE(inflated(stored_block.substr(0, size), 15));
  }
  CHECK_FALSE(inflated(stored_block, 14));
  CHECK_FALSE(inflated(fixed_block, 32));
  CHECK_FALSE(inflated(written_codes_block, words.size() - 1));
}

TEST_CASE("no bytes lead out of what there is") {
  for (std::size_t i = 0; i < written_codes_block.size(); ++i) {
    for (const unsigned bit : {1U, 8U, 64U}) {
      std::string changed = written_codes_block;
      changed[i] = static_cast<char>(static_cast<unsigned char>(changed[i]) ^ bit);
      const auto text = inflated(changed, words.size());
      CHECK((!text || text->size() == words.size()));
    }
  }
}
