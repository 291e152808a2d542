#include "screen/caption.h"
#include "screen/borders.h"
#include "screen/draw.h"
#include "screen/ruler.h"
#include "screen/width.h"

enum { SCALE_COLUMNS = 10, GAP = 3, WAYS = 8 };

static const int64_t turn = INT64_C(360000000), eighth = INT64_C(45000000);

int caption_north(int64_t bearing)
{
	return (int)((turn - bearing + eighth / 2) / eighth % WAYS);
}

/* Returns the column after it. */
static int draw_scale(const struct editor *editor, const struct area *plan, int row)
{
	const struct grain *grain = view_grain(&editor->view);
	const struct paint plain = { .ink = COLOUR_DEFAULT, .ground = COLOUR_DEFAULT };
	nm step = ruler_step(editor, grain->columns, grain->across, SCALE_COLUMNS);
	int last = (int)(step * grain->columns / (grain->across * plot_cell(editor->plot))) - 1;
	struct text words = TEXT_EMPTY;
	int column = 0;

	ruler_words(editor, step, &words);
	if (last + 2 + (int)words.length <= plan->columns) {
		for (int i = 1; i < last; i++)
			brush_sign(plan, row, i, WACS_HLINE, plain);
		brush_sign(plan, row, 0, WACS_LTEE, plain);
		brush_sign(plan, row, last, WACS_RTEE, plain);
		column = draw_text(plan, row, last + 2, words.bytes, LOOK_PLAIN) + GAP;
	}
	text_fini(&words);
	return column;
}

static int draw_north(const struct value *north, const struct area *plan, int row, int column)
{
	static const char *const ways[WAYS] = { "up", "up right", "right", "down right", "down",
		"down left", "left", "up left" };
	static const char *const arrows[WAYS] = { "\u2191", "\u2197", "\u2192", "\u2198", "\u2193",
		"\u2199", "\u2190", "\u2196" };
	const char *const *words = brush_has_unicode() ? arrows : ways;

	column = draw_text(plan, row, column, "north ", LOOK_PLAIN);
	return draw_text(plan, row, column, words[caption_north(north->as.number)], LOOK_PLAIN) +
		GAP;
}

void caption_draw(const struct editor *editor, const struct area *plan, int row)
{
	const struct block *head = &editor->plot->details.head;
	const struct value *title = block_value(head, HEAD_TITLE);
	const struct value *north = block_value(head, HEAD_NORTH);
	int column = draw_scale(editor, plan, row);

	if (north->set)
		column = draw_north(north, plan, row, column);
	if (title->set && column < plan->columns)
		draw_bytes(plan, row, column, title->as.text,
			width_cut(title->as.text, plan->columns - column), LOOK_STRONG);
}
