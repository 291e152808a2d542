/* What differs of two takeoffs, figure by figure. */
#ifndef REPORT_COMPARE_DIFFERENCES_H
#define REPORT_COMPARE_DIFFERENCES_H

#include "report/compare/hand_rows.h"
#include "report/compare/leaf.h"

/* A figure that differs. */
struct difference {
	const char *part;  /* "walls": the key in takeoff_shown */
	/* "B1 Raised bed": what its heading on the panel has, else its keys; "": it has but one */
	const char *row;
	const char *path;  /* of rows within rows, with a dot at its end: "gates."; else "" */
	const struct leaf *leaf; /* NULL: the row as a whole, which has no other figure */
	const void *rows[VERSIONS]; /* NULL: there is no such row there */
	int region; /* of the new version, that its row there is of; NO_REGION: of none */
};

/* Takes them one by one; what it is given is good until it returns. */
struct differing {
	void (*found)(struct differing *differing, const struct difference *difference);
	bool is_done; /* set by it: it wants no more */
};

/* Rows of one table of both versions, with the name of the part: those that go together by their
 * keys, in the order of the new version, then those of the old that are gone. Of a row that only
 * one version has each figure that is over 0 differs, but for rows within it. */
void differences_of_rows(struct comparison *comparison, struct differing *to, const char *part,
	const struct rows versions[static VERSIONS]);
/* Of one part of takeoff_shown. */
void differences_of(struct comparison *comparison, struct differing *to,
	const struct shown *shown);
/* "Stone orders": what to call that part. */
const char *differences_heading(const struct report *report, const struct shown *shown);

#endif
