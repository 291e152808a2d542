/* What of a takeoff is no declared rows, as declared rows: so it is compared like all the rest. */
#ifndef REPORT_COMPARE_HAND_ROWS_H
#define REPORT_COMPARE_HAND_ROWS_H

#include "report/compare/comparison.h"

struct rows {
	const struct figure_table *table;
	const void *rows;
	int count;
};

/* The rows of a part of takeoff_shown that is made by hand. Those made here live in the arena. */
struct rows hand_rows(struct arena *arena, const struct report *report, const char *key);

/* All of one good and size that is bought or hauled, however many rows of the takeoff have it. */
struct goods_row {
	const char *id, *name; /* with its size */
	enum item_unit unit;
	const char *unit_word; /* of an extra the plot may change it: then it is another good */
	const char *packs;     /* what to ask for, of all its rows */
	const struct bought *bought; /* where that is packs of one kind, of it alone; NULL */
	bool is_shared;        /* it is bought together with other goods */
	/* By unit, in SI; all others are 0. */
	struct amounts {
		double each, m2, m3, kg;
		nm m;
	} laid, spare, reused, order;
};
struct rows goods_rows(struct arena *arena, const struct report *report);
/* In the good's unit. */
double goods_order(const struct goods_row *row);

/* What all of it costs, weighs and takes: one row. */
struct rows sum_rows(struct arena *arena, const struct report *report);

#endif
