#include "report/text/planting_beds.h"
#include "report/text/ruler.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

/* A character is a part of a cell across and twice as much down; grid lines lie on characters. Of
 * a foot these are whole inches, or halves of them. */
enum { LABELS_APART = 8, ROOM = 70 };
static const int pitches[] = { 12, 8, 6, 4, 2 };
enum { PITCHES = sizeof pitches / sizeof *pitches };

struct sheet {
	const struct report *report;
	const struct planted_place *place;
	struct rectangle cells; /* around the bed */
	int pitch;              /* characters a cell across, even */
	int columns, rows;      /* of characters */
	char *characters;
	int hidden;             /* plants whose character another one has */
};

static char *character(const struct sheet *sheet, int column, int row)
{
	return &sheet->characters[row * sheet->columns + column];
}

static bool is_inside(const struct sheet *sheet, int x, int y)
{
	const struct survey *survey = &sheet->report->takeoff->survey;

	return x >= 0 && y >= 0 && x < survey->columns && y < survey->rows &&
		survey_region_at(survey, x, y) == sheet->place->region;
}

/* Where a plant's character is: the nearest one. */
static int nearest(nm from, nm at, nm step, int count)
{
	return held((2 * (at - from) + step) / (2 * step), 0, count - 1);
}

/* ---- The outline ----------------------------------------------------------------------------- */

/* The sides that begin at a grid point of the sheet, to the right and down. */
static void draw_sides(const struct sheet *sheet, int x, int y)
{
	int left = sheet->cells.left + x, top = sheet->cells.top + y;
	int column = x * sheet->pitch, row = y * sheet->pitch / 2;
	bool here = is_inside(sheet, left, top);
	bool right = here != is_inside(sheet, left, top - 1);
	bool down = here != is_inside(sheet, left - 1, top);

	for (int i = 1; right && column < sheet->columns - 1 && i < sheet->pitch; i++)
		*character(sheet, column + i, row) = '-';
	for (int i = 1; down && row < sheet->rows - 1 && i < sheet->pitch / 2; i++)
		*character(sheet, column, row + i) = '|';
}

/* A grid point on the outline: a corner, or on a straight side. */
static void draw_point(const struct sheet *sheet, int x, int y)
{
	int left = sheet->cells.left + x, top = sheet->cells.top + y;
	bool a = is_inside(sheet, left - 1, top - 1), b = is_inside(sheet, left, top - 1);
	bool c = is_inside(sheet, left - 1, top), d = is_inside(sheet, left, top);

	if (a == b && b == c && c == d)
		return;
	*character(sheet, x * sheet->pitch, y * sheet->pitch / 2) =
		a == b && c == d ? '-' : a == c && b == d ? '|' : '+';
}

static void draw_outline(const struct sheet *sheet)
{
	for (int y = 0; y <= sheet->cells.bottom + 1 - sheet->cells.top && !stop_asked(); y++)
		for (int x = 0; x <= sheet->cells.right + 1 - sheet->cells.left; x++) {
			draw_sides(sheet, x, y);
			draw_point(sheet, x, y);
		}
}

/* ---- Plants ---------------------------------------------------------------------------------- */

static void draw_row(struct sheet *sheet, const struct planting_row *row)
{
	nm cell = sheet->report->takeoff->survey.cell;
	nm left = sheet->cells.left * cell, top = sheet->cells.top * cell;

	for (int i = 0; i < row->spot_count && !stop_asked(); i++) {
		char *at = character(sheet,
			nearest(left, row->spots[i].at.x, cell / sheet->pitch, sheet->columns),
			nearest(top, row->spots[i].at.y, 2 * cell / sheet->pitch, sheet->rows));

		if (*at >= 'a' && *at <= 'z')
			sheet->hidden++;
		else
			*at = row->letter;
	}
}

/* Kinds with specimens first: these are missed most. */
static void draw_plants(struct sheet *sheet)
{
	const struct planting_row *rows = sheet->report->takeoff->planting.list;

	for (int pass = 0; pass < 2; pass++)
		for (int i = sheet->place->from; i < sheet->place->end; i++)
			if ((rows[i].specimens > 0) == (pass == 0))
				draw_row(sheet, &rows[i]);
}

/* ---- Printing -------------------------------------------------------------------------------- */

/* The characters of the columns from `left` to `right`. */
static void print_part(const struct sheet *sheet, int left, int right)
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
		text_add_bytes(&line, character(sheet, left, row), (size_t)(right + 1 - left));
		print_trimmed(report, &line);
		text_fini(&line);
	}
}

/* What is too wide is cut along lines of the grid, which both sheets have. */
static void print_sheet(const struct sheet *sheet)
{
	const struct report *report = sheet->report;
	nm cell = report->takeoff->survey.cell;
	int last = sheet->columns - 1, room = ROOM / sheet->pitch * sheet->pitch;
	int count = (last + room - 1) / room;

	for (int i = 0; i < count && !stop_asked(); i++) {
		int left = i * room, right = least(left + room, last);

		if (count > 1)
			print_lines(report, 0, 0, "Sheet %d of %d: %s to %s across.", i + 1, count,
				word_length(report, left / sheet->pitch * cell),
				word_length(report, right / sheet->pitch * cell));
		print_part(sheet, left, right);
	}
}

static const char *letters_words(const struct sheet *sheet)
{
	struct text words = TEXT_EMPTY;

	for (int i = sheet->place->from; i < sheet->place->end; i++) {
		const struct planting_row *row = &sheet->report->takeoff->planting.list[i];

		if (row->count > 0)
			text_print(&words, "%s%c%c%s", words.length ? "; " : "", row->letter,
				PAGE_TIE, tied(sheet->report, row->name));
	}
	return say_text(sheet->report, &words);
}

static void print_bed(struct sheet *sheet)
{
	const struct report *report = sheet->report;
	nm cell = report->takeoff->survey.cell;
	size_t count;

	sheet->columns = (sheet->cells.right + 1 - sheet->cells.left) * sheet->pitch + 1;
	sheet->rows = (sheet->cells.bottom + 1 - sheet->cells.top) * sheet->pitch / 2 + 1;
	count = (size_t)sheet->columns * (size_t)sheet->rows;
	sheet->characters = memory_new(count, 1);
	memset(sheet->characters, ' ', count);
	draw_outline(sheet);
	draw_plants(sheet);
	print_sheet(sheet);
	free(sheet->characters);
	print_lines(report, 0, 0, "%s. A character is %s across and %s down.%s",
		letters_words(sheet), word_length(report, cell / sheet->pitch),
		word_length(report, 2 * cell / sheet->pitch), sheet->hidden == 0 ? "" :
		say(report, " %s where another one has the character.",
			word_count(report, sheet->hidden, "plant stands", "plants stand")));
}

static void print_group(const struct report *report, const struct planting_beds *beds,
	const struct group *group)
{
	const struct planted_place *place = &beds->list[group->members[0]];
	struct sheet sheet = { .report = report, .place = place };
	const struct region *region;
	int width;

	if (place->region == NO_REGION)
		return;
	region = &report->takeoff->survey.regions[place->region];
	sheet.cells = (struct rectangle){ region->left, region->first_cell.y, region->most.x,
		region->most.y };
	width = region->most.x + 1 - region->left;
	for (int i = 0; i < PITCHES && (i == 0 || sheet.pitch * width > ROOM); i++)
		sheet.pitch = pitches[i];
	print_section(report, say(report, "%s planted",
		planting_beds_words(report, beds, group)));
	print_bed(&sheet);
}

void print_planted(const struct report *report)
{
	struct planting_beds beds;

	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	planting_beds_make(&beds, report);
	for (int i = 0; i < beds.alike.count && !stop_asked(); i++)
		print_group(report, &beds, &beds.alike.list[i]);
	planting_beds_fini(&beds);
}
