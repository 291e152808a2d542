/* How much there is to do of each kind of work, and the hours it takes one person.
 *
 * Hours = quantity x rate. The plot's rate goes before the price book's, that before the usual one;
 * a kind without any is in no hours.
 *
 * The usual rates, hours per cubic metre: digging by hand 1.20 in sand, 2.20 in medium ground, 3.30
 * in heavy ground, in the ground; loading 1.00, 1.30, 1.90, and taking up to 50 m by barrow,
 * spreading and levelling 1.25, loose; backfilling 1.00 and a base course of 150 mm 1.00, in place.
 * Loam counts as medium ground, clay as heavy. They are common practice, no published
 * source (by whom these labour factors were put down, for New Zealand, is not known): a rule of
 * thumb. For dry-laid walls, fences, edging and turf none is known.
 *
 * Where the plot says where deliveries are put down, each barrow load goes the way there and back:
 * at 200 ft a minute, full or empty (from memory: J. C. Trautwine, The Civil Engineer's
 * Pocket-Book, on earth moved by wheelbarrows; edition and page not noted). Of what is spread from
 * barrows only what lies beyond the 50 m that its rate has in it. */
#ifndef TAKEOFF_LABOUR_H
#define TAKEOFF_LABOUR_H

#include "takeoff/common/work_steps.h"

struct arena;
struct plot;
struct takeoff;

enum rate_source { RATE_UNKNOWN, RATE_OF_PLOT, RATE_OF_BOOK, RATE_USUAL };

/* Some work of one kind. */
struct labour {
	enum attribute kind;     /* RATE_STRIP .. RATE_SEED */
	enum work_step step;     /* that it is a part of */
	double quantity;         /* over 0: pieces, m, m2 or m3, as the rate counts it */
	double hours;            /* 0: no rate is known */
	enum rate_source source; /* of the rate */
};

struct labours {
	const struct labour *list; /* in the order of the work */
	int count;
};

void labour_compute(struct labours *out, const struct takeoff *takeoff, const struct plot *plot,
	struct arena *arena);

/* "plot", "book", "usual"; NULL where no rate is known. */
const char *rate_source_word(enum rate_source source);

#endif
