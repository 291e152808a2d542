/* Edging along paths and ground-level beds.
 *
 * An edge gets edging where a path with edging or a ground-level bed meets a lawn, open ground,
 * each other, or a side of the plan; each edge once. None where a raised bed's wall, a fixture
 * or a held side of the plan holds it, between path and path, or along a path that says no
 * edging.
 *
 * A run is straight: it continues along one line of the grid, whatever lies beside it, until a
 * side of a cell on that line has no edging. It is laid of whole pieces and one sawn to the
 * rest, shorter than that by the cutting tolerance; a rest within it is left open. Offcuts serve
 * for other rests (packing.h).
 *
 * Spikes of a run: ceil(length / spacing) + 1, the first and the last at its ends.
 *
 * Common practice, no published source. */
#ifndef TAKEOFF_GROUND_EDGING_H
#define TAKEOFF_GROUND_EDGING_H

#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"
#include "takeoff/common/packing.h"

/* Runs of one length. */
struct edging_row {
	nm length;      /* of one run */
	int64_t runs;
	int64_t spikes; /* of one run */
	int64_t whole;  /* pieces of one run */
	nm rest;        /* of one run: the place of the piece that is sawn; 0: none */
};

struct edging {
	nm piece, spacing;   /* a piece as bought; between spikes */
	nm kerf, fit;        /* of the saw, of the pieces sawn */
	nm length;           /* of all runs */
	int64_t runs, spikes;
	const struct edging_row *rows; /* longest first */
	int row_count;
	int64_t whole, cut_up, bought; /* pieces laid whole, cut up, both */
	const struct cut *cuts;        /* of the pieces cut up */
	int cut_count;
};

extern const struct figure_table edging_table, edging_row_table, edging_cut_table;

/* Gives each straight run, from its left or upper end. */
void edging_walk(const struct basis *basis, void (*run)(void *context, struct leg run),
	void *context);
/* Of one run: at its ends and evenly between them, at most `spacing` apart. */
int64_t edging_spikes(nm length, nm spacing);

void edging_compute(struct edging *out, const struct basis *basis);
/* Adds edging.piece and edging.spike. */
void edging_items(struct item_list *items, const struct edging *edging);

#endif
