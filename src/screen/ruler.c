#include "screen/ruler.h"
#include "screen/draw.h"

enum { LABEL_EVERY = 5, METRE_PLACES = 3 };

void ruler_words(struct text *out, nm length, enum units units)
{
	nm feet = length / NM_PER_FOOT, rest = length % NM_PER_FOOT;

	if (units == UNITS_METRIC) {
		text_add_decimal(out, (length + NM_PER_MM / 2) / NM_PER_MM, METRE_PLACES);
		return;
	}
	if (feet || !rest)
		text_print(out, "%lld'", (long long)feet);
	if (rest) {
		text_add_decimal(out, rest * 100 / NM_PER_INCH, 2);
		text_add(out, "\"");
	}
}

/* Draws a label, unless it runs over the ruler's end or the cursor's mark stands in it. */
static void label(const struct area *area, int row, int column, const struct text *words, int mark)
{
	int end = column + (int)words->length;

	if (end <= area->columns && (mark < column || mark >= end))
		draw_text(area, row, column, words->bytes, LOOK_PLAIN);
}

static void draw_across(const struct editor *editor, const struct area *ruler, struct place first,
	int cells)
{
	int mark = (editor->cursor.x - first.x) * CELL_COLUMNS;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < cells; i++) {
		if ((first.x + i) % LABEL_EVERY != 0)
			continue;
		text_clear(&words);
		ruler_words(&words, (first.x + i) * plot_cell(&editor->plot),
			plot_units(&editor->plot));
		label(ruler, 0, i * CELL_COLUMNS, &words, mark);
	}
	text_fini(&words);
	draw_character(ruler, 0, mark, 'v', LOOK_STRONG);
}

static void draw_down(const struct editor *editor, const struct area *ruler, struct place first,
	int cells)
{
	int mark = editor->cursor.y - first.y;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < cells; i++) {
		if ((first.y + i) % LABEL_EVERY != 0)
			continue;
		text_clear(&words);
		ruler_words(&words, (first.y + i) * plot_cell(&editor->plot),
			plot_units(&editor->plot));
		label(ruler, i, 0, &words, i == mark ? ruler->columns - 1 : -1);
	}
	text_fini(&words);
	draw_character(ruler, mark, ruler->columns - 1, '>', LOOK_STRONG);
}

void ruler_draw(const struct editor *editor, const struct layout *layout, struct place first)
{
	struct place cells = view_cells(first, &layout->plan, &editor->plot.ground);

	draw_across(editor, &layout->ruler, first, cells.x);
	draw_down(editor, &layout->side_ruler, first, cells.y);
}
