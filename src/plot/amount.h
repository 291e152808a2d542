/* A number with one of the units of a density, a volume, a weight, an area, a rate by area, a
 * flow, the hours that a piece of work takes or goods as they are counted out; kept in the unit it
 * was given in, so that it is written back as it was read. */
#ifndef PLOT_AMOUNT_H
#define PLOT_AMOUNT_H

#include "base/length.h"
#include "base/scan.h"
#include "base/text.h"

#include <stdint.h>

#define MILLION INT64_C(1000000)

enum quantity { QUANTITY_DENSITY, QUANTITY_VOLUME, QUANTITY_WEIGHT, QUANTITY_RATE, QUANTITY_AREA,
	QUANTITY_FLOW,
	QUANTITY_HOURS_EACH, QUANTITY_HOURS_LENGTH, QUANTITY_HOURS_AREA, QUANTITY_HOURS_VOLUME,
	QUANTITY_GOODS };

/* Those of one quantity follow each other. */
enum amount_unit {
	AMOUNT_LB_CU_FT, AMOUNT_LB_CU_YD, AMOUNT_KG_M3,
	AMOUNT_CU_FT, AMOUNT_CU_YD, AMOUNT_LITRE, AMOUNT_M3,
	AMOUNT_LB, AMOUNT_KG,
	AMOUNT_LB_1000_SQ_FT, AMOUNT_G_M2,
	AMOUNT_SQ_FT, AMOUNT_SQ_YD, AMOUNT_M2,
	AMOUNT_GAL_H, AMOUNT_L_H,
	AMOUNT_H_EACH,
	AMOUNT_H_FT, AMOUNT_H_M,
	AMOUNT_H_SQ_FT, AMOUNT_H_M2,
	AMOUNT_H_CU_FT, AMOUNT_H_M3,
	AMOUNT_GOODS_EACH, AMOUNT_GOODS_FT, AMOUNT_GOODS_M, AMOUNT_GOODS_SQ_FT, AMOUNT_GOODS_M2,
	AMOUNT_GOODS_CU_FT, AMOUNT_GOODS_M3, AMOUNT_GOODS_LB, AMOUNT_GOODS_KG
};
enum { AMOUNT_UNITS = AMOUNT_GOODS_KG + 1 };

struct amount {
	int64_t millionths;
	enum amount_unit unit;
};

/* Reads "135 lb/cu ft", "10 cu yd", "0.05 h per each", "24 each": at most 6 decimal places. False
 * with d filled. Takes no more than the amount. units: metric ones alone are named in messages
 * where a plot is metric. */
bool amount_scan(struct scan *s, enum quantity quantity, enum units units, struct amount *out,
	struct diag *d);
void amount_write(struct text *out, const struct amount *amount);
/* "1 to 10000 lb/cu ft, lb/cu yd or kg/m3": millionths of any of the units, or of the metric
 * ones. */
void amount_write_range(struct text *out, enum quantity quantity, enum units units, int64_t least,
	int64_t most);
/* kg/m3, m3, kg, kg/m2, m2, m3/h; hours for one, for a m, m2, m3; goods in pieces, m, m2, m3,
 * kg. */
double amount_si(const struct amount *amount);

enum quantity amount_quantity(enum amount_unit unit);
/* The same number of the same unit. */
bool amount_equal(const struct amount *a, const struct amount *b);

#endif
