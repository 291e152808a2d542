#include "report/text/print.h"

/* What all readings are. */
static void print_manner(const struct report *report)
{
	print_lines(report, 0, 0, "Readings of a staff held there: how far down from the level "
		"string line; with a minus, how far up from it. Course 1: its top.");
	print_explained(report, "Walls are level, ground falls: the first course lies so deep that "
		"the whole embed is in the ground where that is lowest. Where it rises the wall "
		"stands deeper and shows less; with a minus the ground stands over it. %sThe "
		"wall's top is its cap's, where it has one. Common practice, no published source.",
		report->takeoff->levelling.step == 0 ? "Soil and dig are counted with the embed "
		"alone, since no drops are measured. " : "The dig, what goes back outside and the "
		"soil are counted so. ");
}

/* "14 5/16 in, 8 5/16 in": what is the same at all corners of a bed. */
static const char *bed_words(const struct report *report, const void *row, const void *context)
{
	const struct bed_corner *corner = row;
	const struct wall_level *level = wall_level_of(context, corner->region);

	return say(report, "%s, %s", word_inches(report, level->base),
		word_inches(report, level->first));
}

void print_wall_levels(const struct report *report)
{
	const struct wall_levels *levels = &report->takeoff->wall_levels;

	if (levels->count == 0)
		return;
	print_section(report, "Levels of the walls");
	print_manner(report);
	print_blank(report);
	print_rows(report, &wall_level_table, levels->list, levels->count, 0, NULL);
	print_blank(report);
	print_rows(report, &bed_corner_table, levels->corners, levels->corner_count, 0,
		&(struct last_column){ "Base's top, course 1", bed_words, levels });
}
