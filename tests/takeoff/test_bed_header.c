/* The header within a bed, by hand: common practice, no published source. */
#include "support/runner.h"
#include "takeoff/watering/bed_header.h"

static const nm FOOT = NM_PER_FOOT, INCH = NM_PER_INCH;

/* Lines 6 in from the edges of ground of 6 x 2 ft, from 0 to 6 ft along but where it says so. */
static struct drip_line lines[2];
static struct drip drip;

static void lay(bool is_upright, struct chord first, struct chord second, nm apart)
{
	lines[0] = (struct drip_line){ .across = 6 * INCH, .chord = first, .emitters = 1 };
	lines[1] = (struct drip_line){ .across = 6 * INCH + apart, .chord = second, .emitters = 1 };
	drip = (struct drip){ .is_upright = is_upright, .along = { 0, 6 * FOOT },
		.across = { 0, 2 * FOOT }, .lines = lines, .count = 2 };
}

static const struct { int along, across; enum header_side side; int at, inches; } rectangle[] = {
	/* in inches: at a corner, 6 in to the nearer line and 12 in to the other */
	{ 72, 24, HEADER_TO, 72, 18 }, { 0, 0, HEADER_FROM, 0, 18 },
	/* at an end, between the lines and on one of them */
	{ 0, 12, HEADER_FROM, 0, 12 }, { 72, 6, HEADER_TO, 72, 12 },
	/* from below, 24 in along to the nearer end; from the middle to where lines begin */
	{ 24, 24, HEADER_FROM, 0, 42 }, { 48, 24, HEADER_TO, 72, 42 },
	{ 36, 0, HEADER_FROM, 0, 54 },
	/* from outside the wall's inner face nothing is along */
	{ -8, 12, HEADER_FROM, 0, 12 }, { 80, 32, HEADER_TO, 72, 18 },
};

START_TEST(it_goes_along_the_side_to_the_nearer_end_and_across_all_lines)
{
	nm along = rectangle[_i].along * INCH, across = rectangle[_i].across * INCH;

	for (int upright = 0; upright < 2; upright++) {
		struct bed_header header;

		lay(upright, (struct chord){ 0, 6 * FOOT }, (struct chord){ 0, 6 * FOOT }, FOOT);
		header = bed_header_from(&drip, upright ? (struct spot){ across, along } :
			(struct spot){ along, across });
		ck_assert_uint_eq(header.side, rectangle[_i].side);
		ck_assert_int_eq(header.at, rectangle[_i].at * INCH);
		ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2),
			rectangle[_i].inches * INCH);
	}
}
END_TEST

/* An L: the line that goes on is met where the other ends, 3 ft in. */
START_TEST(in_an_l_it_goes_across_where_both_lines_are)
{
	struct bed_header header;

	lay(false, (struct chord){ 0, 6 * FOOT }, (struct chord){ 0, 3 * FOOT }, FOOT);
	header = bed_header_from(&drip, (struct spot){ 6 * FOOT, FOOT });
	ck_assert_uint_eq(header.side, HEADER_TO);
	ck_assert_int_eq(header.at, 3 * FOOT);
	ck_assert_int_eq(header.across.from, 6 * INCH);
	ck_assert_int_eq(header.across.to, 18 * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2), (3 + 1) * FOOT);
}
END_TEST

/* Two pieces of one row: 4 ft along to the second, from there 2 ft back to where the first ends. */
START_TEST(a_line_that_it_does_not_meet_is_joined_by_more_of_it)
{
	struct bed_header header;

	lay(false, (struct chord){ 0, 2 * FOOT }, (struct chord){ 4 * FOOT, 6 * FOOT }, 0);
	header = bed_header_from(&drip, (struct spot){ 0, 6 * INCH });
	ck_assert_int_eq(header.at, 4 * FOOT);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2), (4 + 2) * FOOT);
}
END_TEST

/* By zones of one line each: 24 in along, then 6 in to the nearer line, or 18 in to the other. No
 * tube lies between the two lines. */
START_TEST(each_zone_has_a_tube_to_its_own_lines)
{
	struct bed_header header;

	lay(false, (struct chord){ 0, 6 * FOOT }, (struct chord){ 0, 6 * FOOT }, FOOT);
	header = bed_header_from(&drip, (struct spot){ 2 * FOOT, 2 * FOOT });
	ck_assert_int_eq(bed_header_tube(&header, &drip, 1, 1), (24 + 6) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 1), (24 + 18) * INCH);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2), (24 + 18) * INCH);
}
END_TEST

START_TEST(without_a_tap_it_goes_across_the_lines_alone)
{
	const struct bed_header header = { .side = HEADER_UNTOLD };

	lay(false, (struct chord){ 0, 6 * FOOT }, (struct chord){ 0, 6 * FOOT }, FOOT);
	ck_assert_int_eq(bed_header_tube(&header, &drip, 0, 2), FOOT);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bed_header");
	TCase *hand = suite_case(suite, "by hand");

	tcase_add_loop_test(hand, it_goes_along_the_side_to_the_nearer_end_and_across_all_lines, 0,
		sizeof rectangle / sizeof *rectangle);
	tcase_add_test(hand, in_an_l_it_goes_across_where_both_lines_are);
	tcase_add_test(hand, a_line_that_it_does_not_meet_is_joined_by_more_of_it);
	tcase_add_test(hand, each_zone_has_a_tube_to_its_own_lines);
	tcase_add_test(hand, without_a_tap_it_goes_across_the_lines_alone);
	return suite;
}
