/* The reader's part for fences: their runs and gates, line by line. */
#ifndef PLOT_FORMAT_READ_FENCE_H
#define PLOT_FORMAT_READ_FENCE_H

#include "plot/format/read_place.h"

/* Of one fence after the other. */
struct fence_reader {
	const struct ground *ground;
	struct leg_places legs, gates;
};

void fence_reader_fini(struct fence_reader *r);

/* The rest of a line after "run" or "gate". What it has until it fails is in the fence. */
bool fence_reader_run(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d);
bool fence_reader_gate(struct fence_reader *r, struct scan *s, struct fence *fence, struct diag *d);
/* After all lines of a fence: false where legs or gates lie over each other, or a gate on no
 * leg. Of several faults the first in the file. is_whole: false where more lines would have
 * followed. The next fence may follow. */
bool fence_reader_end(struct fence_reader *r, const struct fence *fence, bool is_whole,
	struct diag *d);

#endif
