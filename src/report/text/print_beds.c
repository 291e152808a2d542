#include "report/text/print.h"

enum { SIDES_LISTED = 8, HOLES_LISTED = 2 };

/* "9 ft x 5 ft" for a rectangle, else side by side, or only how many. */
static const char *loop_words(const struct report *report, const struct loop *loop)
{
	nm cell = report->takeoff->survey.cell;
	struct text words = TEXT_EMPTY;

	if (loop->count > SIDES_LISTED)
		return say(report, "%s, %s round", word_count(report, loop->count, "side", "sides"),
			word_length(report, loop->perimeter * cell));
	for (int i = 0; i < (loop->count == 4 ? 2 : loop->count); i++)
		text_print(&words, "%s%s", i == 0 ? "" : loop->count == 4 ? " x " : ", ",
			word_length(report, outline_side(loop, i) * cell));
	return say_text(report, &words);
}

static const char *sides_words(const struct report *report, int region)
{
	struct text words = TEXT_EMPTY;
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, report->plot, &report->takeoff->survey, region);
	text_add(&words, loop_words(report, &outline.loops[0]));
	for (int i = 1; i < outline.count && outline.count - 1 <= HOLES_LISTED; i++)
		text_print(&words, "; hole %s", loop_words(report, &outline.loops[i]));
	if (outline.count - 1 > HOLES_LISTED)
		text_print(&words, "; %s", word_count(report, outline.count - 1, "hole", "holes"));
	arena_clear(&arena);
	return say_text(report, &words);
}

static const char *depth_words(const struct report *report, int region)
{
	const struct fill *fill = fills_find(&report->takeoff->fills, region);

	return fill ? plain_inches(report, fill->soil_depth) : "-";
}

/* Adds a bed: its name, letter, first place, sides, and four cells more. */
static void bed_row(struct hand_table *table, const struct report *report, int region,
	const char *const more[4])
{
	const struct region *bed = &report->takeoff->survey.regions[region];

	TABLE_ROW(table, plain_region(report, region), say(report, "%c", bed->entry->letter),
		say(report, "%d,%d", bed->first_cell.x, bed->first_cell.y),
		sides_words(report, region), more[0], more[1], more[2], more[3]);
	arena_clear(report->words);
}

static void raised_row(struct hand_table *table, const struct report *report, int region)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct block *bed = &takeoff->survey.regions[region].entry->block;
	const struct wall *wall = walls_find(&takeoff->walls, region);

	bed_row(table, report, region, (const char *const[]){
		plain_inches(report, fill_wall_height(bed)),
		plain_inches(report, fill_embed(bed, takeoff->surface)),
		wall ? plain_area(report, wall->inner_area) : "not laid",
		depth_words(report, region) });
}

static void level_row(struct hand_table *table, const struct report *report, int region)
{
	const struct survey *survey = &report->takeoff->survey;
	const struct region *bed = &survey->regions[region];
	bool is_replaced = block_number(&bed->entry->block, BED_REPLACE) == CHOICE_YES;

	bed_row(table, report, region, (const char *const[]){
		plain_area(report, survey_area(bed->cells, survey->cell)),
		plain_inches(report, block_length(&bed->entry->block, BED_PREPARE)),
		is_replaced ? "soil replaced" : "amended", depth_words(report, region) });
}

static void print_kind(const struct report *report, const char *words, bool raised,
	struct hand_table *table)
{
	const struct survey *survey = &report->takeoff->survey;

	for (int i = 0; i < survey->region_count; i++) {
		const struct region *region = &survey->regions[i];

		if (region->entry->class != CLASS_BED || region_is_raised(region) != raised)
			continue;
		if (raised)
			raised_row(table, report, i);
		else
			level_row(table, report, i);
	}
	if (table->cell_count > 0)
		page_heading(report->out, words);
	hand_table_print(table, report->out);
}

static void print_not_laid(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	struct groups groups = rows_groups(&wall_not_laid_table, walls->not_laid,
		walls->not_laid_count);

	for (int i = 0; i < groups.count; i++) {
		const struct group *group = &groups.list[i];

		print_lines(report, 0, 2, "%s: not laid out, about %s%s, in no total. A snag tells "
			"why.",
			group_words(report, &wall_not_laid_table, walls->not_laid, group),
			word_count(report, walls->not_laid[group->members[0]].about_blocks, "block",
				"blocks"), group->count > 1 ? " each" : "");
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
	struct hand_table table = hand_table(raised, 8, 0);

	print_kind(report, "Raised beds", true, &table);
	print_not_laid(report);
	if (report->takeoff->walls.count + report->takeoff->walls.not_laid_count > 0)
		print_note(report, "At: the bed's first cell, columns and rows from the "
			"plan's top left corner, which is 0,0. Height: from the top of the base, "
			"without cap. Embed: what of it is below finished ground. Inside: the "
			"ground between the walls.");
	table = hand_table(level, 8, 0);
	print_kind(report, "Beds at ground level", false, &table);
}
