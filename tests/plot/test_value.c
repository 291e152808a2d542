/* Values of attributes: every kind read, refused, written, copied and compared. */
#include "plot/block.h"
#include "support/details.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

/* What is read for an attribute and written again, in each of the two units. */
static const struct {
	enum attribute attribute;
	const char *text, *imperial, *metric;
} spellings[] = {
	{ HEAD_TITLE, "\"\"", "\"\"", "\"\"" },
	{ HEAD_TITLE, "\"Yard \\\"A\\\" \\\\\"", "\"Yard \\\"A\\\" \\\\\"",
		"\"Yard \\\"A\\\" \\\\\"" },
	{ HEAD_CELL, "1 ft", "1 ft", "304.8 mm" }, { HEAD_CELL, "30cm", "300 mm", "300 mm" },
	{ HEAD_CELL, "1 in", "1 in", "25.4 mm" }, { HEAD_CELL, "10 ft", "10 ft", "3048 mm" },
	{ HEAD_NORTH, "0", "0", "0" }, { HEAD_NORTH, "12.50", "12.5", "12.5" },
	{ HEAD_NORTH, "359.999999", "359.999999", "359.999999" }, { HEAD_NORTH, "007", "7", "7" },
	{ HEAD_SITE, "-33.9", "-33.9", "-33.9" }, { HEAD_SITE, "66", "66", "66" },
	{ HEAD_SITE, "-66.000000", "-66", "-66" }, { HEAD_SITE, "-0", "0", "0" },
	{ HEAD_SITE, "-0.000001", "-0.000001", "-0.000001" },
	{ HEAD_AXIS, "14,8", "14,8", "14,8" }, { HEAD_AXIS, "  1,01", "1,1", "1,1" },
	{ HEAD_MIRROR, "half-turn", "half-turn", "half-turn" },
	{ HEAD_MIRROR, "off", "off", "off" },
	{ HEAD_UNITS, "metric", "metric", "metric" },
	{ ALLOW_BREAKAGE, "5 %", "5 %", "5 %" }, { ALLOW_BREAKAGE, "5%", "5 %", "5 %" },
	{ ALLOW_BREAKAGE, "0.000001   %", "0.000001 %", "0.000001 %" },
	{ ALLOW_BREAKAGE, "100%", "100 %", "100 %" }, { ALLOW_BREAKAGE, "0 %", "0 %", "0 %" },
	{ ALLOW_BEADS, "4", "4", "4" }, { ALLOW_KERF, "1/8\"", "1/8 in", "3.175 mm" },
	{ ALLOW_CARTRIDGE, "1000 m", "1000000 mm", "1000 m" },
	{ BED_BLOCK, "1 ft x 4 in x 4 in", "1 ft x 4 in x 4 in", "304.8 mm x 101.6 mm x 101.6 mm" },
	{ BED_BLOCK, "16\"x8\"x6\"", "16 in x 8 in x 6 in", "406.4 mm x 203.2 mm x 152.4 mm" },
	{ BED_BLOCK, "2 m x 2 m x 2 m", "2000 mm x 2000 mm x 2000 mm", "2 m x 2 m x 2 m" },
	{ BED_BLOCK, "1in x 1in x 78 in", "1 in x 1 in x 78 in", "25.4 mm x 25.4 mm x 1981.2 mm" },
	{ BED_BLOCK, "1 ft 4 in x 0 ft 8 in x 15 cm", "16 in x 8 in x 150 mm",
		"406.4 mm x 203.2 mm x 150 mm" },
	{ BED_CAP, "none", "none", "none" },
	{ BED_CAP, "12 in x 8 in x 2 1/4 in", "1 ft x 8 in x 2 1/4 in",
		"304.8 mm x 203.2 mm x 57.15 mm" },
	{ BED_DENSITY, "135 lb/cu ft", "135 lb/cu ft", "135 lb/cu ft" },
	{ BED_DENSITY, "2150.5 kg/m3", "2150.5 kg/m3", "2150.5 kg/m3" },
	{ BED_DENSITY, "135lb/cu\tft", "135 lb/cu ft", "135 lb/cu ft" },
	{ BED_DENSITY, "1 kg/m3", "1 kg/m3", "1 kg/m3" },
	{ BED_DENSITY, "2700 lb/cu  yd", "2700 lb/cu yd", "2700 lb/cu yd" },
	{ ALLOW_BARROW_VOLUME, "100L", "100 L", "100 L" },
	{ ALLOW_BARROW_WEIGHT, "300 lb", "300 lb", "300 lb" },
	{ ALLOW_SEED, "6 lb/1000 sq ft", "6 lb/1000 sq ft", "6 lb/1000 sq ft" },
	{ ALLOW_HELD, "none", "none", "none" }, { ALLOW_HELD, "top,left", "left, top",
		"left, top" },
	{ ALLOW_HELD, "bottom , right, top, left", "left, top, right, bottom",
		"left, top, right, bottom" },
	{ BED_DENSITY, "10000 kg/m3", "10000 kg/m3", "10000 kg/m3" },
	{ BED_COURSES, "1", "1", "1" }, { BED_COURSES, "40", "40", "40" },
	{ BED_MIX, "topsoil 1", "topsoil 1", "topsoil 1" },
	{ BED_MIX, "topsoil 5, compost 4 ,sharp-sand 0.001",
		"topsoil 5, compost 4, sharp-sand 0.001",
		"topsoil 5, compost 4, sharp-sand 0.001" },
	{ BED_MIX, "a 1,b 2,c 3,d 4,e 5,f 6,g 7,h 1000",
		"a 1, b 2, c 3, d 4, e 5, f 6, g 7, h 1000",
		"a 1, b 2, c 3, d 4, e 5, f 6, g 7, h 1000" },
	{ BED_BUILD, "level", "level", "level" }, { BED_INSIDE, "filled", "filled", "filled" },
	{ BED_REPLACE, "yes", "yes", "yes" }, { LAWN_COVER, "none", "none", "none" },
	{ BED_EMBED, "0 in", "0 in", "0 mm" }, { FIXTURE_HEIGHT, "30 m", "30000 mm", "30 m" },
};

static bool value_read(enum attribute a, const char *text, enum units units, struct value *value,
	struct diag *d)
{
	/* In memory of its size, so that a sanitizer sees what is read beyond. */
	size_t length = strlen(text);
	char *exact = malloc(length + 1);
	memcpy(exact, text, length);
	struct scan s = scan_start(exact, length, 3);
	bool done = value_scan(&s, &attribute_row(a)->rule, units, value, d);

	if (done && !scan_is_done(&s)) {
		ck_assert_msg(false, "%s: not all was read", text);
	}
	free(exact);
	return done;
}

START_TEST(every_spelling_of_a_value_is_read_and_written_in_one)
{
	enum attribute a = spellings[_i].attribute;
	const struct value_rule *rule = &attribute_row(a)->rule;
	struct text text = TEXT_EMPTY;
	struct value value;
	struct diag d;

	ck_assert_msg(value_read(a, spellings[_i].text, UNITS_IMPERIAL, &value, &d), "%s: %s",
		spellings[_i].text, d.expected);
	ck_assert(value.set);
	value_write(&text, rule, &value, UNITS_IMPERIAL);
	ck_assert_str_eq(text.bytes, spellings[_i].imperial);
	text_clear(&text);
	value_write(&text, rule, &value, UNITS_METRIC);
	ck_assert_str_eq(text.bytes, spellings[_i].metric);
	value_fini(rule->kind, &value);
	ck_assert(!value.set);
	text_fini(&text);
}
END_TEST

static const struct {
	enum attribute attribute;
	const char *text;
	int column;
	const char *found, *expected;
} refused[] = {
	{ HEAD_TITLE, "Yard", 1, "Yard", "text in double quotes" },
	{ HEAD_UNITS, "Metric", 1, "Metric", "imperial or metric" },
	{ HEAD_UNITS, "", 1, "the end of the line", "imperial or metric" },
	{ HEAD_MIRROR, " leftright", 2, "leftright",
		"off, left-right, top-bottom, four-way or half-turn" },
	{ HEAD_MIRROR, "on", 1, "on", "off, left-right" },
	{ HEAD_CELL, "1", 1, "1", "a length with its unit, such as 1 in" },
	{ HEAD_CELL, "63/64 in", 1, "63/64", "1 in to 10 ft" },
	{ HEAD_CELL, "  10 ft 1/64 in", 3, "10", "1 in to 10 ft" },
	{ HEAD_CELL, "0 in", 1, "0", "1 in to 10 ft" },
	{ HEAD_NORTH, "360", 1, "360", "0 to 359.999999" },
	{ HEAD_NORTH, "-1", 1, "-1", "a number with at most 6 decimal places" },
	{ HEAD_NORTH, "1.0000001", 1, "1.0000001", "a number with at most 6 decimal places" },
	{ HEAD_NORTH, "12deg", 1, "12deg", "a number" },
	{ HEAD_NORTH, "1e2", 1, "1e2", "a number" },
	{ HEAD_NORTH, "", 1, "the end of the line", "a number" },
	{ HEAD_SITE, "66.000001", 1, "66.000001", "-66 to 66" },
	{ HEAD_SITE, "-66.000001", 1, "-66.000001", "-66 to 66" },
	{ HEAD_SITE, "- 5", 1, "-", "a number" }, { HEAD_SITE, "--5", 1, "--5", "a number" },
	{ HEAD_SITE, "+5", 1, "+5", "a number" },
	/* a typographer's minus */
	{ HEAD_SITE, "\xE2\x88\x92" "5", 1, "\xE2\x88\x92" "5", "a number" },
	{ HEAD_AXIS, "14", 1, "14", "a place X,Y" }, { HEAD_AXIS, "14 ,8", 1, "14", "a place X,Y" },
	{ HEAD_AXIS, "14, 8", 1, "14", "a place X,Y" },
	{ HEAD_AXIS, "14,\t8", 1, "14", "a place X,Y" },
	{ HEAD_AXIS, "-1,8", 1, "-1", "a place X,Y" }, { HEAD_AXIS, "1,-8", 1, "1", "a place X,Y" },
	{ HEAD_AXIS, "1.5,8", 1, "1.5", "a place X,Y" }, { HEAD_AXIS, "1,", 1, "1", "a place X,Y" },
	{ HEAD_AXIS, "1,8x", 1, "1", "a place X,Y" }, { HEAD_AXIS, ",8", 1, ",", "a place X,Y" },
	{ HEAD_AXIS, "2147483648,1", 1, "2147483648", "a place X,Y" },
	{ HEAD_AXIS, "1,2147483648", 1, "1", "a place X,Y" },
	{ ALLOW_BREAKAGE, "5", 1, "5", "a percentage such as 5 %" },
	{ ALLOW_BREAKAGE, "%", 1, "%", "a percentage" },
	{ ALLOW_BREAKAGE, "-5 %", 1, "-5", "a percentage" },
	{ ALLOW_BREAKAGE, "5 percent", 1, "5", "a percentage" },
	{ ALLOW_BREAKAGE, "100.000001 %", 1, "100.000001", "0 % to 100 %" },
	{ ALLOW_BEADS, "0", 1, "0", "1 to 4" }, { ALLOW_BEADS, "5", 1, "5", "1 to 4" },
	{ ALLOW_BEADS, "2.5", 1, "2.5", "a whole number" },
	{ ALLOW_BEADS, "two", 1, "two", "a whole number" },
	{ ALLOW_BEADS, "2 in", 3, "in", "" }, /* the caller sees to what follows */
	{ ALLOW_KERF, "1 1/64 in", 1, "1", "0 in to 1 in" },
	{ ALLOW_SHORTEST, "1000.000001 mm", 1, "1000.000001", "0 in to 3 ft 3 in" },
	{ ALLOW_CARTRIDGE, "25.399999 mm", 1, "25.399999", "1 in to 3280 ft 10 in" },
	{ BED_COURSES, "41", 1, "41", "1 to 40" }, { BED_COURSES, "0", 1, "0", "1 to 40" },
	{ BED_BLOCK, "1 ft", 5, "the end of the line", "x, as in 16 in x 8 in x 6 in" },
	{ BED_BLOCK, "1 ft x 4 in", 12, "the end of the line", "x, as in" },
	{ BED_BLOCK, "1 ft by 4 in by 4 in", 6, "by", "x, as in" },
	{ BED_BLOCK, "1 ft x 4 x 4 in", 8, "4", "such as 4 in" },
	{ BED_BLOCK, "16 x 8 x 6 in", 1, "16", "such as 16 in" },
	{ BED_BLOCK, "4 in x 6 in x 4 in", 8, "6", "a depth across the wall of at most the length "
		"along" },
	{ BED_BLOCK, "1 ft x 1/2 in x 4 in", 8, "1/2", "1 in to 6 ft 6 in" },
	{ BED_BLOCK, "1 ft x 4 in x 2001 mm", 15, "2001", "1 in to 6 ft 6 in" },
	{ BED_BLOCK, "none", 1, "none", "a length with its unit" },
	{ BED_BLOCK, "16inx8inx6in", 1, "16inx8inx6in", "such as 16 in" },
	{ BED_CAP, "nothing", 1, "nothing", "a length with its unit" },
	{ BED_CAP, "1 ft x 13 in x 2 in", 8, "13", "a depth across the wall" },
	{ BED_DENSITY, "135", 1, "135", "a density such as 135 lb/cu ft or 2150 kg/m3" },
	{ BED_DENSITY, "heavy", 1, "heavy", "a density" },
	{ ALLOW_BARROW_VOLUME, "6 lb", 1, "6", "a volume such as" },
	{ ALLOW_BARROW_WEIGHT, "0 lb", 1, "0", "0.001 to 100000 lb or kg" },
	{ ALLOW_SEED, "30 kg", 1, "30", "a rate such as" },
	{ ALLOW_HELD, "left, none", 7, "none", "none, or sides of the plan" },
	{ ALLOW_HELD, "left, left", 7, "left", "each once" },
	{ ALLOW_HELD, "left right", 6, "right", "" },
	{ ALLOW_HELD, "", 1, "the end of the line", "none, or sides" },
	{ BED_DENSITY, "135 lb", 1, "135", "a density" },
	{ BED_DENSITY, "135 lb/cu", 1, "135", "a density" },
	{ BED_DENSITY, "135 lb/cu in", 1, "135", "a density" },
	{ BED_DENSITY, "135 lb/ft3", 1, "135", "a density" },
	{ BED_DENSITY, "0 kg/m3", 1, "0", "1 to 10000 lb/cu ft, lb/cu yd or kg/m3" },
	{ BED_DENSITY, "10000.5 kg/m3", 1, "10000.5", "1 to 10000" },
	{ BED_MIX, "", 1, "the end of the line", "a name of lower-case letters and hyphens" },
	{ BED_MIX, "Topsoil 1", 1, "Topsoil", "a name of lower-case letters" },
	{ BED_MIX, "top_soil 1", 1, "top_soil", "a name of lower-case letters" },
	{ BED_MIX, "soil2 1", 1, "soil2", "a name of lower-case letters" },
	{ BED_MIX, "-soil 1", 1, "-soil", "a name" }, { BED_MIX, "soil- 1", 1, "soil-", "a name" },
	{ BED_MIX, "top--soil 1", 1, "top--soil", "a name" }, { BED_MIX, "- 1", 1, "-", "a name" },
	{ BED_MIX, "caf\xC3\xA9 1", 1, "caf\xC3\xA9", "a name of lower-case letters" },
	{ BED_MIX, "topsoil", 8, "the end of the line", "the part's share" },
	{ BED_MIX, "topsoil x", 9, "x", "the part's share, over 0 up to 1000" },
	{ BED_MIX, "topsoil 0", 9, "0", "the part's share, over 0" },
	{ BED_MIX, "topsoil 1000.001", 9, "1000.001", "up to 1000" },
	{ BED_MIX, "topsoil 0.0001", 9, "0.0001", "at most 3 decimal places" },
	{ BED_MIX, "topsoil -1", 9, "-1", "the part's share" },
	{ BED_MIX, "topsoil 1,", 11, "the end of the line", "a name" },
	{ BED_MIX, "topsoil 1, topsoil 2", 12, "topsoil", "another name" },
	{ BED_MIX, "a 1,b 1,c 1,d 1,e 1,f 1,g 1,h 1, i 1", 34, "i", "at most 8 parts" },
	{ BED_MIX, "topsoil 1 compost 2", 11, "compost", "" },
};

START_TEST(what_is_no_such_value_is_refused_with_its_column_and_a_reason)
{
	const char *text = refused[_i].text;
	struct scan s = scan_start(text, strlen(text), 3);
	struct value value = { .set = false, .as.number = 77 };
	const struct value_rule *rule = &attribute_row(refused[_i].attribute)->rule;
	struct diag d = { 0 };

	if (!refused[_i].expected[0]) {
		ck_assert(value_scan(&s, rule, UNITS_IMPERIAL, &value, &d));
		ck_assert_int_eq(scan_is_done(&s) ? 0 : (int)s.at + 1, refused[_i].column);
		value_fini(rule->kind, &value);
		return;
	}
	ck_assert_msg(!value_scan(&s, rule, UNITS_IMPERIAL, &value, &d), "%s was read", text);
	ck_assert_msg(!value.set && value.as.number == 77, "%s: the value was touched", text);
	ck_assert_int_eq(d.line, 3);
	ck_assert_msg(d.column == refused[_i].column, "%s: column %d", text, d.column);
	ck_assert_msg(strcmp(d.found, refused[_i].found) == 0, "%s: found %s", text, d.found);
	ck_assert_msg(strstr(d.expected, refused[_i].expected), "%s: expected %s", text,
		d.expected);
}
END_TEST

START_TEST(a_part_of_a_mix_has_a_name_of_at_most_60_letters)
{
	char name[80];
	struct value value;
	struct diag d;

	memset(name, 'a', sizeof name);
	strcpy(name + MIX_NAME_MOST, " 1");
	ck_assert(value_read(BED_MIX, name, UNITS_METRIC, &value, &d));
	ck_assert_uint_eq(strlen(value.as.mix->parts[0].name), MIX_NAME_MOST);
	value_fini(VALUE_MIX, &value);
	memset(name, 'a', sizeof name);
	strcpy(name + MIX_NAME_MOST + 1, " 1");
	ck_assert(!value_read(BED_MIX, name, UNITS_METRIC, &value, &d));
}
END_TEST

START_TEST(a_range_is_told_in_the_plots_units)
{
	struct value value;
	struct diag d;

	ck_assert(!value_read(HEAD_CELL, "4 m", UNITS_METRIC, &value, &d));
	ck_assert_str_eq(d.expected, "25.4 mm to 3048 mm");
	ck_assert(!value_read(PLANT_SPREAD, "0 in", UNITS_METRIC, &value, &d));
	ck_assert_str_eq(d.expected, "25.4 mm to 30 m");
	/* 30 m are 1,181.1 in, 500 mm 19.7 in */
	ck_assert(!value_read(PLANT_SPREAD, "0 in", UNITS_IMPERIAL, &value, &d));
	ck_assert_str_eq(d.expected, "1 in to 98 ft 5 in");
	ck_assert(!value_read(ALLOW_WATER_JULY, "2 ft", UNITS_IMPERIAL, &value, &d));
	ck_assert_str_eq(d.expected, "0 in to 1 ft 7 in");
	ck_assert(!value_read(HEAD_CELL, "150", UNITS_METRIC, &value, &d));
	ck_assert_str_eq(d.expected, "a length with its unit, such as 150 mm");
}
END_TEST

/* 1 lb = 0.45359237 kg (NIST Special Publication 811, appendix B.8), 1 ft = 0.3048 m; a U.S. gallon
 * is 231 cu in (NIST Handbook 44, appendix C, from memory). */
static const struct {
	struct amount amount;
	double si;
} amounts[] = {
	{ { 135 * MILLION, AMOUNT_LB_CU_FT }, 135 * 0.45359237 / (0.3048 * 0.3048 * 0.3048) },
	{ { 2700 * MILLION, AMOUNT_LB_CU_YD }, 2700 * 0.45359237 / (0.9144 * 0.9144 * 0.9144) },
	{ { 2150 * MILLION + 500000, AMOUNT_KG_M3 }, 2150.5 },
	{ { 6 * MILLION, AMOUNT_CU_FT }, 6 * 0.3048 * 0.3048 * 0.3048 },
	{ { MILLION / 2, AMOUNT_CU_YD }, 0.5 * 0.9144 * 0.9144 * 0.9144 },
	{ { 100 * MILLION, AMOUNT_LITRE }, 0.1 }, { { 6 * MILLION, AMOUNT_M3 }, 6 },
	{ { 300 * MILLION, AMOUNT_LB }, 300 * 0.45359237 }, { { 130 * MILLION, AMOUNT_KG }, 130 },
	{ { 6 * MILLION, AMOUNT_LB_1000_SQ_FT }, 6 * 0.45359237 / (1000 * 0.3048 * 0.3048) },
	{ { 30 * MILLION, AMOUNT_G_M2 }, 0.03 },
	{ { 450 * MILLION, AMOUNT_SQ_FT }, 450 * 0.3048 * 0.3048 },
	{ { 50 * MILLION, AMOUNT_SQ_YD }, 50 * 0.9144 * 0.9144 },
	{ { MILLION / 4, AMOUNT_M2 }, 0.25 },
	{ { 240 * MILLION, AMOUNT_GAL_H }, 240 * 231 * 0.0254 * 0.0254 * 0.0254 },
	{ { 900 * MILLION, AMOUNT_L_H }, 0.9 },
};

START_TEST(an_amount_is_known_in_si_units)
{
	ck_assert_double_eq_tol(amount_si(&amounts[_i].amount), amounts[_i].si,
		1e-9 * amounts[_i].si);
}
END_TEST

/* For every attribute: what is at random is written, read, copied and compared as itself. */
START_TEST(a_value_survives_writing_reading_and_copying)
{
	enum attribute a = (enum attribute)_i;
	const struct value_rule *rule = &attribute_row(a)->rule;
	struct ground ground = { 2048, 7, NULL };
	struct random random = { (uint64_t)_i };
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < 300; i++) {
		enum units units = i % 2 ? UNITS_METRIC : UNITS_IMPERIAL;
		struct value value = value_at_random(&random, a, &ground), again, copy;
		struct diag d;

		text_clear(&text);
		value_write(&text, rule, &value, units);
		ck_assert_msg(value_read(a, text.bytes, units, &again, &d), "%s: %s", text.bytes,
			d.expected);
		copy = value_copy(rule->kind, &again);
		value_fini(rule->kind, &again);
		ck_assert_msg(value_equal(rule->kind, &value, &copy), "%s", text.bytes);
		value_fini(rule->kind, &copy);
		value_fini(rule->kind, &value);
	}
	text_fini(&text);
}
END_TEST

/* Pairs that differ in one thing each. */
static const struct {
	enum attribute attribute;
	const char *one, *other;
} pairs[] = {
	{ HEAD_TITLE, "\"a\"", "\"b\"" }, { HEAD_CELL, "1 ft", "13 in" },
	{ HEAD_NORTH, "1", "1.000001" },
	{ HEAD_AXIS, "1,2", "3,2" }, { HEAD_AXIS, "1,2", "1,3" },
	{ HEAD_MIRROR, "off", "four-way" },
	{ ALLOW_BREAKAGE, "1 %", "2 %" }, { BED_COURSES, "1", "2" },
	{ BED_BLOCK, "3 in x 2 in x 1 in", "4 in x 2 in x 1 in" },
	{ BED_BLOCK, "3 in x 2 in x 1 in", "3 in x 3 in x 1 in" },
	{ BED_BLOCK, "3 in x 2 in x 1 in", "3 in x 2 in x 2 in" },
	{ BED_CAP, "none", "3 in x 2 in x 2 in" }, { BED_DENSITY, "9 kg/m3", "8 kg/m3" },
	{ BED_DENSITY, "9 kg/m3", "9 lb/cu ft" }, { BED_MIX, "a 1", "b 1" },
	{ BED_MIX, "a 1", "a 2" },
	{ BED_MIX, "a 1", "a 1, b 1" }, { BED_MIX, "a 1, b 1", "b 1, a 1" },
};

START_TEST(values_that_differ_are_not_equal)
{
	enum attribute a = pairs[_i].attribute;
	enum value_kind kind = attribute_row(a)->rule.kind;
	struct value one, other, unset = { .set = false }, none = { .set = false };
	struct diag d;

	ck_assert(value_read(a, pairs[_i].one, UNITS_METRIC, &one, &d));
	ck_assert(value_read(a, pairs[_i].other, UNITS_METRIC, &other, &d));
	ck_assert(value_equal(kind, &one, &one));
	ck_assert(!value_equal(kind, &one, &other));
	ck_assert(!value_equal(kind, &other, &one));
	ck_assert(!value_equal(kind, &one, &unset));
	ck_assert(!value_equal(kind, &unset, &one));
	ck_assert(value_equal(kind, &unset, &none));
	value_fini(kind, &one);
	value_fini(kind, &other);
	value_fini(kind, &unset);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("value");
	TCase *reading = suite_case(suite, "reading"), *keeping = suite_case(suite, "keeping");

	tcase_add_loop_test(reading, every_spelling_of_a_value_is_read_and_written_in_one, 0,
		COUNT(spellings));
	tcase_add_loop_test(reading, what_is_no_such_value_is_refused_with_its_column_and_a_reason,
		0, COUNT(refused));
	tcase_add_test(reading, a_part_of_a_mix_has_a_name_of_at_most_60_letters);
	tcase_add_test(reading, a_range_is_told_in_the_plots_units);
	tcase_add_loop_test(reading, an_amount_is_known_in_si_units, 0,
		sizeof amounts / sizeof *amounts);
	tcase_add_loop_test(keeping, a_value_survives_writing_reading_and_copying, 0, ATTRIBUTES);
	tcase_add_loop_test(keeping, values_that_differ_are_not_equal, 0, COUNT(pairs));
	return suite;
}
