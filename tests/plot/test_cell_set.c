/* A set of cells, against a list of them. */
#include "plot/cell_set.h"
#include "support/random.h"
#include "support/runner.h"

START_TEST(what_is_put_in_is_in_until_it_is_taken_out)
{
	struct random random = { (uint64_t)_i };
	const struct ground size = { random_between(&random, 1, 9), random_between(&random, 1, 9),
		NULL };
	struct cell_set set = cell_set_of(&size);
	bool has[9][9] = { { false } };

	for (int i = 0; i < 400; i++) {
		struct place at = { random_below(&random, size.columns),
			random_below(&random, size.rows) };
		bool is_added = random_below(&random, 2), had = has[at.y][at.x];

		if (is_added)
			ck_assert_int_eq(cell_set_add(&set, at), !had);
		else
			ck_assert_int_eq(cell_set_take(&set, at), had);
		has[at.y][at.x] = is_added;
	}
	cell_set_fini(&set);
}
END_TEST

START_TEST(a_set_that_is_done_with_is_empty)
{
	const struct ground size = { 3, 2, NULL };
	struct cell_set set = cell_set_of(&size);

	ck_assert(!cell_set_take(&set, (struct place){ 2, 1 }));
	ck_assert(cell_set_add(&set, (struct place){ 2, 1 }));
	cell_set_fini(&set);
	ck_assert(!cell_set_take(&set, (struct place){ 2, 1 }));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cell set");
	TCase *sets = suite_case(suite, "sets");

	tcase_add_loop_test(sets, what_is_put_in_is_in_until_it_is_taken_out, 0, 20);
	tcase_add_test(sets, a_set_that_is_done_with_is_empty);
	return suite;
}
