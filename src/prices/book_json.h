/* JSON for the price book's reader: a text becomes a tree, and the tree is walked by tables of
 * keys, so that whatever is unknown, repeated, left out or of another type is refused with its
 * path. */
#ifndef PRICES_BOOK_JSON_H
#define PRICES_BOOK_JSON_H

#include "prices/book.h"

#include <cjson/cJSON.h>

/* How far a book is read. */
struct reading {
	struct book *book;
	struct text path; /* of the value being read */
	const struct good_row *good; /* of the goods being read */
	struct book_fault *fault;
};

/* A key that an object may have. Keys are read in the order of their table, wherever they are. */
struct json_key {
	const char *name;
	const char *wanted; /* what it must be; NULL: it may be left out */
	/* into: `at` bytes into what the object is read into. */
	bool (*read)(struct reading *r, const cJSON *value, void *into);
	size_t at;
};

/* Makes cJSON take its memory from where the program does, so that running out of it is met in
 * one place. Whoever reads or prints JSON calls it first. */
void json_start(void);

/* The tree, for cJSON_Delete; NULL with d filled where the text is none. Refused too: broken
 * UTF-8, NUL (also as an escape) and more than 8 levels. */
cJSON *book_json_parse(const char *bytes, size_t length, struct diag *d);

#define KEYS(keys) (keys), sizeof (keys) / sizeof *(keys)

/* Fails at the value (NULL: nothing is there) of the present path. Returns false. */
bool reading_fail(struct reading *r, const cJSON *value, const char *expected, ...)
	__attribute__((format(printf, 3, 4)));
/* The same at a word. */
bool reading_fail_word(struct reading *r, const char *found, const char *expected, ...)
	__attribute__((format(printf, 3, 4)));
/* Reads an object by its keys. */
bool reading_object(struct reading *r, const cJSON *value, const struct json_key *keys,
	size_t count, void *into);
/* Reads each of at most `most` values of a list, `into` the row of that size in new memory of
 * the book. */
bool reading_list(struct reading *r, const cJSON *value, int most, size_t size,
	bool (*read)(struct reading *r, const cJSON *value, void *into), void **rows, int *count);
/* Text of 1 to `most` characters, kept in the book. */
bool reading_text(struct reading *r, const cJSON *value, int most, const char **text);
/* A whole number from 1 to 1,000,000. */
bool reading_count(struct reading *r, const cJSON *value, int *count);
/* A text that is all of one value of the rule, as a plot spells it. *out owns what it holds. */
bool reading_value(struct reading *r, const cJSON *value, const struct value_rule *rule,
	struct value *out);

/* An amount from 0.001 to 100,000 of its unit, in SI units. */
bool reading_amount(struct reading *r, const cJSON *value, enum quantity quantity, double *si);

/* For keys: a name (const char *), 0 to 1,000,000 with two decimal places (money), a weight, a
 * volume (double, SI units). */
bool read_name(struct reading *r, const cJSON *value, void *into);
bool read_money(struct reading *r, const cJSON *value, void *into);
bool read_weight(struct reading *r, const cJSON *value, void *into);
bool read_volume(struct reading *r, const cJSON *value, void *into);

/* Goes down to a key of the value being read, and with the length it returns back up. */
size_t reading_down(struct reading *r, const char *key);
void reading_up(struct reading *r, size_t length);

#endif
