/* Defaults against what is published: each lies within the range that its source gives. */
#include "plot/attribute.h"
#include "support/runner.h"

#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

/* What a rounder metric default may lie beyond a range in inches and pounds: 25 mm for 1 in, 900 mm
 * for 36 in. */
static const double ROUNDER = 0.02;

struct range {
	enum attribute attribute;
	const char *least, *most; /* as a plot has them */
};

static const struct range published[] = {
	/* Clays as measured: Zanco Journal of Pure and Applied Sciences, Swell and Shrinkage
	 * Percentages for Various Soil Types, year not noted. */
	{ ALLOW_SWELL_CLAY, "36 %", "56 %" },
	/* From 15 % of loam: Pearson, Estimating in Building Construction, its edition not noted,
	 * figure 9.1, from memory. To 25 % of common earth: US Army, FM 5-434, Earthmoving
	 * Operations, 2000, table 1-1, from memory. */
	{ ALLOW_SWELL_LOAM, "15 %", "25 %" },
	/* From 11 %: US Navy training manual, its number and year not noted, table Soil Conversion
	 * Factors; and FM 5-434, table 1-1, from memory. To 18 % of sand and gravel: Pearson, the
	 * same figure, from memory. */
	{ ALLOW_SWELL_SAND, "11 %", "18 %" },
	/* From 0.90 of common earth and clay: FM 5-434, table 1-1, from memory. To 0.95 of sand:
	 * the Navy's table; of sand and gravel: Pearson, example 9-3. */
	{ ALLOW_SHRINK, "0.9", "0.95" },
	/* By arithmetic 10 fl oz are 18.05 cu in, as a round bead of 1/4 in 30.6 ft; some is left
	 * in each cartridge, no more than one part in twenty. */
	{ ALLOW_CARTRIDGE, "29 ft", "30.6 ft" },
	/* Penn State Extension, 2013, as quoted, title not noted. */
	{ ALLOW_WATER_WEEK, "1 in", "1.5 in" },
	/* Full sun, part sun and part shade: University of Nebraska Extension, as quoted, title and
	 * year not noted. */
	{ ALLOW_SUN_FULL, "6", "6" }, { ALLOW_SUN_PART, "4", "4" }, { ALLOW_SUN_LEAST, "2", "2" },
	/* U.S. Department of Justice, 2010 ADA Standards for Accessible Design, 403.5.1. */
	{ ALLOW_PATH_CLEAR, "36 in", "36 in" }, { ALLOW_GATE_CLEAR, "36 in", "36 in" },
	/* Beds are reached from both sides up to 4 ft: University of Missouri Extension, G6985,
	 * Raised-Bed Gardening, as quoted, its year not noted. */
	{ ALLOW_ARM, "2 ft", "2 ft" },
	/* International Code Council, International Residential Code, 2021, R105.2: walls of 4 ft
	 * from the footing's bottom; fences of 7 ft, in some editions of 6 ft. */
	{ ALLOW_WALL_FOOTING, "4 ft", "4 ft" }, { ALLOW_FENCE_HIGH, "6 ft", "7 ft" },
	/* From 18 in past the line: Common Ground Alliance, Best Practices, 5.19. To 24 in, by the
	 * law of some states. Both as quoted. */
	{ ALLOW_SERVICE_NEAR, "18 in", "24 in" },
	/* The same code, R401.3: 6 in within the first 10 ft, hard surfaces 2 %. */
	{ ALLOW_FALL_NEAR, "10 ft", "10 ft" }, { ALLOW_FALL_GROUND, "5 %", "5 %" },
	{ ALLOW_FALL_PATH, "2 %", "2 %" },
};

/* Common practice, no published source. */
static const struct range usual[] = {
	{ ALLOW_SWELL_TOPSOIL, "25 %", "50 %" },
	{ ALLOW_COMPACTION_FINES, "1.15", "1.25" },
	{ ALLOW_DENSITY_STONE, "2600 lb/cu yd", "2800 lb/cu yd" },
	{ ALLOW_DENSITY_SOIL, "2000 lb/cu yd", "2200 lb/cu yd" },
	{ ALLOW_DENSITY_COMPOST, "1000 lb/cu yd", "1200 lb/cu yd" },
	{ ALLOW_DENSITY_MULCH, "400 lb/cu yd", "800 lb/cu yd" },
	/* Of earth from damp and loose to damp and packed. */
	{ ALLOW_DENSITY_SPOIL, "2106 lb/cu yd", "2592 lb/cu yd" },
};

static double number_of(enum attribute a, const struct value *value)
{
	switch (attribute_row(a)->rule.kind) {
	case VALUE_LENGTH:
		return (double)value->as.length;
	case VALUE_AMOUNT:
		return amount_si(&value->as.amount);
	default:
		return (double)value->as.number;
	}
}

static double number_read(enum attribute a, const char *words)
{
	struct scan s = scan_start(words, strlen(words), 1);
	struct value value;
	struct diag d;

	ck_assert_msg(value_scan(&s, &attribute_row(a)->rule, UNITS_IMPERIAL, &value, &d), "%s: %s",
		words, d.expected);
	return number_of(a, &value);
}

static void check_range(const struct range *range)
{
	enum attribute a = range->attribute;
	double least = number_read(a, range->least), most = number_read(a, range->most);

	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		const struct value *preset = attribute_preset(a, units);
		double share = units == UNITS_METRIC && attribute_is_rounder(a) ? ROUNDER : 0;
		double number = number_of(a, preset);

		ck_assert_msg(preset->set, "%s has no default", attribute_row(a)->keyword);
		ck_assert_msg(number >= least * (1 - share) && number <= most * (1 + share),
			"%s is not between %s and %s", attribute_row(a)->keyword, range->least,
			range->most);
	}
}

START_TEST(a_default_lies_within_what_is_published_for_it)
{
	check_range(&published[_i]);
}
END_TEST

START_TEST(a_default_lies_within_common_practice)
{
	check_range(&usual[_i]);
}
END_TEST

/* Whoever names a source in the table has what it says here. */
START_TEST(a_default_that_names_a_source_is_held_to_it)
{
	enum attribute a = (enum attribute)_i;
	bool is_held = false;

	for (int i = 0; i < COUNT(published); i++)
		is_held = is_held || published[i].attribute == a;
	ck_assert_msg(is_held || !attribute_source(a, UNITS_IMPERIAL), "%s",
		attribute_row(a)->keyword);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("defaults");
	TCase *ranges = suite_case(suite, "ranges");

	tcase_add_loop_test(ranges, a_default_lies_within_what_is_published_for_it, 0,
		COUNT(published));
	tcase_add_loop_test(ranges, a_default_lies_within_common_practice, 0, COUNT(usual));
	tcase_add_loop_test(ranges, a_default_that_names_a_source_is_held_to_it, 0, ATTRIBUTES);
	return suite;
}
