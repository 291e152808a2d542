#include "report/text/planting_beds.h"
#include "report/words/plant_words.h"
#include "report/words/sun_words.h"
#include "base/date.h"
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

/* The plants of a place that need its soil as deep as it is needed. */
static const char *deepest_words(const struct report *report, const struct planted_place *place)
{
	const struct planting *planting = &report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = place->from; i < place->end; i++) {
		const struct planting_row *row = &planting->list[i];

		if (row->count > 0 && planting->plants[row->kind].soil == row->bed_needs)
			text_print(&words, "%s%s", words.length ? ", " : "", row->name);
	}
	return say_text(report, &words);
}

static void print_soil(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Soil of", COLUMN_WRAPS }, { "Needed", COLUMN_RIGHT }, { "for", COLUMN_WRAPS },
		{ "There is", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, sizeof columns / sizeof *columns, 0);
	struct planting_beds beds;
	bool has_any = false;

	planting_beds_make(&beds, report);
	for (int i = 0; i < beds.alike.count && !stop_asked(); i++) {
		const struct group *group = &beds.alike.list[i];
		const struct planted_place *place = &beds.list[group->members[0]];
		const struct planting_row *row = &report->takeoff->planting.list[place->from];

		if (row->bed_needs == 0)
			continue;
		has_any = true;
		TABLE_ROW(&table, planting_beds_words(report, &beds, group),
			plain_inches(report, row->bed_needs), deepest_words(report, place),
			row->is_soil_known ? plain_inches(report, row->bed_soil) : "?");
	}
	if (has_any)
		print_blank(report);
	hand_table_print(&table, report->out);
	planting_beds_fini(&beds);
}

/* ---- By plant and month ---------------------------------------------------------------------- */

/* "March", "April to May", "November to January". */
static const char *months_words(const struct report *report, int from, int until)
{
	if (from == 0)
		return "No month is told";
	return from == until ? month_name(from) :
		say(report, "%s to %s", month_name(from), month_name(until));
}

/* "March to April: 2 Shrub rose, 24 Thyme." */
static void print_months(const struct report *report, int from, int until)
{
	const struct planting *planting = &report->takeoff->planting;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];

		if (sum->count > 0 && plant_first_month(sum) == from &&
		    plant_last_month(sum) == until)
			text_print(&words, "%s%s%c%s", words.length ? ", " : "",
				plain_count(report, sum->count), PAGE_TIE,
				tied(report, sum->name));
	}
	if (words.length > 0)
		print_lines(report, 0, 2, "%s: %s.", months_words(report, from, until),
			say_text(report, &words));
	else
		text_fini(&words);
}

/* By the first month, then by how many there are. */
static void print_by_month(const struct report *report)
{
	for (int from = 1; from <= MONTHS; from++)
		for (int more = 0; more < MONTHS; more++)
			print_months(report, from, (from - 1 + more) % MONTHS + 1);
	print_months(report, 0, 0);
}

void print_planting(const struct report *report)
{
	const struct planting *planting = &report->takeoff->planting;
	const char *unchecked = sun_unchecked_words(report->takeoff);

	if (!takeoff_has(report->takeoff, SUBJECT_PLANTS))
		return;
	print_section(report, "By place");
	print_by_place(report);
	print_soil(report);
	print_explained(report, "Counts are of plants as they stand: rows with half a spacing "
		"clear to the bed's inner face and to what stands there. Ground is that of the "
		"drifts within the inner face; by area: how many plants it alone would say.");
	print_section(report, "By plant");
	print_rows(report, &plant_table, planting->plants, planting->plant_count, 0, NULL);
	print_ordered(report, SECTION_PLANTS);
	if (unchecked)
		print_explained(report, "%s", unchecked);
	print_section(report, "By month");
	print_by_month(report);
}
