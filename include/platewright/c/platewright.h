/* SPDX-License-Identifier: MIT */
#ifndef PLATEWRIGHT_C_PLATEWRIGHT_H
#define PLATEWRIGHT_C_PLATEWRIGHT_H
/*
 * Platewright for C, and for every language that can call C: a book read from its files, a recipe
 * scaled and costed, a cut walked down to the plate, an event quoted. Answers are plain values.
 *
 * Memory. A function that gives a `platewright_reply *` hands over one reply, which the caller
 * frees, once, with `platewright_free_reply`. The book, the values and every text reached from a
 * reply belong to it: they are never freed by themselves, and are gone with it. Nothing that is
 * passed in is kept, so it may go when the call returns; what was asked of a book does not refer to
 * it, so replies may be freed in any order. A null reply is what a machine without memory gives;
 * the functions that look into a reply take it.
 *
 * Errors are values: no exception leaves the library. `platewright_status_of` says whether there is
 * an answer, `platewright_text_of` what the program prints of the same mistake: where, what was
 * found, what was expected, what to do. Warnings stand in the same text beside an answer: those of
 * a book beside the book; beside a recipe scaled or costed those about the temperatures and steps
 * of the book's recipes, again. Show them: an allergen that no one stated, or a roast that comes
 * out below its minimum temperature, is a warning.
 *
 * Threads. A reply is never changed once it is given, so several threads may look into one and ask
 * one book. Read books one at a time.
 *
 * Numbers are exact: `exact` is a fraction as text, `7/3` or `2`; `nearest` the nearest double.
 * Money is in units of the currency named. All texts are UTF-8.
 */

#include <stddef.h>

#if defined(PLATEWRIGHT_C_MADE_HERE)
#define PLATEWRIGHT_C_API __attribute__((visibility("default")))
#else
#define PLATEWRIGHT_C_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

typedef struct platewright_reply platewright_reply;
typedef struct platewright_book platewright_book;

typedef enum platewright_status {
  PLATEWRIGHT_DONE = 0,
  PLATEWRIGHT_HAS_PROBLEMS = 1, /* of the book, or of what was asked; see the text */
  PLATEWRIGHT_WRONG_CALL = 2,   /* a pointer that must not be null is */
  PLATEWRIGHT_NO_MEMORY = 3,
  PLATEWRIGHT_FAULT = 4 /* a fault of the library or the machine; see the text */
} platewright_status;

/* A number that is not there has a null `exact`. */
typedef struct platewright_number {
  const char *exact;
  double nearest;
} platewright_number;

/* An amount that is not there has a null `unit`. */
typedef struct platewright_amount {
  platewright_number number;
  const char *unit;
} platewright_amount;

/* How a number says the size of what is made. */
typedef enum platewright_size {
  PLATEWRIGHT_BY_FACTOR = 0, /* times the recipe as written */
  PLATEWRIGHT_BY_PORTIONS = 1,
  PLATEWRIGHT_BY_PIECES = 2 /* whole pieces of a recipe that was tested on pieces */
} platewright_size;

typedef struct platewright_scaled_line {
  const char *name;
  const char *part;           /* of the recipe; empty where it has none */
  platewright_amount amount;  /* not there: to taste. The lower end of a range. */
  platewright_amount at_most; /* the upper end of a range, where it is one */
  platewright_amount start;   /* of what is held back, what goes in at first; else the amount */
  platewright_number factor;  /* times the tested amount, by the line's own rule */
} platewright_scaled_line;

typedef struct platewright_scaled {
  const char *recipe;
  platewright_number factor;   /* of the whole recipe, as it is made */
  platewright_number portions; /* not there where the recipe counts none */
  platewright_number pieces;   /* whole pieces, where it cooks them */
  size_t line_count;
  const platewright_scaled_line *lines;
} platewright_scaled;

typedef struct platewright_yield_step {
  const char *stage;         /* purchased, trimmed, cooked, ... */
  platewright_amount weight; /* not there where no weight and no guests were asked for */
  platewright_number share;  /* of the weight at the first stage */
  const char *source;        /* whose figure led here; empty at the first stage */
} platewright_yield_step;

typedef struct platewright_yield {
  const char *row;              /* the row of the tables, or the book's own ingredient */
  platewright_number yield;     /* last weight / first weight */
  platewright_number portions;  /* whole portions that the weight serves */
  platewright_amount to_buy;    /* what the guests need, exactly */
  size_t step_count;
  const platewright_yield_step *steps;
} platewright_yield;

typedef struct platewright_cost_line {
  const char *name;
  const char *part;
  platewright_amount used;      /* not there: to taste, and not costed */
  platewright_amount purchased; /* in the unit of the pack */
  const char *supplier;         /* empty where none is named */
  platewright_number cost;
} platewright_cost_line;

typedef struct platewright_cost {
  const char *recipe;
  const char *currency; /* its code */
  platewright_number total;
  platewright_number portions;
  platewright_number per_portion; /* exact: not rounded to what can be paid */
  size_t line_count;
  const platewright_cost_line *lines; /* their costs sum to the total */
} platewright_cost;

typedef struct platewright_quote {
  const char *event;
  const char *currency;
  platewright_number guests;
  platewright_number food;
  platewright_number cost;     /* food, Q factor, labour, extras, deliveries, overhead, contingency */
  platewright_number price;    /* that a guest at the full price pays */
  platewright_number subtotal; /* of all guests, less discounts */
  platewright_number billed;   /* extras outside the price */
  platewright_number service;
  platewright_number gratuity;
  platewright_number tax;
  platewright_number total;
  platewright_number deposit;
  platewright_number margin;       /* below 0 where the price does not cover the cost */
  platewright_number margin_share; /* of the income */
  platewright_number food_share;   /* food and Q factor / income */
} platewright_quote;

/* The version of the library: "0.1.0". */
PLATEWRIGHT_C_API const char *platewright_version(void);

/* Reads the files of a book and all that they name under `with`, and checks it. */
PLATEWRIGHT_C_API platewright_reply *platewright_read_book(const char *const *files, size_t count);

/* A recipe of the book at a size. A null `recipe` is the first of the files named. `number` is
 * typed as on the command line: "84", "1/2". */
PLATEWRIGHT_C_API platewright_reply *platewright_scale_recipe(const platewright_book *book,
                                                              const char *recipe,
                                                              platewright_size by,
                                                              const char *number);

/* What a recipe costs at a size: what is used, not what must be bought in whole packs. Prices are
 * those of the book's event, where it has one. */
PLATEWRIGHT_C_API platewright_reply *platewright_cost_recipe(const platewright_book *book,
                                                             const char *recipe,
                                                             platewright_size by,
                                                             const char *number);

/* A cut, produce or grain from purchased to served: what the weight `buy` comes to and how many
 * portions of `portion` it serves; or what so many `guests` need of it. Each may be null; so may
 * the book, and then the built-in tables are asked. */
PLATEWRIGHT_C_API platewright_reply *platewright_ask_yield(const platewright_book *book,
                                                           const char *name, const char *buy,
                                                           const char *portion, const char *guests);

/* The quote of the book's event; for so many `guests` of the same mix where that is not null. */
PLATEWRIGHT_C_API platewright_reply *platewright_quote_event(const platewright_book *book,
                                                             const char *guests);

PLATEWRIGHT_C_API platewright_status platewright_status_of(const platewright_reply *reply);
/* What the program prints of the problems and warnings; empty where there is nothing to say. Never
 * null. */
PLATEWRIGHT_C_API const char *platewright_text_of(const platewright_reply *reply);
/* Each is null where the reply holds none. */
PLATEWRIGHT_C_API const platewright_book *platewright_book_of(const platewright_reply *reply);
PLATEWRIGHT_C_API const platewright_scaled *platewright_scaled_of(const platewright_reply *reply);
PLATEWRIGHT_C_API const platewright_cost *platewright_cost_of(const platewright_reply *reply);
PLATEWRIGHT_C_API const platewright_yield *platewright_yield_of(const platewright_reply *reply);
PLATEWRIGHT_C_API const platewright_quote *platewright_quote_of(const platewright_reply *reply);
/* Null is freed, too. */
PLATEWRIGHT_C_API void platewright_free_reply(platewright_reply *reply);

#ifdef __cplusplus
}
#endif

#endif
