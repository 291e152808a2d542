/* Two takeoffs version by version. */
#ifndef REPORT_COMPARE_COMPARISON_H
#define REPORT_COMPARE_COMPARISON_H

#include "report/compare/region_pairs.h"
#include "report/words/report.h"

enum { OLD, NEW, VERSIONS };

/* One of them: a plot that is counted, and the name of its file. */
struct compared {
	const struct plot *plot;
	const struct takeoff *takeoff;
	const char *file;
};

enum { TABLES_MOST = 128 }; /* more than there are */

struct comparison {
	/* Both in the units of the new plot; their words are printed and cleared together. */
	struct report versions[VERSIONS];
	struct region_pairs regions;
	struct arena *arena; /* of all that lasts as long as the comparison */
	struct leaves {
		const struct figure_table *table;
		struct leaf *list;
		int count;
	} leaves[TABLES_MOST]; /* leaf.h; of the tables met so far */
	int leaves_count;
};

/* Lives in the arenas and points into plots and takeoffs. It can be stopped (base/stop.h). */
void comparison_make(struct comparison *out, struct arena *arena, struct arena *words,
	const struct compared versions[static VERSIONS]);

#endif
