/* JSON for the price book's reader: text is parsed to a tree, and the tree read by tables of
 * keys, so that whatever is unknown, repeated, missing or of a wrong type is refused with its
 * path. */
#ifndef PRICES_BOOK_JSON_H
#define PRICES_BOOK_JSON_H

#include "prices/book.h"

#include <cjson/cJSON.h>

/* A book being read. */
struct reading {
	struct book *book;
	struct text path; /* of the value being read */
	const struct good_row *good; /* of the goods being read */
	enum units units; /* metric: messages name no other units */
	struct book_fault *fault;
};

/* A key that an object may have. Keys are read in the order of their table, not of the file. */
struct json_key {
	const char *name;
	const char *wanted; /* what it must be; NULL: it may be left out */
	/* into: `at` bytes into the object's struct */
	bool (*read)(struct reading *r, const cJSON *value, void *into);
	size_t at;
};

/* Makes cJSON use the program's allocator, so that running out of memory is handled in one
 * place. To be called before JSON is read or printed. */
void json_start(void);

/* The tree, which the caller frees with cJSON_Delete; NULL with *d filled where the text is not
 * JSON, is not UTF-8, has a NUL (also as an escape) or more than 8 levels. */
cJSON *book_json_parse(const char *bytes, size_t length, struct diag *d);

#define KEYS(keys) (keys), sizeof (keys) / sizeof *(keys)

/* Fills in the fault for the value (NULL: missing) at the present path. Returns false. */
bool reading_fail(struct reading *r, const cJSON *value, const char *expected, ...)
	__attribute__((format(printf, 3, 4)));
/* The same with the word found. */
bool reading_fail_word(struct reading *r, const char *found, const char *expected, ...)
	__attribute__((format(printf, 3, 4)));
/* Reads an object by its keys. */
bool reading_object(struct reading *r, const cJSON *value, const struct json_key *keys,
	size_t count, void *into);
/* Reads a list of at most `most` values into *rows, new memory of the book: *count rows of
 * `size` bytes. */
bool reading_list(struct reading *r, const cJSON *value, int most, size_t size,
	bool (*read)(struct reading *r, const cJSON *value, void *into), void **rows, int *count);
/* Text of 1 to `most` characters, kept in the book. */
bool reading_text(struct reading *r, const cJSON *value, int most, const char **text);
/* A whole number from 1 to 1,000,000. */
bool reading_count(struct reading *r, const cJSON *value, int *count);
/* A text that is one value of the rule and no more, spelled as in a plot. *out owns what it
 * holds. */
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

/* The hundredths of a price; false where it is over 1,000,000, or has more decimal places. */
bool book_money(double price, money *amount);

/* Adds a key to the path; reading_up takes it off again, given the length that was returned. */
size_t reading_down(struct reading *r, const char *key);
void reading_up(struct reading *r, size_t length);

#endif
