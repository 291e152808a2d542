/* The order of work: which steps of the one sequence (work_steps.h) come up, what each takes, how
 * long it lasts, and what of the plot it is about. A step with nothing to do is left out. */
#ifndef TAKEOFF_WORK_H
#define TAKEOFF_WORK_H

#include "takeoff/common/figure.h"
#include "takeoff/barrow_run.h"
#include "takeoff/labour.h"

/* What a plot has, as far as words about its work depend on it. */
enum work_fact {
	FACT_CORE,       /* any work but to get extra goods */
	FACT_EXTRAS,
	FACT_ZONES,      /* ground that is dug, post holes apart */
	FACT_HOLES, FACT_DEEP, /* deep: any deeper than a trench may be without shoring */
	FACT_SOD, FACT_TOPSOIL, /* dug; topsoil is kept apart */
	FACT_LEVELS,     /* measured ground that is finished otherwise */
	FACT_LOW,        /* ground that is filled up to its formation */
	FACT_REUSED, FACT_BACKFILL, FACT_LOOSENED, FACT_PREPARED, FACT_SPOIL,
	FACT_PATHS,      /* with stone */
	FACT_BASE, FACT_PLATE, FACT_FINES, FACT_FABRIC, FACT_EDGING,
	FACT_WALLS,      /* raised beds, laid out or not */
	FACT_CUTS, FACT_CAPS, FACT_ADHESIVE, FACT_LINER,
	FACT_RAISED, FACT_REPLACED, FACT_AMENDED, /* beds so filled */
	FACT_MIX,        /* of several parts */
	FACT_BEDS, FACT_MULCH,
	FACT_POSTS, FACT_CONCRETE, FACT_GRAVEL, FACT_PANELS, FACT_GATES,
	FACT_FIXTURES, FACT_FIXTURES_INSIDE,
	FACT_LAWN_SOIL, FACT_TURF, FACT_SEED,
	FACT_PLANTS,
	FACT_LINES, FACT_KEPT, FACT_LAID, /* services that are there, things kept, services to
	                                     lay */
	FACT_WATER, FACT_HEADER, /* drip lines in beds; a header to them from the tap */
	FACTS
};
#define FACT(name) (UINT64_C(1) << FACT_##name)

struct planned_step {
	enum work_step step;
	const int *items;      /* what it takes: indices into the items of the takeoff */
	int item_count;
	struct barrow_run barrow; /* loads of its loose goods */
	const struct labour *labour;
	int labour_count;
	double hours;          /* of its labour, as far as rates are known */
	bool has_hours;        /* a rate is known for some of it */
};

/* Over all steps. */
struct work_sum {
	double hours;     /* of one person, as far as rates are known */
	int64_t unrated;  /* kinds of work for which none is */
	int64_t crew;     /* people */
	double day;       /* hours of work a day */
	double days;      /* of the crew */
};

struct work {
	const struct planned_step *list; /* in the order it is done */
	int count;
	struct labours labours;
	struct work_sum sum;
	uint64_t facts;   /* FACT(...) of what the plot has */
};

/* Plans the work of a takeoff whose items are priced. */
void work_plan(struct work *out, const struct takeoff *takeoff, const struct plot *plot,
	struct arena *arena);

extern const struct figure_table work_sum_table;

#endif
