#include "screen/plan_names.h"
#include "editor/marks.h"
#include "screen/borders.h"
#include "screen/width.h"

#include <stdio.h>
#include <string.h>

enum { LABEL_MOST = REGION_NAME_MOST + 1 + NAME_MOST + 1 };

/* ---- Where there is room --------------------------------------------------------------------- */

static bool is_mark_in_the_way(enum mark mark)
{
	return mark > MARK_NONE && mark < MARK_CENTRE;
}

/* Whether nothing is to be seen on the cells but an axis, which is seen elsewhere too, the cursor,
 * which goes on, and lines below them that may be hidden. */
static bool is_free(const struct scene *scene, struct place first, int count, enum border hidden)
{
	const struct editor *editor = scene->editor;
	bool has_lines = view_grain(&editor->view)->rows == 1; /* in the row of letters */

	if (scene_is_outlined(scene, (struct rectangle){ first.x, first.y, first.x + count - 1,
		first.y }))
		return false;
	for (int x = first.x; x < first.x + count; x++)
		if (is_mark_in_the_way(mark_at(editor, &scene->mirror, x, first.y)) ||
		    (has_lines && (scene_right(scene, x, first.y) > BORDER_WALL ||
		    scene_below(scene, x, first.y) > hidden)))
			return false;
	return true;
}

/* Columns of a run of cells that a label may have: the last one is for a line. */
static int room_of(const struct scene *scene, const struct middle *middle)
{
	return middle->length * view_grain(&scene->editor->view)->columns - 1;
}

static bool has_room(const struct scene *scene, const struct middle *middle, const char *label,
	enum border hidden)
{
	int cell = view_grain(&scene->editor->view)->columns, columns = width_of(label);
	int start = (room_of(scene, middle) - columns) / 2;
	int first = start / cell, last = (start + columns - 1) / cell;

	return columns <= room_of(scene, middle) && is_free(scene, (struct place){
		middle->first.x + first, middle->first.y }, last - first + 1, hidden);
}

static bool is_ascii(const char *text)
{
	for (; *text; text++)
		if ((unsigned char)*text >= 128)
			return false;
	return true;
}

/* A label in a wall's place is underlined if it is long. */
struct label {
	char text[LABEL_MOST];
	bool is_underlined;
};

/* The region's number, with its own name or that of its entry if that fits; false where there is no
 * room for either. */
static bool label_of(const struct scene *scene, int index, const struct middle *middle,
	struct label *label)
{
	const struct survey *survey = &scene->editor->takeoff.survey;
	const struct region *region = &survey->regions[index];
	const char *own = survey_own_name(survey, index), *name = own ? own : region->entry->name;
	char id[REGION_NAME_MOST];

	survey_region_name(region, id);
	snprintf(label->text, LABEL_MOST, "%s %s", id, name);
	label->is_underlined = brush_can_underline();
	if ((brush_has_unicode() || is_ascii(name)) && has_room(scene, middle, label->text,
		label->is_underlined ? BORDER_WALL : BORDER_NONE))
		return true;
	snprintf(label->text, LABEL_MOST, "%s", id);
	label->is_underlined = false;
	return has_room(scene, middle, label->text, BORDER_WALL);
}

/* ---- Drawing --------------------------------------------------------------------------------- */

/* Where so many columns of a label go, counted from a cell, and on what. */
struct slot {
	int row, column;
	struct paint paint;
	enum border below;
	bool is_seen;
};

static struct slot slot_of(const struct scene *scene, const struct area *plan, struct place cell,
	int column, int columns)
{
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);
	int x = cell.x + column / grain->columns;
	int last = cell.x + (column + columns - 1) / grain->columns;
	struct slot slot = { .row = (cell.y - view->first.y) * grain->rows,
		.column = (cell.x - view->first.x) * grain->columns + column,
		.paint = scene_paint(scene, x, cell.y),
		.below = grain->rows == 1 ? scene_below(scene, x, cell.y) : BORDER_NONE };

	slot.paint.is_bold = scene->level == COLOUR_NONE;
	slot.is_seen = slot.column >= 0 && slot.column + columns <= plan->columns &&
		!scene_is_covered(scene, x, cell.y) && !scene_is_covered(scene, last, cell.y);
	return slot;
}

/* What is between a label and the pattern around it; lines go on. */
static void draw_pad(const struct scene *scene, const struct area *plan, struct place cell,
	int column)
{
	struct slot slot = slot_of(scene, plan, cell, column, 1);

	if (!slot.is_seen || view_grain(&scene->editor->view)->columns == 1)
		return;
	if (slot.below == BORDER_NONE)
		brush_put(plan, slot.row, slot.column, L' ', slot.paint);
	else
		borders_foot(plan, slot.row, slot.column, slot.below, slot.paint);
}

/* In the middle of the run. */
static void draw_name(const struct scene *scene, const struct area *plan, int region,
	const struct middle *middle)
{
	int room = room_of(scene, middle), column;
	struct label label;

	if (!label_of(scene, region, middle, &label))
		return;
	column = (room - width_of(label.text)) / 2;
	if (column > 0)
		draw_pad(scene, plan, middle->first, column - 1);
	for (const char *at = label.text; *at;) {
		int columns;
		size_t taken = width_cluster(at, strlen(at), &columns);
		struct slot slot = slot_of(scene, plan, middle->first, column, columns);

		slot.paint.is_underlined = label.is_underlined && slot.below != BORDER_NONE;
		if (slot.is_seen)
			brush_cluster(plan, slot.row, slot.column, at, taken, slot.paint);
		column += columns;
		at += taken;
	}
	if (column < room)
		draw_pad(scene, plan, middle->first, column);
}

void plan_names_draw(const struct scene *scene, const struct area *plan, struct place blocks)
{
	const struct editor *editor = scene->editor;
	const struct survey *survey = &editor->takeoff.survey;
	int top = editor->view.first.y;

	if (editor->is_stale)
		return;
	for (int y = top; y < top + blocks.y; y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];
			const struct middle *middle = run->region == NO_REGION ? NULL :
				&editor->middles[run->region];

			if (middle && middle->first.y == y && middle->first.x == run->left)
				draw_name(scene, plan, run->region, middle);
		}
}
