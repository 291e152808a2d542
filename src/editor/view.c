#include "editor/view.h"
#include "base/number.h"

#include <assert.h>

static const struct grain grains[GRAINS] = {
	{ 2, 1, 1 },    { 1, 1, 1 },    { 1, 1, 2 },    { 1, 2, 4 },    { 1, 3, 6 },
	{ 1, 4, 8 },    { 1, 6, 12 },   { 1, 8, 16 },   { 1, 12, 24 },  { 1, 16, 32 },
	{ 1, 24, 48 },  { 1, 32, 64 },  { 1, 48, 96 },  { 1, 64, 128 }, { 1, 96, 192 },
};

static int blocks_of(int cells, int block)
{
	return (cells + block - 1) / block;
}

const struct grain *view_grain(const struct view *view)
{
	return &grains[view->zoom];
}

void view_fit(struct view *view, int rows, int columns)
{
	view->rows = rows;
	view->columns = columns;
}

/* Blocks that the plan has room for: at least one, though it has not been drawn yet. */
static struct place room(const struct view *view)
{
	return (struct place){ most(view->columns / view_grain(view)->columns, 1),
		most(view->rows, 1) };
}

/* All blocks of the ground. */
static struct place all(const struct view *view, const struct ground *ground)
{
	const struct grain *grain = view_grain(view);

	return (struct place){ blocks_of(ground->columns, grain->across),
		blocks_of(ground->rows, grain->down) };
}

static struct place block_at(const struct view *view, struct place cell)
{
	const struct grain *grain = view_grain(view);

	return (struct place){ cell.x / grain->across, cell.y / grain->down };
}

/* The view from this block on, or as near to it as leaves no room unused that the ground could
 * fill. */
static void start_at(struct view *view, const struct ground *ground, struct place block)
{
	const struct grain *grain = view_grain(view);
	struct place shown = room(view), blocks = all(view, ground);

	view->first.x = most(least(block.x, blocks.x - shown.x), 0) * grain->across;
	view->first.y = most(least(block.y, blocks.y - shown.y), 0) * grain->down;
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
	struct place first = block_at(view, view->first), shown = room(view);
	struct place at = block_at(view, cursor);

	start_at(view, ground, (struct place){ follow(first.x, shown.x, at.x),
		follow(first.y, shown.y, at.y) });
}

void view_centre(struct view *view, const struct ground *ground, struct place cursor)
{
	struct place shown = room(view), at = block_at(view, cursor);

	start_at(view, ground, (struct place){ at.x - shown.x / 2, at.y - shown.y / 2 });
}

bool view_scroll(struct view *view, const struct ground *ground, int right, int down)
{
	struct place was = view->first, first = block_at(view, was), shown = room(view);

	first.x += right * most(shown.x / 3, 1);
	first.y += down * most(shown.y / 3, 1);
	start_at(view, ground, first);
	return view->first.x != was.x || view->first.y != was.y;
}

struct place view_nearest(const struct view *view, const struct ground *ground, struct place cell)
{
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, ground), first = view->first;
	int right = first.x + blocks.x * grain->across - 1;
	int bottom = first.y + blocks.y * grain->down - 1;

	return (struct place){ most(least(cell.x, right), first.x),
		most(least(cell.y, bottom), first.y) };
}

void view_zoom(struct view *view, const struct ground *ground, struct place cursor, int zoom)
{
	struct place at = view_character(view, cursor), block;

	assert(zoom >= 0 && zoom < GRAINS);
	view->zoom = zoom;
	block = block_at(view, cursor);
	start_at(view, ground, (struct place){ block.x - at.x / view_grain(view)->columns,
		block.y - at.y });
	view_follow(view, ground, cursor);
}

int view_whole(const struct view *view, const struct ground *ground)
{
	struct view tried = *view;

	for (tried.zoom = 0; tried.zoom < GRAINS - 1; tried.zoom++) {
		struct place shown = room(&tried), blocks = all(&tried, ground);

		if (blocks.x <= shown.x && blocks.y <= shown.y)
			break;
	}
	return tried.zoom;
}

int view_columns_of_all(const struct view *view, const struct ground *ground)
{
	return all(view, ground).x * view_grain(view)->columns;
}

struct place view_blocks(const struct view *view, const struct ground *ground)
{
	struct place first = block_at(view, view->first), shown = room(view);
	struct place blocks = all(view, ground);

	return (struct place){ least(shown.x, blocks.x - first.x),
		least(shown.y, blocks.y - first.y) };
}

struct place view_character(const struct view *view, struct place cell)
{
	struct place first = block_at(view, view->first), block = block_at(view, cell);

	return (struct place){ (block.x - first.x) * view_grain(view)->columns, block.y - first.y };
}

bool view_cell(const struct view *view, const struct ground *ground, struct place character,
	struct place *cell)
{
	const struct grain *grain = view_grain(view);
	struct place blocks = view_blocks(view, ground);
	int x = character.x / grain->columns, y = character.y;

	if (character.x < 0 || y < 0 || x >= blocks.x || y >= blocks.y)
		return false;
	cell->x = least(view->first.x + x * grain->across + grain->across / 2, ground->columns - 1);
	cell->y = least(view->first.y + y * grain->down + grain->down / 2, ground->rows - 1);
	return true;
}

char view_letter(const struct view *view, const struct ground *ground, struct place first)
{
	const struct grain *grain = view_grain(view);
	int right = least(first.x + grain->across, ground->columns);
	int bottom = least(first.y + grain->down, ground->rows);
	int counts[128] = { 0 }, met = 0;
	char order[128], best = OPEN_GROUND;

	if (grain->across == 1 && grain->down == 1)
		return ground_cell(ground, first.x, first.y);
	for (int y = first.y; y < bottom; y++)
		for (int x = first.x; x < right; x++) {
			char letter = ground_cell(ground, x, y);

			if (letter != OPEN_GROUND && counts[(int)letter]++ == 0)
				order[met++] = letter;
		}
	for (int i = 0; i < met; i++)
		if (best == OPEN_GROUND || counts[(int)order[i]] > counts[(int)best])
			best = order[i];
	return best;
}
