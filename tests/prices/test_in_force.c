/* Which values hold: the plot's own, else the price book's, else the defaults. */
#include "prices/in_force.h"
#include "base/memory.h"

#include "support/book.h"
#include "support/plots.h"
#include "support/runner.h"

static struct plot plot;
static struct book book;
static struct arena arena;

static void setup(void)
{
	plot_from_rows(&plot, (const char *const[]){ "bplS", NULL });
	details_add_fence(&plot.details, memory_string("Pickets"));
	book_of(&book, "'allow': {'kerf': '3 mm', 'breakage': '9 %', "
		"'density-soil': '1000 kg/m3'}");
}

static void teardown(void)
{
	plot_fini(&plot);
	book_fini(&book);
	arena_clear(&arena);
}

static struct plot in_force;

static const struct block *allow_of(const struct book *from)
{
	in_force = plot_in_force(&arena, &plot, from);
	return &in_force.details.allow;
}

START_TEST(what_the_plot_sets_goes_before_the_book)
{
	plot_set(&plot, 0, ALLOW_KERF, "4 mm");
	ck_assert_int_eq(block_length(allow_of(&book), ALLOW_KERF), 4 * NM_PER_MM);
	/* Also where it sets what is the default. */
	plot_set(&plot, 0, ALLOW_BREAKAGE, "5 %");
	ck_assert_int_eq(block_number(allow_of(&book), ALLOW_BREAKAGE), 5 * MILLION);
}
END_TEST

START_TEST(what_the_plot_leaves_open_is_the_books)
{
	const struct block *allow = allow_of(&book);

	ck_assert_int_eq(block_length(allow, ALLOW_KERF), 3 * NM_PER_MM);
	ck_assert_int_eq(block_number(allow, ALLOW_BREAKAGE), 9 * MILLION);
	ck_assert_double_eq_tol(block_amount(allow, ALLOW_DENSITY_SOIL), 1000, 1e-9);
}
END_TEST

/* In every block: the default of the plot's units, where it has one. */
START_TEST(what_nobody_sets_has_the_default_of_the_plots_units)
{
	static const enum block_kind kinds[] = { BLOCK_ALLOW, BLOCK_BED, BLOCK_PATH, BLOCK_LAWN,
		BLOCK_FIXTURE, BLOCK_FENCE };
	enum units units = (enum units)_i;

	if (units == UNITS_METRIC)
		plot_set(&plot, 0, HEAD_UNITS, "metric");
	allow_of(NULL);
	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
		const struct block *block = kinds[i] == BLOCK_ALLOW ? &in_force.details.allow :
			kinds[i] == BLOCK_FENCE ? &in_force.details.fences[0].block :
			&in_force.details.legend[kinds[i] - BLOCK_BED].block;

		ck_assert_int_eq(block->kind, kinds[i]);
		for (enum attribute a = block_first(kinds[i]); a <= block_last(kinds[i]); a++)
			if (a != BED_BASE && a != PATH_BASE)
				ck_assert_msg(value_equal(attribute_row(a)->rule.kind,
					block_value(block, a), attribute_preset(a, units)),
					"%s", attribute_row(a)->keyword);
	}
}
END_TEST

/* 4 in or 100 mm, half as deep again on clay and in frost: common practice, no published source. */
START_TEST(a_base_is_deeper_on_clay_and_in_frost)
{
	static const struct {
		const char *subsoil, *frost;
		nm imperial, metric;
	} rows[] = {
		{ "loam", "0 in", 4 * NM_PER_INCH, 100 * NM_PER_MM },
		{ "sand", "0 in", 4 * NM_PER_INCH, 100 * NM_PER_MM },
		{ "clay", "0 in", 6 * NM_PER_INCH, 150 * NM_PER_MM },
		{ "loam", "1 in", 6 * NM_PER_INCH, 150 * NM_PER_MM },
		{ "clay", "30 in", 6 * NM_PER_INCH, 150 * NM_PER_MM },
	};

	plot_set(&plot, 0, ALLOW_SUBSOIL, rows[_i].subsoil);
	plot_set(&plot, 0, ALLOW_FROST, rows[_i].frost);
	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		nm base = units == UNITS_METRIC ? rows[_i].metric : rows[_i].imperial;
		const struct entry *legend;

		plot_set(&plot, 0, HEAD_UNITS, units == UNITS_METRIC ? "metric" : "imperial");
		allow_of(NULL);
		legend = in_force.details.legend;
		ck_assert_int_eq(block_length(&legend[0].block, BED_BASE), base);
		ck_assert_int_eq(block_length(&legend[1].block, PATH_BASE), base);
	}
	plot_set(&plot, 'b', BED_BASE, "3 in");
	allow_of(NULL);
	ck_assert_int_eq(block_length(&in_force.details.legend[0].block, BED_BASE),
		3 * NM_PER_INCH);
}
END_TEST

static void check_all_set(const struct block *block, const struct block *told)
{
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++) {
		const struct value *value = block_value(told, a);

		if (a != PLANT_SPREAD)
			ck_assert_msg(value_equal(attribute_row(a)->rule.kind,
				block_value(block, a), value->set ? value :
				attribute_preset(a, UNITS_IMPERIAL)), "%s",
				attribute_row(a)->keyword);
	}
}

/* Of two each, the second other than the first. */
START_TEST(services_and_plants_have_all_their_values_and_a_plant_spreads_as_it_is_spaced)
{
	static const nm spreads[] = { 12 * NM_PER_INCH, 2 * NM_PER_FOOT, 3 * NM_PER_FOOT };

	plot_add_lines(&plot, "service water \"W\" existing\n  depth 2 ft\n"
		"service gas \"G\" to-lay\n  trench 9 in\n"
		"plant r \"Rose\"\nplant t \"Thyme\"\n  spacing 2 ft\n"
		"plant u \"Sage\"\n  spacing 2 ft\n  spread 3 ft\n");
	allow_of(NULL);
	ck_assert_uint_eq(in_force.details.around.services.count, 2);
	ck_assert_uint_eq(in_force.details.plants.count, 3);
	for (int i = 0; i < 2; i++)
		check_all_set(&in_force.details.around.services.items[i].block,
			&plot.details.around.services.items[i].block);
	for (int i = 0; i < 3; i++) {
		const struct block *block = &in_force.details.plants.items[i].block;

		check_all_set(block, &plot.details.plants.items[i].block);
		ck_assert_int_eq(block_length(block, PLANT_SPREAD), spreads[i]);
	}
}
END_TEST

START_TEST(plot_and_book_stay_as_they_are)
{
	struct details before = details_copy(&plot.details);

	allow_of(&book);
	ck_assert(details_equal(&before, &plot.details));
	ck_assert_int_eq(block_length(&book.allow, ALLOW_KERF), 3 * NM_PER_MM);
	details_fini(&before);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("in force");
	TCase *force = suite_case(suite, "values");

	tcase_add_checked_fixture(force, setup, teardown);
	tcase_add_test(force, what_the_plot_sets_goes_before_the_book);
	tcase_add_test(force, what_the_plot_leaves_open_is_the_books);
	tcase_add_loop_test(force, what_nobody_sets_has_the_default_of_the_plots_units, 0, 2);
	tcase_add_loop_test(force, a_base_is_deeper_on_clay_and_in_frost, 0, 5);
	tcase_add_test(force,
		services_and_plants_have_all_their_values_and_a_plant_spreads_as_it_is_spaced);
	tcase_add_test(force, plot_and_book_stay_as_they_are);
	return suite;
}
