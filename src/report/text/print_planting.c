#include "report/text/planting_beds.h"
#include "report/words/plant_words.h"
#include "base/stop.h"

/* ---- By place -------------------------------------------------------------------------------- */

static void add_group(struct hand_table *table, const struct report *report,
	const struct planting_beds *beds, const struct group *group)
{
	const struct planted_place *place = &beds->list[group->members[0]];
	const char *words = planting_beds_words(report, beds, group);

	for (int i = place->from; i < place->end; i++) {
		const struct planting_row *row = &report->takeoff->planting.list[i];
		bool has_drift = row->in_drifts > 0;

		if (row->count == 0)
			continue;
		TABLE_ROW(table, words, say(report, "%c", row->letter), row->name,
			row->specimens ? plain_count(report, row->specimens) : "-",
			has_drift ? plain_count(report, row->in_drifts) : "-",
			has_drift ? plain_area(report, row->area) : "-",
			has_drift ? plain_decimal(report, row->by_area, 1) : "-");
		words = "";
	}
}

static void print_by_place(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "In each of", COLUMN_WRAPS }, { "", COLUMN_LEFT }, { "Plant", COLUMN_WRAPS },
		{ "Single", COLUMN_RIGHT }, { "In drifts", COLUMN_RIGHT },
		{ "Ground", COLUMN_RIGHT }, { "By area: plants", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, sizeof columns / sizeof *columns, 0);
	struct planting_beds beds;

	planting_beds_make(&beds, report);
	for (int i = 0; i < beds.alike.count && !stop_asked(); i++)
		add_group(&table, report, &beds, &beds.alike.list[i]);
	hand_table_print(&table, report->out);
	planting_beds_fini(&beds);
}

/* ---- By plant and month ---------------------------------------------------------------------- */

/* month: 0: those of which none is told. */
static bool is_month_of(const struct plant_sum *sum, int month)
{
	int from = sum->from ? sum->from : sum->until, until = sum->until ? sum->until : from;

	if (sum->count == 0 || from == 0 || month == 0)
		return sum->count > 0 && from == month;
	return from <= until ? month >= from && month <= until : month >= from || month <= until;
}

/* "March: 2 Shrub rose, 24 Thyme." */
static void print_month(const struct report *report, int month)
{
	const struct planting *planting = &report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];

		if (is_month_of(sum, month))
			text_print(&words, "%s%s%c%s", words.length ? ", " : "",
				plain_count(report, sum->count), PAGE_TIE,
				tied(report, sum->name));
	}
	if (words.length > 0)
		print_lines(report, 0, 2, "%s: %s.", month ? month_name(month) : "No month is told",
			say_text(report, &words));
	else
		text_fini(&words);
}

void print_planting(const struct report *report)
{
	const struct planting *planting = &report->takeoff->planting;

	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	print_section(report, "By place");
	print_by_place(report);
	print_explained(report, "Counts are of plants as they stand: rows with half a spacing "
		"clear to the bed's inner face and to what stands there. Ground is that of the "
		"drifts within the inner face; by area: how many plants it alone would say.");
	print_section(report, "By plant");
	print_rows(report, &plant_table, planting->plants, planting->plant_count, 0, NULL);
	print_ordered(report, SECTION_PLANTS);
	print_section(report, "By month");
	for (int month = 1; month <= 12; month++)
		print_month(report, month);
	print_month(report, 0);
}
