#include "screen/draw.h"
#include "base/number.h"
#include "screen/curses.h"
#include "screen/width.h"

#include <string.h>

static const chtype attributes[] = {
	[LOOK_PLAIN] = A_NORMAL,
	[LOOK_STRONG] = A_BOLD,
	[LOOK_PICKED] = A_REVERSE,
	[LOOK_FIELD] = A_UNDERLINE,
};

/* One cell: a character and what joins it, of which curses takes but a few. */
static void put(int row, int column, wchar_t *words, int count)
{
	cchar_t cell;

	words[count] = L'\0';
	if (setcchar(&cell, words, A_NORMAL, 0, NULL) == OK)
		mvadd_wch(row, column, &cell);
}

/* A cluster has more cells than one where several characters with a width are bound together. */
void draw_cluster(const struct area *area, int row, int column, const char *text, size_t length)
{
	wchar_t words[CCHARW_MAX + 1];
	int count = 0, width = 0;

	for (size_t at = 0; at < length;) {
		wchar_t shown;
		int columns;

		at += width_character(text + at, length - at, &shown, &columns);
		if (columns > 0 && count > 0) {
			put(area->row + row, area->column + column, words, count);
			column += width;
			count = 0;
		}
		if (columns == 0 && count == 0)
			words[count++] = L' '; /* for a mark that has no letter */
		width = columns > 0 ? columns : width;
		if (count < CCHARW_MAX)
			words[count++] = shown;
	}
	put(area->row + row, area->column + column, words, count);
}

int draw_bytes(const struct area *area, int row, int column, const char *text, size_t length,
	enum look look)
{
	if (row < 0 || row >= area->rows)
		return column;
	attrset((int)attributes[look]);
	for (size_t at = 0; at < length;) {
		int columns;
		size_t taken = width_cluster(text + at, length - at, &columns);

		if (column + columns > area->columns)
			break;
		draw_cluster(area, row, column, text + at, taken);
		column += columns;
		at += taken;
	}
	attrset(A_NORMAL);
	return column;
}

int draw_text(const struct area *area, int row, int column, const char *text, enum look look)
{
	return draw_bytes(area, row, column, text, strlen(text), look);
}

int draw_cut(const struct area *area, int row, int column, const char *text, int columns,
	enum look look)
{
	static const char dots[] = "...";

	if (width_of(text) <= columns)
		return draw_text(area, row, column, text, look);
	columns = most(columns - (int)sizeof dots + 1, 0);
	column = draw_bytes(area, row, column, text, width_cut(text, columns), look);
	return draw_text(area, row, column, dots, look);
}

void draw_right(const struct area *area, int row, const char *text, enum look look)
{
	int column = area->columns - width_of(text);

	draw_text(area, row, column > 0 ? column : 0, text, look);
}

int draw_wrapped(const struct area *area, int row, const char *text, enum look look)
{
	while (*text) {
		size_t next, length = width_line(text, area->columns, &next);

		draw_bytes(area, row++, 0, text, length, look);
		text += next;
	}
	return row;
}

void draw_character(const struct area *area, int row, int column, char c, enum look look)
{
	if (row >= 0)
		mvaddch(area->row + row, area->column + column,
			(chtype)(unsigned char)c | attributes[look]);
}

void draw_rule(const struct area *area, int row)
{
	mvhline_set(area->row + row, area->column, WACS_HLINE, area->columns);
}

void draw_upright(const struct area *area)
{
	mvvline_set(area->row, area->column, WACS_VLINE, area->rows);
}

void draw_clear(const struct area *area)
{
	for (int row = 0; row < area->rows; row++)
		mvhline(area->row + row, area->column, ' ', area->columns);
}

void draw_card(const struct area *area)
{
	const struct area edge = { area->row, area->column, area->rows, 1 };

	draw_clear(area);
	draw_upright(&edge);
}
