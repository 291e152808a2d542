/* Distances that are laid in whole cells: typed at a sheet as a length, "3 ft", or in cells, "3
 * cells". */
#ifndef EDITOR_SHEETS_CELLS_H
#define EDITOR_SHEETS_CELLS_H

#include "editor/editor.h"

struct cells {
	int least, most; /* what may be read; both set beforehand */
	int count;
	bool is_rounded; /* a length was typed that is no whole number of cells */
};

/* What a field for cells takes: the text is read by cells_read. */
extern const struct value_rule cells_rule;

/* Reads a field of that rule: a minus only where least is below 0; where 0 may be, an empty field
 * is 0. A length is rounded to the nearest whole cell, but not to none where least is 1. False,
 * fault filled, where it is wrong; a bare number is offered as cells. */
bool cells_read(const struct sheet *sheet, int field, nm cell, struct cells *cells,
	struct fault *fault);
/* Asks for one number of cells, offering what cells->count says. False where the sheet was left. */
bool cells_ask(struct editor *editor, const char *title, const char *label, struct cells *cells);

#endif
