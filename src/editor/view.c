#include "editor/view.h"
#include "base/number.h"
#include "editor/lattice.h"

#include <assert.h>

static const struct grain grains[GRAINS + 1] = {
	{ 4, 2, 1, 1 }, /* ZOOM_NEAREST */
	{ 2, 1, 1, 1 },    { 1, 1, 1, 1 },
	{ 1, 1, 1, 2 },    { 1, 1, 2, 4 },    { 1, 1, 3, 6 },    { 1, 1, 4, 8 },
	{ 1, 1, 6, 12 },   { 1, 1, 8, 16 },   { 1, 1, 12, 24 },  { 1, 1, 16, 32 },
	{ 1, 1, 24, 48 },  { 1, 1, 32, 64 },  { 1, 1, 48, 96 },  { 1, 1, 64, 128 },
	{ 1, 1, 96, 192 },
};

const struct grain *view_grain(const struct view *view)
{
	return &grains[view->zoom - ZOOM_NEAREST];
}

void view_fit(struct view *view, const struct mirror *mirror, int rows, int columns)
{
	view->rows = rows;
	view->columns = columns;
	view->axis = (struct place){ mirror->across, mirror->down };
}

/* Blocks that the plan has room for: at least one, though it has not been drawn yet. */
static struct place room(const struct view *view)
{
	const struct grain *grain = view_grain(view);

	return (struct place){ most(view->columns / grain->columns, 1),
		most(view->rows / grain->rows, 1) };
}

/* ---- Blocks ---------------------------------------------------------------------------------- */

static struct lattice columns_of(const struct view *view)
{
	return (struct lattice){ view->axis.x, view_grain(view)->across };
}

/* Dots of a block, one above the other. */
static int dots(const struct view *view)
{
	return view_grain(view)->down > 1 ? 2 : 1;
}

static struct lattice rows_of(const struct view *view)
{
	return (struct lattice){ view->axis.y, view_grain(view)->down / dots(view) };
}

/* A block's number, 0 at the axes. */
static struct place block_of(const struct view *view, struct place cell)
{
	struct lattice columns = columns_of(view), rows = rows_of(view);
	int dot = lattice_piece(&rows, cell.y), deep = dots(view);

	return (struct place){ lattice_piece(&columns, cell.x),
		dot >= 0 ? dot / deep : -((deep - 1 - dot) / deep) };
}

/* The first cell of a block; it may be before the ground. */
static struct place block_begins(const struct view *view, struct place block)
{
	struct lattice columns = columns_of(view), rows = rows_of(view);

	return (struct place){ lattice_first(&columns, block.x),
		lattice_first(&rows, block.y * dots(view)) };
}

static struct place last_block(const struct view *view, const struct ground *ground)
{
	return block_of(view, (struct place){ ground->columns - 1, ground->rows - 1 });
}

struct place view_blocks(const struct view *view, const struct ground *ground)
{
	struct place first = block_of(view, view->first), shown = room(view);
	struct place last = last_block(view, ground);

	return (struct place){ least(shown.x, last.x - first.x + 1),
		least(shown.y, last.y - first.y + 1) };
}

static struct rectangle clipped(const struct ground *ground, struct place first,
	struct place beyond)
{
	return (struct rectangle){ most(first.x, 0), most(first.y, 0),
		least(beyond.x, ground->columns) - 1, least(beyond.y, ground->rows) - 1 };
}

struct rectangle view_block(const struct view *view, const struct ground *ground,
	struct place block)
{
	struct place at = block_of(view, view->first);

	at.x += block.x;
	at.y += block.y;
	return clipped(ground, block_begins(view, at),
		block_begins(view, (struct place){ at.x + 1, at.y + 1 }));
}

struct rectangle view_dot(const struct view *view, const struct ground *ground,
	struct place block, bool is_lower)
{
	struct lattice rows = rows_of(view);
	struct rectangle cells = view_block(view, ground, block);
	int dot = (block_of(view, view->first).y + block.y) * dots(view) + is_lower;

	cells.top = most(lattice_first(&rows, dot), 0);
	cells.bottom = least(lattice_first(&rows, dot + 1), ground->rows) - 1;
	return cells;
}

/* ---- Moving ---------------------------------------------------------------------------------- */

/* The view from this block on, which may be before the ground's first cell. */
static void begin_at(struct view *view, struct place block)
{
	struct place first = block_begins(view, block);

	view->first = (struct place){ most(first.x, 0), most(first.y, 0) };
}

/* The view from this block on, or as near to it as leaves no room unused that the ground could
 * fill. */
static void start_at(struct view *view, const struct ground *ground, struct place block)
{
	struct place shown = room(view), last = last_block(view, ground);
	struct place least_block = block_of(view, (struct place){ 0, 0 }), first;

	first.x = most(least(block.x, last.x + 1 - shown.x), least_block.x);
	first.y = most(least(block.y, last.y + 1 - shown.y), least_block.y);
	begin_at(view, first);
}

/* One direction, in blocks: `shown` of them from `first` on. */
static int follow(int first, int shown, int cursor)
{
	if (cursor < first)
		return cursor - shown / 3;
	if (cursor >= first + shown)
		return cursor - (shown - 1 - shown / 3);
	return first;
}

void view_follow(struct view *view, const struct ground *ground, struct place cursor)
{
	struct place first = block_of(view, view->first), shown = room(view);
	struct place at = block_of(view, cursor);

	start_at(view, ground, (struct place){ follow(first.x, shown.x, at.x),
		follow(first.y, shown.y, at.y) });
}

void view_centre(struct view *view, const struct ground *ground, struct place cursor)
{
	struct place shown = room(view), at = block_of(view, cursor);

	start_at(view, ground, (struct place){ at.x - shown.x / 2, at.y - shown.y / 2 });
}

/* One direction, in blocks: of those shown from `first` on so many are free. */
static int clear(int first, int shown, int free, int low, int high, int cursor)
{
	if (free >= shown)
		return first;
	if (high - low >= free)
		low = high = cursor;
	return least(most(first, high - free + 1), low);
}

void view_clear(struct view *view, const struct ground *ground, struct rectangle cells,
	struct place cursor, int rows, int columns)
{
	const struct grain *grain = view_grain(view);
	struct place first = block_of(view, view->first), shown = view_blocks(view, ground);
	struct place free = { most(columns / grain->columns, 1), most(rows / grain->rows, 1) };
	struct place low = block_of(view, (struct place){ cells.left, cells.top });
	struct place high = block_of(view, (struct place){ cells.right, cells.bottom });
	struct place at = block_of(view, cursor);

	begin_at(view, (struct place){ clear(first.x, shown.x, free.x, low.x, high.x, at.x),
		clear(first.y, shown.y, free.y, low.y, high.y, at.y) });
}

bool view_scroll(struct view *view, const struct ground *ground, int right, int down)
{
	struct place was = view->first, first = block_of(view, was), shown = room(view);

	first.x += right * most(shown.x / 3, 1);
	first.y += down * most(shown.y / 3, 1);
	start_at(view, ground, first);
	return view->first.x != was.x || view->first.y != was.y;
}

struct place view_nearest(const struct view *view, const struct ground *ground, struct place cell)
{
	struct place blocks = view_blocks(view, ground);
	struct rectangle last = view_block(view, ground, (struct place){ blocks.x - 1,
		blocks.y - 1 });

	return (struct place){ most(least(cell.x, last.right), view->first.x),
		most(least(cell.y, last.bottom), view->first.y) };
}

/* ---- Zooms ----------------------------------------------------------------------------------- */

static bool is_in_view(const struct view *view, const struct ground *ground, struct place cell)
{
	struct place near = view_nearest(view, ground, cell);

	return near.x == cell.x && near.y == cell.y;
}

/* Goes back to where this zoom was left; false where it was not, or the cursor is not there. */
static bool find_kept(struct view *view, const struct ground *ground, struct place cursor)
{
	if (!view->kept[view->zoom - ZOOM_NEAREST].is_kept)
		return false;
	start_at(view, ground, block_of(view, view->kept[view->zoom - ZOOM_NEAREST].first));
	return is_in_view(view, ground, cursor);
}

void view_zoom(struct view *view, const struct ground *ground, struct place cursor, int zoom)
{
	struct place at = view_character(view, cursor), block;
	bool is_nearer = zoom < view->zoom;
	const struct grain *grain;

	assert(zoom >= ZOOM_NEAREST && zoom < GRAINS);
	view->kept[view->zoom - ZOOM_NEAREST].is_kept = true;
	view->kept[view->zoom - ZOOM_NEAREST].first = view->first;
	view->zoom = zoom;
	if (is_nearer && find_kept(view, ground, cursor))
		return;
	grain = view_grain(view);
	block = block_of(view, cursor);
	start_at(view, ground, (struct place){ block.x - at.x / grain->columns,
		block.y - at.y / grain->rows });
	view_follow(view, ground, cursor);
}

int view_whole(const struct view *view, const struct ground *ground)
{
	struct view tried = *view;

	tried.first = (struct place){ 0, 0 };
	for (tried.zoom = 0; tried.zoom < GRAINS - 1; tried.zoom++) {
		struct place shown = room(&tried), last = last_block(&tried, ground);
		struct place first = block_of(&tried, tried.first);

		if (last.x - first.x < shown.x && last.y - first.y < shown.y)
			break;
	}
	return tried.zoom;
}

int view_columns_of_all(const struct view *view, const struct ground *ground)
{
	struct place first = block_of(view, (struct place){ 0, 0 });

	return (last_block(view, ground).x - first.x + 1) * view_grain(view)->columns;
}

/* ---- Characters ------------------------------------------------------------------------------ */

struct place view_character(const struct view *view, struct place cell)
{
	struct place first = block_of(view, view->first), block = block_of(view, cell);

	return (struct place){ (block.x - first.x) * view_grain(view)->columns,
		(block.y - first.y) * view_grain(view)->rows };
}

bool view_cell(const struct view *view, const struct ground *ground, struct place character,
	struct place *cell)
{
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, ground);
	struct place at = { character.x / grain->columns, character.y / grain->rows };
	struct rectangle cells;

	if (character.x < 0 || character.y < 0 || at.x >= blocks.x || at.y >= blocks.y)
		return false;
	cells = view_block(view, ground, at);
	*cell = (struct place){ (cells.left + cells.right + 1) / 2,
		(cells.top + cells.bottom + 1) / 2 };
	return true;
}

char view_letter(const struct ground *ground, struct rectangle cells)
{
	int counts[128] = { 0 };
	char best = OPEN_GROUND;

	for (int y = cells.top; y <= cells.bottom; y++)
		for (int x = cells.left; x <= cells.right; x++)
			counts[(int)ground_cell(ground, x, y)]++;
	counts[OPEN_GROUND] = 0;
	for (int i = 0; i < 128; i++)
		if (counts[i] > counts[(int)best])
			best = (char)i;
	return best;
}
