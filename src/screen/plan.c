#include "screen/plan.h"
#include "editor/marks.h"
#include "screen/borders.h"
#include "screen/caption.h"
#include "screen/hatch.h"
#include "screen/plan_far.h"
#include "screen/plan_levels.h"
#include "screen/plan_light.h"
#include "screen/plan_names.h"
#include "screen/plan_plants.h"

enum { DOT_EVERY = 5 };

/* ---- What stands in a cell ------------------------------------------------------------------- */

static void draw_blank(const struct area *plan, struct place to, enum border below,
	struct paint paint)
{
	if (below == BORDER_NONE)
		brush_put(plan, to.y, to.x, L' ', paint);
	else
		borders_foot(plan, to.y, to.x, below, paint);
}

/* Whether the letter has to stand there although a line would run through it: without colours,
 * where something covers the cell, and where its ground is one row high. */
static bool is_on_line(const struct scene *scene, struct place cell)
{
	return scene->level == COLOUR_NONE || scene_is_covered(scene, cell.x, cell.y) ||
		scene_letter(scene, cell.x, cell.y - 1) != scene_letter(scene, cell.x, cell.y);
}

/* The cell's letter or what is there instead; open ground is blank, but for dots like those of
 * dotted paper. What sun it has goes before all, where colours do not say it. */
static void draw_inside(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell, enum border below, struct paint paint)
{
	char letter = scene_letter(scene, cell.x, cell.y);
	bool is_dot = letter == OPEN_GROUND && cell.x % DOT_EVERY == 0 && cell.y % DOT_EVERY == 0;
	bool is_letter = letter != OPEN_GROUND && scene_is_lettered(scene, cell.x, cell.y) &&
		(below == BORDER_NONE || is_on_line(scene, cell));
	const cchar_t *sign = hatch_sign(scene, letter, cell.x, cell.y);
	char light = scene->level == COLOUR_FINE ? '\0' :
		scene_light(scene, (struct rectangle){ cell.x, cell.y, cell.x, cell.y });

	if (borders_has_foot(below) || !(is_dot || is_letter || sign || light)) {
		draw_blank(plan, to, below, paint);
		return;
	}
	borders_below(&paint, below);
	if (is_dot || is_letter || light)
		brush_put(plan, to.y, to.x, (wchar_t)(light ? light : letter), paint);
	else
		brush_sign(plan, to.y, to.x, sign, paint);
}

/* The rest of a cell that has more characters than one: closed patterns go on. */
static void draw_rest(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell, enum border below, struct paint paint)
{
	char letter = scene_letter(scene, cell.x, cell.y);
	const cchar_t *sign = hatch_is_closed(scene, letter) ?
		hatch_sign(scene, letter, cell.x, cell.y) : NULL;

	if (borders_has_foot(below) || !sign) {
		draw_blank(plan, to, below, paint);
		return;
	}
	borders_below(&paint, below);
	brush_sign(plan, to.y, to.x, sign, paint);
}

/* A level axis between two rows is dashes below the upper one. */
static void draw_mark(const struct scene *scene, const struct area *plan, struct place to,
	enum mark mark, struct paint paint)
{
	struct sign sign = mark_sign(mark);

	if (mark == MARK_LEVEL && scene->mirror.down % 2 == 0)
		borders_foot(plan, to.y, to.x, BORDER_WALL, paint);
	else
		brush_put(plan, to.y, to.x,
			brush_has_unicode() ? (wchar_t)sign.code : (wchar_t)sign.plain, paint);
}

/* ---- Cells of each size ---------------------------------------------------------------------- */

/* The line below a cell; what covers the cell covers that too. */
static enum border line_below(const struct scene *scene, struct place cell)
{
	return scene_is_covered(scene, cell.x, cell.y) ? BORDER_NONE :
		scene_below(scene, cell.x, cell.y);
}

static void draw_two_columns(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell)
{
	enum border right = scene_right(scene, cell.x, cell.y), below = line_below(scene, cell);
	enum mark mark = mark_at(scene->editor, &scene->mirror, cell.x, cell.y);
	struct paint paint = scene_paint(scene, cell.x, cell.y);
	struct place beside = { to.x + 1, to.y };
	wchar_t sign = scene_sign(scene, cell.x, cell.y);

	draw_inside(scene, plan, to, cell, below, paint);
	if (mark != MARK_NONE)
		draw_mark(scene, plan, beside, mark, paint);
	else if (right != BORDER_NONE)
		borders_upright(plan, beside.y, beside.x, right, paint);
	else if (sign && !borders_has_foot(below))
		brush_put(plan, beside.y, beside.x, sign, paint);
	else
		draw_rest(scene, plan, beside, cell, below, paint);
}

/* A fence or a service in the letter's place; false where there is none. */
static bool draw_line(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell, struct paint paint)
{
	enum border right = scene_right(scene, cell.x, cell.y);
	enum border below = scene_below(scene, cell.x, cell.y);

	if (right == BORDER_FENCE && below == BORDER_FENCE)
		borders_fences(plan, to.y, to.x, true, true, paint);
	else if (right > BORDER_WALL)
		borders_upright(plan, to.y, to.x, right, paint);
	else if (borders_has_foot(below))
		borders_foot(plan, to.y, to.x, below, paint);
	else
		return false;
	return true;
}

/* A peg, fences and services take the letter's place, other marks and signs that of open ground;
 * colours alone tell beds. */
static void draw_one_column(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell)
{
	enum mark mark = mark_at(scene->editor, &scene->mirror, cell.x, cell.y);
	struct paint paint = scene_paint(scene, cell.x, cell.y);
	bool is_open = scene_letter(scene, cell.x, cell.y) == OPEN_GROUND;
	enum border below = line_below(scene, cell);
	wchar_t sign = is_open ? scene_sign(scene, cell.x, cell.y) : L'\0';

	if (mark == MARK_PEG || (is_open && mark != MARK_NONE)) {
		draw_mark(scene, plan, to, mark, paint);
		return;
	}
	if (!scene_is_covered(scene, cell.x, cell.y) && draw_line(scene, plan, to, cell, paint))
		return;
	if (sign) {
		brush_put(plan, to.y, to.x, sign, paint);
		return;
	}
	draw_inside(scene, plan, to, cell, below == BORDER_FENCE ? below : BORDER_NONE, paint);
}

/* Beside the letter, but for an axis between two cells, which is where lines are. */
static struct place mark_place(const struct scene *scene, struct place to, enum mark mark)
{
	bool is_right = mark == MARK_UPRIGHT && scene->mirror.across % 2 == 0;
	bool is_below = mark == MARK_LEVEL && scene->mirror.down % 2 == 0;

	return (struct place){ to.x + (is_right ? 3 : 1), to.y + is_below };
}

/* Four columns and two rows, with lines in the last of each. */
static void draw_near(const struct scene *scene, const struct area *plan, struct place to,
	struct place cell)
{
	enum border right = scene_right(scene, cell.x, cell.y), below = line_below(scene, cell);
	enum mark mark = mark_at(scene->editor, &scene->mirror, cell.x, cell.y);
	struct paint paint = scene_paint(scene, cell.x, cell.y);
	wchar_t sign = scene_sign(scene, cell.x, cell.y);

	for (int row = 0; row < 2; row++)
		for (int column = 0; column < 4; column++)
			draw_rest(scene, plan, (struct place){ to.x + column, to.y + row }, cell,
				row == 1 ? below : BORDER_NONE, paint);
	draw_inside(scene, plan, to, cell, BORDER_NONE, paint);
	for (int row = 0; row < 2 && right != BORDER_NONE; row++)
		borders_upright(plan, to.y + row, to.x + 3, right, paint);
	if (sign)
		brush_put(plan, to.y, to.x + 1, sign, paint);
	if (mark != MARK_NONE)
		draw_mark(scene, plan, mark_place(scene, to, mark), mark, paint);
}

/* ---- The plan -------------------------------------------------------------------------------- */

/* Where the plan ends, if that is in view and there is room to show it: so many characters of it
 * are; and below that a caption. */
static void draw_end(const struct scene *scene, const struct area *plan, struct place blocks)
{
	const struct editor *editor = scene->editor;
	const struct grain *grain = view_grain(&editor->view);
	const struct ground *ground = &editor->plot->ground;
	struct rectangle last = view_block(&editor->view, ground,
		(struct place){ blocks.x - 1, blocks.y - 1 });
	int rows = blocks.y * grain->rows, columns = blocks.x * grain->columns;
	bool has_right = last.right == ground->columns - 1 && columns < plan->columns;
	bool has_bottom = last.bottom == ground->rows - 1 && rows < plan->rows;

	if (has_right)
		mvvline_set(plan->row, plan->column + columns, WACS_VLINE, rows);
	if (has_bottom)
		mvhline_set(plan->row + rows, plan->column, WACS_HLINE, columns);
	if (has_right && has_bottom)
		mvadd_wch(plan->row + rows, plan->column + columns, WACS_LRCORNER);
	if (has_bottom && rows + 1 < plan->rows)
		caption_draw(scene, &(struct area){ plan->row + rows + 1, plan->column,
			plan->rows - rows - 1, plan->columns });
}

static void draw_cells(const struct scene *scene, const struct area *plan, struct place blocks)
{
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);

	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++) {
			struct place cell = { view->first.x + x, view->first.y + y };
			struct place to = { x * grain->columns, y * grain->rows };

			if (grain->columns == 1)
				draw_one_column(scene, plan, to, cell);
			else if (grain->columns == 2)
				draw_two_columns(scene, plan, to, cell);
			else
				draw_near(scene, plan, to, cell);
		}
	/* Names, plants and figures would run into each other. */
	if (scene->levels) {
		plan_levels_draw_points(scene, plan, blocks);
		return;
	}
	plan_plants_draw(scene, plan, blocks);
	if (scene->level == COLOUR_FINE || !light_is_there(&scene->light))
		plan_names_draw(scene, plan, blocks);
}

void plan_draw(const struct editor *editor, const struct layout *layout)
{
	struct place blocks = view_blocks(&editor->view, &editor->plot->ground);
	struct scene scene = scene_of(editor);

	if (view_grain(&editor->view)->down == 1)
		draw_cells(&scene, &layout->plan, blocks);
	else if (scene.levels || light_is_there(&scene.light))
		plan_far_draw_layer(&scene, &layout->plan, blocks);
	else
		plan_far_draw(&scene, &layout->plan, blocks);
	draw_end(&scene, &layout->plan, blocks);
}

void plan_point(const struct editor *editor, const struct layout *layout)
{
	struct place at = view_character(&editor->view, editor->cursor);

	move(layout->plan.row + at.y, layout->plan.column + at.x);
}
