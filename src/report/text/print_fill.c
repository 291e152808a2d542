#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"
#include "takeoff/ground/fill.h"

#include <string.h>

static int compare_amounts(double a, double b)
{
	return (a > b) - (a < b);
}

static const char *what(const struct takeoff *takeoff, const struct fill *fill)
{
	const struct region *bed = &takeoff->survey.regions[fill->region];

	if (takeoff_is_raised(bed))
		return "Soil";
	return block_number(&bed->entry->block, BED_REPLACE) == CHOICE_YES ? "Soil replaced" :
		"Amended";
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

static int region_of(const struct takeoff *takeoff, int fill)
{
	return takeoff->fills[fill].region;
}

/* "Soil 13 in deep, 21.8 cu ft in place. Order 25.1 cu ft: topsoil 12.5 cu ft, ..." */
static void word_soil(struct text *line, const struct report *report, const struct fill *fill)
{
	text_print(line, "%s ", what(report->takeoff, fill));
	word_inches(line, report, fill->soil_depth);
	text_add(line, " deep, ");
	word_volume(line, report, fill->soil);
	text_add(line, " in place. Order ");
	word_volume(line, report, fill->order);
	for (int i = 0; i < fill->part_count; i++) {
		double reused = fill_reused(report->takeoff, &fill->parts[i]);

		text_print(line, "%s%s%c", i ? ", " : ": ", fill->parts[i].name, PAGE_TIE);
		word_volume(line, report, fill->parts[i].volume);
		if (reused > 0) {
			text_add(line, " (");
			word_volume(line, report, reused);
			text_add(line, " of it dug here)");
		}
	}
	text_add(line, ".");
}

static void word_mulch(struct text *line, const struct report *report, const struct fill *fill)
{
	text_add(line, " Mulch ");
	word_inches(line, report, fill->mulch_depth);
	text_add(line, " deep, ");
	word_volume(line, report, fill->mulch);
	text_add(line, ".");
}

static void print_group(const struct report *report, const struct group *group)
{
	const struct fill *fill = &report->takeoff->fills[group->members[0]];
	struct text line = TEXT_EMPTY;

	word_group(&line, report, group, region_of);
	if (group->count > 1) {
		text_add(&line, ": ");
		word_count(&line, group->count, "bed", "beds");
		text_add(&line, ", each");
	}
	page_paragraph(report->out, 0, 2, line.bytes);
	text_clear(&line);
	if (fill->order > 0)
		word_soil(&line, report, fill);
	else
		text_add(&line, "Nothing is dug in.");
	if (fill->mulch > 0)
		word_mulch(&line, report, fill);
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

void print_fill(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct groups groups;

	if (takeoff->fill_count == 0)
		return;
	page_heading(report->out, takeoff->not_laid_count == 0 ? "Filling" : "Filling (INCOMPLETE)");
	page_paragraph(report->out, 0, 2, "Wear gloves; by old houses have soil tested for lead before "
		"growing food.");
	groups = groups_make(takeoff->fills, takeoff->fill_count, sizeof *takeoff->fills,
		compare_fills, takeoff);
	for (int i = 0; i < groups.count; i++)
		print_group(report, &groups.list[i]);
	groups_fini(&groups);
	page_note(report->out, "Order: in place and what settles; amendments do not settle, nor does "
		"mulch.");
}
