#include "screen/plan.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "screen/marks.h"

enum { DOT_EVERY = 5 };

/* Open ground is blank, but for dots like those of dotted paper. */
static char letter_shown(char letter, int x, int y)
{
	if (letter != OPEN_GROUND)
		return letter;
	return x % DOT_EVERY == 0 && y % DOT_EVERY == 0 ? '.' : ' ';
}

static void draw_cell(const struct editor *editor, const struct mirror *mirror,
	const struct area *plan, struct place at, int column, int row)
{
	char letter = ground_cell(&editor->plot.ground, at.x, at.y);
	enum look look = LOOK_BED + plot_class_of(&editor->plot, letter);

	draw_character(plan, row, column, letter_shown(letter, at.x, at.y), look);
	draw_character(plan, row, column + 1,
		mark_sign(mark_at(editor, mirror, at.x, at.y)), look);
}

_Static_assert((int)LOOK_OPEN - (int)LOOK_BED == CLASS_OPEN, "looks follow the classes");

/* Where the plan ends, if there is room to show it. */
static void draw_end(const struct area *plan, struct place cells)
{
	int columns = cells.x * CELL_COLUMNS;

	if (columns < plan->columns)
		mvvline_set(plan->row, plan->column + columns, WACS_VLINE, cells.y);
	if (cells.y < plan->rows)
		mvhline_set(plan->row + cells.y, plan->column, WACS_HLINE, columns);
	if (columns < plan->columns && cells.y < plan->rows)
		mvadd_wch(plan->row + cells.y, plan->column + columns, WACS_LRCORNER);
}

void plan_draw(const struct editor *editor, const struct layout *layout, struct place first)
{
	struct mirror mirror = mirror_of(&editor->plot);
	struct place cells = view_cells(first, &layout->plan, &editor->plot.ground);

	for (int y = 0; y < cells.y; y++)
		for (int x = 0; x < cells.x; x++)
			draw_cell(editor, &mirror, &layout->plan,
				(struct place){ first.x + x, first.y + y }, x * CELL_COLUMNS, y);
	draw_end(&layout->plan, cells);
}

void plan_point(const struct editor *editor, const struct layout *layout, struct place first)
{
	move(layout->plan.row + editor->cursor.y - first.y,
		layout->plan.column + (editor->cursor.x - first.x) * CELL_COLUMNS);
}
