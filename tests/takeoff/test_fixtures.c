/* Which fixtures must be set before the walls round them. */
#include "support/garden.h"
#include "support/runner.h"

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* Beds are raised, but for d. */
static const struct { const char *rows[6]; int inside, others; } cases[] = {
	{ { "S", NULL }, 0, 1 },
	{ { "....", NULL }, 0, 0 },
	{ { "bbb", "bSb", "bbb", NULL }, 1, 0 },
	/* open at a corner only: its sides are held all the same */
	{ { "bbb", "bSb", "bb.", NULL }, 1, 0 },
	/* a way in from one side, at each in turn */
	{ { "b.b", "bSb", "bbb", NULL }, 0, 1 },
	{ { "bbb", ".Sb", "bbb", NULL }, 0, 1 },
	{ { "bbb", "bSp", "bbb", NULL }, 0, 1 },
	{ { "bbb", "bSb", "blb", NULL }, 0, 1 },
	/* the boundary is a way in too */
	{ { "bSb", "bbb", NULL }, 0, 1 },
	{ { "bbb", "bSb", NULL }, 0, 1 },
	{ { "Sb", "bb", NULL }, 0, 1 },
	{ { "bbS", "bbb", NULL }, 0, 1 },
	{ { "bbb", "Sbb", "bbb", NULL }, 0, 1 },
	{ { "bbb", "bbS", "bbb", NULL }, 0, 1 },
	/* of several cells, open at one of them */
	{ { "bbbbb", "bSSSb", "bbbbb", NULL }, 1, 0 },
	{ { "bbbbb", "bSSSb", "bb.bb", NULL }, 0, 1 },
	{ { "bbbb", "bSSb", "bSbb", "bbbb", NULL }, 1, 0 },
	/* between the walls of two beds */
	{ { "bbb", "bSa", "aaa", NULL }, 1, 0 },
	/* a bed at ground level has no wall */
	{ { "ddd", "dSd", "ddd", NULL }, 0, 1 },
	{ { "bbb", "bSd", "bbb", NULL }, 0, 1 },
	/* each other: two fixtures in one hole */
	{ { "bbbb", "bSTb", "bbbb", NULL }, 0, 2 },
	/* one in, one out */
	{ { "bbb..", "bSb.S", "bbb..", NULL }, 1, 1 },
};

START_TEST(a_fixture_is_inside_where_raised_beds_close_it_in)
{
	garden_rows(&garden, cases[_i].rows);
	if (plot_entry(&garden.plot, 'd'))
		plot_set(&garden.plot, 'd', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fixtures.inside, cases[_i].inside);
	ck_assert_int_eq(garden.takeoff.fixtures.others, cases[_i].others);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fixtures");
	TCase *all = suite_case(suite, "inside");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_loop_test(all, a_fixture_is_inside_where_raised_beds_close_it_in, 0,
		sizeof cases / sizeof *cases);
	return suite;
}
