/* Snags of what is dug near lines that are there, and within what is kept: each with a plot that
 * shows it and one just inside the rule. */
#include "plot/edit/lay.h"
#include "support/around.h"
#include "support/digging.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdio.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static int count(enum snag_code code)
{
	int snags = 0;

	while (garden_snag(&garden, code, snags))
		snags++;
	return snags;
}

static void open(const char *const *rows, const char *lines)
{
	garden_rows(&garden, rows);
	around_add(&garden.plot, lines);
	garden_count(&garden);
}

/* The path begins 2 ft from the line: not nearer than 24 in. */
START_TEST(a_path_is_near_a_line_from_less_than_two_feet_on)
{
	const struct snag *snag;

	open((const char *const[]){ "...ppp", "...ppp", "......", "......", NULL },
		"service gas \"G\" existing\n  line 1,0 1,4\n");
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 0);
	plot_set(&garden.plot, 0, ALLOW_SERVICE_NEAR, "25 in");
	garden_count(&garden);
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 1);
	snag = garden_snag(&garden, SNAG_SERVICE_NEAR, 0);
	ck_assert_int_eq(snag->kind, HAND_GROUND);
	ck_assert_int_eq(snag->region, 0);
	ck_assert_int_eq(snag->cell.x, 3);
	ck_assert_int_eq(snag->cell.y, 0);
	ck_assert_int_eq(snag->box.right, 3);
	ck_assert_int_eq(snag->box.bottom, 1);
	ck_assert_int_eq(snag->figures[0], 25 * NM_PER_INCH);
	plot_set(&garden.plot, 0, ALLOW_SERVICE_NEAR, "0 in");
	garden_count(&garden);
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 0);
}
END_TEST

START_TEST(a_region_is_told_once_however_many_lines_it_is_near)
{
	open((const char *const[]){ "pppppp", "pppppp", "pppppp", NULL },
		"service gas \"G\" existing\n  line 5,0 5,3\n"
		"service water \"W\" existing\n  line 0,2 1,2\n  line 2,0 2,1\n"
		"service power \"L\" to-lay\n  line 0,3 6,3\n");
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 2);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 0)->cell.x, 0);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 0)->box.right, 5);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 1)->kind, HAND_TRENCH);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 1)->region, NO_REGION);
}
END_TEST

/* Holes are 10 1/2 in across, moved in by 5 1/4 in: 3 ft less that from the line, and 2 ft. */
START_TEST(a_hole_near_a_line_is_told_for_each_post)
{
	static const char *const open_ground[] = { "........", "........", "........", "........",
		"........", "........", NULL };

	open(open_ground, "fence \"F\"\n  run 0,0 8,0\nservice gas \"G\" existing\n"
		"  line 0,3 8,3\n");
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 0);
	garden_fini(&garden);
	open(open_ground, "fence \"F\"\n  run 0,0 8,0\nservice gas \"G\" existing\n"
		"  line 0,2 4,2\nservice gas \"H\" existing\n  line 0,1 1,1\n");
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 0)->kind, HAND_HOLE);
	ck_assert_int_eq(garden_snag(&garden, SNAG_SERVICE_NEAR, 0)->region, NO_REGION);
}
END_TEST

START_TEST(the_header_and_plants_are_told_near_lines_and_within_what_is_kept)
{
	static const struct { const char *lines; enum snag_code code; int kind; } rows[] = {
		{ "service gas \"G\" existing\n  line 0,0 8,0\ntap 2,0\n", SNAG_SERVICE_NEAR,
			HAND_HEADER },
		{ "keep \"K\" 1 ft\n  at 2,1\ntap 2,0\n", SNAG_KEEP_DUG, HAND_HEADER },
		{ "service gas \"G\" existing\n  line 0,0 8,0\nplant t \"T\"\n  at 7,0\n"
			"  at 5,1\n", SNAG_SERVICE_NEAR, HAND_PLANT },
		{ "keep \"K\" 1 ft\n  at 7,1\nplant t \"T\"\n  at 7,0\n", SNAG_KEEP_DUG,
			HAND_PLANT },
	};

	garden_rows(&garden, (const char *const[]){ "........", "........", "........",
		"........", "bbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_add_lines(&garden.plot, rows[_i].lines);
	garden_count(&garden);
	ck_assert_int_eq(count(rows[_i].code), 1);
	ck_assert_int_eq(garden_snag(&garden, rows[_i].code, 0)->kind, rows[_i].kind);
	ck_assert_int_eq(garden_snag(&garden, rows[_i].code, 0)->region, NO_REGION);
}
END_TEST

/* Each has a first post near the line. */
START_TEST(posts_of_two_fences_are_not_one_for_their_number)
{
	open((const char *const[]){ "........", "........", "........", "........", "........",
		"........", "........", "........", NULL }, "fence \"F\"\n  run 0,1 8,1\n"
		"fence \"H\"\n  run 0,7 8,7\nservice gas \"G\" existing\n  line 0,2 1,2\n"
		"  line 0,6 1,6\n");
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 2);
	ck_assert_int_le(garden_snag(&garden, SNAG_SERVICE_NEAR, 0)->cell.y, 1);
	ck_assert_int_ge(garden_snag(&garden, SNAG_SERVICE_NEAR, 1)->cell.y, 6);
}
END_TEST

/* A circle of 1 ft round a corner of the path 1 ft off it touches, and does not reach in. */
START_TEST(within_what_is_kept_nothing_is_to_be_dug)
{
	static const char *const path[] = { "......", "..pp..", "..pp..", "......", NULL };

	open(path, "keep \"Pear\" 1 ft\n  at 2,0\nkeep \"Well\"\n  from 4,0 to 6,4\n");
	ck_assert_int_eq(count(SNAG_KEEP_DUG), 0);
	garden_fini(&garden);
	open(path, "keep \"Pear\" 13 in\n  at 2,0\n");
	ck_assert_int_eq(count(SNAG_KEEP_DUG), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_KEEP_DUG, 0)->region, 0);
	garden_fini(&garden);
	open(path, "service drain \"D\" to-lay\n  line 0,0 6,0\nkeep \"Well\"\n"
		"  from 3,0 to 6,4\n");
	ck_assert_int_eq(count(SNAG_KEEP_DUG), 2);
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 0);
}
END_TEST

/* What is there lies where it lies; what is symmetric about the mirror is one line of the list. */
START_TEST(images_have_boxes_that_are_images)
{
	const struct snag *left, *right;

	garden_rows(&garden, (const char *const[]){ "bbbb..bbbb", "bbbb..bbbb", "bbbb..bbbb",
		"bbbb..bbbb", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	around_add(&garden.plot, "service gas \"G\" existing\n  line 5,0 5,4\n");
	garden_count(&garden);
	ck_assert_int_eq(count(SNAG_SERVICE_NEAR), 2);
	left = garden_snag(&garden, SNAG_SERVICE_NEAR, 0);
	right = garden_snag(&garden, SNAG_SERVICE_NEAR, 1);

	struct mirror mirror = mirror_of(&garden.plot);
	struct snag_box one = snag_first_image(&mirror, left);
	struct snag_box other = snag_first_image(&mirror, right);

	ck_assert(snag_box_equal(&one, &other));
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* What is told once, in which cells. */
struct told {
	int kind, which, among;
	struct rectangle cells;
	struct place first;
};

enum { TOLD_MOST = 2000 };

struct told_list {
	struct told list[TOLD_MOST];
	int count;
};

static void tell(struct told_list *told, const struct told *one)
{
	struct told *same = told->list;

	while (same < told->list + told->count && (same->kind != one->kind ||
		same->which != one->which || same->among != one->among))
		same++;
	ck_assert_int_lt(told->count, TOLD_MOST);
	if (same == told->list + told->count) {
		told->list[told->count++] = *one;
		return;
	}
	same->cells = rectangle_around(same->cells, one->cells);
	if (place_order(one->first, same->first) < 0)
		same->first = one->first;
}

/* Of all cells those that a box comes into; of a point those that it lies in or on the edge of. */
static struct rectangle cells_met(struct spot from, struct spot to)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct rectangle met = { survey->columns, survey->rows, -1, -1 };
	bool is_point = from.x == to.x && from.y == to.y;
	nm cell = survey->cell, edge = is_point ? 1 : 0;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++)
			if (x * cell < to.x + edge && (x + 1) * cell > from.x - edge &&
				y * cell < to.y + edge && (y + 1) * cell > from.y - edge)
				met = met.right < 0 ? (struct rectangle){ x, y, x, y } :
					rectangle_around(met, (struct rectangle){ x, y, x, y });
	return met;
}

static void tell_all(struct told_list *told, const struct hand *hand)
{
	for (int i = 0; i < hand->dig_count; i++) {
		const struct hand_dig *dig = &hand->digs[i];

		tell(told, &(struct told){ (int)dig->kind, dig->kind == HAND_GROUND ?
			dig->region : dig->place, 0, cells_met(dig->from, dig->to), dig->first });
	}
	for (int i = 0; i < hand->post_count; i++) {
		struct rectangle cells = cells_met(hand->posts[i].at, hand->posts[i].at);

		tell(told, &(struct told){ HAND_HOLE, (int)hand->posts[i].number,
			hand->posts[i].fence, cells, { cells.left, cells.top } });
	}
	for (int i = 0; i < hand->plant_count; i++) {
		struct rectangle cells = cells_met(hand->plants[i].at, hand->plants[i].at);

		tell(told, &(struct told){ HAND_PLANT, hand->plants[i].kind,
			hand->plants[i].region, cells, { cells.left, cells.top } });
	}
}

static bool is_told(enum snag_code code, const struct told *one)
{
	int region = one->kind == HAND_GROUND ? one->which : one->kind == HAND_PLANT ?
		one->among : NO_REGION;
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, code, i)); i++)
		if (snag->kind == one->kind && snag->region == region &&
			place_equal(snag->cell, one->first) && snag->box.left == one->cells.left &&
			snag->box.top == one->cells.top && snag->box.right == one->cells.right &&
			snag->box.bottom == one->cells.bottom)
			return true;
	return false;
}

static void check_told(enum snag_code code, const struct told_list *told, int seed)
{
	for (int i = 0; i < told->count; i++)
		ck_assert_msg(is_told(code, &told->list[i]), "seed %d, %d of kind %d", seed, i,
			told->list[i].kind);
	ck_assert_msg(count(code) == told->count, "seed %d", seed);
}

static void garden_at_random(struct random *random)
{
	char lines[200];

	garden = (struct garden){ .arena = ARENA_EMPTY };
	diggings_plot(&garden.plot, random);
	services_at_random(&garden.plot, random);
	fences_at_random(&garden.plot, random);
	snprintf(lines, sizeof lines, "plant t \"T\"\n  at %d,%d\nplant u \"U\"\n  at 0,0\n",
		random_below(random, garden.plot.ground.columns),
		random_below(random, garden.plot.ground.rows));
	plot_add_lines(&garden.plot, lines);
	garden_count(&garden);
}

/* Of all lines together, and of all that is kept. */
START_TEST(each_is_told_once_with_all_the_cells_it_comes_into)
{
	for (int seed = 0; seed < runner_count(40, 400); seed++) {
		struct random random = { (uint64_t)seed };
		struct told_list near = { .count = 0 }, within = { .count = 0 };
		const struct service_lines *services = &garden.takeoff.services;

		garden_at_random(&random);
		for (int i = 0; i < services->count; i++)
			tell_all(&near, &services->list[i].hand);
		for (int i = 0; i < services->kept_count; i++)
			tell_all(&within, &services->kept[i].hand);
		check_told(SNAG_SERVICE_NEAR, &near, seed);
		check_told(SNAG_KEEP_DUG, &within, seed);
		teardown();
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("hand snags");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_test(snags, a_path_is_near_a_line_from_less_than_two_feet_on);
	tcase_add_test(snags, a_region_is_told_once_however_many_lines_it_is_near);
	tcase_add_test(snags, a_hole_near_a_line_is_told_for_each_post);
	tcase_add_loop_test(snags,
		the_header_and_plants_are_told_near_lines_and_within_what_is_kept, 0, 4);
	tcase_add_test(snags, posts_of_two_fences_are_not_one_for_their_number);
	tcase_add_test(snags, within_what_is_kept_nothing_is_to_be_dug);
	tcase_add_test(snags, each_is_told_once_with_all_the_cells_it_comes_into);
	tcase_add_test(snags, images_have_boxes_that_are_images);
	return suite;
}
