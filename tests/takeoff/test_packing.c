/* Pieces cut at one stroke, held against cutting them one by one. */

#include "takeoff/common/packing.h"

#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

#define INCH NM_PER_INCH

enum { BATCHES_MOST = 40, PIECES_MOST = 2000, IN_A_BLOCK_MOST = 16 };

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* A block as one cuts it. */
struct blank {
	nm pieces[IN_A_BLOCK_MOST];
	int count;
};

static nm taken(const struct blank *blank, const struct saw *saw)
{
	nm sum = 0;

	for (int i = 0; i < blank->count; i++)
		sum += blank->pieces[i] - saw->fit;
	return sum;
}

/* n pieces fit where places - n fit + (n - 1) kerf <= l. */
static bool takes(const struct blank *blank, const struct saw *saw, nm piece)
{
	return taken(blank, saw) + piece - saw->fit + blank->count * saw->kerf <= saw->block;
}

static nm used(const struct blank *blank, const struct saw *saw)
{
	return taken(blank, saw) + blank->count * saw->kerf;
}

/* Into the fullest block that takes it, of blocks as full the first. Returns how many blocks. */
static int cut_one(struct blank *blanks, int count, const struct saw *saw, nm piece)
{
	struct blank *best = NULL;

	for (int i = 0; i < count; i++)
		if (takes(&blanks[i], saw, piece) &&
			(!best || used(&blanks[i], saw) > used(best, saw)))
			best = &blanks[i];
	if (!best) {
		best = &blanks[count++];
		best->count = 0;
	}
	best->pieces[best->count++] = piece;
	return count;
}

static int compare_longest_first(const void *a, const void *b)
{
	nm one = *(const nm *)a, other = *(const nm *)b;

	return (one < other) - (one > other);
}

static int cut_one_by_one(struct blank *blanks, const struct saw *saw, const struct batch *batches,
	int batch_count)
{
	nm pieces[PIECES_MOST] = { 0 };
	int count = 0, opened = 0;

	for (int i = 0; i < batch_count; i++)
		for (int64_t n = 0; n < batches[i].count; n++)
			pieces[count++] = batches[i].place;
	qsort(pieces, (size_t)count, sizeof *pieces, compare_longest_first);
	for (int i = 0; i < count; i++)
		opened = cut_one(blanks, opened, saw, pieces[i]);
	return opened;
}

static int batches_at_random(struct random *random, nm block, struct batch batches[BATCHES_MOST])
{
	int kinds = random_between(random, 1, BATCHES_MOST);

	for (int i = 0; i < kinds; i++)
		batches[i] = (struct batch){ block * random_between(random, 8, 31) / 32,
			random_between(random, 1, 40) };
	return kinds;
}

static void check_blank(const struct cut *cut, const struct blank *blank)
{
	ck_assert_int_eq(cut->piece_count, blank->count);
	ck_assert_mem_eq(cut->pieces, blank->pieces, (size_t)blank->count * sizeof(nm));
}

START_TEST(cut_at_one_stroke_the_blocks_are_the_same_as_cut_one_by_one)
{
	static struct blank blanks[PIECES_MOST];
	struct random random = { 41 };

	for (int round = 0; round < 400; round++) {
		struct saw saw = { random_between(&random, 40, 96) * INCH / 4,
			random_below(&random, 3) * INCH / 8, random_below(&random, 3) * INCH / 8 };
		struct batch batches[BATCHES_MOST];
		int kinds = batches_at_random(&random, saw.block, batches);
		int opened = cut_one_by_one(blanks, &saw, batches, kinds), count, at = 0;
		const struct cut *cuts = packing_cut(&arena, &saw, batches, (size_t)kinds, &count);

		for (int i = 0; i < count; i++)
			for (int64_t n = 0; n < cuts[i].blocks; n++)
				check_blank(&cuts[i], &blanks[at++]);
		ck_assert_int_eq(at, opened);
	}
}
END_TEST

/* Extras one by one, longest first, into the fullest block that takes it. Returns how many found
 * one. */
static int cut_extras_one_by_one(struct blank *blanks, int count, const struct saw *saw,
	const struct batch *extra)
{
	int cut = 0;

	for (; cut < extra->count; cut++) {
		static struct blank more[PIECES_MOST + 1];

		memcpy(more, blanks, (size_t)count * sizeof *more);
		if (cut_one(more, count, saw, extra->place) > count)
			break;
		memcpy(blanks, more, (size_t)count * sizeof *more);
	}
	return cut;
}

START_TEST(extras_come_out_of_what_is_left_as_cut_one_by_one)
{
	static struct blank blanks[PIECES_MOST + 1];
	struct random random = { 43 };

	for (int round = 0; round < 200; round++) {
		struct saw saw = { random_between(&random, 40, 96) * INCH / 4,
			random_below(&random, 3) * INCH / 8, random_below(&random, 3) * INCH / 8 };
		struct batch batches[BATCHES_MOST], extras[3];
		int all = batches_at_random(&random, saw.block, batches), kinds = all < 8 ? all : 8;
		int count, at = 0, opened = cut_one_by_one(blanks, &saw, batches, kinds), cut[3];
		const struct cut *cuts;

		for (int i = 0; i < 3; i++) {
			extras[i] = (struct batch){ saw.block * (10 - 3 * i) / 9,
				random_below(&random, 12) };
			cut[i] = cut_extras_one_by_one(blanks, opened, &saw, &extras[i]);
			extras[i].count -= cut[i];
		}
		int64_t left[] = { extras[0].count, extras[1].count, extras[2].count };

		for (int i = 0; i < 3; i++)
			extras[i].count += cut[i];
		cuts = packing_cut_with(&arena, &saw, &(struct pieces){ batches, (size_t)kinds },
			&(struct pieces){ extras, 3 }, &count);
		for (int i = 0; i < 3; i++)
			ck_assert_int_eq(extras[i].count, left[i]);
		for (int i = 0; i < count; i++)
			for (int64_t n = 0; n < cuts[i].blocks; n++)
				check_blank(&cuts[i], &blanks[at++]);
		ck_assert_int_eq(at, opened);
	}
}
END_TEST

START_TEST(no_block_is_opened_for_extras)
{
	struct saw saw = { 16 * INCH, INCH / 8, INCH / 8 };
	struct batch extra = { 4 * INCH, 3 };
	int count;

	packing_cut_with(&arena, &saw, &(struct pieces){ NULL, 0 }, &(struct pieces){ &extra, 1 },
		&count);
	ck_assert_int_eq(count, 0);
	ck_assert_int_eq(extra.count, 3);
}
END_TEST

START_TEST(a_place_of_no_length_does_not_take_for_ever)
{
	struct saw saw = { 16 * INCH, 0, INCH / 8 };
	struct batch none = { 0, 3 };
	int count;
	const struct cut *cuts = packing_cut(&arena, &saw, &none, 1, &count);

	ck_assert_int_eq(count, 1);
	ck_assert_int_eq(cuts[0].blocks, 1);
	ck_assert_int_eq(cuts[0].piece_count, 3);
}
END_TEST

START_TEST(two_halves_come_out_of_one_block_thanks_to_the_fit)
{
	struct saw saw = { 16 * INCH, INCH / 8, INCH / 8 };
	struct batch halves = { 8 * INCH, 4 };
	const struct cut *cuts;
	int count;

	cuts = packing_cut(&arena, &saw, &halves, 1, &count);
	ck_assert_int_eq(count, 1);
	ck_assert_int_eq(cuts[0].blocks, 2);
	ck_assert_int_eq(cuts[0].piece_count, 2);
	/* Without fit the kerf is missing. */
	saw.fit = 0;
	halves = (struct batch){ 8 * INCH, 4 };
	cuts = packing_cut(&arena, &saw, &halves, 1, &count);
	ck_assert_int_eq(cuts[0].blocks, 4);
}
END_TEST

START_TEST(a_fit_over_half_of_a_piece_counts_as_half_of_it)
{
	/* Else pieces no longer than the fit would take no block at all. */
	struct saw saw = { INCH, 0, INCH };
	struct batch batch = { INCH / 4, 80 };
	int count;
	const struct cut *cuts = packing_cut(&arena, &saw, &batch, 1, &count);

	ck_assert_int_eq(count, 1);
	ck_assert_int_eq(cuts[0].piece_count, 8);
	ck_assert_int_eq(cuts[0].blocks, 10);
}
END_TEST

START_TEST(a_hundred_thousand_pieces_are_cut_in_no_time)
{
	/* 2,000 lengths of 50 pieces each: the test's own time limit is the check. */
	struct saw saw = { 16 * INCH, INCH / 8, INCH / 8 };
	struct batch *batches = arena_new(&arena, 2000, sizeof *batches);
	int64_t pieces = 0;
	const struct cut *cuts;
	int count;

	for (int i = 0; i < 2000; i++)
		batches[i] = (struct batch){ 4 * INCH + i * INCH / 200, 50 };
	cuts = packing_cut(&arena, &saw, batches, 2000, &count);
	for (int i = 0; i < count; i++)
		pieces += cuts[i].blocks * cuts[i].piece_count;
	ck_assert_int_eq(pieces, 100000);
}
END_TEST

START_TEST(without_pieces_no_block_is_cut)
{
	struct saw saw = { 16 * INCH, INCH / 8, INCH / 8 };
	int count = 7;

	packing_cut(&arena, &saw, NULL, 0, &count);
	ck_assert_int_eq(count, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("packing");
	TCase *cuts = suite_case(suite, "cuts");

	tcase_add_checked_fixture(cuts, NULL, teardown);
	tcase_set_timeout(cuts, 10);
	tcase_add_test(cuts, cut_at_one_stroke_the_blocks_are_the_same_as_cut_one_by_one);
	tcase_add_test(cuts, extras_come_out_of_what_is_left_as_cut_one_by_one);
	tcase_add_test(cuts, no_block_is_opened_for_extras);
	tcase_add_test(cuts, a_place_of_no_length_does_not_take_for_ever);
	tcase_add_test(cuts, two_halves_come_out_of_one_block_thanks_to_the_fit);
	tcase_add_test(cuts, a_fit_over_half_of_a_piece_counts_as_half_of_it);
	tcase_add_test(cuts, a_hundred_thousand_pieces_are_cut_in_no_time);
	tcase_add_test(cuts, without_pieces_no_block_is_cut);
	return suite;
}
