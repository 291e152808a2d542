#include "screen/bracket.h"
#include "base/show.h"
#include "screen/curses.h"
#include "screen/draw.h"

#include <string.h>

/* What is measured; false where there is nothing. */
static bool extent(const struct editor *editor, struct rectangle *r)
{
	const struct survey *survey = &editor->takeoff.survey;
	const struct region *region;
	int index;

	if (editor->is_pegged) {
		*r = editor_pegged(editor);
		return true;
	}
	if (editor->is_stale)
		return false;
	index = survey_region_at(survey, editor->cursor.x, editor->cursor.y);
	if (index == NO_REGION)
		return false;
	region = &survey->regions[index];
	*r = (struct rectangle){ region->left, region->first_cell.y, region->most.x,
		region->most.y };
	return true;
}

struct measure measure_of(const struct editor *editor)
{
	const struct view *view = &editor->view;
	const struct ground *ground = &editor->plot->ground;
	nm cell = plot_cell(editor->plot);
	struct rectangle r;
	struct place a, b, first, last;

	if (!editor->is_measuring || !extent(editor, &r))
		return (struct measure){ .is_shown = false };
	a = view_nearest(view, ground, (struct place){ r.left, r.top });
	b = view_nearest(view, ground, (struct place){ r.right, r.bottom });
	first = view_character(view, a);
	last = view_character(view, b);
	return (struct measure){
		.is_shown = true,
		.across = { first.x, last.x + view_grain(view)->columns - 1, a.x > r.left,
			b.x < r.right, (r.right - r.left + 1) * cell },
		.down = { first.y, last.y + view_grain(view)->rows - 1, a.y > r.top, b.y < r.bottom,
			(r.bottom - r.top + 1) * cell },
	};
}

/* Where words of so many columns go: in the middle of the bracket, or of the wider part that the
 * mark leaves of it, else after it, else before it; below 0 where there is no room. */
static int words_column(const struct bracket *bracket, int mark, int length, int columns)
{
	int whole = bracket->last - bracket->first - 1, left = mark - bracket->first - 1;
	int right = bracket->last - mark - 1, middle = bracket->first + 1 + (whole - length) / 2;

	if (whole >= length && (mark < middle || mark >= middle + length))
		return middle;
	if (left >= length && left >= right)
		return bracket->first + 1 + (left - length) / 2;
	if (right >= length)
		return mark + 1 + (right - length) / 2;
	if (bracket->last + 2 + length <= columns)
		return bracket->last + 2;
	return bracket->first - 1 - length;
}

static void draw_line_across(const struct area *ruler, const struct bracket *bracket)
{
	mvhline_set(ruler->row, ruler->column + bracket->first, WACS_HLINE,
		bracket->last - bracket->first + 1);
	if (!bracket->goes_before)
		mvadd_wch(ruler->row, ruler->column + bracket->first, WACS_ULCORNER);
	if (!bracket->goes_after)
		mvadd_wch(ruler->row, ruler->column + bracket->last,
			bracket->first == bracket->last ? WACS_TTEE : WACS_URCORNER);
}

struct bracket measure_draw_across(const struct editor *editor, const struct area *ruler,
	const struct bracket *bracket, int mark)
{
	struct text words = TEXT_EMPTY;
	struct bracket taken = *bracket;
	int column, end;

	show_short(&words, bracket->length, plot_units(editor->plot));
	column = words_column(bracket, mark, (int)words.length, ruler->columns);
	end = column + (int)words.length;
	draw_line_across(ruler, bracket);
	if (column >= 0) {
		draw_text(ruler, 0, column, words.bytes, LOOK_STRONG);
		taken.first = column < bracket->first ? column : bracket->first;
		taken.last = end > bracket->last ? end : bracket->last;
	}
	text_fini(&words);
	return taken;
}

static void draw_left(const struct area *ruler, int row, const char *words, size_t length)
{
	draw_bytes(ruler, row, ruler->columns - 1 - (int)length, words, length, LOOK_STRONG);
}

/* In the middle of the bracket: left of it, over it where they are as wide as the ruler, but beside
 * the mark; feet above inches where they are still wider. What does not fit is left out: "here" has
 * it too. */
static void draw_words_down(const struct area *ruler, const struct bracket *bracket, int mark,
	const struct text *words)
{
	int row = (bracket->first + bracket->last) / 2, room = ruler->columns - 1;
	const char *foot = strchr(words->bytes, '\'');
	size_t feet = foot ? (size_t)(foot + 1 - words->bytes) : 0, inches = words->length - feet;

	if ((int)words->length <= room) {
		draw_left(ruler, row, words->bytes, words->length);
	} else if ((int)words->length == room + 1 && bracket->first < bracket->last) {
		draw_text(ruler, row == mark ? row + 1 : row, 0, words->bytes, LOOK_STRONG);
	} else if (foot && (int)feet <= room && (int)inches <= room &&
	    bracket->first < bracket->last) {
		draw_left(ruler, row, words->bytes, feet);
		draw_left(ruler, row + 1, foot + 1, inches);
	}
}

void measure_draw_down(const struct editor *editor, const struct area *ruler,
	const struct bracket *bracket, int mark)
{
	int column = ruler->column + ruler->columns - 1;
	struct text words = TEXT_EMPTY;

	mvvline_set(ruler->row + bracket->first, column, WACS_VLINE,
		bracket->last - bracket->first + 1);
	if (!bracket->goes_before)
		mvadd_wch(ruler->row + bracket->first, column, WACS_ULCORNER);
	if (!bracket->goes_after)
		mvadd_wch(ruler->row + bracket->last, column,
			bracket->first == bracket->last ? WACS_LTEE : WACS_LLCORNER);
	show_short(&words, bracket->length, plot_units(editor->plot));
	draw_words_down(ruler, bracket, mark, &words);
	text_fini(&words);
}
