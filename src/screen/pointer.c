#include "screen/pointer.h"
#include "editor/acts/acts.h"
#include "editor/acts/shared.h"

bool area_holds(const struct area *area, const struct point *point)
{
	return point->row >= area->row && point->row < area->row + area->rows &&
		point->column >= area->column && point->column < area->column + area->columns;
}

/* The cell pointed at; the cursor's own where its block is. False off the plan. */
static bool cell_of(const struct editor *editor, const struct layout *layout,
	const struct point *point, struct place *cell)
{
	const struct view *view = &editor->view;
	const struct place at = { point->column - layout->plan.column,
		point->row - layout->plan.row };
	struct place cursor = view_character(view, editor->cursor);
	const struct grain *grain = view_grain(view);

	if (!area_holds(&layout->plan, point) ||
	    !view_cell(view, &editor->plot->ground, at, cell))
		return false;
	if (at.y / grain->rows == cursor.y / grain->rows &&
	    at.x / grain->columns == cursor.x / grain->columns)
		*cell = editor->cursor;
	return true;
}

static bool is_cursor(const struct editor *editor, struct place cell)
{
	return cell.x == editor->cursor.x && cell.y == editor->cursor.y;
}

static void press_on(struct editor *editor, struct place cell)
{
	text_clear(&editor->message);
	editor_end_drag(editor);
	editor->drag = is_cursor(editor, cell) ? DRAG_STILL : DRAG_MOVED;
	if (editor->is_trailing) {
		editor->drag = DRAG_AWAY;
		act_lay_way(editor, cell, cell);
	}
	editor->cursor = cell;
}

static void drag_to(struct editor *editor, struct place cell)
{
	if (editor->drag == DRAG_NONE || is_cursor(editor, cell))
		return;
	if (editor->is_trailing)
		act_lay_way(editor, editor->cursor, cell);
	else if (!editor->is_pegged && !editor->is_marked)
		acts_do(editor, ACT_PEG);
	if (editor->is_pegged)
		text_clear(&editor->message); /* the rectangle's size is what matters now */
	editor->drag = DRAG_AWAY;
	editor->cursor = cell;
}

static void release(struct editor *editor)
{
	enum drag drag = editor->drag;

	editor_end_drag(editor);
	if (drag == DRAG_STILL)
		acts_do(editor, editor->is_pegged ? ACT_PEG : ACT_LAY);
	else if (drag == DRAG_AWAY && editor->is_pegged)
		acts_do(editor, ACT_PEG);
}

static void plan_take(struct editor *editor, enum point_kind kind, struct place cell)
{
	switch (kind) {
	case POINT_PRESS:
		press_on(editor, cell);
		break;
	case POINT_DRAG:
	case POINT_RELEASE:
		drag_to(editor, cell);
		break;
	case POINT_WHEEL_UP:
		acts_press(editor, PRESS_VIEW_UP);
		break;
	case POINT_WHEEL_DOWN:
		acts_press(editor, PRESS_VIEW_DOWN);
		break;
	}
}

void pointer_take(struct editor *editor, const struct layout *layout, const struct point *point)
{
	bool is_on_panel = area_holds(&layout->panel, point);
	struct place cell;

	if (cell_of(editor, layout, point, &cell))
		plan_take(editor, point->kind, cell);
	else if (editor->drag == DRAG_STILL)
		editor->drag = DRAG_NONE; /* let go elsewhere: nothing is meant */
	else if (is_on_panel && point->kind == POINT_PRESS && point->row == layout->panel.row)
		acts_do(editor, ACT_PAGES);
	else if (is_on_panel && point->kind == POINT_WHEEL_UP)
		acts_do(editor, ACT_BACK);
	else if (is_on_panel && point->kind == POINT_WHEEL_DOWN)
		acts_do(editor, ACT_FURTHER);
	if (point->kind == POINT_RELEASE)
		release(editor);
}
