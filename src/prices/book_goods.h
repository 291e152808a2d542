/* The part of the price book's reader that knows goods and their packs. */
#ifndef PRICES_BOOK_GOODS_H
#define PRICES_BOOK_GOODS_H

#include "prices/book_json.h"

/* Reads a struct goods into `into`; the book's suppliers must be read before. */
bool goods_read(struct reading *r, const cJSON *value, void *into);

#endif
