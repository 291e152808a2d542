/* Cut and fill: what lies above the formation is dug, what is missing below it is filled with what
 * is dug elsewhere, tamped. The formation is the finished ground less the dig depth of the zone; of
 * ground that is in no zone, open ground too, it is the finished ground itself. Under a raised
 * bed's wall, and within it where that is dug out, it is level: as deep below the base's top as the
 * stone is (wall_levels.h).
 *
 * Where ground within walls is only loosened its sod is kept and laid back: what is cut there is
 * what lies under it.
 *
 * By cells: each cell with its own sign, where lines of the survey or edges of zones cross it each
 * part of it, by the height in its middle. Between two lines of the survey the ground is bilinear,
 * so that the middle of a rectangle has the mean of its four corners, the exact mean: but for
 * finished ground that falls away from a house, which bends within a cell.
 *
 * By unit areas: each square of the survey, or what of it is in the plan, has its area times the
 * mean of its corners: A / 4 (h1 + 2 h2 + 3 h3 + 4 h4), where hn are corners of n squares.
 * (Pearson, Estimating in Building Construction, its edition not noted, chapter 9.) Cuts are
 * summed apart from fills, so that its gross depends on the survey's step.
 *
 * Both have the same net, to 0.6 x fall x (step + cell) x area at the most where ground falls away
 * from a house (what a slope can differ within a square from the mean of its corners), and but for
 * rounding elsewhere. */
#ifndef TAKEOFF_GROUND_CUT_FILL_H
#define TAKEOFF_GROUND_CUT_FILL_H

#include "survey/surface.h"
#include "takeoff/common/embed.h"
#include "takeoff/ground/earth.h"
#include "takeoff/ground/zones.h"
#include "takeoff/walls/wall_levels.h"

/* m3 in place; net = cut - fill. */
struct cut_fill {
	double cut, fill, net;
};

/* Of a zone, or of all ground in none. */
struct graded {
	struct earth cut; /* m3, from the existing ground down */
	double fill;      /* m3 in place, tamped */
	double dug;       /* m2 of it that is cut, sod and all */
	nm deepest;       /* cut, 0 or more */
};

/* A square of the survey. */
struct low_square {
	nm right, down; /* its near corner */
	double fill;    /* m3 in place, 0: none */
	nm deepest;     /* fill */
};

/* How the ground of a plot with levels lies to what is built. */
struct cut_fills {
	const struct graded *zones;      /* by zone; NULL: the plot has no levels */
	struct graded others;            /* ground in no zone */
	double others_area;              /* m2 of it */
	struct cut_fill formation;       /* to the formation, by cells */
	struct cut_fill finished;        /* to the finished ground, by cells */
	struct cut_fill by_unit_areas;   /* the same, by unit areas */
	const struct low_square *squares; /* row by row, all that the survey has */
	int square_count;
	/* By drop of the survey: how far the zone's formation is below the finished ground there,
	 * right and below of it as far as that is in the plan; 0 beyond the plan. */
	const nm *dig;
};

/* What is dug and built there. */
struct cut_ground {
	const struct zones *zones;
	const struct cover *cover; /* of the zones */
	const struct embeds *embeds;
	const struct wall_levels *walls;
};
/* Of a plot with levels. */
void cut_fill_compute(struct cut_fills *out, const struct basis *basis,
	const struct surface *surface, const struct cut_ground *ground);

/* Whether any ground in no zone is cut or filled. */
bool cut_fills_grade_others(const struct cut_fills *cut_fills);

/* The unit-area method by itself. heights: of so many columns and rows of points, row by row, nm,
 * over 0 what is cut; across and down: offsets of the columns and the rows, ascending. */
struct cut_fill unit_areas(const nm *heights, const nm *across, int columns, const nm *down,
	int rows);

#endif
