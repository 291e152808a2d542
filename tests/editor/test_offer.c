/* Numbers typed without their unit. */
#include "plot/block.h"
#include "editor/ask/offer.h"
#include "support/runner.h"

static const struct {
	enum attribute attribute;
	enum units units;
	const char *typed, *offered; /* NULL: nothing */
} rows[] = {
	{ BED_EMBED, UNITS_IMPERIAL, "6", "6 in" },
	{ BED_EMBED, UNITS_METRIC, "40", "40 mm" },
	{ BED_EMBED, UNITS_IMPERIAL, "6 1/2", "6 1/2 in" },
	{ BED_EMBED, UNITS_IMPERIAL, " 6.5 ", "6.5 in" },
	/* Where the smaller unit is out of range, the larger. */
	{ HEAD_CELL, UNITS_METRIC, "0.5", "0.5 m" },
	{ HEAD_CELL, UNITS_IMPERIAL, "1/2", "1/2 ft" },
	{ HEAD_CELL, UNITS_METRIC, "8", "8 cm" },
	{ HEAD_CELL, UNITS_METRIC, "300", "300 mm" },
	{ HEAD_CELL, UNITS_IMPERIAL, "500", NULL },
	{ BED_BLOCK, UNITS_METRIC, "40 x 20 x 15", "40 cm x 20 cm x 15 cm" },
	{ BED_BLOCK, UNITS_IMPERIAL, "16 x 8 x 6", "16 in x 8 in x 6 in" },
	{ BED_BLOCK, UNITS_IMPERIAL, "1 ft x 8x6", "1 ft x 8 in x 6 in" },
	{ BED_BLOCK, UNITS_METRIC, "400 x 200 x 150", "400 mm x 200 mm x 150 mm" },
	{ BED_BLOCK, UNITS_IMPERIAL, "16 x 8", NULL },
	{ BED_CAP, UNITS_IMPERIAL, "16 x 8 x 2", "16 in x 8 in x 2 in" },
	{ BED_CAP, UNITS_IMPERIAL, "no", NULL },
	{ BED_DENSITY, UNITS_IMPERIAL, "135", "135 lb/cu ft" },
	{ BED_DENSITY, UNITS_METRIC, "2150", "2150 kg/m3" },
	{ ALLOW_BREAKAGE, UNITS_METRIC, "5", "5 %" },
	{ ALLOW_BREAKAGE, UNITS_METRIC, "101", NULL },
	{ BED_EMBED, UNITS_IMPERIAL, "six", NULL },
	{ BED_EMBED, UNITS_IMPERIAL, "6 cubits", NULL },
	{ BED_EMBED, UNITS_IMPERIAL, "6 in", NULL },
	{ BED_EMBED, UNITS_IMPERIAL, "-6", NULL },
	{ BED_EMBED, UNITS_IMPERIAL, "", NULL },
	{ BED_COURSES, UNITS_IMPERIAL, "41", NULL },
	{ HEAD_TITLE, UNITS_IMPERIAL, "6", NULL },
};
enum { ROWS = sizeof rows / sizeof *rows };

START_TEST(a_bare_number_gets_the_unit_that_makes_it_good)
{
	const struct asked asked = { &attribute_row(rows[_i].attribute)->rule, rows[_i].units,
		false };
	struct text out = TEXT_EMPTY;
	bool is_offered = offer_units(&asked, rows[_i].typed, &out);

	ck_assert_msg(is_offered == (rows[_i].offered != NULL), "%s: %s", rows[_i].typed,
		out.bytes ? out.bytes : "nothing");
	if (is_offered)
		ck_assert_str_eq(out.bytes, rows[_i].offered);
	text_fini(&out);
}
END_TEST

START_TEST(what_is_far_is_offered_in_the_larger_unit_first)
{
	static const struct {
		enum units units;
		const char *typed, *offered;
	} far[] = {
		{ UNITS_IMPERIAL, "30", "30 ft" }, { UNITS_METRIC, "7.2", "7.2 m" },
		{ UNITS_IMPERIAL, "1/2", "1/2 ft" }, { UNITS_IMPERIAL, "100000", "100000 in" },
		{ UNITS_METRIC, "20000", "20000 cm" }, { UNITS_METRIC, "2000000", "2000000 mm" },
	};
	const struct value_rule rule = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
		.most = LENGTH_MOST };

	for (size_t i = 0; i < sizeof far / sizeof *far; i++) {
		const struct asked asked = { &rule, far[i].units, true };
		struct text out = TEXT_EMPTY;

		ck_assert(offer_units(&asked, far[i].typed, &out));
		ck_assert_str_eq(out.bytes, far[i].offered);
		text_fini(&out);
	}
}
END_TEST

/* No attribute is an area, but a price book's sizes are. */
START_TEST(each_quantity_has_units_in_both_systems)
{
	static const char *const offered[][2] = {
		[QUANTITY_DENSITY] = { "7 lb/cu ft", "7 kg/m3" },
		[QUANTITY_VOLUME] = { "7 cu ft", "7 L" },
		[QUANTITY_WEIGHT] = { "7 lb", "7 kg" },
		[QUANTITY_RATE] = { "7 lb/1000 sq ft", "7 g/m2" },
		[QUANTITY_AREA] = { "7 sq ft", "7 m2" },
		[QUANTITY_HOURS_EACH] = { "7 h per each", "7 h per each" },
		[QUANTITY_HOURS_LENGTH] = { "7 h per ft", "7 h per m" },
		[QUANTITY_HOURS_AREA] = { "7 h per sq-ft", "7 h per m2" },
		[QUANTITY_HOURS_VOLUME] = { "7 h per cu-ft", "7 h per m3" },
		[QUANTITY_GOODS] = { "7 each", "7 each" },
	};

	for (size_t quantity = 0; quantity < sizeof offered / sizeof *offered; quantity++) {
		const struct value_rule rule = { .kind = VALUE_AMOUNT, .least = 1,
			.most = 100000 * (int64_t)1000000, .quantity = (enum quantity)quantity };

		for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
			const struct asked asked = { &rule, units, false };
			struct text out = TEXT_EMPTY;

			ck_assert(offer_units(&asked, "7", &out));
			ck_assert_str_eq(out.bytes, offered[quantity][units]);
			text_fini(&out);
		}
	}
}
END_TEST

START_TEST(a_bare_number_that_no_unit_makes_good_has_the_first_one)
{
	const struct asked cell = { &attribute_row(HEAD_CELL)->rule, UNITS_IMPERIAL, false };
	struct text out = TEXT_EMPTY;

	ck_assert(!offer_units(&cell, "500", &out));
	ck_assert_str_eq(out.bytes, "500 in");
	ck_assert(!offer_units(&cell, "500 in", &out));
	ck_assert_uint_eq(out.length, 0);
	ck_assert(!offer_units(&cell, "much", &out));
	ck_assert_uint_eq(out.length, 0);
	text_fini(&out);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("offer");
	TCase *units = suite_case(suite, "units");

	tcase_add_loop_test(units, a_bare_number_gets_the_unit_that_makes_it_good, 0, ROWS);
	tcase_add_test(units, what_is_far_is_offered_in_the_larger_unit_first);
	tcase_add_test(units, a_bare_number_that_no_unit_makes_good_has_the_first_one);
	tcase_add_test(units, each_quantity_has_units_in_both_systems);
	return suite;
}
