#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

static int compare_lawns(const void *a, const void *b, const void *takeoff)
{
	const struct lawn *one = a, *other = b;
	int order = (int)one->cover - (int)other->cover;

	(void)takeoff;
	order = order ? order : (one->area > other->area) - (one->area < other->area);
	return order ? order : (one->topsoil_depth > other->topsoil_depth) -
		(one->topsoil_depth < other->topsoil_depth);
}

static int region_of(const struct takeoff *takeoff, int lawn)
{
	return takeoff->lawns[lawn].region;
}

static void lawn_row(struct table *table, const struct report *report, const struct group *group)
{
	const struct lawn *lawn = &report->takeoff->lawns[group->members[0]];

	word_group(table_cell(table), report, group, region_of);
	table_words(table, lawn->cover == COVER_TURF ? "turf" : "seed");
	show_area(table_cell(table), lawn->area, report->units);
	if (lawn->cover == COVER_SEED)
		show_weight(table_cell(table), lawn->seed, report->units);
	else
		table_words(table, "-");
	show_inches(table_cell(table), lawn->topsoil_depth, report->units);
	show_volume(table_cell(table), lawn->topsoil, report->units);
}

void print_lawn(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Lawn", COLUMN_WRAPS }, { "Cover", COLUMN_LEFT }, { "Area each", COLUMN_RIGHT },
		{ "Seed each", COLUMN_RIGHT }, { "Topsoil", COLUMN_RIGHT },
		{ "Volume each", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 6, 0);
	struct groups groups;

	if (takeoff->lawn_count == 0)
		return;
	page_heading(report->out, "Lawn");
	groups = groups_make(takeoff->lawns, takeoff->lawn_count, sizeof *takeoff->lawns,
		compare_lawns, NULL);
	for (int i = 0; i < groups.count; i++)
		lawn_row(&table, report, &groups.list[i]);
	groups_fini(&groups);
	table_print(&table, report->out);
	page_note(report->out, "Topsoil by area and depth, raked and rolled before the cover is laid; "
		"settlement is not allowed for. Spare turf is for trimming at the edges.");
}
