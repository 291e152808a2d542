/* The ground's surface read off a plot: as it is, as it is to be when finished, and what it is dug
 * to. Heights are drops: lengths downwards from the level string line, the greater the lower; of
 * finished ground they may be negative, above the string. Places are spots: offsets from the datum
 * to the right and down, which may lie beyond the plan.
 *
 *	existing   between the drops measured as plot/levels.h has it; without any measured: as
 *	           the finished ground
 *	finished   without a level and a fall told: as the existing ground, or 0 without that
 *	           either. Else, from a place of known drop:
 *	             no fall told             level
 *	             towards a bearing        a plane: fall x how far it is that way
 *	             away from the house      fall x how much farther it is from the nearest
 *	                                      house, to the nearest point of its rectangle
 *	           The place is that of `finish`; where no level is told it is as the existing
 *	           ground at the datum, or, where it falls away from the house, at the spot of the
 *	           plan nearest to the first house (of several the middle one), so that nothing is
 *	           heaped against its walls. A fall away without a house is not counted.
 *	formation  finished ground less the dig depth there: its drop is that much greater
 *
 * All drops are whole nanometres, by the same steps each time. */
#ifndef SURVEY_SURFACE_H
#define SURVEY_SURFACE_H

#include "plot/plot.h"

/* Points into the plot, which must outlive it unchanged. */
struct surface {
	const struct levels *levels;     /* looked at where has_levels */
	const struct obstacles *houses;
	nm cell;
	bool has_levels; /* the existing ground is measured */
	bool has_finish; /* the finished ground is told, by a level or a fall that counts */
	/* of the finished ground, where has_finish */
	bool is_away;    /* it falls away from the house, by `fall`; else by the other two */
	nm drop;         /* at the place of known drop; of one that falls away, at the house */
	nm right, down;  /* that place */
	double fall;     /* lengths down for a length, 0..1 */
	double fall_right, fall_down; /* the same of a plane, for a length that way: -1..1 */
};

struct surface surface_of(const struct plot *plot);
/* Where either is known: heights can be read. Elsewhere all ground is at 0. */
bool surface_is_told(const struct surface *surface);
/* Where both are known, so that there is something to cut and to fill: what is dug depends on the
 * place. Elsewhere the existing ground is the finished one. */
bool surface_is_graded(const struct surface *surface);

nm surface_existing(const struct surface *surface, nm right, nm down);
nm surface_finished(const struct surface *surface, nm right, nm down);
/* dig: the depth below the finished ground, 0 where nothing is dug. */
nm surface_formation(const struct surface *surface, nm right, nm down, nm dig);

/* How far the highest and the lowest finished ground are below the string along a level or upright
 * line from one spot to another, both included. Looked at at its ends, where lines of the survey
 * cross it and where it comes nearest to each house: exact, but for ground that falls away from
 * several houses, where the lowest may be missed between two of them. */
struct surface_span {
	nm highest, lowest; /* drops: highest <= lowest */
};
struct surface_span surface_along(const struct surface *surface, nm right, nm down, nm to_right,
	nm to_down);

/* Straight from the nearest point of the nearest house. */
struct from_house {
	int house;          /* index of the plot's; the first of those equally near */
	nm distance;        /* 0 in it and on its side */
	double right, down; /* one length that way: a length of 1, or 0 where the distance is 0 */
};
/* False where the plot has no house. */
bool surface_from_house(const struct surface *surface, nm right, nm down, struct from_house *out);
/* How much the finished ground falls at a spot in a direction (its right and down, of length 1)
 * over the side of a cell, half of it to either side; millionths of a percent, negative where it
 * rises. */
int64_t surface_fall(const struct surface *surface, nm right, nm down, double to_right,
	double to_down);

#endif
