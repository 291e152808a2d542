#include "screen/ruler.h"
#include "base/show.h"
#include "screen/draw.h"
#include "editor/marks.h"
#include "screen/bracket.h"

enum { LABEL_ROWS = 5, LABEL_COLUMNS = 10 };

static void cell_words(const struct editor *editor, int cell, struct text *words)
{
	text_clear(words);
	show_short(words, cell * plot_cell(editor->plot), plot_units(editor->plot));
}

/* Leaves out labels that would reach beyond the ruler, into the last one, or over what is taken. */
static void draw_across(const struct editor *editor, const struct area *ruler, int blocks,
	const struct bracket *taken)
{
	const struct grain *grain = view_grain(&editor->view);
	int step = grain->across * LABEL_COLUMNS / grain->columns, end = 0;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < blocks; i++) {
		int cell = editor->view.first.x + i * grain->across;
		int column = i * grain->columns, after;

		if (cell % step != 0)
			continue;
		cell_words(editor, cell, &words);
		after = column + (int)words.length;
		if (after > ruler->columns || column < end ||
		    (taken->last >= column && taken->first < after))
			continue;
		draw_text(ruler, 0, column, words.bytes, LOOK_PLAIN);
		end = after + 1;
	}
	text_fini(&words);
}

/* The cursor's mark alone leaves room for labels narrower than the ruler. */
static void draw_down(const struct editor *editor, const struct area *ruler, int blocks,
	const struct bracket *taken)
{
	const struct grain *grain = view_grain(&editor->view);
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < blocks; i++) {
		int cell = editor->view.first.y + i * grain->down;
		bool is_taken = i >= taken->first && i <= taken->last;

		if (cell % (grain->down * LABEL_ROWS) != 0 || (is_taken && taken->length))
			continue;
		cell_words(editor, cell, &words);
		if ((int)words.length <= ruler->columns - is_taken)
			draw_text(ruler, i, 0, words.bytes, LOOK_PLAIN);
	}
	text_fini(&words);
}

/* Fence and gates on the plan's upper and left edges: as the marks of cells that lay beyond
 * them. */
static void draw_edge_fences(const struct editor *editor, const struct layout *layout,
	struct place blocks)
{
	const struct grain *grain = view_grain(&editor->view);
	struct place first = editor->view.first;

	for (int i = 0; first.y == 0 && i < blocks.x; i++) {
		int x = first.x + i * grain->across;
		int sides = fence_map_among(&editor->fences,
			(struct rectangle){ x, -1, x + grain->across - 1, -1 });

		draw_character(&layout->ruler, 0, (i + 1) * grain->columns - 1,
			mark_sign(mark_fence(sides & (FENCE_BELOW | GATE_BELOW))), LOOK_PLAIN);
	}
	for (int i = 0; first.x == 0 && i < blocks.y; i++) {
		int y = first.y + i * grain->down;
		int sides = fence_map_among(&editor->fences,
			(struct rectangle){ -1, y, -1, y + grain->down - 1 });

		draw_character(&layout->side_ruler, i, layout->side_ruler.columns - 1,
			mark_sign(mark_fence(sides & (FENCE_RIGHT | GATE_RIGHT))), LOOK_PLAIN);
	}
}

void ruler_draw(const struct editor *editor, const struct layout *layout)
{
	struct place blocks = view_blocks(&editor->view, &editor->plot->ground);
	struct place mark = view_character(&editor->view, editor->cursor);
	struct measure measure = measure_of(editor);
	struct bracket across = { .first = mark.x, .last = mark.x };
	struct bracket down = { .first = mark.y, .last = mark.y };

	draw_edge_fences(editor, layout, blocks);
	if (measure.is_shown) {
		across = measure_draw_across(editor, &layout->ruler, &measure.across, mark.x);
		measure_draw_down(editor, &layout->side_ruler, &measure.down, mark.y);
		down = measure.down;
	}
	draw_across(editor, &layout->ruler, blocks.x, &across);
	draw_down(editor, &layout->side_ruler, blocks.y, &down);
	draw_character(&layout->ruler, 0, mark.x, 'v', LOOK_PLAIN);
	draw_character(&layout->side_ruler, mark.y, layout->side_ruler.columns - 1, '>',
		LOOK_PLAIN);
}
