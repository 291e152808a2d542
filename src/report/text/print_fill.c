#include "report/text/print.h"

/* "topsoil 12.5 cu ft (3 cu ft of it dug here), ..." */
static const char *part_words(const struct report *report, const struct fill *fill)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < fill->part_count; i++) {
		const struct fill_part *part = &fill->parts[i];

		text_print(&words, "%s%s%c%s", i ? ", " : ": ",
			tied(report, good_name_words(report, part->name)), PAGE_TIE,
			word_volume(report, part->volume));
		if (part->reused > 0)
			text_print(&words, " (%s of it dug here)",
				word_volume(report, part->reused));
	}
	return say_text(report, &words);
}

/* "Soil 11 1/2 in deep, over 3.0 sq ft of base within the wall 3 in more, 17.1 cu ft in place". */
static const char *depth_words(const struct report *report, const struct fill *fill)
{
	const char *mean = fill->deepest == 0 ? "" : say(report, " on the mean (%s where the "
		"ground is lowest)", word_inches(report, fill->deepest));
	const char *deep = say(report, "%s %s deep%s", word_heading(&fill_words[fill->way]),
		word_inches(report, fill->soil_depth), mean);

	return fill->strip_depth == 0 ? deep : say(report, "%s, over %s of base within the wall %s "
		"more", deep, word_area(report, fill->strip_area),
		word_inches(report, fill->strip_depth));
}

static void print_group(const struct report *report, const struct fills *fills,
	const struct group *group)
{
	const struct fill *fill = &fills->list[group->members[0]];
	const char *soil = "Nothing is dug in.", *mulch = "";

	if (fill->order > 0)
		soil = say(report, "%s, %s in place. Order %s%s.", depth_words(report, fill),
			word_volume(report, fill->soil), word_volume(report, fill->order),
			part_words(report, fill));
	if (fill->mulch > 0)
		mulch = say(report, " Mulch %s deep, %s.", word_inches(report, fill->mulch_depth),
			word_volume(report, fill->mulch));
	print_lines(report, 0, 2, "%s: %s%s",
		group_title(report, &fill_table, fills->list, group, " alike, of each"), soil,
		mulch);
}

void print_fill(const struct report *report)
{
	const struct fills *fills = &report->takeoff->fills;
	struct groups groups;

	if (fills->count == 0)
		return;
	print_blank(report);
	groups = rows_groups(&fill_table, fills->list, fills->count);
	for (int i = 0; i < groups.count; i++)
		print_group(report, fills, &groups.list[i]);
	groups_fini(&groups);
	print_ordered(report, SECTION_FILL);
	print_explained(report, "Order: in place and what settles; mulch does not settle%s.",
		(report->takeoff->work.facts & FACT(AMENDED)) ?
		", nor does what is dug into beds at ground level" : "");
}
