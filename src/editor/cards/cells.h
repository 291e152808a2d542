/* Distances that are laid in whole cells: typed at a card as a length, "3 ft", or in cells, "3
 * cells". */
#ifndef EDITOR_CARDS_CELLS_H
#define EDITOR_CARDS_CELLS_H

#include "editor/editor.h"

struct cells {
	int least, most;   /* what may be read; both set beforehand */
	const char *limit; /* why it is no more: "half the rectangle"; NULL: the plan's own limit */
	int count;
	bool is_rounded; /* a length was typed that is no whole number of cells */
};

/* What a field for cells takes, which is marked is_cells and SPAN_PLAN. */
extern const struct value_rule cells_rule;

/* Reads a field of that rule: a minus only where least is below 0; where 0 may be, an empty field
 * is 0. A length is rounded to the nearest whole cell, but not to none where least is 1. False,
 * fault filled, where it is wrong or out of range. cells_check is the same for a value that was
 * read of the field (struct card's check). */
bool cells_read(const struct card *card, int field, nm cell, struct cells *cells,
	struct fault *fault);
bool cells_check(const struct card *card, int field, const struct value *value, nm cell,
	struct cells *cells, struct fault *fault);

/* How one number of cells is asked for. */
struct cells_question {
	const char *title, *label, *done, *meaning;
};

/* Asks for one number of cells, offering what cells->count says. False where the card was left. */
bool cells_ask(struct editor *editor, const struct cells_question *question, struct cells *cells);

#endif
