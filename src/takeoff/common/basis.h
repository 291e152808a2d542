/* What every trade needs: the plot, what is read off it, and the values in force. */
#ifndef TAKEOFF_COMMON_BASIS_H
#define TAKEOFF_COMMON_BASIS_H

#include "survey/survey.h"
#include "takeoff/common/snags.h"

struct basis {
	struct arena *arena;          /* for a trade's results */
	const struct plot *plot;
	const struct survey *survey;
	const struct block *allow;    /* in force; what is unset has its default */
	struct snag_list *snags;      /* where a trade adds its own */
};

/* A bed that is built up with walls. */
bool region_is_raised(const struct region *region);

#endif
