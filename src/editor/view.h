/* Which cells of the ground the plan shows, and how small. Pure.
 *
 * A character, or two side by side, shows a block of cells: one cell near by, many from afar.
 * Blocks of more than one cell are twice as deep as wide, as characters are twice as high as wide,
 * so that the picture keeps the ground's proportions. */
#ifndef EDITOR_VIEW_H
#define EDITOR_VIEW_H

#include "plot/plot.h"

struct grain {
	int columns;      /* of characters a block: 2 or 1 */
	int across, down; /* cells of a block */
};

enum { GRAINS = 15 };

/* A hidden panel leaves its columns to the plan; two rows below the plan say what is here. */
enum panel_width { PANEL_NORMAL, PANEL_WIDE, PANEL_HIDDEN };

struct view {
	int zoom;           /* 0, two columns a cell, to GRAINS - 1 */
	int near;           /* the zoom that the overview goes back to */
	struct place first; /* the cell at the plan's top left, the first of its block */
	int rows, columns;  /* characters that the plan has on the screen, as it was last drawn */
};

const struct grain *view_grain(const struct view *view);
/* The plan has so much room from now on. */
void view_fit(struct view *view, int rows, int columns);
/* The view stays while the cursor is in it; else it moves so that the cursor is a third of it away
 * from the edge it crossed. */
void view_follow(struct view *view, const struct ground *ground, struct place cursor);
/* The cursor in the middle, as far as the ground reaches. */
void view_centre(struct view *view, const struct ground *ground, struct place cursor);
/* A third of the view: right and down -1, 0 or 1. False where the ground ends. */
bool view_scroll(struct view *view, const struct ground *ground, int right, int down);
/* The cell in view that is nearest to a cell of the ground. */
struct place view_nearest(const struct view *view, const struct ground *ground, struct place cell);

/* Another zoom, the cursor staying where it is on the screen as far as the ground allows. */
void view_zoom(struct view *view, const struct ground *ground, struct place cursor, int zoom);
/* The nearest zoom that shows all of the ground. */
int view_whole(const struct view *view, const struct ground *ground);

/* Columns of characters that all of the ground takes at this zoom. */
int view_columns_of_all(const struct view *view, const struct ground *ground);

/* Blocks in view, across and down; the last ones may reach beyond the ground. */
struct place view_blocks(const struct view *view, const struct ground *ground);
/* Where a cell's block is in the plan, in characters from its top left; for cells in view. */
struct place view_character(const struct view *view, struct place cell);
/* The middle cell of the block at a character of the plan; false where that is beyond the
 * ground. */
bool view_cell(const struct view *view, const struct ground *ground, struct place character,
	struct place *cell);
/* The commonest letter of the block at `first`, of those as common the one that comes first;
 * OPEN_GROUND only where all of it is open. */
char view_letter(const struct view *view, const struct ground *ground, struct place first);

#endif
