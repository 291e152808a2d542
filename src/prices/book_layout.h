/* How the text of a price book is laid out for people: a line for each thing that fits on one. */
#ifndef PRICES_BOOK_LAYOUT_H
#define PRICES_BOOK_LAYOUT_H

#include "prices/book_json.h"

/* Adds the tree as text that reads as the same tree, its keys in their order. A price has two
 * decimal places where it is a whole number of hundredths; every other number is spelled so that it
 * reads as itself. */
void book_lay_out(struct text *out, const cJSON *tree);
/* The same of one value that is neither list nor object. */
void book_add_value(struct text *out, const cJSON *value);

#endif
