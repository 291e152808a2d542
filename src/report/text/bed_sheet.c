#include "report/text/bed_sheet.h"
#include "report/text/ruler.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

/* Of a foot these are whole inches, or halves of them. */
enum { LABELS_APART = 8, ROOM = 70 };
static const int pitches[] = { 12, 8, 6, 4, 2 };
enum { PITCHES = sizeof pitches / sizeof *pitches };

char *bed_sheet_character(const struct bed_sheet *sheet, int column, int row)
{
	return &sheet->characters[row * sheet->columns + column];
}

static int nearest(nm from, nm at, nm step, int count)
{
	return held((2 * (at - from) + step) / (2 * step), 0, count - 1);
}

struct place bed_sheet_nearest(const struct bed_sheet *sheet, struct spot spot)
{
	nm cell = sheet->report->takeoff->survey.cell;

	return (struct place){
		nearest(sheet->cells.left * cell, spot.x, cell / sheet->pitch, sheet->columns),
		nearest(sheet->cells.top * cell, spot.y, 2 * cell / sheet->pitch, sheet->rows) };
}

/* ---- The outline ----------------------------------------------------------------------------- */

static bool is_inside(const struct bed_sheet *sheet, int x, int y)
{
	const struct survey *survey = &sheet->report->takeoff->survey;

	return x >= 0 && y >= 0 && x < survey->columns && y < survey->rows &&
		survey_region_at(survey, x, y) == sheet->region;
}

/* The sides that begin at a grid point of the sheet, to the right and down. */
static void draw_sides(const struct bed_sheet *sheet, int x, int y)
{
	int left = sheet->cells.left + x, top = sheet->cells.top + y;
	int column = x * sheet->pitch, row = y * sheet->pitch / 2;
	bool here = is_inside(sheet, left, top);
	bool right = here != is_inside(sheet, left, top - 1);
	bool down = here != is_inside(sheet, left - 1, top);

	for (int i = 1; right && column < sheet->columns - 1 && i < sheet->pitch; i++)
		*bed_sheet_character(sheet, column + i, row) = '-';
	for (int i = 1; down && row < sheet->rows - 1 && i < sheet->pitch / 2; i++)
		*bed_sheet_character(sheet, column, row + i) = '|';
}

/* A grid point on the outline: a corner, or on a straight side. */
static void draw_point(const struct bed_sheet *sheet, int x, int y)
{
	int left = sheet->cells.left + x, top = sheet->cells.top + y;
	bool a = is_inside(sheet, left - 1, top - 1), b = is_inside(sheet, left, top - 1);
	bool c = is_inside(sheet, left - 1, top), d = is_inside(sheet, left, top);

	if (a == b && b == c && c == d)
		return;
	*bed_sheet_character(sheet, x * sheet->pitch, y * sheet->pitch / 2) =
		a == b && c == d ? '-' : a == c && b == d ? '|' : '+';
}

static void draw_outline(const struct bed_sheet *sheet)
{
	for (int y = 0; y <= sheet->cells.bottom + 1 - sheet->cells.top && !stop_asked(); y++)
		for (int x = 0; x <= sheet->cells.right + 1 - sheet->cells.left; x++) {
			draw_sides(sheet, x, y);
			draw_point(sheet, x, y);
		}
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* The largest that is no wider and no higher, else the least. */
static int pitch_for(int width, int height, int rows_most)
{
	int i = 0;

	while (i < PITCHES - 1 && (pitches[i] * width > ROOM ||
		(int64_t)pitches[i] / 2 * height >= rows_most))
		i++;
	return pitches[i];
}

void bed_sheet_begin(struct bed_sheet *sheet, const struct report *report, int region,
	int rows_most)
{
	const struct region *bed = &report->takeoff->survey.regions[region];
	const struct rectangle cells = { bed->left, bed->first_cell.y, bed->most.x, bed->most.y };
	int width = cells.right + 1 - cells.left, height = cells.bottom + 1 - cells.top;
	size_t count;

	*sheet = (struct bed_sheet){ .report = report, .region = region, .cells = cells,
		.pitch = pitch_for(width, height, rows_most) };
	sheet->columns = width * sheet->pitch + 1;
	sheet->rows = height * sheet->pitch / 2 + 1;
	count = (size_t)sheet->columns * (size_t)sheet->rows;
	sheet->characters = memory_new(count, 1);
	memset(sheet->characters, ' ', count);
	draw_outline(sheet);
}

void bed_sheet_end(struct bed_sheet *sheet)
{
	free(sheet->characters);
}

/* The characters of the columns from `left` to `right`. */
static void print_part(const struct bed_sheet *sheet, int left, int right)
{
	const struct report *report = sheet->report;
	int indent = ruler_columns(report);
	struct ruler across = ruler_of(report, sheet->cells.right + 1 - sheet->cells.left,
		sheet->pitch, LABELS_APART);
	struct ruler down = ruler_of(report, sheet->cells.bottom + 1 - sheet->cells.top,
		sheet->pitch / 2, LABELS_APART / 2);

	ruler_across(report, &across, indent, left, right);
	for (int row = 0; row < sheet->rows && !stop_asked(); row++) {
		struct text line = TEXT_EMPTY;

		ruler_label(&line, &down, indent, row);
		text_add_bytes(&line, bed_sheet_character(sheet, left, row),
			(size_t)(right + 1 - left));
		print_trimmed(report, &line);
		text_fini(&line);
	}
}

/* What is too wide is cut along lines of the grid, which both sheets have. */
void bed_sheet_print(const struct bed_sheet *sheet)
{
	const struct report *report = sheet->report;
	nm cell = report->takeoff->survey.cell;
	int last = sheet->columns - 1, room = ROOM / sheet->pitch * sheet->pitch;
	int count = (int)quotient_up(last, room);

	for (int i = 0; i < count && !stop_asked(); i++) {
		int left = i * room, right = least(left + room, last);

		if (i > 0)
			print_blank(report);
		if (count > 1)
			print_lines(report, 0, 0, "Sheet %d of %d: %s to %s across.", i + 1, count,
				word_length(report, left / sheet->pitch * cell),
				word_length(report, right / sheet->pitch * cell));
		print_part(sheet, left, right);
	}
}

const char *bed_sheet_scale_words(const struct bed_sheet *sheet)
{
	const struct report *report = sheet->report;
	nm cell = report->takeoff->survey.cell;

	return say(report, "A character is %s across and %s down.",
		word_length(report, cell / sheet->pitch),
		word_length(report, 2 * cell / sheet->pitch));
}
