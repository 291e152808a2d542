/* Which figures of a page have a star: pages at random beside a slow reference, and long ones. */

#include "report/panel/page_compare.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <string.h>

enum { TRIALS = 300, LINES = 40, MANY = 300000 };

static struct page page, before;
static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

static struct line line_at_random(struct random *random)
{
	/* Few words: most come several times. */
	static const char *const labels[] = { "Area", "Length", "Posts" };
	static const char *const unders[] = { "", "B1 b", "B2 b" };
	static const char *const values[] = { "1", "2" };
	enum line_kind kind = random_below(random, 5) ? LINE_FIGURE :
		random_below(random, 2) ? LINE_HEADING : LINE_NOTE;

	return (struct line){ .kind = kind, .label = labels[random_below(random, 3)],
		.value = kind == LINE_FIGURE ? values[random_below(random, 2)] : "",
		.under = unders[random_below(random, 3)] };
}

static void page_at_random(struct page *out, struct random *random)
{
	*out = (struct page){ .count = (size_t)random_below(random, LINES), .is_made = true };
	out->lines = arena_new(&arena, out->count, sizeof *out->lines);
	for (size_t i = 0; i < out->count; i++)
		out->lines[i] = line_at_random(random);
}

static bool is_same_figure(const struct line *a, const struct line *b)
{
	return a->kind == LINE_FIGURE && b->kind == LINE_FIGURE &&
		strcmp(a->label, b->label) == 0 && strcmp(a->under, b->under) == 0;
}

/* How many lines before it are of the same figure. */
static int rank_of(const struct page *of, size_t at)
{
	int rank = 0;

	for (size_t i = 0; i < at; i++)
		rank += is_same_figure(&of->lines[i], &of->lines[at]);
	return rank;
}

static bool is_new_or_other(size_t at)
{
	int rank = rank_of(&page, at);

	for (size_t i = 0; i < before.count; i++)
		if (is_same_figure(&before.lines[i], &page.lines[at]) && rank-- == 0)
			return strcmp(before.lines[i].value, page.lines[at].value) != 0;
	return true;
}

START_TEST(a_figure_has_a_star_where_it_is_new_or_another_than_before)
{
	for (int seed = 0; seed < TRIALS; seed++) {
		struct random random = { (uint64_t)seed };

		page_at_random(&before, &random);
		page_at_random(&page, &random);
		page_compare(&page, &before);
		for (size_t i = 0; i < page.count; i++)
			ck_assert_msg(page.lines[i].is_changed ==
				(page.lines[i].kind == LINE_FIGURE && is_new_or_other(i)),
				"seed %d, line %zu", seed, i);
	}
}
END_TEST

/* MANY figures, and the same the other way round: searched one by one they would take an hour. */
static void pages_make_long(void)
{
	before = page = (struct page){ .count = MANY, .is_made = true };
	before.lines = arena_new(&arena, MANY, sizeof *before.lines);
	page.lines = arena_new(&arena, MANY, sizeof *page.lines);
	for (int i = 0; i < MANY; i++) {
		before.lines[i] = (struct line){ .kind = LINE_FIGURE,
			.label = arena_print(&arena, "Figure %d", i), .value = "1", .under = "" };
		page.lines[MANY - 1 - i] = before.lines[i];
	}
}

START_TEST(pages_of_very_many_lines_in_another_order_are_compared)
{
	pages_make_long();
	page.lines[7].value = "2";
	page_compare(&page, &before);
	for (int i = 0; i < MANY; i++)
		ck_assert_int_eq(page.lines[i].is_changed, i == 7);
}
END_TEST

START_TEST(comparing_can_be_stopped)
{
	struct stopper stopper;

	pages_make_long();
	for (int64_t at = 1; at < 2 * MANY; at += MANY / 4) {
		stopper_begin(&stopper, at);
		page_compare(&page, &before);
		stopper_end();
		ck_assert_int_eq(stopper.asks, at);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("page_compare");
	TCase *all = suite_case(suite, "page_compare");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_test(all, a_figure_has_a_star_where_it_is_new_or_another_than_before);
	tcase_add_test(all, pages_of_very_many_lines_in_another_order_are_compared);
	tcase_add_test(all, comparing_can_be_stopped);
	return suite;
}
