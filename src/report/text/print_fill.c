#include "report/text/print.h"

#include <string.h>

static const char *what(const struct takeoff *takeoff, const struct fill *fill)
{
	const struct region *bed = &takeoff->survey.regions[fill->region];

	if (region_is_raised(bed))
		return "Soil";
	return block_number(&bed->entry->block, BED_REPLACE) == CHOICE_YES ? "Soil replaced" :
		"Amended";
}

static int compare_amounts(double a, double b)
{
	return (a > b) - (a < b);
}

/* Alike: the same is done, and depths, parts and volumes are the same. */
static int compare_fills(const void *a, const void *b, const void *takeoff)
{
	const struct fill *one = a, *other = b;
	int order = strcmp(what(takeoff, one), what(takeoff, other));

	order = order ? order :
		compare_amounts((double)one->soil_depth, (double)other->soil_depth);
	order = order ? order :
		compare_amounts((double)one->mulch_depth, (double)other->mulch_depth);
	order = order ? order : compare_amounts(one->soil, other->soil);
	order = order ? order : compare_amounts(one->order, other->order);
	order = order ? order : compare_amounts(one->mulch, other->mulch);
	order = order ? order : one->part_count - other->part_count;
	for (int i = 0; order == 0 && i < one->part_count; i++) {
		order = strcmp(one->parts[i].name, other->parts[i].name);
		order = order ? order :
			compare_amounts(one->parts[i].volume, other->parts[i].volume);
	}
	return order;
}

/* "topsoil 12.5 cu ft (3 cu ft of it dug here), ..." */
static const char *part_words(const struct report *report, const struct fill *fill)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < fill->part_count; i++) {
		const struct fill_part *part = &fill->parts[i];

		text_print(&words, "%s%s%c%s", i ? ", " : ": ", part->name, PAGE_TIE,
			word_volume(report, part->volume));
		if (part->reused > 0)
			text_print(&words, " (%s of it dug here)", word_volume(report, part->reused));
	}
	return say_text(report, &words);
}

static void print_group(const struct report *report, const struct fills *fills,
	const struct group *group)
{
	const struct fill *fill = &fills->list[group->members[0]];
	const char *soil = "Nothing is dug in.", *mulch = "";

	print_lines(report, 0, 2, "%s",
		group_title(report, &fill_table, fills->list, group, ", each"));
	if (fill->order > 0)
		soil = say(report, "%s %s deep, %s in place. Order %s%s.",
			what(report->takeoff, fill), word_inches(report, fill->soil_depth),
			word_volume(report, fill->soil), word_volume(report, fill->order),
			part_words(report, fill));
	if (fill->mulch > 0)
		mulch = say(report, " Mulch %s deep, %s.", word_inches(report, fill->mulch_depth),
			word_volume(report, fill->mulch));
	print_lines(report, 2, 2, "%s%s", soil, mulch);
}

void print_fill(const struct report *report)
{
	const struct fills *fills = &report->takeoff->fills;
	struct groups groups;

	if (fills->count == 0)
		return;
	print_heading(report, "Filling", report->takeoff->walls.not_laid_count == 0);
	print_lines(report, 0, 2, "Wear gloves; by old houses have soil tested for lead before "
		"growing food.");
	groups = groups_make(fills->list, fills->count, sizeof *fills->list, compare_fills,
		report->takeoff);
	for (int i = 0; i < groups.count; i++)
		print_group(report, fills, &groups.list[i]);
	groups_fini(&groups);
	print_note(report, "Order: in place and what settles; amendments do not settle, nor does "
		"mulch.");
}
