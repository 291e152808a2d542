/* Snags: their words and sources, where they stand, their order. */

#include "takeoff/common/snags.h"
#include "report/words/snag_words.h"

#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include <string.h>

static struct arena arena;
static struct plot plot;
static struct survey survey;
static struct snag_list list;

static void setup(void)
{
	list = (struct snag_list){ .arena = &arena, .survey = &survey };
	plot_init(&plot);
}

static void teardown(void)
{
	plot_fini(&plot);
	arena_clear(&arena);
}

START_TEST(every_code_has_a_word_of_its_own_and_a_source)
{
	for (enum snag_code a = SNAG_WALL_JOG; a < SNAG_CODES; a++) {
		const char *word = snag_word(a);

		ck_assert(snag_source(a)[0] && word[0]);
		ck_assert_msg(!word[strspn(word, "abcdefghijklmnopqrstuvwxyz-")], "%s", word);
		for (enum snag_code b = SNAG_WALL_JOG; b < a; b++)
			ck_assert_msg(strcmp(word, snag_word(b)) != 0, "%s", word);
	}
}
END_TEST

START_TEST(the_words_stay_as_they_are)
{
	/* Programs that read the takeoff go by them. */
	ck_assert_str_eq(snag_word(SNAG_WALL_JOG), "wall-jog");
	ck_assert_str_eq(snag_word(SNAG_WALL_NARROW), "wall-narrow");
	ck_assert_str_eq(snag_word(SNAG_WALL_BOND), "wall-bond");
	ck_assert_str_eq(snag_word(SNAG_WALL_HIGH), "wall-high");
	ck_assert_str_eq(snag_word(SNAG_WALL_EMBED), "wall-embed");
	ck_assert_str_eq(snag_word(SNAG_WALL_SLENDER), "wall-slender");
	ck_assert_str_eq(snag_word(SNAG_BED_THIN), "bed-thin");
	ck_assert_str_eq(snag_word(SNAG_CAP_NARROW), "cap-narrow");
	ck_assert_str_eq(snag_word(SNAG_FILL_NONE), "fill-none");
	ck_assert_str_eq(snag_word(SNAG_FENCE_TIGHT), "fence-tight");
	ck_assert_str_eq(snag_word(SNAG_FENCE_HOLE), "fence-hole");
	ck_assert_str_eq(snag_word(SNAG_BED_REACH), "bed-reach");
	ck_assert_str_eq(snag_word(SNAG_PATH_NARROW), "path-narrow");
	ck_assert_str_eq(snag_word(SNAG_PATH_BARROW), "path-barrow");
	ck_assert_str_eq(snag_word(SNAG_PATH_CUT_OFF), "path-cut-off");
	ck_assert_str_eq(snag_word(SNAG_LAWN_NARROW), "lawn-narrow");
	ck_assert_str_eq(snag_word(SNAG_FIXTURE_TALL), "fixture-tall");
	ck_assert_str_eq(snag_word(SNAG_FIXTURE_NO_PATH), "fixture-no-path");
	ck_assert_str_eq(snag_word(SNAG_NAME_OPEN), "name-open");
	ck_assert_str_eq(snag_word(SNAG_MIRROR_BROKEN), "mirror-broken");
}
END_TEST

START_TEST(a_snag_stands_at_the_first_cell_of_its_region_and_means_no_side)
{
	const struct snag *snag;

	plot_from_rows(&plot, (const char *const[]){ "....", "..b.", ".bb.", NULL });
	survey_plot(&survey, &arena, &plot);
	snag = snag_add(&list, SNAG_FILL_NONE, 0, SNAG_FIGURES_OF(4, 3, 2, 1));
	ck_assert_int_eq(snag->code, SNAG_FILL_NONE);
	ck_assert_int_eq(snag->region, 0);
	ck_assert_int_eq(snag->cell.x, 2);
	ck_assert_int_eq(snag->cell.y, 1);
	ck_assert_int_eq(snag->loop, -1);
	ck_assert_int_eq(snag->side, -1);
	for (int i = 0; i < SNAG_FIGURES; i++)
		ck_assert_int_eq(snag->figures[i], 4 - i);
}
END_TEST

static void check_box(const struct snag *snag, struct snag_box box)
{
	ck_assert_msg(memcmp(&snag->box, &box, sizeof box) == 0, "it is %d,%d to %d,%d",
		snag->box.left, snag->box.top, snag->box.right, snag->box.bottom);
}

START_TEST(a_snag_lies_around_its_region_until_it_is_put_elsewhere)
{
	struct snag *snag;

	plot_from_rows(&plot, (const char *const[]){ "....", "..b.", ".bb.", NULL });
	survey_plot(&survey, &arena, &plot);
	snag = snag_add(&list, SNAG_BED_THIN, 0, SNAG_FIGURES_OF(4));
	check_box(snag, (struct snag_box){ 1, 1, 2, 2 });
	ck_assert_int_eq(snag->fence, NO_FENCE);
	snag_put(snag, (struct place){ 1, 2 });
	ck_assert_int_eq(snag->cell.x, 1);
	ck_assert_int_eq(snag->cell.y, 2);
	check_box(snag, (struct snag_box){ 1, 2, 1, 2 });
}
END_TEST

START_TEST(snags_are_told_apart_by_the_fence_they_are_of)
{
	plot_from_rows(&plot, (const char *const[]){ "....", NULL });
	survey_plot(&survey, &arena, &plot);
	for (int i = 0; i < 3; i++)
		snag_add(&list, SNAG_FENCE_TIGHT, NO_REGION, SNAG_FIGURES_OF(0));
	snags_of_fence(&list, 1, 7);
	ck_assert_int_eq(list.list[0].fence, NO_FENCE);
	ck_assert_int_eq(list.list[1].fence, 7);
	ck_assert_int_eq(list.list[2].fence, 7);
	snags_of_fence(&list, 1, 40000); /* more than are told apart */
	ck_assert_int_eq(list.list[1].fence, NO_FENCE);
}
END_TEST

START_TEST(snags_repeated_lie_as_they_did_in_the_first_region)
{
	struct snag *snag;

	plot_from_rows(&plot, (const char *const[]){ ".b.....", "bb...b.", "....bb.", NULL });
	survey_plot(&survey, &arena, &plot);
	snag = snag_add(&list, SNAG_WALL_JOG, 0, SNAG_FIGURES_OF(4));
	snag_put_around(snag, (struct place){ 1, 0 }, (struct rectangle){ 1, 0, 1, 1 });
	snag->side = 2;
	snags_repeat(&list, 0, 1, 1);
	ck_assert_uint_eq(list.count, 2);
	snag = &list.list[1];
	ck_assert_int_eq(snag->region, 1);
	ck_assert_int_eq(snag->side, 2);
	ck_assert_int_eq(snag->cell.x, 5);
	ck_assert_int_eq(snag->cell.y, 1);
	check_box(snag, (struct snag_box){ 5, 1, 5, 2 });
	/* Back again, two of them, from the second on. */
	snag_add(&list, SNAG_WALL_NARROW, 1, SNAG_FIGURES_OF(5));
	snags_repeat(&list, 1, 2, 0);
	ck_assert_uint_eq(list.count, 5);
	check_box(&list.list[3], list.list[0].box);
	ck_assert(place_equal(list.list[3].cell, list.list[0].cell));
	ck_assert_int_eq(list.list[3].code, SNAG_WALL_JOG);
	ck_assert_int_eq(list.list[4].code, SNAG_WALL_NARROW);
	ck_assert_int_eq(list.list[4].region, 0);
	check_box(&list.list[4], (struct snag_box){ 0, 0, 1, 1 });
	ck_assert_int_eq(list.list[4].figures[0], 5);
}
END_TEST

START_TEST(images_of_one_another_have_one_first_image)
{
	static const struct snag_box images[] = { { 0, 0, 1, 0 }, { 4, 0, 5, 0 }, { 0, 3, 1, 3 },
		{ 4, 3, 5, 3 } };
	const struct mirror mirror = { MIRROR_FOUR_WAY, 6, 4 };

	for (int i = 0; i < 4; i++) {
		const struct snag snag = { .box = images[i] };
		struct snag_box first = snag_first_image(&mirror, &snag);

		ck_assert(snag_box_equal(&first, &images[0]));
		ck_assert_int_eq(snag_box_equal(&images[i], &images[0]), i == 0);
	}
}
END_TEST

START_TEST(equal_figures_are_kept_once)
{
	const nm *first = snag_add(&list, SNAG_WALL_NARROW, NO_REGION, SNAG_FIGURES_OF(4))->figures;

	for (nm i = 0; i < 10000; i++) {
		nm figure = i % 3 ? i : 4;
		const nm *figures = snag_add(&list, SNAG_WALL_EMBED, NO_REGION,
			SNAG_FIGURES_OF(figure))->figures;

		ck_assert_int_eq(figures[0], figure);
		ck_assert_int_eq(first[0], 4);
	}
	snag_add(&list, SNAG_BED_THIN, NO_REGION, SNAG_FIGURES_OF(4, 3));
	ck_assert_ptr_eq(snag_add(&list, SNAG_BED_THIN, NO_REGION, SNAG_FIGURES_OF(4, 3))->figures,
		list.list[list.count - 2].figures);
}
END_TEST

START_TEST(snags_are_sorted_by_code_then_place_then_side)
{
	const struct snag given[] = {
		{ .code = SNAG_BED_THIN, .region = 0, .cell = { 1, 1 }, .loop = -1, .side = -1,
			.figures = (const nm[]){ 7 } },
		{ .code = SNAG_WALL_JOG, .region = 1, .cell = { 5, 2 }, .loop = 1, .side = 0,
			.figures = (const nm[]){ 5 } },
		{ .code = SNAG_WALL_JOG, .region = 1, .cell = { 5, 2 }, .loop = 0, .side = 1,
			.figures = (const nm[]){ 4 } },
		{ .code = SNAG_WALL_JOG, .region = 0, .cell = { 7, 1 }, .loop = 0, .side = 3,
			.figures = (const nm[]){ 1 } },
		{ .code = SNAG_WALL_JOG, .region = 1, .cell = { 5, 2 }, .loop = 0, .side = 0,
			.figures = (const nm[]){ 3 } },
		{ .code = SNAG_WALL_NARROW, .region = 1, .cell = { 0, 0 }, .loop = -1, .side = -1,
			.figures = (const nm[]){ 6 } },
		{ .code = SNAG_WALL_JOG, .region = 0, .cell = { 2, 2 }, .loop = 0, .side = 2,
			.figures = (const nm[]){ 2 } },
	};

	for (int i = 0; i < 7; i++)
		*snag_add(&list, given[i].code, NO_REGION, SNAG_FIGURES_OF(0)) = given[i];
	snag_sort(&list);
	ck_assert_uint_eq(list.count, 7);
	for (int i = 0; i < 7; i++)
		ck_assert_int_eq(list.list[i].figures[0], 1 + i);
}
END_TEST

START_TEST(snags_are_alike_by_code_kind_and_figures_wherever_they_are)
{
	nm figures[SNAG_FIGURES] = { 1, 2, 3, 4 };
	const struct snag one = { .code = SNAG_FILL_NONE, .kind = FILL_NONE_RAISED, .region = 0,
		.cell = { 1, 1 }, .figures = (const nm[]){ 1, 2, 3, 4 } };
	struct snag other = { .code = SNAG_FILL_NONE, .kind = FILL_NONE_RAISED, .region = 1,
		.cell = { 2, 3 }, .side = 1, .figures = figures };

	ck_assert(snag_is_alike(&one, &other));
	other.kind = FILL_NONE_UNDUG;
	ck_assert(!snag_is_alike(&one, &other));
	other.kind = FILL_NONE_RAISED;
	figures[3]++;
	ck_assert(!snag_is_alike(&one, &other));
	figures[3]--;
	other.code = SNAG_WALL_EMBED;
	ck_assert(!snag_is_alike(&one, &other));
}
END_TEST

START_TEST(snags_of_a_cell_are_found_among_many)
{
	enum { SIDE = 6, TRIALS = 40 };

	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
	for (int seed = 0; seed < TRIALS; seed++) {
		struct random random = { (uint64_t)seed };

		list.count = 0;
		for (int i = seed * 3; i > 0; i--)
			snag_add(&list, (enum snag_code)random_below(&random, SNAG_CODES),
				NO_REGION, SNAG_FIGURES_OF(0))->cell = (struct place){
				random_below(&random, SIDE), random_below(&random, SIDE) };
		snag_sort(&list);
		for (int cell = 0; cell < SIDE * SIDE; cell++) {
			struct place at = { cell % SIDE, cell / SIDE };
			size_t found = 0;

			for (size_t i = 0; i < list.count; i++) {
				if (list.list[i].cell.x != at.x || list.list[i].cell.y != at.y)
					continue;
				found = snag_at(&list, at, found);
				ck_assert_msg(found == i, "seed %d, snag %zu, not %zu", seed, i,
					found);
				found++;
			}
			ck_assert_uint_eq(snag_at(&list, at, found), list.count);
		}
	}
}
END_TEST

START_TEST(a_broken_mirror_is_one_snag_for_each_cell_and_its_images)
{
	plot_from_rows(&plot, (const char *const[]){ "b..b", "p...", ".bp.", NULL });
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	snag_mirror(&list, &plot);
	snag_sort(&list);
	ck_assert_uint_eq(list.count, 2);
	for (int i = 0; i < 2; i++) {
		ck_assert_int_eq(list.list[i].code, SNAG_MIRROR_BROKEN);
		ck_assert_int_eq(list.list[i].region, NO_REGION);
		ck_assert_int_eq(list.list[i].cell.x, i);
		ck_assert_int_eq(list.list[i].cell.y, 1 + i);
	}
}
END_TEST

START_TEST(a_fault_in_the_last_cell_is_the_last)
{
	plot_from_rows(&plot, (const char *const[]){ "..", "b.", "bp", NULL });
	plot_set(&plot, 0, HEAD_MIRROR, "top-bottom");
	snag_mirror(&list, &plot);
	ck_assert_uint_eq(list.count, 2);
	ck_assert_int_eq(list.list[1].cell.x, 1);
	ck_assert_int_eq(list.list[1].cell.y, 0);
}
END_TEST

START_TEST(without_a_mirror_nothing_is_broken)
{
	plot_from_rows(&plot, (const char *const[]){ "b..p", NULL });
	snag_mirror(&list, &plot);
	snag_sort(&list);
	ck_assert_uint_eq(list.count, 0);
}
END_TEST

static const char *length_shown(nm length)
{
	const struct report report = { .words = &arena, .plot = &plot, .units = plot_units(&plot) };

	return snag_sentence(&report, snag_add(&list, SNAG_BED_THIN, NO_REGION,
		SNAG_FIGURES_OF(length)));
}

START_TEST(lengths_in_sentences_are_in_the_units_of_the_plot)
{
	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
	ck_assert_str_eq(length_shown(18 * NM_PER_INCH),
		"Less than 1 ft 6 in of ground between the walls.");
	plot_set(&plot, 0, HEAD_UNITS, "metric");
	ck_assert_str_eq(length_shown(150 * NM_PER_MM),
		"Less than 150 mm of ground between the walls.");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("snags");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(snags, setup, teardown);
	tcase_add_test(snags, every_code_has_a_word_of_its_own_and_a_source);
	tcase_add_test(snags, the_words_stay_as_they_are);
	tcase_add_test(snags, a_snag_stands_at_the_first_cell_of_its_region_and_means_no_side);
	tcase_add_test(snags, a_snag_lies_around_its_region_until_it_is_put_elsewhere);
	tcase_add_test(snags, snags_are_told_apart_by_the_fence_they_are_of);
	tcase_add_test(snags, snags_repeated_lie_as_they_did_in_the_first_region);
	tcase_add_test(snags, images_of_one_another_have_one_first_image);
	tcase_add_test(snags, equal_figures_are_kept_once);
	tcase_add_test(snags, snags_are_sorted_by_code_then_place_then_side);
	tcase_add_test(snags, snags_are_alike_by_code_kind_and_figures_wherever_they_are);
	tcase_add_test(snags, snags_of_a_cell_are_found_among_many);
	tcase_add_test(snags, a_broken_mirror_is_one_snag_for_each_cell_and_its_images);
	tcase_add_test(snags, a_fault_in_the_last_cell_is_the_last);
	tcase_add_test(snags, without_a_mirror_nothing_is_broken);
	tcase_add_test(snags, lengths_in_sentences_are_in_the_units_of_the_plot);
	return suite;
}
