/* SPDX-License-Identifier: MIT */
/* A client in C: what 12 lb of a cut serves, and what is wrong with a weight. */

#include <platewright/c/platewright.h>
#include <string.h>

int main(void) {
  const char *cut = "lamb leg, bone-in, roasted";
  platewright_reply *reply = platewright_ask_yield(NULL, cut, "12 lb", "6 oz", NULL);
  const platewright_yield *yield = platewright_yield_of(reply);
  int good = yield != NULL && strcmp(yield->portions.exact, "18") == 0;
  platewright_free_reply(reply);

  reply = platewright_ask_yield(NULL, cut, "twelve", NULL, NULL);
  good = good && platewright_status_of(reply) == PLATEWRIGHT_HAS_PROBLEMS &&
         strstr(platewright_text_of(reply), "twelve") != NULL;
  platewright_free_reply(reply);
  return good ? 0 : 1;
}
