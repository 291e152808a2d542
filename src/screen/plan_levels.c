#include "screen/plan_levels.h"
#include "base/show.h"
#include "editor/cards/levels_card.h"
#include "screen/brush.h"
#include "screen/draw.h"
#include "screen/width.h"

#include <string.h>

/* ---- Points ---------------------------------------------------------------------------------- */

/* Characters between two drops, at the least. */
static int room_of(const struct scene *scene, const struct levels *levels)
{
	const struct editor *editor = scene->editor;

	return (int)(levels->step / plot_cell(editor->plot)) *
		view_grain(&editor->view)->columns - 1;
}

/* From a cell on; at the plan's far edge up to its end. What has no room there, or after what was
 * drawn before it in its row and a gap, up to `free`, is a dot; in the midst of that it is nothing.
 * Returns the column after what is there. */
static int draw_drop(const struct scene *scene, const struct area *plan, int end, int free,
	struct place cell, const char *words)
{
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);
	bool is_last = cell.x == scene->editor->plot->ground.columns - 1;
	struct place to = view_character(view, cell);
	int length = (int)strlen(words), from = is_last ? end - length : to.x;

	if (from < free || from + length > end) {
		if (to.x < free - 1)
			return free - 1;
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
	const struct levels *levels = scene->levels;
	enum units units = plot_units(editor->plot);
	struct text words = TEXT_EMPTY;

	for (int y = 0; y < levels->rows; y++) {
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

/* ---- What depths mean ------------------------------------------------------------------------ */

static bool has_digits(const struct scene *scene)
{
	return view_grain(&scene->editor->view)->down > 1;
}

/* As the plan has them: digits, shades or both. */
static void draw_depths(const struct scene *scene, const struct area *area, int column)
{
	const struct paint plain = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT };

	for (int depth = 0; depth < COLOUR_DEPTHS; depth++)
		brush_put(area, 0, column + depth,
			has_digits(scene) ? (wchar_t)(L'0' + depth) : L' ',
			scene_is_shaded(scene) ? colour_depth(depth) : plain);
}

/* False where there is no room. */
static bool draw_scale(const struct scene *scene, const struct area *area, const char *highest,
	const char *lowest)
{
	int start = width_of(highest) + 1, after = start + COLOUR_DEPTHS + 1;

	if (after + width_of(lowest) > area->columns)
		return false;
	draw_text(area, 0, 0, highest, LOOK_PLAIN);
	draw_depths(scene, area, start);
	draw_text(area, 0, after, lowest, LOOK_PLAIN);
	return true;
}

bool plan_levels_draw_scale(const struct scene *scene, const struct area *area)
{
	enum units units = plot_units(scene->editor->plot);
	struct text highest = TEXT_EMPTY, lowest = TEXT_EMPTY, below = TEXT_EMPTY;
	bool is_drawn;

	if (scene->range.least == scene->range.most ||
	    !(scene_is_shaded(scene) || has_digits(scene)))
		return false;
	show_inches(&highest, scene->range.least, units);
	show_inches(&lowest, scene->range.most, units);
	text_print(&below, "%s below the string", lowest.bytes);
	is_drawn = draw_scale(scene, area, highest.bytes, below.bytes) ||
		draw_scale(scene, area, highest.bytes, lowest.bytes);
	text_fini(&highest);
	text_fini(&lowest);
	text_fini(&below);
	return is_drawn;
}
