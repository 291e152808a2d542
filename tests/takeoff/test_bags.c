/* Bags of dry concrete mix: what they yield, against what concrete weighs. */
#include "takeoff/common/bags.h"

#include "base/measure.h"
#include "plot/attribute.h"
#include "support/runner.h"

/* American Concrete Institute, ACI 318-14, Building Code Requirements for Structural Concrete,
 * R2.3: concrete of normal weight has 135 to 160 lb a cubic foot (from memory). A bag is mixed with
 * water of an eighth of its weight at the most: common practice, no published source. */
static const double LEAST = 135 * KG_PER_POUND / M3_PER_CUBIC_FOOT,
	MOST = 160 * KG_PER_POUND / M3_PER_CUBIC_FOOT, WATER = 1.0 / 8;

/* By its yield, and what is said of it. */
static const struct { double yield; const char *words; double weight; enum units units; } bags[] = {
	{ 0.6 * M3_PER_CUBIC_FOOT, "80 lb", 80 * KG_PER_POUND, UNITS_IMPERIAL },
	{ 0.45 * M3_PER_CUBIC_FOOT, "60 lb", 60 * KG_PER_POUND, UNITS_IMPERIAL },
	{ 0.375 * M3_PER_CUBIC_FOOT, "50 lb", 50 * KG_PER_POUND, UNITS_IMPERIAL },
	{ 0.012, "25 kg", 25, UNITS_METRIC },
	{ 0.0095, "20 kg", 20, UNITS_METRIC },
};

START_TEST(what_a_bag_yields_weighs_as_much_as_concrete)
{
	const struct concrete_bag *bag = bag_of(bags[_i].yield);
	double wet;

	ck_assert_ptr_nonnull(bag);
	ck_assert_str_eq(bag->words, bags[_i].words);
	ck_assert_int_eq(bag->units, bags[_i].units);
	ck_assert_double_eq_tol(bag->weight, bags[_i].weight, 1e-9);
	wet = bag->weight * (1 + WATER) / bag->yield;
	ck_assert_msg(wet >= LEAST && wet <= MOST, "%s: %g", bag->words, wet);
}
END_TEST

START_TEST(a_yield_two_percent_off_is_still_the_bags)
{
	ck_assert_ptr_eq(bag_of(bags[_i].yield * 1.0199), bag_of(bags[_i].yield));
	ck_assert_ptr_eq(bag_of(bags[_i].yield * 0.9801), bag_of(bags[_i].yield));
	ck_assert_ptr_null(bag_of(bags[_i].yield * 1.0201));
	ck_assert_ptr_null(bag_of(bags[_i].yield * 0.9799));
}
END_TEST

/* 50 lb and 23 kg can be lifted by one. */
START_TEST(one_person_can_lift_the_lightest)
{
	ck_assert_str_eq(bag_for_one(UNITS_IMPERIAL)->words, "50 lb");
	ck_assert_str_eq(bag_for_one(UNITS_METRIC)->words, "20 kg");
}
END_TEST

/* The default of the plot's units is one of the bags that are sold there. */
START_TEST(the_default_is_a_bag_of_the_plots_units)
{
	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		const struct value *preset = attribute_preset(ALLOW_CONCRETE_BAG, units);
		const struct concrete_bag *bag = bag_of(amount_si(&preset->as.amount));

		ck_assert_ptr_nonnull(bag);
		ck_assert_int_eq(bag->units, units);
		ck_assert_double_eq_tol(bag_weight(&preset->as.amount), bag->weight, 1e-9);
	}
}
END_TEST

/* 90 lb that yield 0.67 cu ft are not sold here: so much concrete weighs what it does in other
 * bags. */
START_TEST(a_bag_of_another_yield_weighs_in_proportion)
{
	struct amount yield = { 670000, AMOUNT_CU_FT };

	ck_assert_ptr_null(bag_of(amount_si(&yield)));
	ck_assert_double_eq_tol(bag_weight(&yield) / KG_PER_POUND, 90, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bags");
	TCase *yields = suite_case(suite, "yields");

	tcase_add_loop_test(yields, what_a_bag_yields_weighs_as_much_as_concrete, 0,
		sizeof bags / sizeof *bags);
	tcase_add_loop_test(yields, a_yield_two_percent_off_is_still_the_bags, 0,
		sizeof bags / sizeof *bags);
	tcase_add_test(yields, one_person_can_lift_the_lightest);
	tcase_add_test(yields, the_default_is_a_bag_of_the_plots_units);
	tcase_add_test(yields, a_bag_of_another_yield_weighs_in_proportion);
	return suite;
}
