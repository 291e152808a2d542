/* What stands on a plan that is drawn, by law on random plots. */
#include "report/drawing/drawing.h"
#include "base/number.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <ctype.h>
#include <string.h>

enum { TRIES = 60, MOST = 110, RULER = 4 };

static struct garden garden;
static struct arena arena;
static struct drawing drawing;

static void teardown(void)
{
	arena_clear(&arena);
	garden_fini(&garden);
}

static void draw(void)
{
	struct cuts cuts = cuts_of(garden.plot.ground.columns, garden.plot.ground.rows, RULER);

	garden_count(&garden);
	drawing_make(&drawing, &arena, &garden.takeoff, &cuts, NULL);
}

/* Of every size in turn, with fences on every other one. */
static void draw_at_random(int seed)
{
	static const int most[] = { 18, 36, MOST };
	struct random random = { (uint64_t)seed };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, most[seed % 3], seed % 5 ? "bbcpl.FG" : "bcdpqlm.F");
	if (seed % 2) {
		fences_at_random(&garden.plot, &random);
		if (seed % 4 == 1) {
			details_add_fence(&garden.plot.details, memory_string("Boards"));
			fences_run(&garden.plot, "0,0 1,0");
		}
	}
	draw();
}

static char at(int column, int row)
{
	return points_at(&drawing.points, column, row);
}

static char letter(int x, int y)
{
	return ground_holds(&garden.plot.ground, x, y) ? ground_cell(&garden.plot.ground, x, y) :
		'\0';
}

/* Part of an id, a number or a fence, which stand over what else would be there. */
static bool is_over(char c)
{
	return isdigit((unsigned char)c) || (c && strchr("=#oBPLFG", c)) ||
		c == POINT_GAP || c == POINT_NAME;
}

static bool is_built(char c)
{
	enum plot_class class = c ? plot_class_of(&garden.plot, c) : CLASS_BOUNDARY;

	return class == CLASS_BED || class == CLASS_FIXTURE;
}

/* What may stand between four cells: two by two the same within a cell or along one side. */
static void check_point(int column, int row, const char around[4], int seed)
{
	char c = at(column, row);
	bool is_ground = true, has_built = false;

	for (int i = 0; i < 4; i++) {
		is_ground = is_ground && around[i] == around[0];
		has_built = has_built || is_built(around[i]);
	}
	if (is_over(c))
		return;
	if (is_ground)
		ck_assert_msg(c == POINT_FREE || (c == around[0] && c != '.'),
			"seed %d: '%c' at %d,%d within '%c'", seed, c, column, row, around[0]);
	else if (has_built)
		ck_assert_msg(strchr("-|+", c), "seed %d: '%c' at %d,%d beside a bed", seed, c,
			column, row);
	else
		ck_assert_msg(c == '.' || c == ':' || c == POINT_BLANK,
			"seed %d: '%c' at %d,%d on an edge", seed, c, column, row);
}

START_TEST(every_point_shows_the_ground_or_the_edge_that_it_is_on)
{
	draw_at_random(_i);
	for (int row = 0; row < drawing.points.rows; row++)
		for (int column = 0; column < drawing.points.columns; column++) {
			int x = column / drawing.points.cuts.across;
			int y = row / drawing.points.cuts.down;
			int left = x - (column % drawing.points.cuts.across == 0);
			int above = y - (row % drawing.points.cuts.down == 0);

			check_point(column, row, (char[4]){ letter(left, above), letter(x, above),
				letter(left, y), letter(x, y) }, _i);
		}
}
END_TEST

static bool is_word(char c)
{
	return isalnum((unsigned char)c) && c != 'o';
}

/* How often a word stands on all sheets as they are printed, with no letter or digit beside it; a
 * post may be before it and after it. */
static int occurrences(const char *word)
{
	const struct cuts *cuts = &drawing.points.cuts;
	struct text row = TEXT_EMPTY;
	int count = 0;

	for (int y = 0; y < cuts->sheets_down; y++)
		for (int x = 0; x < cuts->sheets_across; x++) {
			struct rectangle on = drawing_sheet(&drawing, (struct place){ x, y });

			for (int i = on.top; i <= on.bottom; i++) {
				text_clear(&row);
				drawing_row(&drawing, i, on.left, on.right, &row);
				for (const char *c = row.bytes; (c = strstr(c, word)); c++)
					count += !is_word(c[strlen(word)]) &&
						(c == row.bytes || !is_word(c[-1]));
			}
		}
	text_fini(&row);
	return count;
}

START_TEST(each_region_is_named_once_or_has_no_room)
{
	char id[REGION_NAME_MOST];

	draw_at_random(_i);
	for (int i = 0; i < garden.takeoff.survey.region_count; i++) {
		int expected = drawing.ids.named[i] != NAMED_NOT;

		survey_region_name(&garden.takeoff.survey.regions[i], id);
		ck_assert_msg(occurrences(id) == expected, "seed %d: %s is there %d times", _i, id,
			occurrences(id));
	}
}
END_TEST

/* The column along which two sheets join is on both: a word that has it would be cut, or there
 * twice. */
START_TEST(no_sheet_ends_within_a_word)
{
	const struct points points = { .cuts = cuts_of(76, 54, RULER), .columns = 77, .rows = 55 };
	int join = cuts_cells(&points.cuts, (struct place){ 1, 0 }).left;

	ck_assert(points_are_together(&points, join - 3, 3));
	for (int column = join - 2; column <= join; column++)
		ck_assert(!points_are_together(&points, column, 3));
	ck_assert(points_are_together(&points, join + 1, 3));
	ck_assert(points_are_together(&points, join, 1));
}
END_TEST

/* The id begins within its region: on the ground of one of its cells. */
START_TEST(a_name_stands_on_its_own_region)
{
	const struct survey *survey = &garden.takeoff.survey;
	char id[REGION_NAME_MOST], here[REGION_NAME_MOST];

	draw_at_random(_i);
	for (int row = 0; row < drawing.points.rows; row++)
		for (int column = 0; column + 1 < drawing.points.columns; column++) {
			int region = survey_region_at(survey,
				least(column / drawing.points.cuts.across, survey->columns - 1),
				least(row / drawing.points.cuts.down, survey->rows - 1));
			size_t length = 1;

			if (!strchr("BPL", at(column, row)) ||
			    !isdigit((unsigned char)at(column + 1, row)))
				continue;
			ck_assert_msg(region != NO_REGION, "seed %d", _i);
			survey_region_name(&survey->regions[region], id);
			while (isdigit((unsigned char)at(column + (int)length, row)))
				length++;
			for (size_t i = 0; i < length; i++)
				here[i] = at(column + (int)i, row);
			here[length] = '\0';
			ck_assert_msg(strcmp(id, here) == 0, "seed %d: %s on %s", _i, here, id);
		}
}
END_TEST

static bool is_leg_sign(char c)
{
	return c == '=' || c == '#' || c == 'o' || c == POINT_GAP ||
		isdigit((unsigned char)c) || c == '.' || c == 'G';
}

static void check_leg(struct leg leg, bool is_gate, int seed)
{
	struct leg f = leg_forward(leg);
	int across = drawing.points.cuts.across, down = drawing.points.cuts.down;

	for (int row = f.from.y * down; row <= f.to.y * down; row++)
		for (int column = f.from.x * across; column <= f.to.x * across; column++) {
			bool is_end = (row == f.from.y * down && column == f.from.x * across) ||
				(row == f.to.y * down && column == f.to.x * across);
			char c = at(column, row);

			ck_assert_msg(is_leg_sign(c), "seed %d: '%c' at %d,%d of a fence", seed, c,
				column, row);
			ck_assert_msg(!is_gate || is_end || (c != '=' && c != '#'),
				"seed %d: '%c' at %d,%d in a gate", seed, c, column, row);
		}
}

START_TEST(every_leg_is_drawn_and_every_gate_is_a_gap)
{
	const struct fences *fences = &garden.takeoff.fences;
	char name[FENCE_NAME_MOST];

	draw_at_random(2 * _i + 1);
	for (int f = 0; f < fences->count; f++) {
		for (int i = 0; i < fences->list[f].leg_count; i++)
			check_leg(fences->list[f].legs[i].on, false, _i);
		for (int i = 0; i < fences->list[f].gate_count; i++) {
			bool is_named = true;

			for (size_t n = 0; n < drawing.fences.nameless_count; n++)
				is_named = is_named && (drawing.fences.nameless[n].fence != f ||
					drawing.fences.nameless[n].gate != i);
			fence_gate_name(f, i, name);
			check_leg(fences->list[f].gates[i].on, true, _i);
			ck_assert_msg(occurrences(name) >= is_named, "seed %d: no %s", _i, name);
		}
	}
}
END_TEST

/* No farther than it was moved in from the boundary, and a character for rounding. */
START_TEST(every_post_is_a_sign_where_it_stands)
{
	const struct fences *fences = &garden.takeoff.fences;

	draw_at_random(2 * _i + 1);
	for (int f = 0; f < fences->count; f++)
		for (int i = 0; i < fences->list[f].post_count; i++) {
			const struct spot *spot = &fences->list[f].posts[i].at;
			int x = (int)(spot->x * drawing.points.cuts.across / NM_PER_FOOT);
			int y = (int)(spot->y * drawing.points.cuts.down / NM_PER_FOOT);
			bool is_there = false;

			for (int row = y - 1; row <= y + 2; row++)
				for (int column = x - 2; column <= x + 2; column++)
					is_there = is_there || at(column, row) == 'o';
			ck_assert_msg(is_there, "seed %d: no post at %d,%d", _i, x, y);
		}
}
END_TEST

/* Left for right on the left half, top for bottom above, both, turned half round below. */
static void mirror_ground(enum mirror_kind kind)
{
	struct mirror mirror = mirror_of(&garden.plot);
	struct ground *ground = &garden.plot.ground;
	struct place images[IMAGES_MOST];

	ck_assert_int_eq(mirror.kind, kind);
	for (int y = 0; y < ground->rows; y++)
		for (int x = 0; x < ground->columns; x++) {
			int count = mirror_cells(&mirror, x, y, images);

			for (int i = 1; i < count; i++)
				*ground_at(ground, images[i].x, images[i].y) =
					*ground_at(ground, x, y);
		}
}

static void check_image(int column, int row, int image_column, int image_row, int seed)
{
	char one = at(column, row), other = at(image_column, image_row);
	bool is_word_there = isalnum((unsigned char)one) || isalnum((unsigned char)other);

	if (one == 'o' || other == 'o')
		is_word_there = one != 'o' && other != 'o';
	if (is_word_there || one == other)
		return;
	/* Letters keep clear of words, and post numbers lie over dots. */
	for (int i = -4; i <= 4; i++)
		if (isdigit((unsigned char)at(column + i, row)) ||
		    isdigit((unsigned char)at(image_column + i, image_row)))
			return;
	ck_assert_msg(false, "seed %d: '%c' at %d,%d, '%c' at %d,%d", seed, one, column, row, other,
		image_column, image_row);
}

START_TEST(what_the_mirror_turns_onto_itself_is_drawn_so)
{
	static const char *const kinds[] = { "left-right", "top-bottom", "half-turn", "four-way" };
	static const char *const fences[] = { "2,2 10,2 10,8 2,8 2,2", "4,0 8,0 8,10 4,10 4,0" };
	static const char *const gates[] = { "5,2 7,2", "4,4 4,6" };
	struct random random = { (uint64_t)_i };
	int kind = _i % 4, last_column, last_row;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, MOST, "bpl.F");
	if (_i % 3 == 0) {
		ground_fini(&garden.plot.ground);
		ground_init(&garden.plot.ground, 12, 10);
		fences_run(&garden.plot, fences[_i / 3 % 2]);
		fences_gate(&garden.plot, gates[_i / 3 % 2]);
		if (_i / 3 % 2 == 1)
			fences_gate(&garden.plot, "8,4 8,6");
		else
			fences_gate(&garden.plot, "5,8 7,8");
	}
	plot_set(&garden.plot, 0, HEAD_MIRROR, kinds[kind]);
	mirror_ground(mirror_of(&garden.plot).kind);
	draw();
	last_column = drawing.points.columns - 1;
	last_row = drawing.points.rows - 1;
	for (int row = 0; row <= last_row; row++)
		for (int column = 0; column <= last_column; column++)
			check_image(column, row, kind == 1 ? column : last_column - column,
				kind == 0 ? row : last_row - row, _i);
}
END_TEST

/* ---- Words ----------------------------------------------------------------------------------- */

static void is_row(int row, const char *expected)
{
	struct text words = TEXT_EMPTY;

	drawing_row(&drawing, row, 0, drawing.points.columns - 1, &words);
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

START_TEST(a_bed_with_a_sheet_has_its_sides_numbered_and_its_image_has_not)
{
	garden_rows(&garden, (const char *[]){ "bbbbbb.....bbbbbb", "bbbbbb.....bbbbbb",
		"bbbbbb.....bbbbbb", "bbb...........bbb", "bbb...........bbb", "bbb...........bbb",
		"bbb...........bbb", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	draw();
	is_row(0, "+-----------1-----------+ . . . . . . . . . +-----------------------+");
	is_row(3, "|                       2                   |                       |");
	is_row(6, "|       b   +-----3-----+                   +-----------+   b       |");
	is_row(7, "6        B1 |                                           | B2        |");
	is_row(10, "|   b       4                                           |       b   |");
	is_row(14, "+-----5-----+ . . . . . . . . . . . . . . . . . . . . . +-----------+");
}
END_TEST

/* A number there would be read for the other bed's side. */
START_TEST(a_side_along_another_bed_has_its_number_where_it_is_alone)
{
	garden_rows(&garden, (const char *[]){ "bbbb....", "bbbbcccc", "bbbbcccc", "bbbbcccc",
		"bbbb....", NULL });
	draw();
	is_row(0, "+-------1-------+ . . . . . . . .");
	is_row(9, "|               2               :");
	is_row(2, "| b       b     +-------1-------+");
	is_row(4, "|     b       b | c       c     |");
}
END_TEST

START_TEST(posts_moved_in_from_the_boundary_stay_on_the_line_of_their_fence)
{
	fences_ground(&garden.plot, 4, 4);
	fences_run(&garden.plot, "0,0 4,0 4,4 0,4 0,0");
	draw();
	is_row(0, "o1=============2o");
	is_row(1, "#               #");
	is_row(7, "#               #");
	is_row(8, "o4=============3o");
}
END_TEST

/* Legs of 19 ft on both sides of a gate: posts at 16 1/2 ft and 31 1/2 ft, between two characters
 * of a foot. */
START_TEST(posts_between_two_characters_go_towards_the_axis)
{
	fences_ground(&garden.plot, 48, 24);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&garden.plot, "3,20 45,20");
	fences_gate(&garden.plot, "22,20 26,20");
	draw();
	is_row(20, ":  o1======o2====o3==4oG1 o5===o6====o7======o8 :");
}
END_TEST

/* A leg of 13 ft in two panels: its middle post is on the axis, at 24 1/2 ft. */
START_TEST(a_post_on_the_axis_between_two_characters_goes_to_the_right)
{
	fences_ground(&garden.plot, 49, 24);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&garden.plot, "18,20 31,20");
	draw();
	is_row(20, ":                 o1=====o2====o3                :");
}
END_TEST

/* The second fence begins where the first ends. */
START_TEST(a_post_where_fences_meet_has_one_number)
{
	fences_ground(&garden.plot, 12, 4);
	fences_run(&garden.plot, "1,2 6,2");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "6,2 11,2");
	draw();
	is_row(4, ":   o1==================o2==================o2.2:");
}
END_TEST

START_TEST(an_own_name_stands_by_its_id_where_there_is_room)
{
	garden_rows(&garden, (const char *[]){ "bbb.bb", "bbb.bb", NULL });
	names_add(&garden.plot.details.names, (struct place){ 0, 0 }, memory_string("S\u00e9ge"));
	names_add(&garden.plot.details.names, (struct place){ 4, 0 }, memory_string("Thyme"));
	draw();
	is_row(2, "4  B1 S\u00e9ge  2   4  B2   2");
	ck_assert_int_eq(drawing.ids.named[0], NAMED_ALL);
	ck_assert_int_eq(drawing.ids.named[1], NAMED_ID);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("drawing");
	TCase *laws = suite_case(suite, "laws"), *words = suite_case(suite, "words");

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, every_point_shows_the_ground_or_the_edge_that_it_is_on, 0, TRIES);
	tcase_add_loop_test(laws, each_region_is_named_once_or_has_no_room, 0, TRIES);
	tcase_add_loop_test(laws, a_name_stands_on_its_own_region, 0, TRIES);
	tcase_add_loop_test(laws, every_leg_is_drawn_and_every_gate_is_a_gap, 0, TRIES);
	tcase_add_loop_test(laws, every_post_is_a_sign_where_it_stands, 0, TRIES);
	tcase_add_loop_test(laws, what_the_mirror_turns_onto_itself_is_drawn_so, 0, TRIES);
	tcase_add_checked_fixture(words, NULL, teardown);
	tcase_add_test(words, a_bed_with_a_sheet_has_its_sides_numbered_and_its_image_has_not);
	tcase_add_test(words, no_sheet_ends_within_a_word);
	tcase_add_test(words, a_side_along_another_bed_has_its_number_where_it_is_alone);
	tcase_add_test(words, posts_moved_in_from_the_boundary_stay_on_the_line_of_their_fence);
	tcase_add_test(words, posts_between_two_characters_go_towards_the_axis);
	tcase_add_test(words, a_post_on_the_axis_between_two_characters_goes_to_the_right);
	tcase_add_test(words, a_post_where_fences_meet_has_one_number);
	tcase_add_test(words, an_own_name_stands_by_its_id_where_there_is_room);
	return suite;
}
