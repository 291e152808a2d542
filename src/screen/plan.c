#include "screen/plan.h"
#include "screen/curses.h"
#include "screen/draw.h"
#include "editor/marks.h"

enum { DOT_EVERY = 5 };

/* Open ground is blank, but for dots like those of dotted paper. */
static char letter_shown(char letter, int x, int y)
{
	if (letter != OPEN_GROUND)
		return letter;
	return x % DOT_EVERY == 0 && y % DOT_EVERY == 0 ? '.' : ' ';
}

static bool is_pegged_in(const struct editor *editor, const struct grain *grain, struct place first)
{
	struct place pegs[PEGS_MOST] = { { 0, 0 } };
	int count = mark_pegs(editor, pegs);

	for (int i = 0; i < count; i++)
		if (pegs[i].x >= first.x && pegs[i].x < first.x + grain->across &&
		    pegs[i].y >= first.y && pegs[i].y < first.y + grain->down)
			return true;
	return false;
}

/* In one column a peg is shown before the letter, and other marks only on open ground. */
static char single_sign(const struct editor *editor, const struct mirror *mirror,
	struct place first, char letter)
{
	const struct grain *grain = view_grain(&editor->view);
	enum mark mark = MARK_NONE;

	if (is_pegged_in(editor, grain, first))
		return mark_sign(MARK_PEG);
	if (letter == OPEN_GROUND)
		mark = grain->down == 1 ? mark_at(editor, mirror, first.x, first.y) :
			mark_fence(fence_map_among(&editor->fences, (struct rectangle){ first.x,
				first.y, first.x + grain->across - 1, first.y + grain->down - 1 }));
	if (mark != MARK_NONE)
		return mark_sign(mark);
	return letter_shown(letter, first.x / grain->across, first.y / grain->down);
}

static void draw_block(const struct editor *editor, const struct mirror *mirror,
	const struct area *plan, struct place first)
{
	struct place to = view_character(&editor->view, first);
	char letter = view_letter(&editor->view, &editor->plot->ground, first);
	enum look look = LOOK_BED + plot_class_of(editor->plot, letter);

	if (view_grain(&editor->view)->columns == 1) {
		draw_character(plan, to.y, to.x, single_sign(editor, mirror, first, letter), look);
		return;
	}
	draw_character(plan, to.y, to.x, letter_shown(letter, first.x, first.y), look);
	draw_character(plan, to.y, to.x + 1, mark_sign(mark_at(editor, mirror, first.x, first.y)),
		look);
}

_Static_assert((int)LOOK_OPEN - (int)LOOK_BED == CLASS_OPEN, "looks follow the classes");

/* Where the plan ends, if there is room to show it. */
static void draw_end(const struct area *plan, int rows, int columns)
{
	if (columns < plan->columns)
		mvvline_set(plan->row, plan->column + columns, WACS_VLINE, rows);
	if (rows < plan->rows)
		mvhline_set(plan->row + rows, plan->column, WACS_HLINE, columns);
	if (columns < plan->columns && rows < plan->rows)
		mvadd_wch(plan->row + rows, plan->column + columns, WACS_LRCORNER);
}

void plan_draw(const struct editor *editor, const struct layout *layout)
{
	const struct view *view = &editor->view;
	const struct grain *grain = view_grain(view);
	struct mirror mirror = mirror_of(editor->plot);
	struct place blocks = view_blocks(view, &editor->plot->ground);

	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++)
			draw_block(editor, &mirror, &layout->plan,
				(struct place){ view->first.x + x * grain->across,
					view->first.y + y * grain->down });
	draw_end(&layout->plan, blocks.y, blocks.x * grain->columns);
}

void plan_point(const struct editor *editor, const struct layout *layout)
{
	struct place at = view_character(&editor->view, editor->cursor);

	move(layout->plan.row + at.y, layout->plan.column + at.x);
}
