/* The one sequence of work, and the step that takes each good. */
#include "support/runner.h"
#include "takeoff/common/work_steps.h"

#include <string.h>

START_TEST(each_step_has_a_word_of_its_own)
{
	for (int i = 0; i < WORK_STEPS; i++) {
		ck_assert_uint_gt(strlen(work_step_word((enum work_step)i)), 0);
		for (int j = 0; j < i; j++)
			ck_assert_str_ne(work_step_word((enum work_step)i),
				work_step_word((enum work_step)j));
	}
}
END_TEST

/* Common practice, no published source: whoever takes one before the other builds it so. */
static const struct { const char *good, *before; } orders[] = {
	{ "fence.post", "spoil" },        /* what comes out of the holes leaves on the same truck */
	{ "fence.concrete", "stone.base" }, /* it cures while the rest goes on */
	{ "spoil", "fabric.roll" },
	{ "fabric.roll", "stone.base" },
	{ "stone.base", "block.wall" },
	{ "block.wall", "liner" },        /* the adhesive cures before the bed is filled */
	{ "soil.topsoil", "edging.piece" },
	{ "edging.piece", "stone.surface.fines" }, /* it holds the surface */
	{ "stone.surface.clean", "fence.panel" },  /* barrows get in until then */
	{ "fence.gate", "mulch" },
	{ "mulch", "turf" },
};

START_TEST(goods_are_taken_in_the_order_of_the_work)
{
	enum good one, other;
	const char *name;

	ck_assert(good_find(orders[_i].good, &one, &name));
	ck_assert(good_find(orders[_i].before, &other, &name));
	ck_assert_int_lt(work_step_of_good(one), work_step_of_good(other));
}
END_TEST

START_TEST(every_good_is_taken_before_the_site_is_cleared)
{
	for (int i = 0; i < GOODS; i++)
		ck_assert_int_lt(work_step_of_good((enum good)i), WORK_CLEAR_UP);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("work steps");
	TCase *all = suite_case(suite, "steps");

	tcase_add_test(all, each_step_has_a_word_of_its_own);
	tcase_add_loop_test(all, goods_are_taken_in_the_order_of_the_work, 0,
		sizeof orders / sizeof *orders);
	tcase_add_test(all, every_good_is_taken_before_the_site_is_cleared);
	return suite;
}
