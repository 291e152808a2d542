/* Laws of the table of attributes. */
#include "plot/attribute.h"
#include "support/runner.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

START_TEST(a_row_has_a_keyword_a_label_and_its_own_block)
{
	enum attribute a = (enum attribute)_i;
	const struct attribute_row *row = attribute_row(a);
	enum block_kind block = attribute_block(a);

	ck_assert_ptr_nonnull(row->keyword);
	for (const char *c = row->keyword; *c; c++)
		ck_assert_msg(islower((unsigned char)*c) || *c == '-' ||
			(*c == ' ' && islower((unsigned char)c[1])), "%s", row->keyword);
	ck_assert_str_ne(row->keyword, "note");
	ck_assert_ptr_nonnull(row->label);
	ck_assert(isupper((unsigned char)row->label[0]));
	ck_assert_msg(a >= block_first(block) && a <= block_last(block), "%s", row->keyword);
}
END_TEST

START_TEST(a_keyword_is_there_once_in_its_block)
{
	enum attribute a = (enum attribute)_i, found;
	const struct attribute_row *row = attribute_row(a);
	enum block_kind block = attribute_block(a);

	ck_assert(attribute_find(block, row->keyword, strlen(row->keyword), &found));
	ck_assert_int_eq(found, a == FENCE_LEAF_FROM ? FENCE_LEAF : a);
	for (enum attribute other = block_first(block); other <= block_last(block); other++)
		ck_assert_msg(found != a || other == a || other == FENCE_LEAF_FROM ||
			strcmp(attribute_row(other)->keyword, row->keyword) != 0,
			"%s twice", row->keyword);
	/* Not in part, and nothing beyond the length is looked at. */
	ck_assert(!attribute_find(block, row->keyword, strlen(row->keyword) - 1, &found));
	ck_assert(!attribute_find(block, row->keyword, 0, &found));
}
END_TEST

START_TEST(keywords_of_the_head_are_none_of_the_words_that_open_a_block)
{
	enum attribute found;

	for (enum block_kind block = BLOCK_ALLOW; block <= BLOCK_PLANT; block++)
		ck_assert(!attribute_find(BLOCK_HEAD, block_keyword(block),
			strlen(block_keyword(block)), &found));
	ck_assert_ptr_null(block_keyword(BLOCK_HEAD));
	ck_assert(!attribute_find(BLOCK_HEAD, "ground", 6, &found));
	ck_assert(!attribute_find(BLOCK_PATH, "courses", 7, &found));
}
END_TEST

START_TEST(blocks_share_out_the_whole_table)
{
	int next = 0;

	for (enum block_kind block = BLOCK_HEAD; block <= BLOCK_PLANT; block++) {
		ck_assert_int_eq(block_first(block), next);
		ck_assert_uint_eq(block_attributes(block),
			(size_t)(block_last(block) - block_first(block)) + 1);
		next = (int)block_last(block) + 1;
	}
	ck_assert_int_eq(next, ATTRIBUTES);
}
END_TEST

/* Each on one row of a small screen, and none said of two things. */
START_TEST(each_has_a_meaning_of_its_own_in_a_sentence)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	size_t length = row->meaning ? strlen(row->meaning) : 0;

	ck_assert_msg(length > strlen(row->label), "%s", row->keyword);
	ck_assert_msg(length <= MEANING_MOST, "%s: %zu", row->keyword, length);
	ck_assert_msg(row->meaning[0] >= 'A' && row->meaning[0] <= 'Z' &&
		row->meaning[length - 1] == '.', "%s: %s", row->keyword, row->meaning);
	for (int other = 0; other < _i; other++)
		ck_assert_msg(strcmp(row->meaning,
			attribute_row((enum attribute)other)->meaning) != 0, "%s", row->meaning);
}
END_TEST

/* A default is a value that could be set: it is written and read as itself. */
START_TEST(a_default_is_in_range_or_its_absence_explained)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	struct text text = TEXT_EMPTY;
	struct value again;
	struct diag d;

	ck_assert_msg(row->preset.set + (row->derived != NULL) + row->required == 1, "%s",
		row->keyword);
	if (!row->preset.set)
		return;
	value_write(&text, &row->rule, &row->preset, UNITS_IMPERIAL);
	struct scan s = scan_start(text.bytes, text.length, 1);
	ck_assert_msg(value_scan(&s, &row->rule, UNITS_IMPERIAL, &again, &d), "%s: %s",
		row->keyword, d.expected);
	ck_assert(value_equal(row->rule.kind, &row->preset, &again));
	value_fini(row->rule.kind, &again);
	text_fini(&text);
}
END_TEST

/* Common practice, no published source, unless attribute_source names one; each as a person would
 * write it, so that a slip in the table's arithmetic shows. */
static const struct {
	enum attribute attribute;
	const char *text, *metric; /* NULL: the same value in metric plots */
} defaults[] = {
	{ HEAD_NORTH, "0", NULL },
	{ HEAD_MIRROR, "off", NULL },
	{ ALLOW_KERF, "1/8 in", "3 mm" },
	{ ALLOW_FIT, "1/8 in", "3 mm" },
	{ ALLOW_SHORTEST, "4 in", "100 mm" },
	{ ALLOW_INSIDE, "8 in", "200 mm" },
	{ ALLOW_BREAKAGE, "5 %", NULL },
	{ ALLOW_BEADS, "2", NULL },
	{ ALLOW_CARTRIDGE, "30 ft", "9 m" },
	{ ALLOW_ADHESIVE_SPARE, "10 %", NULL },
	{ ALLOW_TOPSOIL, "0 in", NULL },
	{ ALLOW_SOD, "2 in", "50 mm" },
	{ ALLOW_SUBSOIL, "loam", NULL },
	{ ALLOW_FROST, "0 in", NULL },
	{ ALLOW_HELD, "none", NULL },
	{ ALLOW_TAMPER, "plate", NULL },
	{ ALLOW_SWELL_TOPSOIL, "25 %", NULL },
	{ ALLOW_SWELL_LOAM, "25 %", NULL },
	{ ALLOW_SWELL_CLAY, "40 %", NULL },
	{ ALLOW_SWELL_SAND, "12 %", NULL },
	{ ALLOW_SHRINK, "0.9", NULL },
	{ ALLOW_SLEEVE_PAST, "1 ft", "300 mm" },
	{ ALLOW_COMPACTION_FINES, "1.2", NULL },
	{ ALLOW_COMPACTION_CLEAN, "1.05", NULL },
	{ ALLOW_STONE_SPARE, "5 %", NULL },
	{ ALLOW_SEED, "6 lb/1000 sq ft", "30 g/m2" },
	{ ALLOW_DENSITY_STONE, "2700 lb/cu yd", "1600 kg/m3" },
	{ ALLOW_DENSITY_SOIL, "2000 lb/cu yd", "1190 kg/m3" },
	{ ALLOW_DENSITY_COMPOST, "1100 lb/cu yd", "650 kg/m3" },
	{ ALLOW_DENSITY_MULCH, "600 lb/cu yd", "355 kg/m3" },
	{ ALLOW_DENSITY_SPOIL, "2400 lb/cu yd", "1425 kg/m3" },
	{ ALLOW_BARROW_VOLUME, "6 cu ft", "85 L" },
	{ ALLOW_BARROW_WEIGHT, "300 lb", "130 kg" },
	{ ALLOW_PICKUP_WEIGHT, "1500 lb", "680 kg" },
	{ ALLOW_TRUCK_VOLUME, "10 cu yd", "6 m3" },
	{ ALLOW_TRUCK_WEIGHT, "20000 lb", "9000 kg" },
	{ ALLOW_TRUCK_STEP, "0.5 cu yd", "0.25 m3" },
	{ ALLOW_FABRIC_WIDTH, "6 ft", "2 m" },
	{ ALLOW_FABRIC_LENGTH, "100 ft", "25 m" },
	{ ALLOW_FABRIC_LAP, "1 ft", "300 mm" },
	{ ALLOW_FABRIC_END_LAP, "1 ft", "300 mm" },
	{ ALLOW_FABRIC_OFFCUT, "3 ft", "1 m" },
	{ ALLOW_FABRIC_PINS, "3 ft", "1 m" },
	{ ALLOW_LINER_TURN, "6 in", "150 mm" },
	{ ALLOW_LINER_WIDTH, "4 ft", "1200 mm" },
	{ ALLOW_LINER_LENGTH, "50 ft", "15 m" },
	{ ALLOW_LINER_LAP, "1 ft", "300 mm" },
	{ ALLOW_EDGING_PIECE, "8 ft", "2400 mm" },
	{ ALLOW_EDGING_SPIKE, "2 ft", "600 mm" },
	{ ALLOW_CONCRETE_BAG, "0.6 cu ft", "9.5 L" },
	{ ALLOW_POST_STOCK, "1 ft", "300 mm" },
	{ ALLOW_PLANT_SPARE, "5 %", NULL },
	{ ALLOW_EMITTER_RATE, "0.6 gal/h", "2.3 L/h" },
	{ ALLOW_SUPPLY, "240 gal/h", "900 L/h" },
	{ ALLOW_SUPPLY_USED, "75 %", NULL },
	{ ALLOW_LINE_LIMIT, "200 ft", "60 m" },
	{ ALLOW_LINE_FLOW, "200 gal/h", "760 L/h" },
	{ ALLOW_WATER_RUNS, "2", NULL },
	/* 1 to 1.5 in: Penn State Extension, 2013, as quoted, title not noted. */
	{ ALLOW_WATER_WEEK, "1 in", "25 mm" },
	{ ALLOW_CREW, "1", NULL },
	{ ALLOW_DAY, "8", NULL },
	/* University of Nebraska Extension, as quoted, title and year not noted. */
	{ ALLOW_SUN_FULL, "6", NULL }, { ALLOW_SUN_PART, "4", NULL },
	{ ALLOW_SUN_LEAST, "2", NULL },
	{ ALLOW_PATH_CLEAR, "3 ft", "900 mm" },
	{ ALLOW_BARROW_CLEAR, "2 ft", "600 mm" },
	{ ALLOW_ARM, "2 ft", "600 mm" },
	{ ALLOW_LAWN_CLEAR, "2 ft", "600 mm" },
	{ ALLOW_LAWN_SOIL, "2 in", "50 mm" },
	{ ALLOW_SOIL_LEAST, "8 in", "200 mm" },
	{ ALLOW_FLOOR_STONE, "40 %", NULL },
	{ ALLOW_WALL_ABOVE, "2 ft", "600 mm" },
	{ ALLOW_WALL_FOOTING, "4 ft", "1200 mm" },
	{ ALLOW_SLENDER, "2.5", NULL },
	{ ALLOW_SLENDER_LONG, "2", NULL },
	{ ALLOW_FIXTURE_SLENDER, "3", NULL },
	{ ALLOW_PLANT_TALL, "6", NULL },
	{ ALLOW_GATE_CLEAR, "3 ft", "900 mm" },
	{ ALLOW_FENCE_HIGH, "6 ft", "1800 mm" },
	{ ALLOW_FENCE_GAP, "4 in", "100 mm" },
	{ ALLOW_HOUSE_CLEAR, "6 in", "150 mm" },
	{ ALLOW_SERVICE_NEAR, "2 ft", "600 mm" },
	{ ALLOW_FALL_NEAR, "10 ft", "3 m" },
	{ ALLOW_FALL_PATH, "2 %", NULL },
	{ ALLOW_FALL_GROUND, "5 %", NULL },
	{ BED_BUILD, "raised", NULL },
	{ BED_BLOCK, "16 in x 8 in x 6 in", "400 mm x 200 mm x 150 mm" },
	{ BED_JOINT, "0 in", NULL },
	{ BED_DENSITY, "135 lb/cu ft", "2150 kg/m3" },
	{ BED_COURSES, "3", NULL },
	{ BED_CAP, "none", NULL },
	{ BED_INSIDE, "undug", NULL },
	{ BED_REACH, "6 in", "150 mm" },
	{ BED_REACH_IN, "2 in", "50 mm" },
	{ BED_LINER, "yes", NULL },
	{ BED_FREEBOARD, "1 1/2 in", "40 mm" },
	{ BED_MULCH, "2 in", "50 mm" },
	{ BED_MIX, "topsoil 1, compost 1", NULL },
	{ BED_PREPARE, "8 in", "200 mm" },
	{ BED_AMEND, "2 in", "50 mm" },
	{ BED_REPLACE, "no", NULL },
	{ BED_WATER, "none", NULL },
	{ BED_DRIP_ROW, "1 ft", "300 mm" },
	{ BED_DRIP_EMITTER, "1 ft", "300 mm" },
	{ PATH_SURFACE, "2 in", "50 mm" },
	{ PATH_STONE, "fines", NULL },
	{ PATH_FABRIC, "yes", NULL },
	{ PATH_EDGING, "yes", NULL },
	{ LAWN_COVER, "turf", NULL },
	{ LAWN_TOPSOIL, "4 in", "100 mm" },
	{ LAWN_THICKNESS, "3/4 in", "20 mm" },
	{ FIXTURE_HEIGHT, "0 in", NULL },
	{ FIXTURE_BASE, "4 in", "100 mm" },
	{ FIXTURE_DIAL, "no", NULL },
	{ FENCE_HEIGHT, "3 ft", "900 mm" },
	{ FENCE_SECTION, "8 ft", "2400 mm" },
	{ FENCE_POST, "3 1/2 in", "90 mm" },
	{ FENCE_GAP, "2 in", "50 mm" },
	{ FENCE_GRAVEL, "6 in", "150 mm" },
	{ FENCE_GATE_GAPS, "1 1/4 in", "30 mm" },
	{ FENCE_LEAF, "4 ft", "1200 mm" },
	{ FENCE_LEAF_FROM, "bought", NULL },
	{ SERVICE_BELOW, "4 in", "100 mm" },
	{ PLANT_SPACING, "1 ft", "300 mm" }, { PLANT_PATTERN, "triangular", NULL },
};

START_TEST(a_default_is_what_the_manual_says)
{
	enum attribute a = defaults[_i].attribute;
	const char *metric = defaults[_i].metric;
	const struct attribute_row *row = attribute_row(a);
	struct text text = TEXT_EMPTY;

	ck_assert(row->preset.set);
	value_write(&text, &row->rule, attribute_preset(a, UNITS_IMPERIAL), UNITS_IMPERIAL);
	ck_assert_str_eq(text.bytes, defaults[_i].text);
	text_fini(&text);
	ck_assert_int_eq(attribute_is_rounder(a), metric != NULL);
	if (!metric) {
		ck_assert(attribute_preset(a, UNITS_METRIC) == &row->preset);
		return;
	}
	value_write(&text, &row->rule, attribute_preset(a, UNITS_METRIC), UNITS_METRIC);
	ck_assert_str_eq(text.bytes, metric);
	text_fini(&text);
}
END_TEST

START_TEST(all_other_attributes_have_no_default)
{
	for (enum attribute a = HEAD_TITLE; (int)a < ATTRIBUTES; a++) {
		bool is_listed = false;

		for (int i = 0; i < COUNT(defaults); i++)
			is_listed = is_listed || defaults[i].attribute == a;
		ck_assert_msg(attribute_row(a)->preset.set == is_listed, "%s",
			attribute_row(a)->keyword);
		ck_assert_msg(is_listed || !attribute_row(a)->source, "%s",
			attribute_row(a)->keyword);
	}
}
END_TEST

/* In millimetres, and at most a fifth off: rolls of 100 ft are sold as 25 m. Common practice, no
 * published source. */
START_TEST(a_rounder_length_is_near_the_imperial_one)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	nm preset = row->preset.as.length, metric = row->metric.as.length;

	if (row->rule.kind != VALUE_LENGTH || !row->metric.set)
		return;
	ck_assert_int_eq(metric % NM_PER_MM, 0);
	ck_assert_msg(5 * llabs(metric - preset) <= preset, "%s", row->keyword);
}
END_TEST

/* What a source says of inches is no source of a rounder value. */
START_TEST(only_the_default_that_a_source_has_names_it)
{
	ck_assert_str_eq(attribute_source(ALLOW_CARTRIDGE, UNITS_IMPERIAL),
		attribute_row(ALLOW_CARTRIDGE)->source);
	ck_assert_ptr_null(attribute_source(ALLOW_CARTRIDGE, UNITS_METRIC));
	ck_assert_ptr_null(attribute_source(ALLOW_KERF, UNITS_IMPERIAL));
	ck_assert_str_eq(attribute_derived(FENCE_RAILS, UNITS_IMPERIAL), "2, 3 above 4 ft");
	ck_assert_str_eq(attribute_derived(FENCE_RAILS, UNITS_METRIC), "2, 3 above 1.2 m");
	ck_assert_str_eq(attribute_derived(FENCE_HOLE, UNITS_METRIC),
		attribute_row(FENCE_HOLE)->derived);
	ck_assert_ptr_null(attribute_derived(ALLOW_KERF, UNITS_METRIC));
}
END_TEST

/* Least and most, as a person would write them; "" where the attribute has no such range. */
static const struct {
	enum attribute attribute;
	const char *least, *most;
} ranges[] = {
	{ HEAD_CELL, "1 in", "10 ft" }, { HEAD_NORTH, "0", "359.999999" },
	{ HEAD_SITE, "-66", "66" },
	{ ALLOW_KERF, "0 in", "1 in" }, { ALLOW_FIT, "0 in", "1 in" },
	{ ALLOW_SHORTEST, "0 in", "1 m" },
	{ ALLOW_INSIDE, "0 in", "1 m" }, { ALLOW_BREAKAGE, "0 %", "100 %" },
	{ ALLOW_SETTLEMENT, "0 %", "100 %" }, { ALLOW_BEADS, "1", "4" },
	{ ALLOW_CARTRIDGE, "1 in", "1000 m" },
	{ ALLOW_ADHESIVE_SPARE, "0 %", "100 %" },
	{ ALLOW_TOPSOIL, "0 in", "2 m" }, { ALLOW_SOD, "0 in", "2 m" },
	{ ALLOW_FROST, "0 in", "2 m" },
	{ ALLOW_SWELL_TOPSOIL, "0 %", "100 %" }, { ALLOW_SWELL_LOAM, "0 %", "100 %" },
	{ ALLOW_SWELL_CLAY, "0 %", "100 %" }, { ALLOW_SWELL_SAND, "0 %", "100 %" },
	{ ALLOW_SHRINK, "0.5", "1" },
	{ ALLOW_COMPACTION_FINES, "1", "2" }, { ALLOW_COMPACTION_CLEAN, "1", "2" },
	{ ALLOW_STONE_SPARE, "0 %", "100 %" }, { ALLOW_TURF_SPARE, "0 %", "100 %" },
	{ ALLOW_FABRIC_WIDTH, "1 ft", "10 m" }, { ALLOW_FABRIC_LENGTH, "1 m", "1000 m" },
	{ ALLOW_FABRIC_LAP, "0 in", "3 ft" }, { ALLOW_FABRIC_END_LAP, "0 in", "3 ft" },
	{ ALLOW_FABRIC_OFFCUT, "1 in", "10 m" }, { ALLOW_FABRIC_PINS, "1 in", "10 m" },
	{ ALLOW_LINER_TURN, "0 in", "1 m" }, { ALLOW_EDGING_PIECE, "1 in", "30 m" },
	{ ALLOW_EDGING_SPIKE, "1 in", "10 m" }, { ALLOW_POST_STOCK, "1 in", "3 m" },
	{ ALLOW_LINER_WIDTH, "1 ft", "10 m" }, { ALLOW_LINER_LENGTH, "1 m", "1000 m" },
	{ ALLOW_LINER_LAP, "0 in", "3 ft" }, { ALLOW_CREW, "1", "50" }, { ALLOW_DAY, "1", "24" },
	{ ALLOW_SUPPLY_USED, "1 %", "100 %" }, { ALLOW_LINE_LIMIT, "1 m", "1000 m" },
	{ ALLOW_WATER_RUNS, "1", "14" }, { ALLOW_WATER_WEEK, "0 in", "500 mm" },
	{ ALLOW_WATER_JANUARY, "0 in", "500 mm" }, { ALLOW_WATER_FEBRUARY, "0 in", "500 mm" },
	{ ALLOW_WATER_MARCH, "0 in", "500 mm" }, { ALLOW_WATER_APRIL, "0 in", "500 mm" },
	{ ALLOW_WATER_MAY, "0 in", "500 mm" }, { ALLOW_WATER_JUNE, "0 in", "500 mm" },
	{ ALLOW_WATER_JULY, "0 in", "500 mm" }, { ALLOW_WATER_AUGUST, "0 in", "500 mm" },
	{ ALLOW_WATER_SEPTEMBER, "0 in", "500 mm" },
	{ ALLOW_WATER_OCTOBER, "0 in", "500 mm" },
	{ ALLOW_WATER_NOVEMBER, "0 in", "500 mm" }, { ALLOW_WATER_DECEMBER, "0 in", "500 mm" },
	{ BED_DRIP_ROW, "1 in", "3 m" }, { BED_DRIP_EMITTER, "1 in", "3 m" },
	{ ALLOW_SUN_FULL, "0", "24" }, { ALLOW_SUN_PART, "0", "24" },
	{ ALLOW_SUN_LEAST, "0", "24" },
	{ ALLOW_PATH_CLEAR, "0 in", "10 m" }, { ALLOW_BARROW_CLEAR, "0 in", "10 m" },
	{ ALLOW_ARM, "0 in", "10 m" }, { ALLOW_LAWN_CLEAR, "0 in", "10 m" },
	{ ALLOW_LAWN_SOIL, "0 in", "10 m" }, { ALLOW_SOIL_LEAST, "0 in", "10 m" },
	{ ALLOW_FLOOR_STONE, "0 %", "100 %" }, { ALLOW_WALL_ABOVE, "0 in", "10 m" },
	{ ALLOW_WALL_FOOTING, "0 in", "10 m" }, { ALLOW_SLENDER, "0.5", "20" },
	{ ALLOW_SLENDER_LONG, "0.5", "20" }, { ALLOW_FIXTURE_SLENDER, "0.5", "20" },
	{ ALLOW_PLANT_SPARE, "0 %", "100 %" }, { ALLOW_PLANT_TALL, "1", "100" },
	{ ALLOW_GATE_CLEAR, "0 in", "10 m" }, { ALLOW_FENCE_HIGH, "0 in", "10 m" },
	{ ALLOW_FENCE_GAP, "0 in", "10 m" },
	{ ALLOW_HOUSE_CLEAR, "0 in", "10 m" },
	{ ALLOW_SERVICE_NEAR, "0 in", "10 m" }, { ALLOW_SLEEVE_PAST, "0 in", "2 m" },
	{ ALLOW_FALL_NEAR, "0 in", "10 m" }, { ALLOW_FALL_PATH, "0 %", "100 %" },
	{ ALLOW_FALL_GROUND, "0 %", "100 %" },
	{ BED_JOINT, "0 in", "1 in" }, { BED_REACH_IN, "0 in", "1 m" },
	{ FENCE_GATE_POST, "1 in", "1 ft" },
	{ BED_COURSES, "1", "40" }, { BED_EMBED, "0 in", "2 m" }, { BED_BASE, "0 in", "2 m" },
	{ BED_REACH, "0 in", "1 m" },
	{ BED_FREEBOARD, "0 in", "2 m" }, { BED_MULCH, "0 in", "2 m" },
	{ BED_PREPARE, "0 in", "2 m" },
	{ BED_AMEND, "0 in", "2 m" }, { PATH_BASE, "0 in", "2 m" }, { PATH_SURFACE, "0 in", "2 m" },
	{ LAWN_TOPSOIL, "0 in", "2 m" }, { FIXTURE_HEIGHT, "0 in", "30 m" },
	{ FIXTURE_BASE, "0 in", "2 m" },
	{ LAWN_THICKNESS, "0 in", "2 m" }, { FENCE_HEIGHT, "1 ft", "4 m" },
	{ FENCE_SECTION, "2 ft", "6 m" }, { FENCE_POST, "1 in", "1 ft" },
	{ FENCE_GAP, "0 in", "2 ft" },
	{ FENCE_RAILS, "1", "6" }, { FENCE_DEPTH, "6 in", "3 m" }, { FENCE_HOLE, "2 in", "1 m" },
	{ FENCE_GRAVEL, "0 in", "1 m" }, { FENCE_INSET, "0 in", "1 m" },
	{ FENCE_GATE_GAPS, "0 in", "1 ft" },
	{ FENCE_LEAF, "1 ft", "3 m" },
	{ SERVICE_DEPTH, "0 in", "10 m" }, { SERVICE_TRENCH, "1 in", "2 m" },
	{ SERVICE_BELOW, "0 in", "2 m" },
	{ PLANT_SPACING, "1 in", "10 m" }, { PLANT_SPREAD, "1 in", "30 m" },
	{ PLANT_HEIGHT, "1 in", "30 m" }, { PLANT_SOIL, "0 in", "2 m" },
	{ PLANT_POT, "1 in", "2 m" }, { PLANT_PRICE, "0", "1000000" },
};

static int64_t number_of(enum attribute a, const char *text)
{
	struct value_rule rule = attribute_row(a)->rule;
	struct scan s = scan_start(text, strlen(text), 1);
	struct value value;
	struct diag d;

	rule.least = INT64_MIN;
	rule.most = INT64_MAX;
	ck_assert(value_scan(&s, &rule, UNITS_IMPERIAL, &value, &d));
	return rule.kind == VALUE_LENGTH ? value.as.length : value.as.number;
}

START_TEST(a_range_is_what_the_manual_says)
{
	const struct value_rule *rule = &attribute_row(ranges[_i].attribute)->rule;

	ck_assert_int_eq(rule->least, number_of(ranges[_i].attribute, ranges[_i].least));
	ck_assert_int_eq(rule->most, number_of(ranges[_i].attribute, ranges[_i].most));
}
END_TEST

/* 1 in to 2 m each, as blocks are made; densities to 10,000 of their unit. */
START_TEST(blocks_have_sides_from_an_inch_to_two_metres)
{
	const struct value_rule *block = &attribute_row(BED_BLOCK)->rule,
		*cap = &attribute_row(BED_CAP)->rule, *density = &attribute_row(BED_DENSITY)->rule;

	ck_assert_int_eq(block->least, NM_PER_INCH);
	ck_assert_int_eq(block->most, 2 * NM_PER_M);
	ck_assert_int_eq(cap->least, NM_PER_INCH);
	ck_assert_int_eq(cap->most, 2 * NM_PER_M);
	ck_assert_int_eq(density->least, MILLION);
	ck_assert_int_eq(density->most, 10000 * MILLION);
}
END_TEST

START_TEST(every_range_is_tested)
{
	for (enum attribute a = HEAD_TITLE; (int)a < ATTRIBUTES; a++) {
		enum value_kind kind = attribute_row(a)->rule.kind;
		bool is_listed = false;

		for (int i = 0; i < COUNT(ranges); i++)
			is_listed = is_listed || ranges[i].attribute == a;
		ck_assert_msg(is_listed == (kind == VALUE_LENGTH || kind == VALUE_COUNT ||
			kind == VALUE_DECIMAL || kind == VALUE_PERCENT), "%s",
			attribute_row(a)->keyword);
		ck_assert_msg((kind == VALUE_CHOICE) == (attribute_row(a)->rule.words != NULL),
			"%s", attribute_row(a)->keyword);
	}
}
END_TEST

/* The words of a choice stand in the order of the names that the program uses for them. */
START_TEST(words_of_choices_mean_what_their_names_say)
{
	ck_assert_str_eq(attribute_row(HEAD_UNITS)->rule.words[UNITS_METRIC], "metric");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_LEFT_RIGHT], "left-right");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_TOP_BOTTOM], "top-bottom");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_FOUR_WAY], "four-way");
	ck_assert_str_eq(attribute_row(HEAD_MIRROR)->rule.words[MIRROR_HALF_TURN], "half-turn");
	ck_assert_str_eq(attribute_row(BED_BUILD)->rule.words[BUILD_LEVEL], "level");
	ck_assert_str_eq(attribute_row(BED_INSIDE)->rule.words[INSIDE_FILLED], "filled");
	ck_assert_str_eq(attribute_row(BED_INSIDE)->rule.words[INSIDE_BASE], "base");
	ck_assert_str_eq(attribute_row(LAWN_COVER)->rule.words[COVER_SEED], "seed");
	ck_assert_str_eq(attribute_row(LAWN_COVER)->rule.words[COVER_NONE], "none");
	ck_assert_str_eq(attribute_row(BED_REPLACE)->rule.words[CHOICE_YES], "yes");
	ck_assert_str_eq(attribute_row(BED_WATER)->rule.words[WATER_DRIP], "drip");
	ck_assert_str_eq(attribute_row(SERVICE_OWNER)->rule.words[OWNER_PUBLIC], "public");
	ck_assert_str_eq(attribute_row(SERVICE_OWNER)->rule.words[OWNER_PRIVATE], "private");
}
END_TEST

/* A hair of an hour for a hair of work up to weeks for one thing; in hours, whatever it is by. */
START_TEST(a_rate_is_from_a_millionth_to_a_thousand_hours)
{
	for (enum attribute a = block_first(BLOCK_RATES); a <= block_last(BLOCK_RATES); a++) {
		const struct value_rule *rule = &attribute_row(a)->rule;

		ck_assert_int_eq(rule->kind, VALUE_AMOUNT);
		ck_assert_int_eq(rule->least, 1);
		ck_assert_int_eq(rule->most, 1000 * MILLION);
		ck_assert(rule->quantity >= QUANTITY_HOURS_EACH &&
			rule->quantity <= QUANTITY_HOURS_VOLUME);
	}
}
END_TEST

static void add_table(TCase *table)
{
	tcase_add_loop_test(table, a_row_has_a_keyword_a_label_and_its_own_block, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_keyword_is_there_once_in_its_block, 0, ATTRIBUTES);
	tcase_add_test(table, keywords_of_the_head_are_none_of_the_words_that_open_a_block);
	tcase_add_test(table, blocks_share_out_the_whole_table);
	tcase_add_test(table, a_rate_is_from_a_millionth_to_a_thousand_hours);
	tcase_add_loop_test(table, each_has_a_meaning_of_its_own_in_a_sentence, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_default_is_in_range_or_its_absence_explained, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_default_is_what_the_manual_says, 0, COUNT(defaults));
	tcase_add_test(table, all_other_attributes_have_no_default);
	tcase_add_loop_test(table, a_rounder_length_is_near_the_imperial_one, 0, ATTRIBUTES);
	tcase_add_test(table, only_the_default_that_a_source_has_names_it);
	tcase_add_loop_test(table, a_range_is_what_the_manual_says, 0, COUNT(ranges));
	tcase_add_test(table, blocks_have_sides_from_an_inch_to_two_metres);
	tcase_add_test(table, every_range_is_tested);
	tcase_add_test(table, words_of_choices_mean_what_their_names_say);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("attribute");

	add_table(suite_case(suite, "table"));
	return suite;
}
