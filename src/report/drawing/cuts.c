#include "report/drawing/cuts.h"
#include "base/number.h"
#include "report/words/page.h"

#include <stdio.h>

enum { LETTERS = 26 };

/* How many sheets a side takes, of so many cells to a sheet at the most. */
static int sheets(int cells, int sheet)
{
	return (int)quotient_up(cells, sheet);
}

struct cuts cuts_within(int columns, int rows, int ruler, int high)
{
	static const struct {
		int across, down;
	} sizes[] = { { 4, 2 }, { 2, 1 }, { 1, 1 } };
	struct cuts cuts = { .columns = columns, .rows = rows };

	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		cuts.across = sizes[i].across;
		cuts.down = sizes[i].down;
		cuts.sheets_across = sheets(columns, (PAGE_COLUMNS - ruler - 1) / cuts.across);
		cuts.sheets_down = sheets(rows, (SHEET_ROWS - 1) / cuts.down);
		if (cuts.sheets_across == 1 && (cuts.down == 1 || rows * cuts.down + 1 <= high))
			break;
	}
	return cuts;
}

struct cuts cuts_of(int columns, int rows, int ruler)
{
	return cuts_within(columns, rows, ruler, SHEET_ROWS);
}

/* The first cell of the sheet of that number, of a side of so many. */
static int first_cell(int cells, int count, int sheet)
{
	return cells * sheet / count;
}

struct rectangle cuts_cells(const struct cuts *cuts, struct place sheet)
{
	return (struct rectangle){
		first_cell(cuts->columns, cuts->sheets_across, sheet.x),
		first_cell(cuts->rows, cuts->sheets_down, sheet.y),
		first_cell(cuts->columns, cuts->sheets_across, sheet.x + 1) - 1,
		first_cell(cuts->rows, cuts->sheets_down, sheet.y + 1) - 1 };
}

static bool is_join(int cells, int count, int pitch, int at)
{
	for (int sheet = 1; sheet < count; sheet++)
		if (first_cell(cells, count, sheet) * pitch == at)
			return true;
	return false;
}

bool cuts_join_column(const struct cuts *cuts, int column)
{
	return is_join(cuts->columns, cuts->sheets_across, cuts->across, column);
}

bool cuts_join_row(const struct cuts *cuts, int row)
{
	return is_join(cuts->rows, cuts->sheets_down, cuts->down, row);
}

void cuts_name(struct place sheet, char name[SHEET_NAME_MOST])
{
	char above[2] = { (char)('A' + sheet.y / LETTERS - 1), '\0' };

	snprintf(name, SHEET_NAME_MOST, "%s%c%d", sheet.y < LETTERS ? "" : above,
		'A' + sheet.y % LETTERS, sheet.x + 1);
}
