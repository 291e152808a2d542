#include "report/svg/names.h"
#include "base/stop.h"
#include "survey/middle.h"

#include <string.h>

/* How far beside their region names may stand. */
static const nm beside[] = { 4 * NM_PER_MM, 7 * NM_PER_MM, 11 * NM_PER_MM };

static bool is_own(const struct survey *survey, int region, struct middle middle, int y)
{
	const struct run *run;

	if (y < 0 || y >= survey->rows)
		return false;
	run = &survey->runs[survey_run_at(survey, middle.first.x, y)];
	return run->region == region && run->right >= middle.first.x + middle.length;
}

/* Ground of the region around its middle: a rectangle as wide as the run there. */
static struct box middle_box(const struct sheet *sheet, int region, struct middle middle)
{
	const struct survey *survey = &sheet->report.takeoff->survey;
	int top = middle.first.y, bottom = middle.first.y + 1;
	struct at from, to;

	while (is_own(survey, region, middle, top - 1))
		top--;
	while (is_own(survey, region, middle, bottom))
		bottom++;
	from = sheet_point(sheet, (struct place){ middle.first.x, top });
	to = sheet_point(sheet, (struct place){ middle.first.x + middle.length, bottom });
	return (struct box){ from.x, from.y, to.x, to.y };
}

/* In a box where it fits, nearest to the middle first. */
static bool try_within(struct sheet *sheet, const char *words, struct box box, struct type type)
{
	static const int steps[] = { 0, -1, 1, -2, 2 };
	struct at middle = box_middle(box);
	struct box taken = sheet_words_box(words, middle, type);
	nm across = box_width(box) - box_width(taken), down = box_height(box) - box_height(taken);
	int count = (int)(sizeof steps / sizeof *steps);

	if (across < 0 || down < 0)
		return false;
	for (int i = 0; i < count * count; i++)
		if (sheet_try(sheet, words, (struct at){
			middle.x + steps[i % count] * across / 4,
			middle.y + steps[i / count] * down / 4 }, type))
			return true;
	return false;
}

/* Smaller and smaller, but not under `least`. */
static bool try_sizes(struct sheet *sheet, const char *words, struct box box, nm least)
{
	const nm sizes[] = { TYPE_LARGE, TYPE_USUAL, TYPE_SMALL, TYPE_LEAST };

	for (size_t i = 0; i < sizeof sizes / sizeof *sizes && sizes[i] >= least; i++)
		if (try_within(sheet, words, box, (struct type){ .size = sizes[i],
			.is_bold = true }))
			return true;
	return false;
}

static bool try_outside(struct sheet *sheet, const char *words, struct at from)
{
	static const struct place ways[] = { { 0, -1 }, { 1, -1 }, { -1, -1 }, { 1, 0 }, { -1, 0 },
		{ 1, 1 }, { -1, 1 }, { 0, 1 } };
	const struct type type = { .size = TYPE_SMALL, .is_bold = true };

	for (size_t i = 0; i < sizeof beside / sizeof *beside; i++)
		for (size_t j = 0; j < sizeof ways / sizeof *ways; j++) {
			struct at to = { from.x + ways[j].x * beside[i],
				from.y + ways[j].y * beside[i] };

			if (!room_is_free(&sheet->room, sheet_words_box(words, to, type)))
				continue;
			sheet_pen(sheet, PEN_THIN);
			ink_line(sheet->report.out, from, to);
			sheet_lift(sheet);
			return sheet_try(sheet, words, to, type);
		}
	return false;
}

static void draw_name(struct sheet *sheet, int region, struct middle middle)
{
	const struct report *report = &sheet->report;
	const char *id = plain_region(report, region);
	const char *all = plain_named_region(report, region);
	struct box box = middle_box(sheet, region, middle);
	bool has_own = strcmp(all, id) != 0;

	if (has_own && try_sizes(sheet, all, box, TYPE_SMALL))
		return;
	sheet->left_out[LEFT_IDS] += has_own;
	if (try_sizes(sheet, id, box, TYPE_LEAST) || try_outside(sheet, id, box_middle(box)))
		return;
	sheet->left_out[LEFT_IDS] += !has_own;
}

void names_draw(struct sheet *sheet)
{
	static const enum plot_class order[CLASS_OPEN] = { CLASS_BED, CLASS_FIXTURE, CLASS_PATH,
		CLASS_LAWN };
	const struct survey *survey = &sheet->report.takeoff->survey;
	struct arena arena = ARENA_EMPTY;
	const struct middle *middles = survey_middles(survey, &arena);

	sheet_pen(sheet, PEN_WORDS);
	for (int turn = 0; turn < CLASS_OPEN; turn++)
		for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
			if (survey->regions[i].entry->class != order[turn])
				continue;
			draw_name(sheet, i, middles[i]);
			arena_clear(sheet->report.words);
		}
	sheet_lift(sheet);
	arena_clear(&arena);
}
