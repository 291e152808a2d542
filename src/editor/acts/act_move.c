#include "editor/acts/acts.h"
#include "base/show.h"

static int held(int at, int count)
{
	return at < 0 ? 0 : at >= count ? count - 1 : at;
}

/* Goes to the cell, or as near as the plan reaches; a trail is laid on the way. */
static void go(struct editor *editor, int x, int y)
{
	const struct ground *ground = &editor->plot.ground;
	struct place from = editor->cursor;

	editor->cursor = (struct place){ held(x, ground->columns), held(y, ground->rows) };
	if (editor->is_trailing)
		act_lay_way(editor, from, editor->cursor);
}

void act_arrow(struct editor *editor, int key)
{
	int step = editor->step;
	int across = key == PRESS_LEFT ? -step : key == PRESS_RIGHT ? step : 0;
	int down = key == PRESS_UP ? -step : key == PRESS_DOWN ? step : 0;

	go(editor, editor->cursor.x + across, editor->cursor.y + down);
}

void act_edge(struct editor *editor, int key)
{
	struct place at = editor->cursor;

	if (key == PRESS_HOME || key == PRESS_END)
		at.x = key == PRESS_HOME ? 0 : editor->plot.ground.columns - 1;
	else
		at.y = key == PRESS_PAGE_UP ? 0 : editor->plot.ground.rows - 1;
	go(editor, at.x, at.y);
}

void act_step(struct editor *editor, int key)
{
	editor->step = key == '0' ? STEP_MOST : key - '0';
	editor_say(editor, "%d %s a step.", editor->step, editor->step == 1 ? "cell" : "cells");
}

enum { ACROSS, DOWN, PLACE_FIELDS };

static const struct value_rule reach = { .kind = VALUE_LENGTH, .least = 0, .most = LENGTH_MOST };

/* The cell that holds a distance from the plan's edge; its far edge is the last cell's. */
static bool cell_at(const struct editor *editor, int cells, nm distance, int *at)
{
	nm cell = plot_cell(&editor->plot);

	if (distance > cells * cell)
		return false;
	*at = held((int)(distance / cell), cells);
	return true;
}

static bool beyond(const struct editor *editor, int field, int cells, struct fault *fault)
{
	struct text size = TEXT_EMPTY;

	show_length(&size, cells * plot_cell(&editor->plot), plot_units(&editor->plot));
	fault_set(fault, field, "%s: beyond the plan, which is %s %s",
		field == ACROSS ? "Across" : "Down", size.bytes, field == ACROSS ? "wide" : "deep");
	text_fini(&size);
	return false;
}

static bool place_accept(struct sheet *sheet, struct fault *fault)
{
	struct editor *editor = sheet->owner;
	const struct ground *ground = &editor->plot.ground;
	struct value across, down;
	struct place at;

	if (!sheet_read(sheet, ACROSS, &across, fault) || !sheet_read(sheet, DOWN, &down, fault))
		return false;
	if (!cell_at(editor, ground->columns, across.as.length, &at.x))
		return beyond(editor, ACROSS, ground->columns, fault);
	if (!cell_at(editor, ground->rows, down.as.length, &at.y))
		return beyond(editor, DOWN, ground->rows, fault);
	editor->cursor = at;
	return true;
}

void act_place(struct editor *editor, int key)
{
	const char *const labels[PLACE_FIELDS] = { "Across from the left", "Down from the top" };
	const int cells[PLACE_FIELDS] = { editor->cursor.x, editor->cursor.y };
	struct sheet sheet;

	(void)key;
	sheet_init(&sheet, PLACE_FIELDS);
	sheet.title = "Go to a place";
	sheet.done = "go there";
	sheet.units = plot_units(&editor->plot);
	sheet.accept = place_accept;
	sheet.owner = editor;
	for (int i = 0; i < PLACE_FIELDS; i++) {
		struct value at = { .set = true, .as.length = cells[i] * plot_cell(&editor->plot) };

		sheet.fields[i].label = labels[i];
		sheet.fields[i].rule = &reach;
		sheet.fields[i].required = true;
		sheet.fields[i].is_far = true;
		sheet_type_value(&sheet, i, &at);
	}
	editor->asker->fill(editor->asker, &sheet);
	sheet_fini(&sheet);
}
