/* A plot and its takeoff, for tests of what is counted and printed. */
#ifndef SUPPORT_GARDEN_H
#define SUPPORT_GARDEN_H

#include "report/words/words.h"
#include "takeoff/setout/setout.h"
#include "takeoff/takeoff.h"
#include "support/plots.h"

#define CUBIC_FOOT 0.028316846592 /* m3, by definition of the foot */
#define CUBIC_YARD (27 * CUBIC_FOOT)
#define SQUARE_FOOT 0.09290304    /* m2 */

struct garden {
	struct plot plot;
	struct book book;
	bool has_book;
	struct arena arena;
	struct takeoff takeoff;
	struct arena words; /* what was said of it; until the next garden_count */
};

/* The plot of plot_from_rows; garden_fini frees it. Set attributes, then garden_count. */
void garden_rows(struct garden *garden, const char *const *rows);
/* The same of one rectangle of a letter that fills the plan. */
void garden_rectangle(struct garden *garden, char letter, int columns, int rows);
/* The plot in a file, with the price book that it names. */
void garden_file(struct garden *garden, const char *path);
/* Takes the price book in a file. */
void garden_book(struct garden *garden, const char *path);
/* Computes the takeoff, anew if there was one. */
void garden_count(struct garden *garden);
/* The same, then its set-out, whose points and strings are the arena's. */
void garden_set_out(struct garden *garden, struct setout *out, struct arena *arena);
/* The ground of its zones; arena_clear(&ground.arena). */
struct zones_ground garden_ground(struct garden *garden);
void garden_fini(struct garden *garden);

/* The snag of that code at that place among all of its code; NULL where there are fewer. */
const struct snag *garden_snag(const struct garden *garden, enum snag_code code, int index);
/* The row with the id; NULL where there is none. */
const struct item *garden_item(const struct garden *garden, const char *id);

/* Adds those parts of its takeoff, as it was counted, as they are printed of a file so called. */
void garden_print(struct garden *garden, struct text *paper, const char *file, unsigned parts);
/* What prints its takeoff, as it was counted, into a sink. */
struct report garden_report(struct garden *garden, struct sink *out);
/* As a view would say it: the id, label, label with size and note (NULL: none) of an item, the
 * sentence of a snag. */
const char *garden_id(struct garden *garden, const struct item *item);
const char *garden_label(struct garden *garden, const struct item *item);
/* Without the ties that keep its lengths on one line. */
const char *garden_sized(struct garden *garden, const struct item *item);
const char *garden_note(struct garden *garden, const struct item *item);
const char *garden_sentence(struct garden *garden, const struct snag *snag);

#endif
