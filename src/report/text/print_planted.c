#include "report/text/bed_sheet.h"
#include "report/text/planting_beds.h"
#include "base/stop.h"

#include <limits.h>

/* Higher only where plants would be in one another's place. */
enum { ROWS_USUAL = 40 };

/* The plan of a bed with its plants. */
struct planted {
	struct bed_sheet sheet;
	const struct planted_place *place;
	int hidden; /* plants whose character another one has */
};

static void draw_row(struct planted *planted, const struct planting_row *row)
{
	for (int i = 0; i < row->spot_count && !stop_asked(); i++) {
		struct place at = bed_sheet_nearest(&planted->sheet, row->spots[i].at);
		char *character = bed_sheet_character(&planted->sheet, at.x, at.y);

		if (*character >= 'a' && *character <= 'z')
			planted->hidden++;
		else
			*character = row->letter;
	}
}

/* Kinds with specimens first: these are missed most. */
static void draw_plants(struct planted *planted)
{
	const struct planting_row *rows = planted->sheet.report->takeoff->planting.list;

	for (int pass = 0; pass < 2; pass++)
		for (int i = planted->place->from; i < planted->place->end; i++)
			if ((rows[i].specimens > 0) == (pass == 0))
				draw_row(planted, &rows[i]);
}

static const char *letters_words(const struct planted *planted)
{
	const struct report *report = planted->sheet.report;
	struct text words = TEXT_EMPTY;

	for (int i = planted->place->from; i < planted->place->end; i++) {
		const struct planting_row *row = &report->takeoff->planting.list[i];

		if (row->count > 0)
			text_print(&words, "%s%c%c%s", words.length ? "; " : "", row->letter,
				PAGE_TIE, tied(report, row->name));
	}
	return say_text(report, &words);
}

/* The sheet of a bed with its plants, so many rows high at most where that can be. */
static void begin(struct planted *planted, const struct report *report, int rows_most)
{
	planted->hidden = 0;
	bed_sheet_begin(&planted->sheet, report, planted->place->region, rows_most);
	draw_plants(planted);
}

static void print_group(const struct report *report, const struct planting_beds *beds,
	const struct group *group)
{
	struct planted planted = { .place = &beds->list[group->members[0]] };

	if (planted.place->region == NO_REGION)
		return;
	print_named_section(report, say(report, "%s planted",
		planting_beds_words(report, beds, group)));
	begin(&planted, report, ROWS_USUAL);
	if (planted.hidden > 0) {
		bed_sheet_end(&planted.sheet);
		begin(&planted, report, INT_MAX);
	}
	bed_sheet_print(&planted.sheet);
	print_lines(report, 0, 0, "%s. %s%s", letters_words(&planted),
		bed_sheet_scale_words(&planted.sheet), planted.hidden == 0 ? "" :
		say(report, " %s where another one has the character.",
			word_count(report, planted.hidden, "plant stands", "plants stand")));
	bed_sheet_end(&planted.sheet);
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
