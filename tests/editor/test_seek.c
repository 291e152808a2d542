/* Answers found by typing some of their words. */
#include "editor/ask/seek.h"
#include "support/runner.h"

static const char *const answers[] = { "Axis", "Copy", "Lay", "Lay a fence", "Fence it in", "Leave",
	"Overlay", "p Crushed stone" };
static const char *const also[] = { "say where the mirror stands", "", "lay it here",
	"put up pickets",
	"", "leave the program", "", "" };
enum { AXIS, COPY, LAY, LAY_A_FENCE, FENCE_IT_IN, LEAVE, OVERLAY, STONE, ANSWERS };

static const struct question question = { .answers = answers, .also = also, .count = ANSWERS };

static const struct {
	const char *typed;
	int best, next; /* next: the one behind the best */
} rows[] = {
	{ "a", AXIS, LAY },                   /* begins so; behind it, inside "Lay" */
	{ "l", LAY, LAY_A_FENCE },
	{ "lay a", LAY_A_FENCE, LAY_A_FENCE },
	{ "fence", FENCE_IT_IN, LAY_A_FENCE }, /* at the start before a later word */
	{ "FENCE I", FENCE_IT_IN, FENCE_IT_IN },
	{ "stone", STONE, STONE },
	{ "rush", STONE, STONE },             /* within a word */
	{ "lay", LAY, LAY_A_FENCE },
	{ "over", OVERLAY, OVERLAY },
	{ "mirror", AXIS, AXIS },             /* only by what it also goes by */
	{ "pick", LAY_A_FENCE, LAY_A_FENCE },
	{ "ickets", ANSWER_NONE, ANSWER_NONE }, /* of those, words must begin so */
	{ "x", AXIS, AXIS },
	{ "stonee", ANSWER_NONE, ANSWER_NONE },
	{ "copy it", ANSWER_NONE, ANSWER_NONE },
};

START_TEST(the_best_is_found_first_and_others_behind_it)
{
	int best = seek_best(&question, rows[_i].typed);

	ck_assert_msg(best == rows[_i].best, "%s finds %d, not %d", rows[_i].typed, best,
		rows[_i].best);
	if (best != ANSWER_NONE)
		ck_assert_msg(seek_next(&question, rows[_i].typed, best) == rows[_i].next,
			"behind %s stands %d, not %d", rows[_i].typed,
			seek_next(&question, rows[_i].typed, best), rows[_i].next);
}
END_TEST

START_TEST(the_next_one_goes_round_and_stays_where_there_is_no_other)
{
	int at = seek_best(&question, "lay");

	at = seek_next(&question, "lay", at);
	ck_assert_int_eq(at, LAY_A_FENCE);
	at = seek_next(&question, "lay", at);
	ck_assert_int_eq(at, OVERLAY);
	at = seek_next(&question, "lay", at);
	ck_assert_int_eq(at, LAY);
	ck_assert_int_eq(seek_next(&question, "copy", COPY), COPY);
}
END_TEST

START_TEST(answers_that_go_by_nothing_else_are_found_too)
{
	const struct question bare = { .answers = answers, .count = ANSWERS };

	ck_assert_int_eq(seek_best(&bare, "fence"), FENCE_IT_IN);
	ck_assert_int_eq(seek_best(&bare, "mirror"), ANSWER_NONE);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("seek");
	TCase *seek = suite_case(suite, "seek");

	tcase_add_loop_test(seek, the_best_is_found_first_and_others_behind_it, 0,
		sizeof rows / sizeof *rows);
	tcase_add_test(seek, the_next_one_goes_round_and_stays_where_there_is_no_other);
	tcase_add_test(seek, answers_that_go_by_nothing_else_are_found_too);
	return suite;
}
