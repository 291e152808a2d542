/* Plants, as the plan under them changes. */
#ifndef PLOT_EDIT_PLANTS_MOVE_H
#define PLOT_EDIT_PLANTS_MOVE_H

#include "plot/edit/names.h"
#include "plot/mirror.h"

/* Moves specimens to where their cells go on the ground that is there afterwards, of which only the
 * size is asked. One whose cell is gone is gone; of two of a kind that come to one cell the first
 * stays. */
void specimens_move(struct plants *plants, const struct ground *size, names_way *way,
	const void *how);
/* Moves the cells of drifts as names_move does those of names: a drift stays with its bed of the
 * ground `before` while any of that is left. */
void drifts_move(struct plants *plants, struct ground *before, names_way *way, const void *how);

/* Those specimens and drifts of single beds that have a cell where `way` leads, at that cell:
 * kinds with a letter and a name, and nothing else. plants_fini frees them. */
struct plants plants_taken(const struct plants *plants, names_way *way, const void *how);
/* To each specimen and drift of such plants, its images within the plan, once each. */
struct plants plants_imaged(const struct plants *plants, const struct mirror *mirror,
	const struct ground *ground);

/* Who is to come and who stays. */
struct plants_change {
	const struct plants *coming; /* as plants_taken has them; a kind the plot has no more is not
	                              * planted */
	names_way *stays;            /* of the others: false where they go */
	const void *how;
	struct ground *before;       /* drifts that go stay with their bed on that ground, as
	                              * drifts_move has it; NULL: they go */
};
/* What comes is there then; what is there already stays as it is. Returns how many came and how
 * many went. */
int64_t plants_replace(struct plot *plot, const struct plants_change *change);
/* Folds: what is on the side of a cell that has one is laid with its images over the others, where
 * those have any. */
void plants_fold(struct plot *plot, struct place from);

#endif
