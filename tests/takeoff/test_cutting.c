/* The cut list of whole plots, held against the pieces laid in their walls. */

#include "takeoff/walls/cutting.h"

#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>

#define INCH NM_PER_INCH

enum { PIECES_MOST = 60000 };

static struct beds beds;

static void teardown(void)
{
	beds_fini(&beds);
}

struct lengths {
	nm list[PIECES_MOST];
	int count;
};

static struct lengths laid, listed;

static void add(struct lengths *pieces, nm piece)
{
	ck_assert_int_lt(pieces->count, PIECES_MOST);
	pieces->list[pieces->count++] = piece;
}

static int compare(const void *a, const void *b)
{
	nm one = *(const nm *)a, other = *(const nm *)b;

	return (one > other) - (one < other);
}

/* What is laid in one course: whole blocks counted, cut pieces collected. */
static void add_course(const struct wall_course *course, nm block, int64_t *whole, nm *length)
{
	for (int i = 0; i < course->run_count; i++) {
		for (int n = 0; n < course->runs[i].piece_count; n++) {
			nm piece = course->runs[i].pieces[n];

			*length += piece;
			if (piece == block)
				++*whole;
			else
				add(&laid, piece);
		}
	}
}

static void collect_laid(const struct cutting *cutting, int64_t *whole, nm *length)
{
	*whole = 0;
	*length = 0;
	laid.count = 0;
	for (int i = 0; i < beds.takeoff.walls.count; i++) {
		const struct wall *wall = &beds.takeoff.walls.list[i];

		if (wall->joint != cutting->joint)
			continue;
		if (cutting->use == USE_CAP && wall->has_cap &&
			size_equal(&wall->cap_block, &cutting->block))
			add_course(&wall->cap, cutting->block.along, whole, length);
		if (cutting->use == USE_WALL && size_equal(&wall->block, &cutting->block))
			for (int c = 1; c <= wall->courses; c++)
				add_course(c % 2 ? &wall->odd : &wall->even,
					cutting->block.along, whole, length);
	}
}

/* A piece is its place less fit or joint, whichever is more. */
static nm sawn(const struct cutting *cutting, nm place)
{
	nm fit = block_length(&beds.plot.details.allow, ALLOW_FIT);

	return place - (fit > cutting->joint ? fit : cutting->joint);
}

static int64_t collect_listed(const struct cutting *cutting)
{
	int64_t blocks = 0;

	listed.count = 0;
	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];
		nm used = (cut->piece_count - 1) * cutting->kerf;

		for (int n = 0; n < cut->piece_count; n++)
			used += sawn(cutting, cut->pieces[n]);
		ck_assert_int_le(used, cutting->block.along - cutting->joint);
		for (int64_t b = 0; b < cut->blocks; b++)
			for (int n = 0; n < cut->piece_count; n++)
				add(&listed, cut->pieces[n]);
		blocks += cut->blocks;
	}
	return blocks;
}

/* Beds of three kinds, two with the same block, in one plot. */
static void lay_three_kinds(struct random *random)
{
	struct size block = beds_random_block(random), other = beds_random_block(random);
	struct size cap = { block.along, block.across, 2 * INCH };

	beds_formal(&beds.plot, random, 3 + random_below(random, 3));
	plot_set(&beds.plot, 'b', BED_COURSES, "3");
	for (size_t i = 0; i < 2; i++) {
		struct entry *entry = details_add_entry(&beds.plot.details, CLASS_BED,
			(char)('c' + (int)i), memory_string("bed"));

		block_set(&entry->block, BED_COURSES,
			(struct value){ .set = true, .as.number = 2 });
	}
	for (int i = 0; i < beds.plot.ground.columns * beds.plot.ground.rows; i++) {
		int part = 3 * (i % beds.plot.ground.columns) / beds.plot.ground.columns;

		if (beds.plot.ground.cells[i] == 'b')
			beds.plot.ground.cells[i] = (char)('b' + part);
	}
	beds_set_cell(&beds.plot, 2 * NM_PER_FOOT);
	beds_set_block(&beds.plot, block.along, block.across, block.up);
	block_set(&beds.plot.details.legend[1].block, BED_BLOCK,
		(struct value){ .set = true, .as.size = other });
	block_set(&beds.plot.details.legend[2].block, BED_CAP,
		(struct value){ .set = true, .as.size = cap });
	if (random_below(random, 2))
		block_set(&beds.plot.details.legend[2].block, BED_JOINT, (struct value){
			.set = true, .as.length = random_between(random, 1, 8) * INCH / 16 });
	beds_lay(&beds);
}

/* Piece for piece. */
static void check_alike(struct lengths *a, struct lengths *b)
{
	ck_assert_int_eq(a->count, b->count);
	qsort(a->list, (size_t)a->count, sizeof(nm), compare);
	qsort(b->list, (size_t)b->count, sizeof(nm), compare);
	for (int i = 0; i < a->count; i++)
		ck_assert_int_eq(a->list[i], b->list[i]);
}

static void check_cutting(const struct cutting *cutting)
{
	int64_t whole, blocks = collect_listed(cutting);
	nm length, stone = 0, block = cutting->block.along - cutting->joint;

	collect_laid(cutting, &whole, &length);
	check_alike(&laid, &listed);
	ck_assert_int_eq(cutting->whole, whole);
	ck_assert_int_eq(cutting->cut_blocks, blocks);
	ck_assert_int_eq(cutting->bought, whole + blocks);
	/* The floor: the whole ones, and the stone of all pieces in blocks' stone. */
	for (int i = 0; i < laid.count; i++)
		stone += sawn(cutting, laid.list[i]);
	ck_assert((cutting->floor - whole) * block >= stone &&
		(cutting->floor - whole - 1) * block < stone);
	ck_assert_int_ge(cutting->bought, cutting->floor);
}

START_TEST(the_cut_list_has_the_pieces_that_are_laid_and_no_other)
{
	struct random random = { 91 };
	int cuttings = 0;

	for (int n = 0; n < 100; n++) {
		lay_three_kinds(&random);
		for (int i = 0; i < beds.takeoff.cuttings.count; i++, cuttings++)
			check_cutting(&beds.takeoff.cuttings.list[i]);
		beds_fini(&beds);
	}
	ck_assert_int_gt(cuttings, 200);
}
END_TEST

START_TEST(over_formal_plans_two_in_a_hundred_blocks_at_most_are_lost_to_cutting)
{
	/* By size of block, inches or millimetres, and of cell; common sizes, no published
	 * source. */
	static const struct {
		nm along, across, cell;
	} kinds[] = {
		{ 16 * INCH, 8 * INCH, 12 * INCH }, { 16 * INCH, 8 * INCH, 6 * INCH },
		{ 12 * INCH, 4 * INCH, 12 * INCH }, { 12 * INCH, 8 * INCH, 12 * INCH },
		{ 16 * INCH, 6 * INCH, 12 * INCH }, { 18 * INCH, 6 * INCH, 12 * INCH },
		{ 400 * NM_PER_MM, 200 * NM_PER_MM, 250 * NM_PER_MM },
		{ 300 * NM_PER_MM, 200 * NM_PER_MM, 300 * NM_PER_MM },
		{ 600 * NM_PER_MM, 150 * NM_PER_MM, 300 * NM_PER_MM },
	};
	struct random random = { 92 };

	for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++) {
		int64_t bought = 0, floor = 0;

		for (int n = 0; n < 60; n++) {
			beds_formal(&beds.plot, &random,
				(int)(2 * kinds[k].across / kinds[k].cell) +
				random_between(&random, 1, 3));
			beds_set_cell(&beds.plot, kinds[k].cell);
			beds_set_block(&beds.plot, kinds[k].along, kinds[k].across, 6 * INCH);
			beds_set_courses(&beds.plot, random_between(&random, 2, 4));
			beds_lay(&beds);
			ck_assert_int_eq(beds.takeoff.cuttings.count, 1);
			bought += beds.takeoff.cuttings.list[0].bought;
			floor += beds.takeoff.cuttings.list[0].floor;
			beds_fini(&beds);
		}
		ck_assert_msg(100 * bought <= 102 * floor, "kind %zu: %lld bought, floor %lld", k,
			(long long)bought, (long long)floor);
	}
}
END_TEST

/* ---- Single plots ---------------------------------------------------------------------------- */

/* Three beds of a foot's cells, each its own letter. */
static void three_beds(void)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "aaaaa.bbbbb.ccccc", "aaaaa.bbbbb.ccccc",
		"aaaaa.bbbbb.ccccc", "aaaaa.bbbbb.ccccc", NULL });
}

START_TEST(walls_come_before_caps_and_sizes_in_the_order_of_beds)
{
	three_beds();
	plot_set(&beds.plot, 'a', BED_BLOCK, "12 in x 6 in x 4 in");
	plot_set(&beds.plot, 'c', BED_BLOCK, "12 in x 6 in x 4 in");
	plot_set(&beds.plot, 'a', BED_CAP, "16 in x 8 in x 6 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.count, 3);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].use, USE_WALL);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].block.along, 12 * INCH);
	ck_assert_int_eq(beds.takeoff.cuttings.list[1].use, USE_WALL);
	ck_assert_int_eq(beds.takeoff.cuttings.list[1].block.along, 16 * INCH);
	ck_assert_int_eq(beds.takeoff.cuttings.list[2].use, USE_CAP);
	ck_assert_int_eq(beds.takeoff.cuttings.list[2].block.along, 16 * INCH);
	ck_assert_int_eq(beds.takeoff.cuttings.list[2].whole, beds.takeoff.walls.list[0].cap.whole);
}
END_TEST

/* Of 8 x 4 ft: 48 blocks, none cut. Returns the breakage. */
static int64_t breakage_by(const char *share)
{
	int64_t breakage;

	beds_rectangle(&beds.plot, 8, 4);
	plot_set(&beds.plot, 0, ALLOW_BREAKAGE, share);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].bought, 48);
	breakage = beds.takeoff.cuttings.list[0].breakage;
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].order, 48 + breakage);
	beds_fini(&beds);
	return breakage;
}

START_TEST(breakage_is_its_share_of_what_is_bought_rounded_up_and_2_at_least)
{
	ck_assert_int_eq(breakage_by("7 %"), 4);   /* 3.36 */
	ck_assert_int_eq(breakage_by("6.25 %"), 3);
	ck_assert_int_eq(breakage_by("5 %"), 3);   /* 2.4 */
	ck_assert_int_eq(breakage_by("1 %"), 2);   /* 0.48, and 2 at least */
	ck_assert_int_eq(breakage_by("0 %"), 0);   /* whoever wants none gets none */
	beds_rectangle(&beds.plot, 1, 1);
}
END_TEST

START_TEST(offcuts_of_one_bed_serve_another)
{
	/* 7 x 4 ft, both long sides through: 84 in are five blocks and 4 in, so a block gives
	 * both pieces of a course, and half of it is left; six pieces take two blocks. */
	plot_from_rows(&beds.plot, (const char *const[]){ "aaaaaaa", "aaaaaaa", "aaaaaaa",
		"aaaaaaa", NULL });
	plot_set(&beds.plot, 'a', BED_COURSES, "1");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].cut_blocks, 1);
	beds_fini(&beds);
	plot_from_rows(&beds.plot, (const char *const[]){ "aaaaaaa.bbbbbbb.ccccccc",
		"aaaaaaa.bbbbbbb.ccccccc", "aaaaaaa.bbbbbbb.ccccccc", "aaaaaaa.bbbbbbb.ccccccc",
		NULL });
	beds_set_courses(&beds.plot, 1);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].cut_blocks, 2);
}
END_TEST

START_TEST(blocks_of_beds_that_differ_in_density_weigh_as_they_are_laid)
{
	/* Two beds alike, one of blocks twice as heavy: all of them weigh one and a half times
	 * as much. */
	double light;

	three_beds();
	plot_set(&beds.plot, 'c', BED_BUILD, "level");
	plot_set(&beds.plot, 'a', BED_DENSITY, "1000 kg/m3");
	plot_set(&beds.plot, 'b', BED_DENSITY, "1000 kg/m3");
	beds_lay(&beds);
	light = beds.takeoff.cuttings.list[0].weight;
	ck_assert_double_eq_tol(light,
		(double)beds.takeoff.cuttings.list[0].bought * 0.4064 * 0.2032 *
		0.1524 * 1000, 1e-6);
	beds_fini(&beds);
	three_beds();
	plot_set(&beds.plot, 'c', BED_BUILD, "level");
	plot_set(&beds.plot, 'a', BED_DENSITY, "1000 kg/m3");
	plot_set(&beds.plot, 'b', BED_DENSITY, "2000 kg/m3");
	beds_lay(&beds);
	ck_assert_double_eq_tol(beds.takeoff.cuttings.list[0].weight, 1.5 * light, 1e-6);
}
END_TEST

/* A bed of 40 x 40 in, three courses of 16 in block 4 in deep: two sides go through, two blocks
 * and a half; those between are two. How many blocks its six halves take. */
static int64_t halves(const char *joint, const char *fit, const char *kerf)
{
	int64_t blocks;

	beds_rectangle(&beds.plot, 5, 5);
	beds_set_cell(&beds.plot, 8 * INCH);
	plot_set(&beds.plot, 'b', BED_BLOCK, "16 in x 4 in x 6 in");
	plot_set(&beds.plot, 'b', BED_JOINT, joint);
	plot_set(&beds.plot, 0, ALLOW_FIT, fit);
	plot_set(&beds.plot, 0, ALLOW_KERF, kerf);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.count, 1);
	for (int i = 0; i < beds.takeoff.cuttings.list[0].cut_count; i++)
		for (int j = 0; j < beds.takeoff.cuttings.list[0].cuts[i].piece_count; j++)
			ck_assert_int_eq(beds.takeoff.cuttings.list[0].cuts[i].pieces[j], 8 * INCH);
	blocks = beds.takeoff.cuttings.list[0].cut_blocks;
	beds_fini(&beds);
	return blocks;
}

START_TEST(two_halves_come_out_of_a_block_as_joint_fit_and_kerf_allow)
{
	/* Two pieces of 8 in less max(fit, joint) and a kerf, of 16 in less the joint: they fit
	 * where kerf <= 2 max(fit, joint) - joint. */
	static const struct {
		const char *joint, *fit, *kerf;
		bool fits;
	} saws[] = {
		{ "0 in", "1/8 in", "1/4 in", true }, { "0 in", "1/8 in", "5/16 in", false },
		{ "3/8 in", "1/8 in", "3/8 in", true }, { "3/8 in", "1/8 in", "7/16 in", false },
		{ "1/8 in", "1/4 in", "3/8 in", true }, { "1/8 in", "1/4 in", "7/16 in", false },
	};

	for (size_t i = 0; i < sizeof saws / sizeof saws[0]; i++)
		ck_assert_int_eq(halves(saws[i].joint, saws[i].fit, saws[i].kerf),
			saws[i].fits ? 3 : 6);
	beds_rectangle(&beds.plot, 1, 1);
}
END_TEST

START_TEST(of_a_block_that_measures_less_than_it_is_called_fewer_pieces_come)
{
	/* A block called 16 in that measures 15 5/8: pieces for 4 in are 3 5/8, four of them and
	 * three kerfs of 1/8 are 14 7/8 and fit; for 4 and 12 in 3 5/8, 11 5/8 and a kerf are
	 * 15 3/8 and fit; sawn 1/8 in short only, as if there were no joint, they would not. */
	nm pieces[] = { 12 * INCH, 4 * INCH };

	beds_rectangle(&beds.plot, 9, 5);
	plot_set(&beds.plot, 'b', BED_JOINT, "3/8 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].joint, 3 * INCH / 8);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].gap, 3 * INCH / 8);
	check_cutting(&beds.takeoff.cuttings.list[0]);
	ck_assert_int_gt(pieces[0] + pieces[1] - 2 * INCH / 8 + INCH / 8, 15 * INCH + 5 * INCH / 8);
	ck_assert_int_le(sawn(&beds.takeoff.cuttings.list[0], pieces[0]) +
		sawn(&beds.takeoff.cuttings.list[0], pieces[1]) + INCH / 8,
		15 * INCH + 5 * INCH / 8);
}
END_TEST

START_TEST(beds_that_differ_in_joint_are_cut_from_blocks_of_their_own)
{
	three_beds();
	plot_set(&beds.plot, 'b', BED_JOINT, "3/8 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.count, 2);
	ck_assert_int_eq(beds.takeoff.cuttings.list[0].joint, 0);
	ck_assert_int_eq(beds.takeoff.cuttings.list[1].joint, 3 * INCH / 8);
	check_cutting(&beds.takeoff.cuttings.list[0]);
	check_cutting(&beds.takeoff.cuttings.list[1]);
}
END_TEST

START_TEST(without_walls_nothing_is_cut)
{
	plot_from_rows(&beds.plot, (const char *const[]){ "pp", NULL });
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.cuttings.count, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cutting");
	TCase *single = suite_case(suite, "single plots");
	TCase *random = suite_case(suite, "plots at random");

	tcase_add_checked_fixture(single, NULL, teardown);
	tcase_add_test(single, walls_come_before_caps_and_sizes_in_the_order_of_beds);
	tcase_add_test(single, breakage_is_its_share_of_what_is_bought_rounded_up_and_2_at_least);
	tcase_add_test(single, offcuts_of_one_bed_serve_another);
	tcase_add_test(single, blocks_of_beds_that_differ_in_density_weigh_as_they_are_laid);
	tcase_add_test(single, two_halves_come_out_of_a_block_as_joint_fit_and_kerf_allow);
	tcase_add_test(single, of_a_block_that_measures_less_than_it_is_called_fewer_pieces_come);
	tcase_add_test(single, beds_that_differ_in_joint_are_cut_from_blocks_of_their_own);
	tcase_add_test(single, without_walls_nothing_is_cut);
	tcase_add_test(random, the_cut_list_has_the_pieces_that_are_laid_and_no_other);
	tcase_add_test(random,
		over_formal_plans_two_in_a_hundred_blocks_at_most_are_lost_to_cutting);
	return suite;
}
