/* A number with one of the units of a density, a volume, a weight, an area or a rate by area;
 * kept in the unit it was given in, so that it is written back as it was read. */
#ifndef PLOT_AMOUNT_H
#define PLOT_AMOUNT_H

#include "base/length.h"
#include "base/scan.h"
#include "base/text.h"

#include <stdint.h>

#define MILLION INT64_C(1000000)

enum quantity { QUANTITY_DENSITY, QUANTITY_VOLUME, QUANTITY_WEIGHT, QUANTITY_RATE, QUANTITY_AREA };

/* Those of one quantity follow each other. */
enum amount_unit {
	AMOUNT_LB_CU_FT, AMOUNT_LB_CU_YD, AMOUNT_KG_M3,
	AMOUNT_CU_FT, AMOUNT_CU_YD, AMOUNT_LITRE, AMOUNT_M3,
	AMOUNT_LB, AMOUNT_KG,
	AMOUNT_LB_1000_SQ_FT, AMOUNT_G_M2,
	AMOUNT_SQ_FT, AMOUNT_SQ_YD, AMOUNT_M2
};
enum { AMOUNT_UNITS = AMOUNT_M2 + 1 };

struct amount {
	int64_t millionths;
	enum amount_unit unit;
};

/* Reads "135 lb/cu ft", "10 cu yd", "300 lb", "30 g/m2": at most 6 decimal places. False with d
 * filled. Takes no more than the amount. units: metric ones alone are named in messages where a
 * plot is metric. */
bool amount_scan(struct scan *s, enum quantity quantity, enum units units, struct amount *out,
	struct diag *d);
void amount_write(struct text *out, const struct amount *amount);
/* "1 to 10000 lb/cu ft, lb/cu yd or kg/m3": millionths of any of the units, or of the metric ones. */
void amount_write_range(struct text *out, enum quantity quantity, enum units units, int64_t least,
	int64_t most);
/* kg/m3, m3, kg, kg/m2, m2. */
double amount_si(const struct amount *amount);

enum quantity amount_quantity(enum amount_unit unit);

#endif
