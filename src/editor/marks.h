/* The mark at the right of a cell's letter: the first of these that the cell has. */
#ifndef EDITOR_MARKS_H
#define EDITOR_MARKS_H

#include "editor/editor.h"

enum mark {
	MARK_NONE,
	MARK_PEG,    /* or a corner of what is marked */
	MARK_STAMP,  /* a corner of where it would be stamped */
	MARK_IMAGE,  /* of the cursor's cell */
	MARK_RIM,    /* of what is marked */
	MARK_FAULT,  /* differs from its image */
	MARK_SNAG,   /* a snag's first cell */
	MARK_GATE_RIGHT, MARK_GATE_BELOW,
	MARK_FENCE_CORNER, /* at the right and below */
	MARK_FENCE_RIGHT, MARK_FENCE_BELOW,
	MARK_CENTRE, /* of the half-turn */
	MARK_UPRIGHT, MARK_LEVEL /* the mirror's axis goes through the cell or along its far edge */
};

char mark_sign(enum mark mark);
enum { PEGS_MOST = 1 + BENDS_MOST, CORNERS = 4 };

/* The peg and the bends of a run, or the corners of what is marked; returns how many. */
int mark_pegs(const struct editor *editor, struct place pegs[PEGS_MOST]);
/* Of sides as in survey/fence_map.h: a gate before fence. */
enum mark mark_fence(int sides);
/* Of a cell inside the plan; the editor is drawn (editor_draw). */
enum mark mark_at(const struct editor *editor, const struct mirror *mirror, int x, int y);
/* The first snag of the cell from index *from on, leaving out faults of the mirror; *from is then
 * the index after it. NULL where there is none, and while they are not counted. */
const struct snag *mark_snag(const struct editor *editor, int x, int y, size_t *from);

#endif
