/* What is typed, put into the words of the plot format. */
#include "plot/block.h"
#include "editor/ask/strict.h"
#include "support/runner.h"

#include <string.h>

static const struct value_rule far_rule = { .kind = VALUE_LENGTH, .most = LENGTH_MOST };
static const struct value_rule text_rule = { .kind = VALUE_TEXT, .least = 1, .most = 60 };

/* ---- As people write ------------------------------------------------------------------------ */

static const struct {
	enum units units;
	const char *typed, *put;
} lengths[] = {
	{ UNITS_IMPERIAL, "24", "24 ft" },
	{ UNITS_IMPERIAL, " 24 ", "24 ft" },
	{ UNITS_METRIC, "7.2", "7.2 m" },
	{ UNITS_METRIC, ".5", "0.5 m" },
	{ UNITS_METRIC, ".5 m", "0.5 m" },
	{ UNITS_METRIC, "1,25", "1.25 m" },
	{ UNITS_METRIC, ",5", "0.5 m" },
	{ UNITS_METRIC, "0,125", "0.125 m" },
	{ UNITS_METRIC, "1,2500", "1.2500 m" },
	{ UNITS_METRIC, "1,25 m", "1.25 m" },
	{ UNITS_METRIC, "50cm", "50 cm" },
	{ UNITS_METRIC, "2m50cm", "2 m 50 cm" },
	{ UNITS_METRIC, "2 m 50", "2 m 50 cm" },
	{ UNITS_METRIC, "2m50", "2 m 50 cm" },
	{ UNITS_METRIC, "2 m 5", "2 m 5 cm" },
	{ UNITS_METRIC, "1 m 250", "1 m 250 mm" },
	{ UNITS_METRIC, "30 cm 5", "30 cm 5 mm" },
	{ UNITS_METRIC, "2 metres", "2 m" },
	{ UNITS_METRIC, "1 metre", "1 m" },
	{ UNITS_METRIC, "2 meters", "2 m" },
	{ UNITS_METRIC, "1 meter", "1 m" },
	{ UNITS_METRIC, "5 centimetres", "5 cm" },
	{ UNITS_METRIC, "5 centimeters", "5 cm" },
	{ UNITS_METRIC, "1 centimetre", "1 cm" },
	{ UNITS_METRIC, "1 centimeter", "1 cm" },
	{ UNITS_METRIC, "5 millimetres", "5 mm" },
	{ UNITS_METRIC, "5 millimeters", "5 mm" },
	{ UNITS_METRIC, "1 millimetre", "1 mm" },
	{ UNITS_METRIC, "1 millimeter", "1 mm" },
	{ UNITS_METRIC, "5 M", "5 m" },
	{ UNITS_IMPERIAL, "3 feet", "3 ft" },
	{ UNITS_IMPERIAL, "1 foot", "1 ft" },
	{ UNITS_IMPERIAL, "3 Feet 2 Inches", "3 ft 2 in" },
	{ UNITS_IMPERIAL, "1 inch", "1 in" },
	{ UNITS_IMPERIAL, "3 ft. 2 in.", "3 ft 2 in" },
	{ UNITS_IMPERIAL, "7 ft 6", "7 ft 6 in" },
	{ UNITS_IMPERIAL, "7 ft 6 1/2", "7 ft 6 1/2 in" },
	{ UNITS_IMPERIAL, "7'6", "7' 6 in" },
	{ UNITS_IMPERIAL, "7'6\"", "7' 6\"" },
	{ UNITS_IMPERIAL, "7 ' 6 \"", "7' 6\"" },
	{ UNITS_IMPERIAL, "9 1/2", "9 1/2 ft" },
	{ UNITS_IMPERIAL, "1/2", "1/2 ft" },
	{ UNITS_IMPERIAL, "9 1/2 in", "9 1/2 in" },
	{ UNITS_IMPERIAL, "3  ft", "3 ft" },
	{ UNITS_IMPERIAL, "2 m", "2 m" },
	/* What cannot be understood stays for the reader to refuse. */
	{ UNITS_IMPERIAL, "1,250", "1,250 ft" },
	{ UNITS_IMPERIAL, "1,250,000", "1,250,000 ft" },
	{ UNITS_IMPERIAL, "1.250,5", "1.250,5 ft" },
	{ UNITS_IMPERIAL, "2 m 5000", "2 m 5000" },
	{ UNITS_IMPERIAL, "6 in 3", "6 in 3" },
	{ UNITS_IMPERIAL, "6 cubits", "6 cubits" },
	{ UNITS_IMPERIAL, "six", "six" },
	{ UNITS_IMPERIAL, "ft", "ft" },
	{ UNITS_IMPERIAL, "-6", "-6 ft" },
	{ UNITS_IMPERIAL, "6.", "6." },
	{ UNITS_IMPERIAL, "", "" },
};

static void check_put(const struct asked *asked, const char *typed, const char *wanted)
{
	struct text out = TEXT_EMPTY;

	ck_assert(strict_put(asked, typed, 0, &out));
	ck_assert_msg(strcmp(out.bytes, wanted) == 0, "\"%s\" is \"%s\", not \"%s\"", typed,
		out.bytes, wanted);
	text_fini(&out);
}

START_TEST(a_length_is_understood_as_people_write_it)
{
	check_put(&(struct asked){ &far_rule, lengths[_i].units, SPAN_PLAN, false },
		lengths[_i].typed, lengths[_i].put);
}
END_TEST

START_TEST(cells_are_lengths_or_a_number_with_the_word)
{
	static const char *const cells[][2] = {
		{ "2", "2 ft" }, { "2 cells", "2 cells" }, { "1 cell", "1 cell" },
		{ "2Cells", "2cells" }, { "-2", "-2 ft" }, { "- 2 feet", "-2 ft" },
		{ " -2 cells", "-2 cells" }, { ".5", "0.5 ft" }, { "7 ft 6", "7 ft 6 in" },
	};

	for (size_t i = 0; i < sizeof cells / sizeof *cells; i++)
		check_put(&(struct asked){ &text_rule, UNITS_IMPERIAL, SPAN_PLAN, true },
			cells[i][0], cells[i][1]);
}
END_TEST

static const struct {
	enum attribute attribute;
	const char *typed, *put;
} values[] = {
	{ BED_BLOCK, "16 x 8 x 6", "16 in x 8 in x 6 in" },
	{ BED_BLOCK, "16x8x6 in", "16 in x 8 in x 6 in" },
	{ BED_BLOCK, "40 X 20 X 15 cm", "40 cm x 20 cm x 15 cm" },
	{ BED_BLOCK, "1 ft x 8x6", "1 ft x 8 in x 6 in" },
	{ BED_BLOCK, "7,5 x 4 x ,5 ft", "7.5 ft x 4 ft x 0.5 ft" },
	{ BED_BLOCK, "16 x 8", "16 in x 8 in" },
	{ BED_CAP, "none", "none" },
	{ BED_DENSITY, "135", "135 lb/cu ft" },
	{ BED_DENSITY, "135,5 lb/cu ft", "135.5 lb/cu ft" },
	{ ALLOW_SEED, "6,5 lb/1000 sq ft", "6.5 lb/1000 sq ft" },
	{ ALLOW_BREAKAGE, "5", "5 %" },
	{ ALLOW_BREAKAGE, ".5 ", "0.5 %" },
	{ ALLOW_BREAKAGE, "2,5%", "2.5%" },
	{ ALLOW_DAY, "7,5", "7.5" },
	{ HEAD_SITE, "-52,25", "-52.25" },
	{ BED_COURSES, "3", "3" },
	{ BED_MIX, "topsoil 1,5, compost .5", "topsoil 1.5, compost 0.5" },
	/* A comma between two values is none of a decimal. */
	{ HEAD_AXIS, "24,20", "24,20" },
	{ ALLOW_HELD, "left, top", "left, top" },
	{ HEAD_TITLE, "No 1,5 .5", "No 1,5 .5" },
};

START_TEST(other_values_are_put_as_they_are_but_for_their_numbers)
{
	check_put(&(struct asked){ &attribute_row(values[_i].attribute)->rule, UNITS_IMPERIAL,
		SPAN_SMALL, false }, values[_i].typed, values[_i].put);
}
END_TEST

/* ---- Numbers alone --------------------------------------------------------------------------- */

START_TEST(a_number_alone_is_tried_in_one_unit_after_the_other)
{
	static const char *const tried[][2][5] = {
		[SPAN_SMALL] = { { "5 in", "5 ft" }, { "5 mm", "5 cm", "5 m" } },
		[SPAN_LONG] = { { "5 ft", "5 in" }, { "5 m", "5 mm", "5 cm" } },
		[SPAN_PLAN] = { { "5 ft" }, { "5 m", "5 cm" } },
	};
	struct text out = TEXT_EMPTY;

	for (size_t span = 0; span < sizeof tried / sizeof *tried; span++)
		for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
			const struct asked asked = { &far_rule, units, (enum span)span, false };
			int which = 0;

			for (; tried[span][units][which]; which++) {
				ck_assert(strict_put(&asked, "5", which, &out));
				ck_assert_str_eq(out.bytes, tried[span][units][which]);
			}
			ck_assert(!strict_put(&asked, "5", which, &out));
			ck_assert(!strict_put(&asked, "5 in", 1, &out));
		}
	text_fini(&out);
}
END_TEST

START_TEST(the_first_of_them_has_a_name)
{
	static const struct value_rule count = { .kind = VALUE_COUNT };

	ck_assert_str_eq(strict_unit(&(struct asked){ &far_rule, UNITS_IMPERIAL, SPAN_SMALL,
		false }), "inches");
	ck_assert_str_eq(strict_unit(&(struct asked){ &far_rule, UNITS_IMPERIAL, SPAN_PLAN,
		false }), "feet");
	ck_assert_str_eq(strict_unit(&(struct asked){ &far_rule, UNITS_METRIC, SPAN_SMALL,
		false }), "millimetres");
	ck_assert_str_eq(strict_unit(&(struct asked){ &text_rule, UNITS_METRIC, SPAN_PLAN,
		true }), "metres");
	ck_assert_ptr_null(strict_unit(&(struct asked){ &text_rule, UNITS_METRIC, SPAN_PLAN,
		false }));
	ck_assert_ptr_null(strict_unit(&(struct asked){ &count, UNITS_METRIC, SPAN_SMALL,
		false }));
}
END_TEST

/* No attribute is an area, but a price book's sizes are. */
START_TEST(each_quantity_has_units_in_both_systems)
{
	static const char *const put[][2] = {
		[QUANTITY_DENSITY] = { "7 lb/cu ft", "7 kg/m3" },
		[QUANTITY_VOLUME] = { "7 cu ft", "7 L" },
		[QUANTITY_WEIGHT] = { "7 lb", "7 kg" },
		[QUANTITY_RATE] = { "7 lb/1000 sq ft", "7 g/m2" },
		[QUANTITY_AREA] = { "7 sq ft", "7 m2" },
		[QUANTITY_FLOW] = { "7 gal/h", "7 L/h" },
		[QUANTITY_HOURS_EACH] = { "7 h per each", "7 h per each" },
		[QUANTITY_HOURS_LENGTH] = { "7 h per ft", "7 h per m" },
		[QUANTITY_HOURS_AREA] = { "7 h per sq-ft", "7 h per m2" },
		[QUANTITY_HOURS_VOLUME] = { "7 h per cu-ft", "7 h per m3" },
		[QUANTITY_GOODS] = { "7 each", "7 each" },
	};
	static const char *const large[][2] = {
		[QUANTITY_DENSITY] = { "7 lb/cu yd", "7 kg/m3" },
		[QUANTITY_VOLUME] = { "7 cu yd", "7 m3" },
	};

	for (size_t quantity = 0; quantity < sizeof put / sizeof *put; quantity++) {
		const struct value_rule rule = { .kind = VALUE_AMOUNT,
			.quantity = (enum quantity)quantity };

		for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
			check_put(&(struct asked){ &rule, units, SPAN_SMALL, false }, "7",
				put[quantity][units]);
			check_put(&(struct asked){ &rule, units, SPAN_LONG, false }, "7",
				quantity <= QUANTITY_VOLUME ? large[quantity][units] :
				put[quantity][units]);
		}
	}
}
END_TEST

/* ---- Doubts ---------------------------------------------------------------------------------- */

START_TEST(what_nobody_can_be_sure_of_is_named)
{
	const struct value_rule *site = &attribute_row(HEAD_SITE)->rule;
	const struct value_rule *north = &attribute_row(HEAD_NORTH)->rule;
	const struct {
		const struct value_rule *rule;
		const char *typed, *why; /* NULL: there is no doubt */
	} rows[] = {
		{ site, "47 N", "degrees alone, south with a minus" },
		{ site, "47.5N", "degrees alone, south with a minus" },
		{ site, "-34 S", "degrees alone, south with a minus" },
		{ site, " -47.5 ", NULL }, { site, "north", NULL }, { site, "70", NULL },
		{ north, "20 deg", "degrees alone, clockwise from north" }, { north, "20", NULL },
		{ &far_rule, "1,250", "1,250 can be read in two ways" },
		{ &far_rule, "3 ft 1,250,000 in", "1,250,000" },
		{ &far_rule, "6 cubits", "cubits is no unit of length; ft, in, m, cm and mm are" },
		{ &far_rule, "6 ft wide", "wide is no unit" },
		{ &far_rule, "six", NULL },
		{ &far_rule, "6 ft 1,25 in", NULL },
		{ &far_rule, "", NULL },
		{ &text_rule, "1,250 cubits", NULL },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct asked asked = { rows[i].rule, UNITS_IMPERIAL, SPAN_PLAN, false };
		struct text why = TEXT_EMPTY;

		ck_assert_msg(strict_doubt(&asked, rows[i].typed, &why) == (rows[i].why != NULL),
			"%s: %s", rows[i].typed, why.bytes);
		ck_assert_msg(strstr(why.bytes, rows[i].why ? rows[i].why : ""), "%s", why.bytes);
		text_fini(&why);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("strict");
	TCase *written = suite_case(suite, "written"), *alone = suite_case(suite, "alone");

	tcase_add_loop_test(written, a_length_is_understood_as_people_write_it, 0,
		sizeof lengths / sizeof *lengths);
	tcase_add_test(written, cells_are_lengths_or_a_number_with_the_word);
	tcase_add_loop_test(written, other_values_are_put_as_they_are_but_for_their_numbers, 0,
		sizeof values / sizeof *values);
	tcase_add_test(alone, a_number_alone_is_tried_in_one_unit_after_the_other);
	tcase_add_test(alone, the_first_of_them_has_a_name);
	tcase_add_test(alone, each_quantity_has_units_in_both_systems);
	tcase_add_test(alone, what_nobody_can_be_sure_of_is_named);
	return suite;
}
