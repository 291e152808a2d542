/* What the levels of a plot come to: heights at each drop of the survey, cut and fill, where low
 * ground is filled, how paths fall. Nothing of a plot that tells neither levels nor finished
 * ground. */
#ifndef TAKEOFF_GROUND_LEVELLING_H
#define TAKEOFF_GROUND_LEVELLING_H

#include "takeoff/ground/cut_fill.h"
#include "takeoff/ground/falls.h"

/* Where a drop was measured, within the plan. */
struct level_point {
	nm across, down;
	nm existing, finished; /* drops below the string, finished negative above it */
	nm dig;                /* of the zone right and below of it, from the finished ground; 0:
	                          none */
	nm formation;          /* the finished drop and the dig */
	nm cut, fill;          /* from the existing ground to the formation, one of them 0 */
};

struct levelling {
	bool is_told;  /* the plot tells levels or finished ground */
	nm step;       /* of the survey; 0: nothing is measured */
	struct cut_fills volumes; /* of measured ground */
	double apart;  /* m3 between the nets of both methods, 0 or more */
	struct falls falls;
	const struct level_point *points; /* row by row */
	int point_count;
};

/* Adds its snags too. */
void levelling_compute(struct levelling *out, const struct basis *basis,
	const struct cut_ground *ground);

/* low_table: of the squares of cut_fills. */
extern const struct figure_table levelling_table, level_point_table, low_table, path_fall_table,
	house_fall_table;

#endif
