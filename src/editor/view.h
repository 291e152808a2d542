/* Which cells of the ground the plan shows, and how small. Pure.
 *
 * A character, or a few together, show a block of cells: one cell near by, many from afar. Blocks
 * of more than one cell are two dots, one above the other: squares of cells, as characters are
 * twice as high as wide, so that the picture keeps the ground's proportions. The dots are counted
 * from the mirror's axes (lattice.h), and so a block may be cut at the ground's edge. */
#ifndef EDITOR_VIEW_H
#define EDITOR_VIEW_H

#include "plot/mirror.h"

struct grain {
	int columns, rows; /* characters of a block: 4 x 2, 2 x 1 or 1 x 1 */
	int across, down;  /* cells of a block that is not cut */
};

enum { ZOOM_NEAREST = -1, GRAINS = 15 };

/* A hidden panel leaves its columns to the plan; two rows below the plan say what is here. */
enum panel_width { PANEL_NORMAL, PANEL_WIDE, PANEL_HIDDEN };

struct view {
	int zoom;           /* ZOOM_NEAREST; 0, two columns a cell; to GRAINS - 1 */
	int near;           /* the zoom that the overview goes back to */
	struct place first; /* at the plan's top left: the first cell of its block in the plan */
	struct place axis;  /* of the mirror, in half cells: where blocks are counted from */
	struct {
		bool is_kept;
		struct place first;
	} kept[GRAINS + 1]; /* where each zoom was left last, from the nearest on */
	int rows, columns;  /* characters that the plan has on the screen, as it was last drawn */
};

const struct grain *view_grain(const struct view *view);
/* The plan has so much room from now on, and the mirror these axes. */
void view_fit(struct view *view, const struct mirror *mirror, int rows, int columns);
/* The view stays while the cursor is in it; else it moves so that the cursor is a third of it away
 * from the edge it crossed. */
void view_follow(struct view *view, const struct ground *ground, struct place cursor);
/* The cursor in the middle, as far as the ground reaches. */
void view_centre(struct view *view, const struct ground *ground, struct place cursor);
/* For what is drawn while something covers the rest of the plan: moves no farther than these cells
 * need to be among its first rows and columns of characters, past the ground's end if need be;
 * along an axis where they are too many, the cursor is enough. */
void view_clear(struct view *view, const struct ground *ground, struct rectangle cells,
	struct place cursor, int rows, int columns);
/* A third of the view: right and down -1, 0 or 1. False where the ground ends. */
bool view_scroll(struct view *view, const struct ground *ground, int right, int down);
/* The cell in view that is nearest to a cell of the ground. */
struct place view_nearest(const struct view *view, const struct ground *ground, struct place cell);

/* Another zoom. Where a nearer one was left it is found again, if the cursor is in it; else the
 * cursor stays where it is on the screen, as far as the ground allows. */
void view_zoom(struct view *view, const struct ground *ground, struct place cursor, int zoom);
/* The nearest zoom that shows all of the ground. */
int view_whole(const struct view *view, const struct ground *ground);

/* Columns of characters that all of the ground takes at this zoom. */
int view_columns_of_all(const struct view *view, const struct ground *ground);

/* Blocks in view, across and down. */
struct place view_blocks(const struct view *view, const struct ground *ground);
/* The cells of a block in view, counted from the plan's top left, as far as they are in the
 * ground. */
struct rectangle view_block(const struct view *view, const struct ground *ground,
	struct place block);
/* The same for the upper or the lower dot of a block of more than one cell; its bottom is above its
 * top where it is beyond the ground. */
struct rectangle view_dot(const struct view *view, const struct ground *ground,
	struct place block, bool is_lower);
/* Where a cell's block is in the plan, in characters from its top left; for cells in view. */
struct place view_character(const struct view *view, struct place cell);
/* The middle cell of the block at a character of the plan; false where that is beyond the
 * ground. */
bool view_cell(const struct view *view, const struct ground *ground, struct place character,
	struct place *cell);
/* The commonest letter of the cells, of those as common the first of ASCII, so that images have the
 * same; OPEN_GROUND only where all of it is open. */
char view_letter(const struct ground *ground, struct rectangle cells);

#endif
