#include "screen/plan_levels.h"
#include "base/number.h"
#include "base/show.h"
#include "editor/cards/levels_card.h"
#include "screen/brush.h"

#include <string.h>

enum { DEPTHS = 10 };

/* What is to be shown; NULL: nothing. */
static const struct levels *levels_of(const struct scene *scene)
{
	const struct levels *levels = &scene->editor->plot->details.levels;

	return scene->editor->shows_levels && levels->step ? levels : NULL;
}

/* ---- Points ---------------------------------------------------------------------------------- */

/* Characters between two drops, at the least. */
static int room_of(const struct scene *scene, const struct levels *levels)
{
	const struct editor *editor = scene->editor;

	return (int)(levels->step / plot_cell(editor->plot)) *
		view_grain(&editor->view)->columns - 1;
}

/* From a cell on; at the plan's far edge up to its end. What has no room there, or after what was
 * drawn before it in its row, is a dot. Returns the column after it. */
static int draw_drop(const struct scene *scene, const struct area *plan, int end, int free,
	struct place cell, const char *words)
{
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);
	bool is_last = cell.x == scene->editor->plot->ground.columns - 1;
	struct place to = view_character(view, cell);
	int length = (int)strlen(words), from = is_last ? end - length : to.x;

	if (from < free || from + length > end) {
		from = to.x;
		words = ".";
		length = 1;
	}
	for (int i = 0; i < length; i++) {
		struct paint paint = scene_paint(scene,
			view->first.x + (from + i) / grain->columns, cell.y);

		paint.is_bold = true;
		brush_put(plan, to.y, from + i, (wchar_t)words[i], paint);
	}
	return from + length;
}

static bool is_in_view(const struct view *view, struct place blocks, struct place cell)
{
	return cell.x >= view->first.x && cell.x < view->first.x + blocks.x &&
		cell.y >= view->first.y && cell.y < view->first.y + blocks.y;
}

void plan_levels_draw_points(const struct scene *scene, const struct area *plan,
	struct place blocks)
{
	const struct editor *editor = scene->editor;
	const struct levels *levels = levels_of(scene);
	enum units units = plot_units(editor->plot);
	struct text words = TEXT_EMPTY;

	for (int y = 0; levels && y < levels->rows; y++) {
		int free = 0;

		for (int x = 0; x < levels->columns; x++) {
			struct place cell = levels_point_cell(editor, (struct place){ x, y });

			if (!is_in_view(&editor->view, blocks, cell))
				continue;
			text_clear(&words);
			show_tape(&words, levels->drops[y * levels->columns + x], units);
			free = 1 + draw_drop(scene, plan,
				blocks.x * view_grain(&editor->view)->columns, free, cell,
				(int)words.length <= room_of(scene, levels) ? words.bytes : ".");
		}
	}
	text_fini(&words);
}

/* ---- Depths ---------------------------------------------------------------------------------- */

/* The ground in the middle of some cells. */
static nm drop_amid(const struct scene *scene, const struct levels *levels, struct rectangle cells)
{
	nm cell = plot_cell(scene->editor->plot);

	return levels_drop(levels, (cells.left + cells.right + 1) * cell / 2,
		(cells.top + cells.bottom + 1) * cell / 2);
}

void plan_levels_draw_depths(const struct scene *scene, const struct area *plan,
	struct place blocks)
{
	const struct levels *levels = levels_of(scene);
	const struct editor *editor = scene->editor;
	struct drop_range range;

	if (!levels)
		return;
	range = levels_range(levels);
	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++) {
			struct rectangle cells = view_block(&editor->view, &editor->plot->ground,
				(struct place){ x, y });
			nm below = drop_amid(scene, levels, cells) - range.least;
			nm depth = range.most == range.least ? 0 :
				below * (DEPTHS - 1) / (range.most - range.least);
			struct paint paint = rectangle_holds(cells, editor->cursor) ?
				colour_cursor(scene->level) :
				scene_ground(scene, scene_commonest(scene, cells));

			brush_put(plan, y, x, (wchar_t)(L'0' + depth), paint);
		}
}
