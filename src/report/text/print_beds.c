#include "report/text/print.h"
#include "report/words/words.h"
#include "base/memory.h"
#include "base/show.h"
#include "takeoff/ground/fill.h"

enum { SIDES_LISTED = 8, HOLES_LISTED = 2 };

/* "9 ft x 5 ft" for a rectangle, else side by side, or how many where they are many. */
static void word_loop(struct text *text, const struct report *report, const struct loop *loop)
{
	nm cell = report->takeoff->survey.cell;

	if (loop->count > SIDES_LISTED) {
		word_count(text, loop->count, "side", "sides");
		text_add(text, ", ");
		word_length(text, report, loop->perimeter * cell);
		text_add(text, " round");
		return;
	}
	for (int i = 0; i < (loop->count == 4 ? 2 : loop->count); i++) {
		if (i > 0)
			text_add(text, loop->count == 4 ? " x " : ", ");
		word_length(text, report, outline_side(loop, i) * cell);
	}
}

static void sides_cell(struct table *table, const struct report *report, int region)
{
	struct text *cell = table_cell(table);
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, report->plot, &report->takeoff->survey, region);
	word_loop(cell, report, &outline.loops[0]);
	for (int i = 1; i < outline.count && outline.count - 1 <= HOLES_LISTED; i++) {
		text_add(cell, "; hole ");
		word_loop(cell, report, &outline.loops[i]);
	}
	if (outline.count - 1 > HOLES_LISTED) {
		text_add(cell, "; ");
		word_count(cell, outline.count - 1, "hole", "holes");
	}
	arena_clear(&arena);
}

/* Number, letter, first place, sides. */
static void bed_cells(struct table *table, const struct report *report, int region)
{
	const struct region *bed = &report->takeoff->survey.regions[region];

	word_region(table_cell(table), report, region);
	text_print(table_cell(table), "%c", bed->entry->letter);
	text_print(table_cell(table), "%d,%d", bed->first_cell.x, bed->first_cell.y);
	sides_cell(table, report, region);
}

static void depth_cell(struct table *table, const struct report *report, const struct fill *fill)
{
	struct text *cell = table_cell(table);

	if (fill)
		show_inches(cell, fill->soil_depth, report->units);
	else
		text_add(cell, "-");
}

static void raised_row(struct table *table, const struct report *report, int region)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct block *bed = &takeoff->survey.regions[region].entry->block;
	const struct wall *wall = takeoff_wall(takeoff, region);
	struct text *inside;

	bed_cells(table, report, region);
	show_inches(table_cell(table), fill_wall_height(bed), report->units);
	show_inches(table_cell(table), fill_embed(takeoff, bed), report->units);
	inside = table_cell(table);
	if (wall)
		show_area(inside, wall->inner_area, report->units);
	else
		text_add(inside, "not laid");
	depth_cell(table, report, takeoff_fill(takeoff, region));
}

static void level_row(struct table *table, const struct report *report, int region)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct region *bed = &takeoff->survey.regions[region];
	bool is_replaced = block_number(&bed->entry->block, BED_REPLACE) == CHOICE_YES;

	bed_cells(table, report, region);
	show_area(table_cell(table), survey_area(bed->cells, takeoff->survey.cell), report->units);
	show_inches(table_cell(table), block_length(&bed->entry->block, BED_PREPARE), report->units);
	table_words(table, is_replaced ? "soil replaced" : "amended");
	depth_cell(table, report, takeoff_fill(takeoff, region));
}

static void print_kind(const struct report *report, const char *words, bool raised,
	struct table *table)
{
	const struct survey *survey = &report->takeoff->survey;

	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];

		if (region->entry->class != CLASS_BED || takeoff_is_raised(region) != raised)
			continue;
		if (raised)
			raised_row(table, report, i);
		else
			level_row(table, report, i);
	}
	if (table->cell_count > 0)
		page_heading(report->out, words);
	table_print(table, report->out);
}

static int compare_not_laid(const void *a, const void *b, const void *context)
{
	int64_t one = ((const struct wall_not_laid *)a)->about_blocks;
	int64_t other = ((const struct wall_not_laid *)b)->about_blocks;

	(void)context;
	return (one > other) - (one < other);
}

static int region_of(const struct takeoff *takeoff, int not_laid)
{
	return takeoff->not_laid[not_laid].region;
}

static void print_not_laid(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct groups groups = groups_make(takeoff->not_laid, takeoff->not_laid_count,
		sizeof *takeoff->not_laid, compare_not_laid, NULL);

	for (int i = 0; i < groups.count; i++) {
		const struct group *group = &groups.list[i];
		struct text line = TEXT_EMPTY;

		word_group(&line, report, group, region_of);
		text_add(&line, ": not laid out, about ");
		word_count(&line, takeoff->not_laid[group->members[0]].about_blocks, "block",
			"blocks");
		text_print(&line, "%s, in no total. A snag tells why.", group->count > 1 ? " each" : "");
		page_paragraph(report->out, 0, 2, line.bytes);
		text_fini(&line);
	}
	groups_fini(&groups);
}

void print_beds(const struct report *report)
{
	static const struct table_column raised[] = {
		{ "Bed", COLUMN_LEFT }, { "", COLUMN_LEFT }, { "At", COLUMN_LEFT },
		{ "Sides", COLUMN_WRAPS }, { "Height", COLUMN_RIGHT }, { "Embed", COLUMN_RIGHT },
		{ "Inside", COLUMN_RIGHT }, { "Soil depth", COLUMN_RIGHT },
	};
	static const struct table_column level[] = {
		{ "Bed", COLUMN_LEFT }, { "", COLUMN_LEFT }, { "At", COLUMN_LEFT },
		{ "Sides", COLUMN_WRAPS }, { "Area", COLUMN_RIGHT }, { "Dug over", COLUMN_RIGHT },
		{ "Then", COLUMN_LEFT }, { "Depth", COLUMN_RIGHT },
	};
	struct table table = table_start(raised, 8, 0);

	print_kind(report, "Raised beds", true, &table);
	print_not_laid(report);
	if (report->takeoff->wall_count + report->takeoff->not_laid_count > 0)
		page_note(report->out, "At: the bed's first cell, columns and rows from the "
			"plan's top left corner, which is 0,0. Height: from the top of the base, without "
			"cap. Embed: what of it is below finished ground. Inside: the ground between the "
			"walls.");
	table = table_start(level, 8, 0);
	print_kind(report, "Beds at ground level", false, &table);
}
