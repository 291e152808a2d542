/* For the files that hold the rows of attributes, one a block. */
#ifndef PLOT_ATTRIBUTE_ROWS_H
#define PLOT_ATTRIBUTE_ROWS_H

#include "plot/attribute.h"

#define INCHES(n) ((n) * NM_PER_INCH)
#define METRES(n) ((n) * NM_PER_M)
#define MM(n) ((n) * NM_PER_MM)
#define PERCENTS(n) ((n) * MILLION)

/* What may be read. */
#define LENGTH(least_, most_) { .kind = VALUE_LENGTH, .least = (least_), .most = (most_) }
#define DEPTH LENGTH(0, METRES(2))
#define PERCENT { .kind = VALUE_PERCENT, .least = 0, .most = PERCENTS(100) }
#define CHOICE(words_) { .kind = VALUE_CHOICE, .words = (words_) }
#define COUNT(least_, most_) { .kind = VALUE_COUNT, .least = (least_), .most = (most_) }
#define AMOUNT(quantity_) { .kind = VALUE_AMOUNT, .least = MILLION / 1000, \
	.most = 100000 * MILLION, .quantity = (quantity_) }
#define FLOW AMOUNT(QUANTITY_FLOW)
#define DENSITY { .kind = VALUE_AMOUNT, .least = MILLION, .most = 10000 * MILLION, \
	.quantity = QUANTITY_DENSITY }
#define DECIMAL(least_, most_) { .kind = VALUE_DECIMAL, .least = (least_), .most = (most_) }
#define FACTOR DECIMAL(MILLION, 2 * MILLION)

/* A default. */
#define IS_LENGTH(n) { .set = true, .as.length = (n) }
#define IS_NUMBER(n) { .set = true, .as.number = (n) }
#define IS_AMOUNT(n, unit_) IS_MILLIONTHS((n) * MILLION, (unit_))
#define IS_MILLIONTHS(n, unit_) { .set = true, .as.amount = { (n), (unit_) } }
#define IS_SIZE(along, across, up) { .set = true, .as.size = { (along), (across), (up) } }

/* The rows of a block, in the order of their identities from `first` on. */
struct attribute_table {
	const char *keyword; /* of the block; NULL for the head */
	enum attribute first;
	int count;
	const struct attribute_row *rows;
};
#define ATTRIBUTE_TABLE(keyword, first, rows) \
	{ (keyword), (first), sizeof (rows) / sizeof *(rows), (rows) }

extern const struct attribute_table head_attributes, allow_attributes, bed_attributes,
	path_attributes, lawn_attributes, fixture_attributes, fence_attributes,
	service_attributes, plant_attributes, rate_attributes;

/* "no", "yes": for CHOICE_NO and CHOICE_YES. */
extern const char *const yes_words[];

#endif
