#include "screen/aside.h"
#include "base/number.h"

static void take_in(struct rectangle *cells, struct place cell)
{
	cells->left = least(cells->left, cell.x);
	cells->top = least(cells->top, cell.y);
	cells->right = most(cells->right, cell.x);
	cells->bottom = most(cells->bottom, cell.y);
}

/* What is to be seen: the smallest rectangle that has it all. */
static struct rectangle worked_on(const struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground, *carried = &editor->carried.ground;
	struct place at = editor->cursor;
	struct rectangle cells = { at.x, at.y, at.x, at.y };

	if (editor->is_pegged)
		take_in(&cells, editor->peg);
	for (int i = 0; editor->is_pegged && i < editor->bend_count; i++)
		take_in(&cells, editor->bends[i]);
	if (editor->is_marked)
		take_in(&cells, (struct place){ least(at.x + carried->columns, ground->columns) - 1,
			least(at.y + carried->rows, ground->rows) - 1 });
	return cells;
}

struct view aside_view(const struct editor *editor, const struct layout *layout,
	const struct area *left)
{
	const struct area *plan = &layout->plan;
	struct view view = editor->view;

	view_clear(&view, &editor->plot->ground, worked_on(editor), editor->cursor,
		left->rows - plan->row, left->columns - plan->column);
	return view;
}
