/* The order of work: one sequence, which deliveries, hours, spoil and text all go by. */
#ifndef TAKEOFF_COMMON_WORK_STEPS_H
#define TAKEOFF_COMMON_WORK_STEPS_H

#include "prices/good.h"

/* In the order they are done. */
enum work_step {
	WORK_SERVICES,       /* marked, and the boundary confirmed */
	WORK_STRIP,          /* set out roughly, the sod taken off */
	WORK_SET_OUT,        /* exactly, on boards */
	WORK_DIG,            /* post holes with the rest */
	WORK_POSTS,          /* their concrete cures while the work goes on */
	WORK_SLEEVES,        /* and lines, under what comes on top */
	WORK_SET_ASIDE,      /* topsoil, and soil for the backfill */
	WORK_HAUL,           /* the rest */
	WORK_TAMP,
	WORK_FABRIC,
	WORK_BASE,
	WORK_FIXTURES_INSIDE, /* those that stand in a bed's hole, before its wall is up */
	WORK_WALLS,
	WORK_BACKFILL,       /* outside the walls; the ground inside is loosened */
	WORK_FILL,           /* beds lined and filled, or amended */
	WORK_FIXTURES,       /* all others */
	WORK_EDGING,
	WORK_SURFACE,
	WORK_PANELS,         /* and gates */
	WORK_PLANTS,         /* set, and watered in */
	WORK_MULCH,
	WORK_LAWN,
	WORK_CLEAR_UP
};
enum { WORK_STEPS = WORK_CLEAR_UP + 1 };

/* The step that takes a good: it must be there by then. */
enum work_step work_step_of_good(enum good good);
/* "services", "set-out": the step in JSON. */
const char *work_step_word(enum work_step step);

#endif
