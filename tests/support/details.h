/* Everything of a plot but its ground, at random: each attribute set or not, with any value that
 * its row of the table allows, the least and the most among them. */
#ifndef SUPPORT_DETAILS_H
#define SUPPORT_DETAILS_H

#include "plot/plot.h"
#include "support/random.h"

/* A set value for the attribute, in a plot of that ground (which limits the mirror's axis). The
 * caller owns it. */
struct value value_at_random(struct random *random, enum attribute attribute,
	const struct ground *ground);

/* A text of least..most characters, quotes and backslashes among them; to be freed. */
char *text_at_random(struct random *random, int least, int most);

/* Adds a fence of any shape, none among them, with gates and attributes. */
void fence_at_random(struct plot *plot, struct random *random);

/* Adds up to 3 plants of letters that are free, with specimens and drifts, to a plot that has its
 * legend and ground. */
void plants_at_random(struct plot *plot, struct random *random);

/* Adds services, houses, shade, things that are kept, ties, the drop, levels and what the
 * finished ground is to be, or none of them, to a plot that has its head and ground. */
void around_at_random(struct plot *plot, struct random *random);

/* Gives a plot that has its ground, and nothing else, a head, allowances, a legend of 1 to
 * `entries` letters and up to 2 fences, with notes, plants, what is around, rates and up to 2 extra
 * goods. */
void details_at_random(struct plot *plot, struct random *random, int entries);

/* A whole plot: ground of 1 to `most` columns and rows, details_at_random, and cells of any of its
 * letters. plot_fini frees it. */
void whole_plot_at_random(struct plot *plot, struct random *random, int most);

#endif
