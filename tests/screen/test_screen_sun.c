/* The sun over the plan, at a terminal: hours as the printed map has them, in colours, in eight of
 * them and in none; after strokes; and the shadows of moments. */
#include "support/program.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdlib.h>
#include <string.h>

enum { COLUMNS = 24, DOWN = 16 };

/* By hours: full sun, part sun, part shade, shade. */
static const int lights[] = { 195, 180, 96, 17 };

static int light_of(char sign)
{
	return lights[sign == '+' || sign >= '6' ? 0 : sign >= '4' ? 1 : sign >= '2' ? 2 : 3];
}

static const char *const plain[] = { "NO_COLOR=1", NULL };

static void sit(struct table *at, const struct launch *how)
{
	table_lay_out(at, "sun.plot");
	table_start(at, how);
	table_wait(at->t);
}

#define SHOW "! h o u r s enter"

/* The rows of the map that `parterre sun` prints of the plot's file. */
static void map_of(const struct table *at, char map[DOWN][COLUMNS])
{
	struct program_result sun = program_run(ARGUMENTS("sun", at->plot), NULL);
	const char *row = strstr(sun.output.bytes, "0'-");

	ck_assert_int_eq(sun.status, 0);
	ck_assert_ptr_nonnull(row);
	for (int y = 0; y < DOWN; y++) {
		const char *end = strchr(row, '\n');

		memcpy(map[y], end - COLUMNS, COLUMNS);
		row = end + 1;
	}
	program_free(&sun);
}

static char sign_at(struct terminal *t, int x, int y)
{
	struct cell cell = terminal_cell(t, PLAN_TOP + y, PLAN_LEFT + 2 * x);

	return cell.text[0];
}

/* Whether each cell that has hours shows its sign, or its shade, but for the cursor's. */
static bool has_map(struct terminal *t, char map[DOWN][COLUMNS], bool has_shades)
{
	for (int y = 0; y < DOWN; y++)
		for (int x = 0; x < COLUMNS; x++) {
			bool is_good = has_shades ? shown_ground(t, x, y) == light_of(map[y][x]) :
				sign_at(t, x, y) == map[y][x];

			/* a line in a cell's foot stands where its sign would */
			if (map[y][x] != '#' && !is_good && !shown_on_cell(t, x, y) &&
			    (has_shades || (unsigned char)sign_at(t, x, y) < 0x80))
				return false;
		}
	return true;
}

static void check_map(struct table *at, bool has_shades)
{
	char map[DOWN][COLUMNS];

	map_of(at, map);
	terminal_until(at->t, has_map(at->t, map, has_shades));
}

START_TEST(without_colours_each_cell_has_the_sign_of_the_printed_map)
{
	struct table at;

	sit(&at, &(struct launch){ .env = plain });
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "Hours of sun a day: + 10 and more; full sun from 6, part sun 4, part "
		"shade 2");
	check_map(&at, false);
	ck_assert(shown_mark(at.t, 22, 1, "\u25b2")); /* marks and signs stay */
	ck_assert(shown_mark(at.t, 23, 1, "\u2302"));
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "The plan shows no hours of sun now.");
	terminal_wait_gone(at.t, "part shade 2");
	table_leave(&at);
}
END_TEST

START_TEST(in_eight_colours_ground_keeps_its_own_and_has_the_signs)
{
	struct table at;
	int path;

	sit(&at, &(struct launch){ .term = "xterm" });
	path = shown_ground(at.t, 8, 2);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "part shade 2");
	check_map(&at, false);
	ck_assert_int_eq(shown_ground(at.t, 8, 2), path);
	table_leave(&at);
}
END_TEST

START_TEST(in_256_colours_each_cell_has_the_shade_of_its_class_and_a_scale_says_which)
{
	static const char *const words[] = { " 6 and more ", " 4 to 6 ", " 2 to 4 ", " under 2 " };
	struct table at;
	const char *row;
	int scale;

	sit(&at, NULL);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "Hours of sun a day:  6 and more   4 to 6   2 to 4   under 2");
	check_map(&at, true);
	scale = terminal_find(at.t, "Hours of sun a day:");
	ck_assert_int_eq(scale, 21);
	row = terminal_row(at.t, scale);
	for (int i = 0; i < 4; i++)
		ck_assert_int_eq(terminal_cell(at.t, scale, (int)(strstr(row, words[i]) - row))
			.ground, lights[i]);
	ck_assert(shown_letter(at.t, 8, 1) == 'p' || sign_at(at.t, 8, 1) == 'p');
	table_leave(&at);
}
END_TEST

/* A fixture higher than a man casts its shade as soon as it is laid. */
START_TEST(it_follows_each_stroke)
{
	struct table at;
	char before[DOWN][COLUMNS], after[DOWN][COLUMNS];

	sit(&at, NULL);
	map_of(&at, before);
	terminal_keys(at.t, SHOW);
	terminal_until(at.t, has_map(at.t, before, true));
	terminal_keys(at.t, "U right x13 down x9 space right x4");
	terminal_wait(at.t, "17 ft across, 9 ft down");
	terminal_keys(at.t, "> s a v e enter");
	terminal_wait(at.t, ", saved");
	map_of(&at, after);
	ck_assert_int_ne(memcmp(before, after, sizeof before), 0);
	terminal_until(at.t, has_map(at.t, after, true));
	terminal_keys(at.t, "backspace");
	terminal_until(at.t, has_map(at.t, before, true));
	table_leave(&at);
}
END_TEST

START_TEST(the_scale_can_be_read_in_60_columns_with_colours_and_without)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 18, .columns = 60, .env = _i ? plain : NULL });
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, _i ? "Hours of sun: full sun from 6, part sun 4, part shade 2" :
		"Hours of sun a day:  6 and more   4 to 6   2 to 4   under 2");
	terminal_resize(at.t, 40, 140);
	terminal_wait(at.t, _i ? "+ 10 and more" :
		" full sun: 6 and more   part sun: 4 to 6   part shade: 2 to 4   shade: under 2");
	table_leave(&at);
}
END_TEST

/* Bounds of many digits: no class is cut. */
START_TEST(a_scale_that_finds_no_room_is_left_out)
{
	struct table at;

	table_clear(&at, "digits.plot");
	table_write(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\nsite 45\n\n"
		"allow\n  sun-full 9.0625\n  sun-part 4.0625\n  sun-least 2.0625\n\n"
		"ground 3 x 2\n  ...\n  ...\n");
	table_start(&at, &(struct launch){ .rows = 18, .columns = 60 });
	table_wait(at.t);
	terminal_keys(at.t, SHOW);
	terminal_until(at.t, memcmp(terminal_row(at.t, 15), "Sun:    ", 8) == 0);
	terminal_resize(at.t, 18, 80);
	terminal_wait(at.t, "Sun:  9.0625 and more   4.0625 to 9.0625   2.0625 to 4.0625   under "
		"2.0625");
	table_leave(&at);
}
END_TEST

/* Ground of which a sign stands for many cells: 256 by 128 open ones, all in the sun. */
START_TEST(from_afar_a_sign_says_it_with_colours_and_without)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nsite 51.5\n\n"
		"fixture S \"Wall\"\n  height 40 ft\n\nground 256 x 128\n");
	for (int y = 0; y < 128; y++) {
		text_add(&plot, "  ");
		text_add_repeat(&plot, y < 120 ? '.' : 'S', 256);
		text_add(&plot, "\n");
	}
	table_clear(&at, "wide.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, &(struct launch){ .env = _i ? plain : NULL });
	table_wait(at.t);
	terminal_keys(at.t, SHOW " _");
	terminal_until(at.t, strstr(terminal_row(at.t, PLAN_TOP + 1), "++++++++++"));
	for (int x = 0; x < 10; x++)
		ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP + 1, PLAN_LEFT + x).ground,
			_i ? -1 : lights[0]);
	table_leave(&at);
}
END_TEST

START_TEST(where_the_latitude_is_taken_away_it_says_what_is_missing)
{
	struct table at;

	sit(&at, NULL);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "6 and more");
	terminal_keys(at.t, "# T h e space p l o t enter");
	field_go_to(at.t, "Latitude");
	terminal_keys(at.t, "ctrl-u pagedown enter");
	terminal_wait(at.t, "No latitude is told: # The plot itself has a field for it.");
	ck_assert(shown_is_open(at.t, 15, 15));
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "6 and more");
	table_leave(&at);
}
END_TEST

/* A raised bed and a path by turns, cell by cell: what shades what takes long to find. Keys are
 * taken meanwhile, and the ground is shown, not what was. */
START_TEST(where_it_takes_long_keys_go_first_and_it_says_that_it_is_counting)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nsite 51.5\n\n"
		"bed b \"Bed\"\npath p \"Path\"\n\nground 200 x 200\n");
	for (int y = 0; y < 200; y++) {
		text_add(&plot, "  ");
		for (int x = 0; x < 200; x++)
			text_add(&plot, (x + y) % 2 ? "b" : "p");
		text_add(&plot, "\n");
	}
	table_clear(&at, "turns.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, " 4 to 6 ");
	terminal_keys(at.t, "b space right x3");
	terminal_wait(at.t, "3 ft across, 0 in down");
	ck_assert(terminal_shows(at.t, "Hours of sun: counting ..."));
	terminal_keys(at.t, "right x3");
	terminal_wait(at.t, "6 ft across, 0 in down");
	terminal_wait(at.t, " 4 to 6 ");
	table_leave(&at);
}
END_TEST

/* ---- Moments --------------------------------------------------------------------------------- */

#define SHADOWS "! S h a d o w s enter"

/* An hour on and an hour back, by arrows and by the keys beside the answers. */
START_TEST(a_moment_is_stepped_through_the_day_and_left_as_it_was)
{
	struct text before;
	struct table at;

	sit(&at, &(struct launch){ .env = _i ? plain : NULL });
	shown_wait_counted(at.t);
	before = shown_picture(at.t, 0, 22, 80);
	terminal_keys(at.t, SHADOWS);
	terminal_wait(at.t, "2026-06-21");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "2026-06-21 9:00 solar time: sun ");
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "2026-06-21 9:15 solar time: sun ");
	terminal_keys(at.t, "pagedown left enter");
	terminal_wait(at.t, "2026-06-21 9:45 solar time: sun ");
	terminal_keys(at.t, "pageup");
	terminal_wait(at.t, "2026-06-21 8:45 solar time: sun ");
	terminal_keys(at.t, "escape");
	terminal_until(at.t, shown_is(at.t, &before, 0, 22, 80));
	text_fini(&before);
	table_leave(&at);
}
END_TEST

/* A wall of 5 ft 6 in along the foot of the plan, at 45 degrees on an equinox: its shadow at noon
 * is as long as it is high (see test_sun_shadows.c). */
START_TEST(cells_in_the_shade_are_dark_or_have_a_stroke)
{
	struct table at;

	table_clear(&at, "wall.plot");
	table_write(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\nsite 45\n\n"
		"path p \"Path\"\n\n"
		"ground 3 x 12\n  ppp\n  ppp\n  ppp\n  ppp\n  ppp\n  ppp\n  ppp\n  ppp\n"
		"  ppp\n  ppp\n  ppp\n  ppp\n\n"
		"fence \"Wall\"\n  height 66 in\n  gap 0 in\n  run 0,12 3,12\n");
	table_start(&at, &(struct launch){ .env = _i ? plain : NULL });
	table_wait(at.t);
	terminal_keys(at.t, SHADOWS);
	terminal_wait(at.t, "2026-06-21");
	terminal_keys(at.t, "ctrl-u 2 0 2 6 - 0 3 - 2 0 enter");
	terminal_wait(at.t, "2026-03-20 9:00 ");
	terminal_keys(at.t, "pagedown x3");
	terminal_wait(at.t, "2026-03-20 12:00 solar time: sun ");
	for (int y = 1; y < 12; y++) {
		bool is_shade = _i ? sign_at(at.t, 1, y) == '/' :
			shown_ground(at.t, 1, y) == lights[3];

		if (y != 6 && y != 11) /* the wall stands in the last row's foot */
			ck_assert_msg(is_shade == (y > 6), "row %d", y);
	}
	terminal_wait(at.t, _i ? "; / shade" : "sun   shade ");
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_sun");
	TCase *hours = suite_case(suite, "hours");
	TCase *moments = suite_case(suite, "moments");

	tcase_add_test(hours, without_colours_each_cell_has_the_sign_of_the_printed_map);
	tcase_add_test(hours, in_eight_colours_ground_keeps_its_own_and_has_the_signs);
	tcase_add_test(hours,
		in_256_colours_each_cell_has_the_shade_of_its_class_and_a_scale_says_which);
	tcase_add_test(hours, it_follows_each_stroke);
	tcase_add_loop_test(hours,
		the_scale_can_be_read_in_60_columns_with_colours_and_without, 0, 2);
	tcase_add_test(hours, a_scale_that_finds_no_room_is_left_out);
	tcase_add_loop_test(hours, from_afar_a_sign_says_it_with_colours_and_without, 0, 2);
	tcase_add_test(hours,
		where_it_takes_long_keys_go_first_and_it_says_that_it_is_counting);
	tcase_add_test(hours, where_the_latitude_is_taken_away_it_says_what_is_missing);
	tcase_add_loop_test(moments, a_moment_is_stepped_through_the_day_and_left_as_it_was, 0, 2);
	tcase_add_loop_test(moments, cells_in_the_shade_are_dark_or_have_a_stroke, 0, 2);
	return suite;
}
