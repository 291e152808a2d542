/* Geometry read off a plot: runs of equal letters, the regions they join to, the edges between
 * classes. Exact: lengths count sides of cells, areas count cells.
 *
 * A region is a 4-connected patch of cells with one letter of the legend; open ground has none.
 * What is around it is 8-connected, so a ring closed only at a point has no hole. Regions are
 * numbered per class in reading order of their first cell: B1, P1, L1, F1.
 *
 * Every cell may be a run and a region of its own: both are kept small. */
#ifndef SURVEY_SURVEY_H
#define SURVEY_SURVEY_H

#include "base/memory.h"
#include "plot/plot.h"

enum { NO_REGION = -1 };

/* Cells left..right-1 of one row, all of one letter, ended by another letter or the boundary. */
struct run {
	int16_t left, right;
	int region; /* index into regions, NO_REGION on open ground */
	char letter;
	uint8_t class; /* enum plot_class */
};

struct region {
	const struct entry *entry; /* in the plot that was surveyed */
	int number;                /* from 1, per class */
	int left;                  /* of its bounding box; its top is first_cell.y */
	struct place first_cell;   /* in reading order */
	struct place most;         /* right and bottom of its bounding box, inclusive */
	int cells;
	int perimeter;             /* sides of cells, holes included */
	int convex, reflex;        /* corners over all loops */
};

/* What a region is called by itself. */
struct region_name {
	int region;
	const char *text; /* in the plot that was surveyed */
};

struct survey {
	nm cell;
	int columns, rows;
	const struct run *runs;   /* row after row, left to right */
	const size_t *row_runs;   /* rows + 1: row y's runs are row_runs[y] .. row_runs[y+1]-1 */
	const struct region *regions; /* in reading order of first cells */
	int region_count;
	const struct region_name *names; /* of those that have one, in their order */
	int name_count;
	/* Sides of cells between two classes, each side once, symmetric; a class with itself:
	 * between different letters of it. open with boundary included, boundary with boundary
	 * 0. */
	int64_t edges[CLASSES][CLASSES];
};

/* Surveys the plot; all lives in the arena and points into the plot. It can be stopped
 * (base/stop.h), as can all that is read off a survey. */
void survey_plot(struct survey *out, struct arena *arena, const struct plot *plot);

/* Index of the run that holds a cell inside the plan. */
size_t survey_run_at(const struct survey *survey, int x, int y);
/* Whether the row above has a run of the same cells and region. *i goes along that row, from its
 * first run on, as runs of row y are asked for from left to right. */
bool survey_has_run_above(const struct survey *survey, int y, const struct run *run, size_t *i);
/* Each loop that runs round a region has four more convex corners than reflex ones, each round a
 * hole of it four fewer. */
int region_holes(const struct region *region);
/* The region at a cell inside the plan, NO_REGION on open ground. */
int survey_region_at(const struct survey *survey, int x, int y);
/* What the region is called by itself; NULL: it has no name. */
const char *survey_own_name(const struct survey *survey, int region);
/* "B1", "P12": letter of the class and number. */
enum { REGION_NAME_MOST = 16 };
void survey_region_name(const struct region *region, char name[REGION_NAME_MOST]);

/* Square metres of so many cells: the one place where a length is squared. */
double survey_area(int64_t cells, nm cell);

#endif
