#include "screen/plan_names.h"
#include "editor/marks.h"
#include "screen/borders.h"

#include <stdio.h>
#include <string.h>

enum { LABEL_MOST = REGION_NAME_MOST + 1 + NAME_MOST + 1 };

static bool is_ascii(const char *text)
{
	for (; *text; text++)
		if ((unsigned char)*text >= 128)
			return false;
	return true;
}

/* Its own name, else that of its entry; of one character at least; 0 where there is no room. */
static int label_of(const struct survey *survey, int index, int room, char label[LABEL_MOST])
{
	const struct region *region = &survey->regions[index];
	const char *own = survey_own_name(survey, index), *name = own ? own : region->entry->name;
	char id[REGION_NAME_MOST];

	survey_region_name(region, id);
	if ((int)strlen(id) > room)
		return 0;
	if (is_ascii(name) && (int)(strlen(id) + 1 + strlen(name)) <= room)
		return snprintf(label, LABEL_MOST, "%s %s", id, name);
	return snprintf(label, LABEL_MOST, "%s", id);
}

static bool is_mark_in_the_way(enum mark mark)
{
	return mark == MARK_PEG || mark == MARK_IMAGE || mark == MARK_SNAG || mark == MARK_FAULT;
}

/* Whether nothing is to be seen on the cells but an axis, which is seen elsewhere too. */
static bool is_free(const struct scene *scene, struct place first, int count)
{
	const struct editor *editor = scene->editor;

	for (int x = first.x; x < first.x + count; x++)
		if (is_mark_in_the_way(mark_at(editor, &scene->mirror, x, first.y)) ||
		    scene_right(scene, x, first.y) == BORDER_FENCE ||
		    scene_below(scene, x, first.y) == BORDER_FENCE)
			return false;
	return true;
}

/* One character of a label, on the ground it is on. */
static void draw_letter(const struct scene *scene, const struct area *plan, struct place cell,
	int column, char letter)
{
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);
	int x = cell.x + column / grain->columns;
	int row = (cell.y - view->first.y) * grain->rows;
	bool is_covered = scene_is_covered(scene, x, cell.y);
	struct paint paint = scene_paint(scene, x, cell.y);

	column += (cell.x - view->first.x) * grain->columns;
	paint.is_bold = scene->level == COLOUR_NONE;
	if (grain->rows == 1)
		borders_below(&paint, scene_below(scene, x, cell.y));
	if (column >= 0 && column < plan->columns && !is_covered)
		brush_put(plan, row, column, (wchar_t)(unsigned char)letter, paint);
}

/* In the middle of the run, with blanks around where there is room for them. */
static void draw_name(const struct scene *scene, const struct area *plan,
	int region, const struct middle *middle)
{
	const struct survey *survey = &scene->editor->takeoff.survey;
	const struct grain *grain = view_grain(&scene->editor->view);
	char label[LABEL_MOST];
	int room = middle->length * grain->columns - 1;
	int length = label_of(survey, region, room, label);
	int start = (room - length) / 2, first = start / grain->columns;
	int last = (start + length - 1) / grain->columns;

	if (length == 0 || !is_free(scene, (struct place){ middle->first.x + first,
		middle->first.y }, last - first + 1))
		return;
	for (int i = 0; i < length; i++)
		draw_letter(scene, plan, middle->first, start + i, label[i]);
	if (grain->columns > 1 && start > 0)
		draw_letter(scene, plan, middle->first, start - 1, ' ');
	if (grain->columns > 1 && start + length < room)
		draw_letter(scene, plan, middle->first, start + length, ' ');
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
