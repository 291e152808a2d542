/* What watering takes, and its figures. */
#include "base/measure.h"
#include "takeoff/watering/watering.h"

static void add_each(struct item_list *items, enum good good, int64_t count, struct note note)
{
	if (count > 0)
		item_add(items, &(struct item){ .good = good, .section = SECTION_WATER,
			.laid = (double)count, .order = (double)count, .note = note });
}

/* Both ends of a line, and between them so far apart at most. */
static int64_t stakes_of(const struct watering *watering, nm apart)
{
	int64_t stakes = 0;

	for (int i = 0; i < watering->count; i++) {
		const struct drip *drip = &watering->list[i].drip;

		for (int j = 0; j < drip->count; j++) {
			const struct chord *chord = &drip->lines[j].chord;

			stakes += (chord->to - chord->from + apart - 1) / apart + 1;
		}
	}
	return stakes;
}

void watering_items(struct item_list *items, const struct watering *watering)
{
	const struct note none = { .kind = NOTE_NONE }, licence = { .kind = NOTE_LICENCE };
	nm apart = watering->stakes_apart;

	if (watering->count == 0)
		return;
	item_add_bare(items, GOOD_DRIP_TUBE, SECTION_WATER, metres(watering->tube));
	item_add_bare(items, GOOD_HEADER_TUBE, SECTION_WATER, metres(watering->header));
	item_add_bare(items, GOOD_WATER_SLEEVE, SECTION_WATER, metres(watering->sleeve_length));
	add_each(items, GOOD_WATER_TEE, watering->tees, none);
	add_each(items, GOOD_WATER_END, watering->ends, none);
	add_each(items, GOOD_WATER_STAKE, stakes_of(watering, apart),
		(struct note){ .kind = NOTE_STAKE, .lengths = { apart } });
	add_each(items, GOOD_WATER_VALVE, watering->zone_count, none);
	add_each(items, GOOD_WATER_TIMER, 1, none);
	add_each(items, GOOD_WATER_FILTER, 1, none);
	add_each(items, GOOD_WATER_REGULATOR, 1, none);
	add_each(items, GOOD_WATER_BACKFLOW, 1, licence);
}

/* ---- Figures --------------------------------------------------------------------------------- */

const struct word month_words[MONTHS] = {
	{ "january", "January", "January" }, { "february", "February", "February" },
	{ "march", "March", "March" }, { "april", "April", "April" }, { "may", "May", "May" },
	{ "june", "June", "June" }, { "july", "July", "July" }, { "august", "August", "August" },
	{ "september", "September", "September" }, { "october", "October", "October" },
	{ "november", "November", "November" }, { "december", "December", "December" },
};

static const struct figure line_figures[] = {
	{ "across_m", NULL, NULL, FIELD(LENGTH, drip_line, across), .flags = ROW_KEY },
	{ "from_m", NULL, NULL, FIELD(LENGTH, drip_line, chord.from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(LENGTH, drip_line, chord.to) },
	{ "emitters", NULL, NULL, FIELD(COUNT, drip_line, emitters) },
};
static const struct figure_table line_table = FIGURE_TABLE(drip_line, line_figures);

static const struct figure branch_figures[] = {
	{ "leaves_along_m", NULL, NULL, FIELD(LENGTH, header_branch, leaves.along) },
	{ "leaves_across_m", NULL, NULL, FIELD(LENGTH, header_branch, leaves.across) },
	{ "at_m", NULL, NULL, FIELD(LENGTH, header_branch, at) },
	{ "from_m", NULL, NULL, FIELD(LENGTH, header_branch, across.from) },
	{ "to_m", NULL, NULL, FIELD(LENGTH, header_branch, across.to) },
};
static const struct figure_table branch_table = FIGURE_TABLE(header_branch, branch_figures);

static const struct figure bed_figures[] = {
	{ "bed", NULL, "Bed", FIELD(REGION, watered, region), .flags = ROW_KEY | PANEL_TITLE },
	{ .heading = "Beds", .kind = FIGURE_ALIKE },
	{ "lines_go_down", NULL, NULL, FIELD(TRUTH, watered, drip.ground.is_upright) },
	{ NULL, "Lines", "Lines", FIELD(COUNT, watered, line_count) },
	{ "lines", NULL, NULL, FIELDS(ROWS, watered, drip.lines, line_count),
		.table = &line_table },
	{ "tube_m", "Tube", "Drip tube", FIELD(LENGTH, watered, drip.length) },
	{ "emitters", "Emitters", "Emitters", FIELD(COUNT, watered, drip.emitters) },
	{ "flow_m3_h", "Flow", "Flow", FIELD(FLOW, watered, flow) },
	{ "area_m2", "Area", NULL, FIELD(AREA, watered, area) },
	{ "week_m3", NULL, "Asks for, a week", FIELD(WATER, watered, water) },
	{ "week_minutes", NULL, NULL, FIELD(NUMBER, watered, minutes) },
	{ "gets_m3", NULL, "Gets, a week", FIELD(WATER, watered, gets) },
	{ "over_m3", NULL, NULL, FIELD(WATER, watered, over) },
	{ "header_m", NULL, NULL, FIELD(LENGTH, watered, within), .flags = ALIKE_ANYWAY },
	{ "header", NULL, NULL, FIELDS(ROWS, watered, header.branches, header.count),
		.table = &branch_table, .flags = ALIKE_ANYWAY },
	{ "is_reached", NULL, NULL, FIELD(TRUTH, watered, is_reached) },
};
const struct figure_table watered_table = FIGURE_TABLE(watered, bed_figures);

static const struct figure week_figures[] = {
	{ "bed", NULL, NULL, FIELD(REGION, water_week, region), .flags = ROW_KEY },
	{ "month", NULL, NULL, FIELD(WORD, water_week, month), .words = month_words,
		.flags = ROW_KEY },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, water_week, depth) },
	{ "water_m3", NULL, NULL, FIELD(WATER, water_week, water) },
	{ "gets_m3", NULL, NULL, FIELD(WATER, water_week, gets) },
};
const struct figure_table water_week_table = FIGURE_TABLE(water_week, week_figures);

static const struct figure zone_week_figures[] = {
	{ "zone", NULL, NULL, FIELD(COUNT, zone_week, zone), .flags = ROW_KEY },
	{ "month", NULL, NULL, FIELD(WORD, zone_week, month), .words = month_words,
		.flags = ROW_KEY },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, zone_week, depth) },
	{ "minutes", NULL, NULL, FIELD(COUNT, zone_week, minutes) },
	{ "run_minutes", NULL, NULL, FIELD(COUNT, zone_week, run) },
	{ "water_m3", NULL, NULL, FIELD(WATER, zone_week, water) },
};
const struct figure_table zone_week_table = FIGURE_TABLE(zone_week, zone_week_figures);

static const struct figure month_figures[] = {
	{ "month", NULL, NULL, FIELD(WORD, water_month, month), .words = month_words,
		.flags = ROW_KEY },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, water_month, depth) },
	{ "minutes", NULL, NULL, FIELD(COUNT, water_month, minutes) },
	{ "water_m3", NULL, NULL, FIELD(WATER, water_month, water) },
};
const struct figure_table water_month_table = FIGURE_TABLE(water_month, month_figures);

static const struct figure sum_figures[] = {
	{ "supply_m3_h", NULL, NULL, FIELD(FLOW, watering, supply) },
	{ "supply_is_measured", NULL, NULL, FIELD(TRUTH, watering, is_measured) },
	{ "zone_most_m3_h", NULL, "Most in a zone", FIELD(FLOW, watering, most) },
	{ "runs_a_week", NULL, "Times a week", FIELD(COUNT, watering, runs) },
	{ "emitters", NULL, "Emitters", FIELD(COUNT, watering, emitters),
		.flags = ROW_NEEDED },
	{ "tube_m", NULL, "Drip tube", FIELD(LENGTH, watering, tube) },
	{ "flow_m3_h", NULL, "All at once", FIELD(FLOW, watering, flow) },
	{ "asked_m3", NULL, "Asked for, a week", FIELD(WATER, watering, asked) },
	{ "week_m3", NULL, "Water a week", FIELD(WATER, watering, water) },
	{ "week_minutes", NULL, "Minutes a week", FIELD(COUNT, watering, minutes) },
	{ "has_tap", NULL, NULL, FIELD(TRUTH, watering, has_tap) },
	{ "trench_m", NULL, "From the tap", FIELD(LENGTH, watering, trench),
		.flags = PANEL_OPTIONAL },
	{ "trench_width_m", NULL, NULL, FIELD(LENGTH, watering, trench_width) },
	{ "trench_depth_m", NULL, NULL, FIELD(LENGTH, watering, trench_depth) },
	{ NULL, NULL, "Trench, wide", FIELD(INCHES, watering, trench_width),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Trench, deep", FIELD(INCHES, watering, trench_depth),
		.flags = PANEL_OPTIONAL },
	{ "trench_m3", NULL, "Trench, dug", FIELD(VOLUME, watering, trench_dug),
		.flags = PANEL_OPTIONAL },
	{ "header_m", NULL, "Header tube", FIELD(LENGTH, watering, header) },
	{ "sleeves", NULL, NULL, FIELDS(ROWS, watering, sleeves, sleeve_count),
		.table = &sleeve_table },
	{ "walls_passed", NULL, NULL, FIELD(COUNT, watering, walls) },
	{ "sleeve_m", NULL, "Sleeves", FIELD(LENGTH, watering, sleeve_length),
		.flags = PANEL_OPTIONAL },
};
const struct figure_table watering_table = FIGURE_TABLE(watering, sum_figures);
