/* What every view of a takeoff goes by. */
#ifndef REPORT_WORDS_REPORT_H
#define REPORT_WORDS_REPORT_H

#include "base/text.h"
#include "takeoff/takeoff.h"

struct report {
	struct text *out;
	const struct plot *plot;
	const struct takeoff *takeoff;
	enum units units;
	const char *file; /* the plot file's name */
};

#endif
