/* The reader's part for what comes after the ground. */
#ifndef PLOT_FORMAT_READ_LATER_H
#define PLOT_FORMAT_READ_LATER_H

#include "plot/cell_set.h"
#include "plot/format/read_fence.h"

/* Begins with later_reader_of, ends with later_reader_fini. One of fence, service, plant,
 * obstacle and levels at most is not NULL: that whose indented lines may follow. */
struct later_reader {
	struct plot *plot; /* its head and ground are there */
	struct fence *fence;
	struct fence_reader fence_reader;
	struct service *service;
	struct plant *plant;
	struct cell_set taken; /* by the plant */
	struct obstacle *obstacle;
	bool is_placed;    /* the obstacle has said where it is */
	struct levels *levels;
	int rows_read;     /* of the levels */
};

struct later_reader later_reader_of(struct plot *plot);
void later_reader_fini(struct later_reader *r);

/* A line that is not indented, which ends what was open; one that is. */
bool later_reader_line(struct later_reader *r, struct scan *s, struct diag *d);
bool later_reader_indented(struct later_reader *r, struct scan *s, struct diag *d);
/* The file's end, where a line of that number would have begun. */
bool later_reader_end(struct later_reader *r, int line, struct diag *d);
/* After a fault: where legs of a fence were wrong in a line before it, d says that instead. */
void later_reader_break_off(struct later_reader *r, struct diag *d);

#endif
