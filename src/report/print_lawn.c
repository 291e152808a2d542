#include "report/print.h"
#include "report/words.h"
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

static void lawn_row(struct table *table, const struct sheet *sheet, const struct group *group)
{
	const struct lawn *lawn = &sheet->takeoff->lawns[group->members[0]];

	word_group(table_cell(table), sheet, group, region_of);
	table_words(table, lawn->cover == COVER_TURF ? "turf" : "seed");
	show_area(table_cell(table), lawn->area, sheet->units);
	if (lawn->cover == COVER_SEED)
		show_weight(table_cell(table), lawn->seed, sheet->units);
	else
		table_words(table, "-");
	show_inches(table_cell(table), lawn->topsoil_depth, sheet->units);
	show_volume(table_cell(table), lawn->topsoil, sheet->units);
}

void print_lawn(const struct sheet *sheet)
{
	static const struct table_column columns[] = {
		{ "Lawn", COLUMN_WRAPS }, { "Cover", COLUMN_LEFT }, { "Area each", COLUMN_RIGHT },
		{ "Seed each", COLUMN_RIGHT }, { "Topsoil", COLUMN_RIGHT },
		{ "Volume each", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = sheet->takeoff;
	struct table table = table_start(columns, 6, 0);
	struct groups groups;

	if (takeoff->lawn_count == 0)
		return;
	page_heading(sheet->out, "Lawn");
	groups = groups_make(takeoff->lawns, takeoff->lawn_count, sizeof *takeoff->lawns,
		compare_lawns, NULL);
	for (int i = 0; i < groups.count; i++)
		lawn_row(&table, sheet, &groups.list[i]);
	groups_fini(&groups);
	table_print(&table, sheet->out);
	page_note(sheet->out, "Topsoil by area and depth, raked and rolled before the cover is laid; "
		"settlement is not allowed for. Spare turf is for trimming at the edges.");
}
