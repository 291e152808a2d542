/* What a price book may have prices for: the items of a takeoff, what they are counted in, and what they
 * weigh where that goes by volume. */
#ifndef PRICES_WARE_H
#define PRICES_WARE_H

#include "prices/book.h"

struct ware {
	const char *id;         /* one ending in a dot stands for all that begin so: "soil." */
	enum item_unit unit;
	bool has_block;         /* a row for each size of block */
	bool has_length;        /* a row for each length, or width */
	enum attribute density; /* of allow; NO_DENSITY */
};
#define NO_DENSITY ((enum attribute)0)

/* NULL where no item has such an id. */
const struct ware *ware_find(const char *id);
/* Adds the ids for a message: "block.wall, soil.NAME or mulch". */
void ware_list(struct text *out);

#endif
