#include "report/svg/title_block.h"
#include "base/number.h"
#include "base/spell.h"
#include "report/svg/type.h"

static const nm PADDING = 2 * NM_PER_MM, LINE = 4 * NM_PER_MM;

/* A part of the block, filled from the top down. */
struct cell {
	struct sheet *sheet;
	struct box box;
	nm down; /* of the next line's middle */
};

static struct cell cell_of(struct sheet *sheet, int from, int to)
{
	struct box all = sheet->layout->title;
	nm wide = box_width(all);

	all.bottom -= LINE + PADDING / 2; /* left for the sentence */
	return (struct cell){ sheet, { all.left + wide * from / 100, all.top,
		all.left + wide * to / 100, all.bottom }, PADDING + LINE / 4 };
}

/* Smaller where it is too long for the cell. */
static void write_line(struct cell *cell, nm most, bool is_bold, const char *words)
{
	nm room = box_width(cell->box) - 2 * PADDING;
	struct type type = type_fitted(words, (struct type){ .size = most, .is_bold = is_bold },
		room);

	cell->down += nm_most(most - LINE / 2, 0) / 2;
	ink_words(cell->sheet->report.out, (struct at){ cell->box.left + PADDING,
		cell->box.top + cell->down }, type, words);
	cell->down += LINE + nm_most(most - LINE / 2, 0) / 2;
}

/* "Date ______": a line to be written on. */
static void write_blank(struct cell *cell, const char *words)
{
	struct at at = { cell->box.left + PADDING, cell->box.top + cell->down };
	nm past = type_width(words, (struct type){ .size = TYPE_USUAL }) + PADDING / 2;
	struct sink *out = cell->sheet->report.out;

	sheet_pen(cell->sheet, PEN_WORDS);
	ink_words(out, at, (struct type){ .size = TYPE_USUAL }, words);
	sheet_lift(cell->sheet);
	sheet_pen(cell->sheet, PEN_THIN);
	ink_line(out, (struct at){ at.x + past, at.y + PADDING / 2 },
		(struct at){ cell->box.right - PADDING, at.y + PADDING / 2 });
	sheet_lift(cell->sheet);
	cell->down += 2 * LINE;
}

static void draw_frame(struct sheet *sheet)
{
	struct box all = sheet->layout->title;
	struct box middle = cell_of(sheet, 46, 74).box;
	struct sink *out = sheet->report.out;

	sheet_pen(sheet, PEN_FRAME);
	ink_box(out, all);
	ink_line(out, (struct at){ middle.left, all.top },
		(struct at){ middle.left, middle.bottom });
	ink_line(out, (struct at){ middle.right, all.top },
		(struct at){ middle.right, middle.bottom });
	ink_line(out, (struct at){ all.left, middle.bottom },
		(struct at){ all.right, middle.bottom });
	sheet_lift(sheet);
}

static void write_plot(struct sheet *sheet)
{
	const struct report *report = &sheet->report;
	const struct survey *survey = &report->takeoff->survey;
	const struct value *title = block_value(&report->plot->details.head, HEAD_TITLE);
	struct cell cell = cell_of(sheet, 0, 46);
	struct text file = TEXT_EMPTY;

	spell(&file, report->file);
	write_line(&cell, 5 * NM_PER_MM, true, title->set ? title->as.text : "Plan");
	write_line(&cell, TYPE_USUAL, false, file.bytes);
	write_line(&cell, TYPE_USUAL, false, say(report, "Plan %s, cells of %s",
		plain_cells(report, survey->columns, survey->rows), plain_sides(report, 1)));
	text_fini(&file);
}

static void write_sheet(struct sheet *sheet)
{
	const struct layout *layout = sheet->layout;
	const struct report *report = &sheet->report;
	struct cell cell = cell_of(sheet, 46, 74);
	struct text scale = TEXT_EMPTY;

	scale_write(&scale, layout->scale, report->units);
	write_line(&cell, TYPE_LARGE, true, layout->sheet == 1 ? say(report, "Scale %s",
		scale.bytes) : "Sections of walls");
	write_line(&cell, TYPE_USUAL, false, say(report, "%s, %s", papers[layout->paper].name,
		paper_turn_words[layout->turn]));
	write_line(&cell, TYPE_USUAL, false, say(report, "Sheet %d of %d%s", layout->sheet,
		layout->sheets, layout->sheet == 1 && layout->sheets > 1 ?
		"; sections of walls follow" : ""));
	text_fini(&scale);
}

void title_block_draw(struct sheet *sheet)
{
	struct box all = sheet->layout->title;
	struct cell blanks = cell_of(sheet, 74, 100);
	const char *words = "Figures are for planning: measure on site before anything is bought "
		"or dug. Local codes and licensed trades go before this drawing.";

	draw_frame(sheet);
	sheet_pen(sheet, PEN_WORDS);
	write_plot(sheet);
	write_sheet(sheet);
	ink_words(sheet->report.out, (struct at){ all.left + PADDING, all.bottom -
		(LINE + PADDING / 2) / 2 }, type_fitted(words, (struct type){ .size = TYPE_USUAL },
		box_width(all) - 2 * PADDING), words);
	sheet_lift(sheet);
	blanks.down += LINE / 2;
	write_blank(&blanks, "Address");
	write_blank(&blanks, "Date");
}
