/* What more is to be bought, or less than before. */
#ifndef REPORT_COMPARE_BOUGHT_H
#define REPORT_COMPARE_BOUGHT_H

#include "report/compare/differences.h"

/* The goods of which another amount is ordered. */
struct bought_change {
	const struct goods_row *versions[VERSIONS]; /* NULL: none of it */
	double more;       /* new order less the old one, in the good's unit */
	const char *amount; /* the same without its sign, in its unit */
	const char *packs;  /* in what it is sold in: "3 bags of 2 cu ft"; NULL: cannot be said */
	const char *how;    /* where there are no packs, "within the same order"; "": as it is */
};

struct bought_changes {
	struct bought_change *list;
	size_t count, capacity;
};

/* Lives in the comparison's arena. */
struct bought_changes bought_changes(struct comparison *comparison);
/* That of them which both versions name alike. */
const struct goods_row *bought_goods(const struct bought_change *change);
/* All of it in one: the packs, else the amount and how. */
const char *bought_change_words(const struct report *report, const struct bought_change *change);

#endif
