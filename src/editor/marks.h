/* The mark at the right of a cell's letter: the first of these that the cell has. */
#ifndef EDITOR_MARKS_H
#define EDITOR_MARKS_H

#include "editor/editor.h"

enum mark {
	MARK_NONE,
	MARK_PEG,    /* or a corner of what is marked */
	MARK_IMAGE,  /* of the cursor's cell */
	MARK_SNAG,   /* a snag's first cell */
	MARK_FAULT,  /* differs from its image; shown while there are few, and counted */
	MARK_PLANT,  /* a specimen stands there: its letter in the cell, the sign round it */
	MARK_DROP,   /* deliveries are put down at the cell's upper left corner */
	MARK_TIE,    /* that is tied to a fixed point; the plan's far edges are its last cells' */
	MARK_CENTRE, /* of the half-turn */
	MARK_UPRIGHT, MARK_LEVEL, /* an axis goes through the cell or along its far edge */
	MARKS
};

/* How a mark is written: no key at rest, but for the axes, which look like theirs. */
struct sign {
	uint32_t code; /* of Unicode */
	char plain;    /* where the locale has ASCII alone */
};

struct sign mark_sign(enum mark mark);
/* Of a cell inside the plan; the editor is drawn (editor_draw). */
enum mark mark_at(const struct editor *editor, const struct mirror *mirror, int x, int y);
/* The first snag of the cell from index *from on, leaving out faults of the mirror; *from is then
 * the index after it. NULL where there is none, and while they are not counted. */
const struct snag *mark_snag(const struct editor *editor, int x, int y, size_t *from);

#endif
