/* Which sides of a wall are laid alike: by what is laid, and by law. */
#include "report/text/sides.h"
#include "support/beds.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct beds beds;
static struct arena arena;
static struct outline outline;
static struct wall_sides sides;

static void teardown(void)
{
	arena_clear(&arena);
	beds_fini(&beds);
}

static void look_at(int wall)
{
	sides = (struct wall_sides){ &beds.takeoff.walls.list[wall], &outline,
		beds.takeoff.survey.cell };
	outline_trace(&outline, &arena, &beds.plot, &beds.takeoff.survey, sides.wall->region);
}

/* Inches. */
static void given(int columns, int rows, int along, int across, int courses)
{
	beds_rectangle(&beds.plot, columns, rows);
	beds_set_block(&beds.plot, along * NM_PER_INCH, across * NM_PER_INCH, 6 * NM_PER_INCH);
	beds_set_courses(&beds.plot, courses);
	beds_lay(&beds);
	ck_assert_int_eq(beds.takeoff.walls.count, 1);
	look_at(0);
}

START_TEST(sides_face_away_from_the_bed)
{
	given(8, 4, 16, 8, 3);
	ck_assert_str_eq(sides_facing(&sides, 0), "up");
	ck_assert_str_eq(sides_facing(&sides, 1), "right");
	ck_assert_str_eq(sides_facing(&sides, 2), "down");
	ck_assert_str_eq(sides_facing(&sides, 3), "left");
}
END_TEST

START_TEST(as_many_courses_as_are_laid_of_each_kind)
{
	given(8, 4, 16, 8, 5);
	ck_assert_int_eq(courses_of(sides.wall, COURSE_ODD), 3);
	ck_assert_int_eq(courses_of(sides.wall, COURSE_EVEN), 2);
	ck_assert_int_eq(courses_of(sides.wall, COURSE_CAP), 0);
	ck_assert_int_eq(course_of(sides.wall, COURSE_CAP)->run_count, 0);
	ck_assert_int_eq(sides_strip(&sides, 0, COURSE_CAP).count, 0);
}
END_TEST

/* 8 x 4 ft of 16 in: opposite sides as they are, none like its neighbour, which is longer. */
START_TEST(opposite_sides_of_a_bed_are_alike)
{
	struct groups groups;

	given(8, 4, 16, 8, 3);
	groups = sides_alike(&sides);
	ck_assert_int_eq(groups.count, 2);
	ck_assert_int_eq(groups.of[2], groups.of[0]);
	ck_assert_int_eq(sides_way(&sides, 0, 2), 0);
	ck_assert_int_eq(sides_way(&sides, 1, 3), 0);
	ck_assert_int_eq(sides_way(&sides, 0, 1), LIKE_WAYS);
	groups_fini(&groups);
}
END_TEST

/* 4 x 4 ft of 12 in: 48 in are four, 32 in two and 8 in between them. */
START_TEST(a_square_has_its_odd_and_even_courses_exchanged_round_the_corner)
{
	struct groups groups;

	given(4, 4, 12, 8, 4);
	groups = sides_alike(&sides);
	ck_assert_int_eq(groups.count, 1);
	ck_assert_int_eq(sides_way(&sides, 0, 1), LIKE_EXCHANGED);
	ck_assert_int_eq(sides_way(&sides, 0, 2), 0);
	ck_assert_int_eq(sides_way(&sides, 0, 3), LIKE_EXCHANGED);
	groups_fini(&groups);
}
END_TEST

START_TEST(a_single_course_is_exchanged_with_none)
{
	given(4, 4, 12, 8, 1);
	ck_assert_int_eq(sides_way(&sides, 0, 1), LIKE_WAYS);
	ck_assert_int_eq(sides_way(&sides, 0, 2), 0);
}
END_TEST

/* No cap is longer than 2 m, no block shorter than 1 in: past three times either would be drawn too
 * small or run over the page. */
START_TEST(a_cap_much_longer_or_shorter_than_the_block_has_a_scale_of_its_own)
{
	static const struct {
		double cap;
		nm wall_scale, cap_scale; /* inches */
	} rows[] = { { 16, 16, 16 }, { 24, 16, 16 }, { 12, 12, 12 }, { 48, 16, 16 }, { 49, 16, 49 },
		{ 5.5, 5, 5 }, { 5, 16, 5 } };
	struct wall wall;

	given(8, 4, 16, 8, 3);
	wall = *sides.wall;
	wall.has_cap = true;
	sides.wall = &wall;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		wall.cap_block = (struct size){ (nm)(rows[i].cap * NM_PER_INCH), 8, 2 };
		ck_assert_int_eq(sides_scale(&sides, 0, COURSE_ODD).length / NM_PER_INCH,
			rows[i].wall_scale);
		ck_assert_int_eq(sides_scale(&sides, 0, COURSE_CAP).length / NM_PER_INCH,
			rows[i].cap_scale);
	}
}
END_TEST

/* ---- By law ---------------------------------------------------------------------------------- */

/* A run as ground that it covers: where each of its joints is from the side's middle. */
static bool are_images(const struct strip *a, const struct strip *b, bool is_back)
{
	nm at = a->from, from = b->from;

	if (a->side != b->side || a->count != b->count)
		return false;
	if (is_back)
		from = b->side - b->from - b->length;
	for (int i = 0; i <= a->count; i++) {
		if (at != from)
			return false;
		if (i == a->count)
			break;
		at += a->pieces[i];
		from += b->pieces[is_back ? b->count - 1 - i : i];
	}
	return a->count == 0 || (a->through[0] == b->through[is_back] &&
		a->through[1] == b->through[!is_back]);
}

static bool is_way(int a, int b, bool is_back, bool is_exchanged)
{
	for (int i = 0; i < COURSE_KINDS; i++) {
		int other = is_exchanged && i != COURSE_CAP ? COURSE_EVEN - i : i;
		struct strip one = sides_strip(&sides, a, (enum course_kind)i);
		struct strip two = sides_strip(&sides, b, (enum course_kind)other);

		if (!are_images(&one, &two, is_back))
			return false;
	}
	return true;
}

static int first_way(int a, int b)
{
	for (int way = 0; way < LIKE_WAYS; way++)
		if (is_way(a, b, way & LIKE_BACK, way & LIKE_EXCHANGED))
			return way;
	return LIKE_WAYS;
}

/* Groups are as large as they can be, and each run is said to go through where it does: as many of
 * its ends butt as the takeoff says. */
static void check_sides(int found[LIKE_WAYS + 1])
{
	struct groups groups = sides_alike(&sides);
	const struct wall *wall = sides.wall;

	for (int a = 0; a < wall->odd.run_count; a++) {
		struct strip strip = sides_strip(&sides, a, COURSE_ODD);

		ck_assert_int_eq(!strip.through[0] + !strip.through[1], wall->odd.runs[a].butts);
		for (int b = 0; b < wall->odd.run_count; b++) {
			int way = first_way(a, b);

			ck_assert_int_eq(sides_way(&sides, a, b), way);
			ck_assert_int_eq(groups.of[a] == groups.of[b], way < LIKE_WAYS);
			found[way]++;
		}
	}
	groups_fini(&groups);
}

START_TEST(sides_are_in_one_group_where_and_only_where_one_is_an_image_of_the_other)
{
	int found[LIKE_WAYS + 1] = { 0 };

	for (int seed = 1; seed <= runner_count(80, 1000); seed++) {
		struct random random = { (uint64_t)seed };
		struct size block = beds_random_block(&random);

		memset(&beds, 0, sizeof beds);
		arena = ARENA_EMPTY;
		if (seed % 2)
			beds_at_random(&beds.plot, &random, random_between(&random, 4, 8), 3);
		else
			beds_formal(&beds.plot, &random, random_between(&random, 4, 8));
		beds_set_block(&beds.plot, block.along, block.across, block.up);
		beds_set_courses(&beds.plot, random_between(&random, 1, 4));
		beds_lay(&beds);
		for (int i = 0; i < beds.takeoff.walls.count; i++) {
			look_at(i);
			check_sides(found);
		}
		teardown();
	}
	memset(&beds, 0, sizeof beds);
	arena = ARENA_EMPTY;
	beds_rectangle(&beds.plot, 8, 4);
	beds_lay(&beds);
	for (int way = 0; way <= LIKE_WAYS; way++)
		ck_assert_msg(found[way] > 0, "none in way %d", way);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sides");
	TCase *alike = suite_case(suite, "alike"), *law = suite_case(suite, "law");

	tcase_add_checked_fixture(alike, NULL, teardown);
	tcase_add_test(alike, sides_face_away_from_the_bed);
	tcase_add_test(alike, as_many_courses_as_are_laid_of_each_kind);
	tcase_add_test(alike, opposite_sides_of_a_bed_are_alike);
	tcase_add_test(alike, a_square_has_its_odd_and_even_courses_exchanged_round_the_corner);
	tcase_add_test(alike, a_single_course_is_exchanged_with_none);
	tcase_add_test(alike,
		a_cap_much_longer_or_shorter_than_the_block_has_a_scale_of_its_own);

	tcase_add_checked_fixture(law, NULL, teardown);
	tcase_set_timeout(law, runner_count(60, 600));
	tcase_add_test(law,
		sides_are_in_one_group_where_and_only_where_one_is_an_image_of_the_other);
	return suite;
}
