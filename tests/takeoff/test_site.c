/* Snags of walls: what does not fit a bed, where, and in which words. */

#include "takeoff/walls/site.h"

#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"
#include "report/words/snag_words.h"

#include <string.h>

static struct beds beds;
static struct arena words;

static void teardown(void)
{
	arena_clear(&words);
	beds_fini(&beds);
}

static void rows(const char *const *rows)
{
	plot_from_rows(&beds.plot, rows);
}

static const struct snag *only_snag(void)
{
	ck_assert_uint_eq(beds.takeoff.snags.count, 1);
	return &beds.takeoff.snags.list[0];
}

static bool all_laid(void)
{
	return beds.takeoff.walls.not_laid_count == 0 && beds.takeoff.walls.caps_not_laid == 0;
}

static const char *sentence(const struct snag *snag)
{
	const struct report report = { .words = &words, .plot = &beds.plot,
		.takeoff = &beds.takeoff, .units = plot_units(&beds.plot) };

	return snag_sentence(&report, snag);
}

static void check_snag(const struct snag *snag, enum snag_code code, int x, int y, const char *text)
{
	ck_assert_int_eq(snag->code, code);
	ck_assert_int_eq(snag->region, 0);
	ck_assert_msg(snag->cell.x == x && snag->cell.y == y, "it stands at %d,%d", snag->cell.x,
		snag->cell.y);
	ck_assert_str_eq(sentence(snag), text);
}

/* An ell whose notch is one cell deep. */
static const char *const jogged[] = { "......", ".bbbb.", ".bbbb.", ".bbbbb", ".bbbbb", ".bbbbb",
	NULL };

START_TEST(a_side_shorter_than_the_wall_is_deep_and_a_piece_is_long_is_a_jog)
{
	const struct snag *snag;

	rows(jogged);
	beds_set_cell(&beds.plot, 11 * NM_PER_INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 0);
	ck_assert_int_eq(beds.takeoff.walls.not_laid_count, 1);
	ck_assert(!all_laid());
	snag = only_snag();
	check_snag(snag, SNAG_WALL_JOG, 5, 3, "A side of 11 in is too short for the wall: it takes "
		"1 ft, the block's depth and the shortest piece.");
	ck_assert_int_eq(snag->loop, 0);
	ck_assert_int_eq(snag->side, 2);
}
END_TEST

START_TEST(a_side_just_long_enough_is_none)
{
	rows(jogged);
	beds_lay(&beds); /* cells of a foot: 8 in deep and a piece of 4 */
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	ck_assert_uint_eq(beds.takeoff.snags.count, 0);
	ck_assert(all_laid());
}
END_TEST

START_TEST(jogs_and_a_narrow_place_are_both_named)
{
	rows((const char *const[]){ "bbbb", "bbbb", "bbbb", "b...", NULL });
	beds_set_cell(&beds.plot, 8 * NM_PER_INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds_snags(&beds, SNAG_WALL_JOG), 2);
	ck_assert_int_eq(beds_snags(&beds, SNAG_WALL_NARROW), 1);
	ck_assert_int_eq(beds.takeoff.snags.list[2].cell.x, 0);
	ck_assert_int_eq(beds.takeoff.snags.list[2].cell.y, 3);
	/* Sides alike share their sentence. */
	ck_assert(snag_is_alike(&beds.takeoff.snags.list[0], &beds.takeoff.snags.list[1]));
	ck_assert(!snag_is_alike(&beds.takeoff.snags.list[0], &beds.takeoff.snags.list[2]));
}
END_TEST

START_TEST(each_jog_says_how_long_its_own_side_is)
{
	rows((const char *const[]){ "bbbbb...", "bbbbb...", "bbbbb...", "bbbbbb..", "bbbbbb..",
		"bbbbbb..", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
	beds_set_cell(&beds.plot, 5 * NM_PER_INCH);
	beds_lay(&beds);
	ck_assert_int_eq(beds_snags(&beds, SNAG_WALL_JOG), 2);
	const struct snag *snags = beds.takeoff.snags.list;

	ck_assert_ptr_nonnull(strstr(sentence(&snags[0]), "A side of 5 in is too short"));
	ck_assert_ptr_nonnull(strstr(sentence(&snags[1]), "A side of 10 in is too short"));
	ck_assert(!snag_is_alike(&snags[0], &snags[1]));
}
END_TEST

START_TEST(a_neck_exactly_two_walls_wide_is_too_narrow)
{
	const struct snag *snag;

	rows((const char *const[]){ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbb......",
		"bbb......", NULL });
	beds_set_cell(&beds.plot, 24 * NM_PER_MM * 10);
	beds_set_block(&beds.plot, 720 * NM_PER_MM, 360 * NM_PER_MM, 200 * NM_PER_MM);
	block_set(&beds.plot.details.head, HEAD_UNITS,
		(struct value){ .set = true, .as.number = UNITS_METRIC });
	beds_lay(&beds);
	snag = NULL;
	for (size_t i = 0; i < beds.takeoff.snags.count; i++)
		if (beds.takeoff.snags.list[i].code == SNAG_WALL_NARROW)
			snag = &beds.takeoff.snags.list[i];
	ck_assert_ptr_nonnull(snag);
	check_snag(snag, SNAG_WALL_NARROW, 0, 4, "Too narrow for a wall on either side, each 360 "
		"mm deep, with ground between them.");
	ck_assert_int_eq(snag->loop, -1);
	ck_assert_int_eq(snag->side, -1);
}
END_TEST

START_TEST(corners_that_face_each_other_too_closely_are_too_narrow)
{
	rows((const char *const[]){ "bbbb....", "bbbb....", "bbbb....", "bbbbbbbb", "bbbbbbbb",
		"....bbbb", "....bbbb", "....bbbb", NULL });
	beds_set_block(&beds.plot, 24 * NM_PER_INCH, 13 * NM_PER_INCH, 6 * NM_PER_INCH);
	beds_lay(&beds);
	check_snag(only_snag(), SNAG_WALL_NARROW, 3, 3, "Too narrow for a wall on either side, "
		"each 1 ft 1 in deep, with ground between them.");
}
END_TEST

START_TEST(a_side_whose_courses_do_not_bond_is_named_and_laid_all_the_same)
{
	const struct snag *snag;

	/* 3 in is half a block here and the wall more than three quarters of one deep: the first
	 * and the last piece going through can be hardly longer than half, which leaves no place
	 * for the rest. */
	rows((const char *const[]){ "bbbbb", "bbbbb", "bbbbb", "bbbbb", NULL });
	beds_set_cell(&beds.plot, 300 * NM_PER_MM);
	beds_set_block(&beds.plot, 150 * NM_PER_MM, 115 * NM_PER_MM, 100 * NM_PER_MM);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	ck_assert(all_laid());
	ck_assert_int_gt(beds_snags(&beds, SNAG_WALL_BOND), 0);
	snag = &beds.takeoff.snags.list[0];
	check_snag(snag, SNAG_WALL_BOND, 0, 0, "The courses of this side, 4 ft 11 1/16 in long, do "
		"not bond: joints stand closer than a quarter block to those below.");
	ck_assert_int_eq(snag->loop, 0);
	ck_assert_int_eq(snag->side, 0);
}
END_TEST

START_TEST(a_bed_with_little_ground_inside_is_thin_and_laid_all_the_same)
{
	rows((const char *const[]){ "bbbbbb", "bbbbbb", "bb....", "bb....", NULL });
	beds_lay(&beds); /* 24 in wide, two walls of 8 in: 8 in inside */
	ck_assert_uint_eq(beds.takeoff.snags.count, 0);
	beds_fini(&beds);
	rows((const char *const[]){ "bbbbbb", "bbbbbb", "bb....", "bb....", NULL });
	plot_set(&beds.plot, 0, ALLOW_INSIDE, "8 1/16 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	ck_assert(all_laid());
	check_snag(only_snag(), SNAG_BED_THIN, 0, 0,
		"Less than 8 1/16 in of ground between the walls.");
}
END_TEST

START_TEST(a_cap_too_deep_is_left_out_and_the_takeoff_incomplete)
{
	const struct snag *snag;

	rows((const char *const[]){ "......", ".bbb..", ".bbb..", ".bbb..", NULL });
	plot_set(&beds.plot, 'b', BED_CAP, "2 ft x 18 in x 2 in");
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	ck_assert(!beds.takeoff.walls.list[0].has_cap);
	ck_assert_int_eq(beds.takeoff.walls.list[0].cap.run_count, 0);
	ck_assert(!all_laid());
	snag = only_snag();
	check_snag(snag, SNAG_CAP_NARROW, 1, 1,
		"The cap, 1 ft 6 in deep, has no room along this bed: no cap is laid out.");
	ck_assert_int_eq(snag->side, -1);
}
END_TEST

START_TEST(a_side_too_short_for_the_cap_is_named)
{
	const struct snag *snag;

	rows(jogged);
	plot_set(&beds.plot, 'b', BED_CAP, "16 in x 9 in x 2 in");
	beds_lay(&beds);
	snag = only_snag();
	ck_assert_int_eq(snag->code, SNAG_CAP_NARROW);
	ck_assert_int_eq(snag->cell.x, 5);
	ck_assert_int_eq(snag->cell.y, 3);
	ck_assert_int_eq(snag->side, 2);
	ck_assert(!beds.takeoff.walls.list[0].has_cap);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("site");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_test(snags, a_side_shorter_than_the_wall_is_deep_and_a_piece_is_long_is_a_jog);
	tcase_add_test(snags, a_side_just_long_enough_is_none);
	tcase_add_test(snags, jogs_and_a_narrow_place_are_both_named);
	tcase_add_test(snags, each_jog_says_how_long_its_own_side_is);
	tcase_add_test(snags, a_neck_exactly_two_walls_wide_is_too_narrow);
	tcase_add_test(snags, corners_that_face_each_other_too_closely_are_too_narrow);
	tcase_add_test(snags, a_side_whose_courses_do_not_bond_is_named_and_laid_all_the_same);
	tcase_add_test(snags, a_bed_with_little_ground_inside_is_thin_and_laid_all_the_same);
	tcase_add_test(snags, a_cap_too_deep_is_left_out_and_the_takeoff_incomplete);
	tcase_add_test(snags, a_side_too_short_for_the_cap_is_named);
	return suite;
}
