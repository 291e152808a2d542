/* Plots for tests: from rows of text, and at random. */
#ifndef SUPPORT_PLOTS_H
#define SUPPORT_PLOTS_H

#include "plot/plot.h"
#include "support/random.h"

/* A plot whose ground is the rows, all of one length; it ends at a NULL. Imperial, cells of one
 * foot. Every letter gets a legend entry named by itself, its class by the letter: a-h bed, l-n
 * lawn, other lower case path, capitals fixture. plot_fini frees it. */
void plot_from_rows(struct plot *plot, const char *const *rows);

/* The plot that a file of these bytes holds; they must be in order. plot_fini frees it. */
void plot_from_text(struct plot *plot, const char *text);

/* Adds lines behind the ground, as the plot format has them: "levels 4 ft\n  0 in, ...". */
void plot_add_lines(struct plot *plot, const char *lines);

/* Ground of 1 to `most` columns and rows in letters of `letters` ('.' among them if wanted):
 * some of it scattered cell by cell, some in overlapping rectangles, as gardens are drawn. */
void plot_at_random(struct plot *plot, struct random *random, int most, const char *letters);

/* Sets an attribute of the entry with the letter, of the head or of allow, as the plot format
 * spells it: plot_set(&plot, 'b', BED_BLOCK, "1 ft x 6 in x 4 in"). letter 0: head or allow, by
 * the attribute. */
void plot_set(struct plot *plot, char letter, enum attribute attribute, const char *value);

#endif
