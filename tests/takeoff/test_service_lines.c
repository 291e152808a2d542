/* Lines in the ground: what is told of them, and what lines to lay take. */
#include "base/measure.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/runner.h"
#include "takeoff/services/service_values.h"

#include <stdio.h>
#include <string.h>

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct service_line *lines_of(const char *lines)
{
	garden_rectangle(&garden, '.', 20, 10);
	around_add(&garden.plot, lines);
	garden_count(&garden);
	return garden.takeoff.services.list;
}

/* ---- Values ---------------------------------------------------------------------------------- */

/* NFPA 70, National Electrical Code, 2020, Table 300.5, as quoted: direct burial cable 24 in. The
 * year is from memory. All else is common practice, no published source. */
static const struct {
	const char *kind;
	double inches, mm, trench_inches, trench_mm;
} usual[SERVICE_KINDS] = {
	{ "water", 18, 450, 6, 150 }, { "gas", 18, 450, 6, 150 }, { "power", 24, 600, 6, 150 },
	{ "telecom", 12, 300, 6, 150 }, { "drain", 12, 300, 12, 300 }, { "other", 18, 450, 6, 150 },
};

static void values_are(double depth, double width, nm unit)
{
	const struct service_line *line = garden.takeoff.services.list;

	ck_assert(line->has_depth);
	ck_assert_int_eq(line->depth, (nm)(depth * (double)unit));
	ck_assert_int_eq(line->width, (nm)(width * (double)unit));
}

START_TEST(a_line_to_lay_lies_as_deep_as_its_kind_does)
{
	char lines[80];

	ck_assert_str_eq(service_words[_i], usual[_i].kind);
	snprintf(lines, sizeof lines, "service %s \"S\" to-lay\n  line 0,1 9,1\n", usual[_i].kind);
	lines_of(lines);
	values_are(usual[_i].inches, usual[_i].trench_inches, NM_PER_INCH);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	garden_count(&garden);
	values_are(usual[_i].mm, usual[_i].trench_mm, NM_PER_MM);
}
END_TEST

START_TEST(water_lies_as_deep_as_frost_goes)
{
	lines_of("service water \"W\" to-lay\n  line 0,1 9,1\nservice gas \"G\" to-lay\n");
	plot_set(&garden.plot, 0, ALLOW_FROST, "30 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.services.list[0].depth, 30 * NM_PER_INCH);
	ck_assert_int_eq(garden.takeoff.services.list[1].depth, 18 * NM_PER_INCH);
	plot_set(&garden.plot, 0, ALLOW_FROST, "10 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.services.list[0].depth, 18 * NM_PER_INCH);
}
END_TEST

START_TEST(what_is_not_told_of_a_line_that_is_there_is_not_known)
{
	const struct service_line *list = lines_of("service gas \"G\" existing\n  line 0,1 9,1\n"
		"service gas \"H\" existing\n  depth 0 in\n  owner public\n"
		"service gas \"I\" existing\n  depth 3 ft\n  owner private\n");

	ck_assert(!list[0].has_depth);
	ck_assert_int_eq(list[0].depth, 0);
	ck_assert_int_eq(list[0].owner, LINE_OWNER_UNTOLD);
	ck_assert(list[1].has_depth);
	ck_assert_int_eq(list[1].owner, LINE_PUBLIC);
	ck_assert_int_eq(list[2].depth, 3 * NM_PER_FOOT);
	ck_assert_int_eq(list[2].owner, LINE_PRIVATE);
	ck_assert_int_eq(garden.takeoff.services.existing, 3);
	ck_assert_int_eq(garden.takeoff.services.to_lay, 0);
}
END_TEST

/* ---- Lines to lay ---------------------------------------------------------------------------- */

/* 9 ft across and 4 ft down, of which 3 ft are drawn twice. */
START_TEST(what_lies_over_itself_is_counted_once)
{
	const struct service_line *line = lines_of("service power \"L\" to-lay\n"
		"  line 0,1 9,1 9,5\n  line 4,1 1,1\n");

	ck_assert_int_eq(line->length, 13 * NM_PER_FOOT);
}
END_TEST

/* 13 ft long, 5 in wide, 30 + 2 in deep: by arithmetic 13 x 5/12 x 32/12 cu ft. */
START_TEST(a_trench_is_as_long_as_its_line)
{
	const struct service_line *line = lines_of("service power \"L\" to-lay\n"
		"  depth 30 in\n  trench 5 in\n  below 2 in\n  line 0,1 9,1 9,5\n");
	const struct labours *labours = &garden.takeoff.work.labours;
	double trench = 13 * 5.0 / 12 * 32 / 12 * CUBIC_FOOT;

	ck_assert_int_eq(line->trench_depth, 32 * NM_PER_INCH);
	ck_assert_double_eq_tol(line->trench, trench, EXACT);
	ck_assert_double_eq_tol(garden.takeoff.services.trenches, trench, EXACT);
	ck_assert_int_eq(garden.takeoff.services.laid, 13 * NM_PER_FOOT);
	/* It goes back where it came from: nothing of it is hauled. */
	ck_assert_ptr_null(garden_item(&garden, "spoil"));
	ck_assert_double_eq(garden.takeoff.earthwork.bank_all, 0);
	/* Dug at 2.2 h per m3 in loam, put back at 1: common practice, no published source. */
	ck_assert_int_eq(labours->count, 2);
	ck_assert_int_eq(labours->list[0].step, WORK_SLEEVES);
	ck_assert_double_eq_tol(labours->list[0].hours, 2.2 * trench, EXACT);
	ck_assert_int_eq(labours->list[1].step, WORK_SLEEVES);
	ck_assert_double_eq_tol(labours->list[1].hours, trench, EXACT);
}
END_TEST

START_TEST(what_is_there_takes_no_trench)
{
	const struct service_line *line = lines_of("service power \"L\" existing\n  trench 5 in\n"
		"  line 0,1 9,1\n");

	ck_assert_double_eq(line->trench, 0);
	ck_assert_int_eq(line->width, 0);
	ck_assert_int_eq(garden.takeoff.work.labours.count, 0);
}
END_TEST

/* Nobody goes into a trench more than 4 ft deep that is not shored: common practice, no published
 * source. */
START_TEST(a_deep_trench_is_a_deep_hole)
{
	lines_of("service drain \"D\" to-lay\n  depth 44 in\n  line 0,1 9,1\n");
	ck_assert_int_eq((garden.takeoff.work.facts & FACT(DEEP)) != 0, 0);
	garden_fini(&garden);
	lines_of("service drain \"D\" to-lay\n  depth 45 in\n  line 0,1 9,1\n");
	ck_assert_int_ne((garden.takeoff.work.facts & FACT(DEEP)) != 0, 0);
}
END_TEST

/* ---- What is kept ---------------------------------------------------------------------------- */

START_TEST(what_is_kept_is_told_with_what_is_round_it)
{
	const struct kept *kept;

	lines_of("keep \"Pear\" 6 ft\n  at 3,4\nkeep \"Wall\"\n  from -2,1 to 4,3\n");
	kept = garden.takeoff.services.kept;
	ck_assert_int_eq(garden.takeoff.services.kept_count, 2);
	ck_assert_str_eq(kept[0].name, "Pear");
	ck_assert_int_eq(kept[0].radius, 6 * NM_PER_FOOT);
	ck_assert_int_eq(kept[0].from.x, -3 * NM_PER_FOOT);
	ck_assert_int_eq(kept[0].to.y, 10 * NM_PER_FOOT);
	ck_assert_int_eq(kept[1].radius, 0);
	ck_assert_int_eq(kept[1].from.x, -2 * NM_PER_FOOT);
	ck_assert_int_eq(kept[1].to.x, 4 * NM_PER_FOOT);
	ck_assert_double_eq_tol(kept[1].hand.area, 8 * SQUARE_FOOT, EXACT);
}
END_TEST

START_TEST(a_plot_without_any_has_none)
{
	lines_of("");
	ck_assert_int_eq(garden.takeoff.services.count, 0);
	ck_assert_int_eq(garden.takeoff.services.kept_count, 0);
	ck_assert(!takeoff_has(&garden.takeoff, SUBJECT_SERVICE));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("service lines");
	TCase *values = suite_case(suite, "values"), *lay = suite_case(suite, "to lay");
	TCase *kept = suite_case(suite, "kept");

	tcase_add_checked_fixture(values, NULL, teardown);
	tcase_add_loop_test(values, a_line_to_lay_lies_as_deep_as_its_kind_does, 0, SERVICE_KINDS);
	tcase_add_test(values, water_lies_as_deep_as_frost_goes);
	tcase_add_test(values, what_is_not_told_of_a_line_that_is_there_is_not_known);
	tcase_add_checked_fixture(lay, NULL, teardown);
	tcase_add_test(lay, what_lies_over_itself_is_counted_once);
	tcase_add_test(lay, a_trench_is_as_long_as_its_line);
	tcase_add_test(lay, what_is_there_takes_no_trench);
	tcase_add_test(lay, a_deep_trench_is_a_deep_hole);
	tcase_add_checked_fixture(kept, NULL, teardown);
	tcase_add_test(kept, what_is_kept_is_told_with_what_is_round_it);
	tcase_add_test(kept, a_plot_without_any_has_none);
	return suite;
}
