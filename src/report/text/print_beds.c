#include "report/text/print.h"
#include "base/hash.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/shape.h"

#include <stdlib.h>

enum { SIDES_LISTED = 8, HOLES_LISTED = 2 };

/* "9 ft x 5 ft" for a rectangle, across and down; else side by side, or only how many. */
static const char *loop_words(const struct report *report, const struct loop *loop)
{
	nm cell = report->takeoff->survey.cell;
	struct text words = TEXT_EMPTY;
	bool is_rectangle = loop->count == 4;
	int first = is_rectangle && loop->corners[0].x == loop->corners[1].x; /* of a hole */

	if (loop->count > SIDES_LISTED)
		return say(report, "%s, %s round", word_count(report, loop->count, "side", "sides"),
			word_length(report, loop->perimeter * cell));
	for (int i = 0; i < (is_rectangle ? 2 : loop->count); i++)
		text_print(&words, "%s%s", i == 0 ? "" : is_rectangle ? " x " : ", ",
			word_length(report, outline_side(loop, first + i) * cell));
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

	return fill ? plain_inches(report, nm_most(fill->soil_depth, fill->deepest)) : "-";
}

/* ---- The schedule ---------------------------------------------------------------------------- */

/* The rows of this table are regions. */
static const struct figure region_figures[] = {
	{ .kind = FIGURE_REGION, .at = 0, .size = sizeof(int) },
};
static const struct figure_table region_table = { sizeof(int), region_figures, 1 };

struct schedule {
	struct table table; /* first */
	const struct report *report;
	/* Fills in the last four cells. */
	void (*more)(const struct report *report, int region, const char *cells[4]);
	int *beds;     /* regions, in their order */
	const struct groups *alike; /* beds that are alike: the first of each has a row */
	int count, at; /* at: the next group */
};

static void raised_cells(const struct report *report, int region, const char *cells[4])
{
	const struct takeoff *takeoff = report->takeoff;
	const struct block *bed = &takeoff->survey.regions[region].entry->block;
	const struct wall *wall = walls_find(&takeoff->walls, region);

	nm embed = embed_of(&takeoff->embeds, region);

	cells[0] = plain_inches(report, wall_height(bed) - embed +
		(wall && wall->has_cap ? wall->cap_block.up : 0));
	cells[1] = plain_inches(report, embed);
	cells[2] = wall ? plain_area(report, wall->inner_area) : "not laid";
	cells[3] = depth_words(report, region);
}

static void level_cells(const struct report *report, int region, const char *cells[4])
{
	const struct survey *survey = &report->takeoff->survey;
	const struct region *bed = &survey->regions[region];
	bool is_replaced = block_number(&bed->entry->block, BED_REPLACE) == CHOICE_YES;

	cells[0] = plain_area(report, survey_area(bed->cells, survey->cell));
	cells[1] = plain_inches(report, block_length(&bed->entry->block, BED_PREPARE));
	cells[2] = is_replaced ? "soil replaced" : "amended";
	cells[3] = depth_words(report, region);
}

static bool next_bed(struct table *table, const char *cells[])
{
	struct schedule *schedule = (struct schedule *)table;
	const struct report *report = schedule->report;
	const struct region *bed;
	int region;

	arena_clear(report->words);
	if (schedule->at == schedule->alike->count) {
		schedule->at = 0;
		return false;
	}
	region = schedule->beds[schedule->alike->list[schedule->at++].members[0]];
	bed = &report->takeoff->survey.regions[region];
	cells[0] = plain_named_region(report, region);
	cells[1] = say(report, "%c", bed->entry->letter);
	cells[2] = plain_corner(report, bed->first_cell);
	cells[3] = sides_words(report, region);
	schedule->more(report, region, cells + 4);
	return true;
}

static void list_beds(struct schedule *schedule, bool raised)
{
	const struct survey *survey = &schedule->report->takeoff->survey;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct region *region = &survey->regions[i];

		if (region->entry->class != CLASS_BED || region_is_raised(region) != raised)
			continue;
		schedule->beds = memory_grow(schedule->beds, count, &capacity,
			sizeof *schedule->beds);
		schedule->beds[count++] = i;
	}
	schedule->count = (int)count;
}

/* What makes beds alike; of a million of them nothing is kept but the group of their shape. */
struct standing {
	const int *beds;
	const struct groups *shapes; /* of these beds */
	const struct embeds *embeds; /* NULL: they have no walls */
};

static int shape_of(const struct standing *standing, const int *bed)
{
	return standing->shapes->of[bed - standing->beds];
}

static nm depth_of(const struct standing *standing, const int *bed)
{
	return standing->embeds ? embed_of(standing->embeds, *bed) : 0;
}

static bool stand_alike(const void *a, const void *b, const void *context)
{
	return shape_of(context, a) == shape_of(context, b) &&
		depth_of(context, a) == depth_of(context, b);
}

static uint64_t hash_standing(const void *item, const void *context)
{
	int shape = shape_of(context, item);
	nm depth = depth_of(context, item);

	return hash_bytes(hash_bytes(HASH_EMPTY, &shape, sizeof shape), &depth, sizeof depth);
}

/* Beds of one letter and shape whose walls stand equally deep are alike in all but their place. */
static struct groups alike_beds(const struct schedule *schedule, bool raised)
{
	const struct takeoff *takeoff = schedule->report->takeoff;
	struct groups groups, shapes = shape_groups(schedule->report->plot, &takeoff->survey,
		schedule->beds, schedule->count);
	const struct standing standing = { schedule->beds, &shapes,
		raised ? &takeoff->embeds : NULL };

	groups = groups_make(schedule->beds, shapes.item_count, sizeof *schedule->beds,
		&(struct alike){ stand_alike, hash_standing, &standing });
	groups_fini(&shapes);
	return groups;
}

/* "As B1: B2 at 10 ft, 1 ft; B3 Sage at 10 ft, 9 ft." */
static void print_places(const struct report *report, const int *beds, const struct group *group)
{
	struct text words = TEXT_EMPTY;

	for (int i = 1; i < group->count; i++) {
		int bed = beds[group->members[i]];

		text_print(&words, "%s%s%cat%c%s", i > 1 ? "; " : "",
			plain_named_region(report, bed), PAGE_TIE, PAGE_TIE, tied(report,
			plain_corner(report, report->takeoff->survey.regions[bed].first_cell)));
	}
	print_lines(report, 0, 2, "As %s: %s.", plain_region(report, beds[group->members[0]]),
		say_text(report, &words));
}

/* Where the beds lie that have no row of their own; of many alike only which they are: "B1 stands
 * for 7,000 beds alike in all but their place: B1 to B7000." */
static void print_alike_beds(const struct report *report, const int *beds,
	const struct groups *groups)
{
	for (int i = 0; i < groups->count && !stop_asked(); i++) {
		const struct group *group = &groups->list[i];

		if (group->count > NAMED_MOST)
			print_lines(report, 0, 2, "%s stands for %s alike in all but their place: "
				"%s.", plain_region(report, beds[group->members[0]]),
				word_count(report, group->count, "bed", "beds"),
				group_words(report, &region_table, beds, group));
		else if (group->count > 1)
			print_places(report, beds, group);
	}
}

static void print_kind(const struct report *report, const char *words, bool raised,
	const struct table_column columns[static 8])
{
	struct schedule schedule = { .table = { columns, 8, 0, next_bed, 0 }, .report = report,
		.more = raised ? raised_cells : level_cells };
	struct groups groups;

	list_beds(&schedule, raised);
	if (schedule.count == 0)
		return;
	print_section(report, words);
	groups = alike_beds(&schedule, raised);
	schedule.alike = &groups;
	table_print(&schedule.table, report->out);
	print_alike_beds(report, schedule.beds, &groups);
	groups_fini(&groups);
	free(schedule.beds);
}

static void print_not_laid(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	struct groups groups = rows_groups(&wall_not_laid_table, walls->not_laid,
		walls->not_laid_count);

	for (int i = 0; i < groups.count && !stop_asked(); i++) {
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
		{ "Bed", COLUMN_WRAPS }, { "", COLUMN_LEFT }, { "Across, down", COLUMN_WRAPS },
		{ "Sides", COLUMN_WRAPS }, { "Above", COLUMN_RIGHT }, { "In ground", COLUMN_RIGHT },
		{ "Inside", COLUMN_RIGHT }, { "Soil", COLUMN_RIGHT },
	};
	static const struct table_column level[] = {
		{ "Bed", COLUMN_WRAPS }, { "", COLUMN_LEFT }, { "Across, down", COLUMN_WRAPS },
		{ "Sides", COLUMN_WRAPS }, { "Area", COLUMN_RIGHT }, { "Dug over", COLUMN_RIGHT },
		{ "Then", COLUMN_LEFT }, { "Depth", COLUMN_RIGHT },
	};

	print_kind(report, "Raised beds", true, raised);
	print_not_laid(report);
	if (!report->is_whole &&
		report->takeoff->walls.count + report->takeoff->walls.not_laid_count > 0)
		print_lines(report, 0, 0, "Across, down: the first corner, from the plan's top "
			"left corner. Above: the wall%s, over finished ground. In ground: from "
			"there down to the base. Inside: between the walls. Soil: its depth.%s",
			report->takeoff->work.facts & FACT(CAPS) ? " with its cap" : "",
			report->takeoff->wall_levels.count > 0 ? " All that where the ground is "
			"lowest." : "");
	print_kind(report, "Beds at ground level", false, level);
	if (!report->is_whole && report->takeoff->work.facts & FACT(AMENDED))
		print_lines(report, 0, 0, "Amended: a layer of that depth is spread and dug in.");
}
