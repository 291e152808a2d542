/* A first garden, from an empty folder to a takeoff, as README.md tells it: the keys there are
 * those that are pressed here, and it says how many they are. */
#include "base/file.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/stroll.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { PRESSES_MOST = 45, TYPED = 5 };

static const struct stroll way[] = {
	{ "Rose court", "enter enter", "Width" },
	{ "30 ft", "enter enter enter", "A new plot" },
	{ NULL, "| -", "four-way" },
	{ NULL, "b 2 right 2 down enter", "Pegged" },
	{ NULL, "9 right 3 down", "From the peg" },
	{ NULL, "enter enter", "b Raised bed        160.0" },
	{ NULL, "p right *", "p Crushed stone     440.0" },
	{ NULL, "l home pageup enter end pagedown enter", "Frame it" },
	{ NULL, "down enter", "Thickness" },
	{ "2 ft", "enter", "l Turf              184.0" },
	{ NULL, "S @", "Across" },
	{ "14 ft", "enter", "Down" },
	{ "9 ft", "enter", "Drawing" },
	{ NULL, "space", "S Sundial             4.0" },
	{ NULL, "> >", "Saved" },
	{ NULL, "> t enter", "Write which part" },
	{ NULL, "enter", "Write the takeoff to a file" },
	{ NULL, "enter", "Takeoff written to" },
	{ NULL, "<", NULL },
};
enum { WAY = sizeof way / sizeof *way };

/* ---- What comes of it ------------------------------------------------------------------------ */

/* In one row of the list of what to buy. */
static void check_order(const struct text *takeoff, const char *order, const char *item)
{
	const char *row = strstr(takeoff->bytes, order);

	ck_assert_msg(row, "there is no %s", order);
	ck_assert_msg(memmem(row, strcspn(row, "\n"), item, strlen(item)), "%s is of no %s", order,
		item);
}

/* A bed of 10 by 4 ft takes (28 ft - 32 in) / 16 in = 19 blocks a course, four of three courses
 * 228; with 12 for those that break 240. Turf is 184 sq ft, a small lawn's tenth more 202.4. */
static void check_takeoff(const struct table *at)
{
	struct text bytes = table_file(at, "rose.txt");

	ck_assert_ptr_nonnull(strstr(bytes.bytes, "parterre takeoff 1\n"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "Rose court"));
	check_order(&bytes, "[ ]  240 ", " Wall block 16 in x 8 in x 6 in ");
	check_order(&bytes, "[ ]  203 sq ft ", " Turf ");
	text_fini(&bytes);
}

/* Four beds of 10 by 4 cells, a frame of turf, a sundial of 2 by 2 in the middle, all alike four
 * ways; and nothing that would not work on the ground. */
static void check_plot(const char *path)
{
	struct garden garden;
	const struct ground *ground = &garden.plot.ground;
	struct mirror mirror;

	garden_file(&garden, path);
	garden_count(&garden);
	ck_assert_int_eq(ground->columns, 30);
	ck_assert_int_eq(ground->rows, 20);
	mirror = mirror_of(&garden.plot);
	ck_assert_int_eq(mirror.kind, MIRROR_FOUR_WAY);
	ck_assert_int_eq(mirror_faults(&mirror, ground), 0);
	ck_assert_int_eq(ground_cell(ground, 2, 2), 'b');
	ck_assert_int_eq(ground_cell(ground, 1, 10), 'l');
	ck_assert_int_eq(ground_cell(ground, 15, 10), 'S');
	ck_assert_int_eq(ground_cell(ground, 14, 3), 'p');
	ck_assert_int_eq(garden.takeoff.walls.count, 4);
	ck_assert_uint_eq(garden.takeoff.snags.count, 0);
	garden_fini(&garden);
}

START_TEST(a_mirrored_garden_and_its_takeoff_take_45_presses_at_most)
{
	struct strolled strolled;
	struct table at;

	table_clear(&at, "rose.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	strolled = stroll_walk(at.t, way, WAY);
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert_int_le(strolled.presses, PRESSES_MOST);
	ck_assert_int_eq(strolled.typed, TYPED);
	check_plot(at.plot);
	check_takeoff(&at);
	table_leave(&at);
}
END_TEST

/* ---- What README.md says --------------------------------------------------------------------- */

/* Behind so many blanks stands a remark. */
#define REMARK "   "

static const struct { const char *written, *name; } names[] = {
	{ "PgUp", "pageup" }, { "PgDn", "pagedown" }, { "Enter", "enter" }, { "Space", "space" },
	{ "Home", "home" }, { "End", "end" }, { "Left", "left" }, { "Right", "right" },
	{ "Up", "up" }, { "Down", "down" },
};

static void add_name(struct text *list, const char *word, size_t length)
{
	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (strlen(names[i].written) == length &&
			strncmp(names[i].written, word, length) == 0) {
			text_print(list, "%s\n", names[i].name);
			return;
		}
	text_print(list, "%.*s\n", (int)length, word);
}

/* The keys of one line, as stroll_list has them. */
static void add_line(struct text *list, const char *line, size_t length)
{
	const char *end = line + length, *remark = strstr(line, REMARK);

	if (remark && remark < end)
		end = remark;
	while (line < end) {
		bool is_typed = *line == '"';
		size_t word = is_typed ? strcspn(line + 1, "\"") + 2 : strcspn(line, " \n");

		add_name(list, line, word);
		line += word + strspn(line + word, " ");
	}
}

START_TEST(the_readme_has_these_keys_and_says_how_many_they_are)
{
	struct text readme = TEXT_EMPTY, here = TEXT_EMPTY, there = TEXT_EMPTY;
	struct file_error error;
	const char *at;
	char said[40];

	ck_assert_msg(file_read("README.md", 1 << 20, &readme, &error), "%s", error.sentence);
	snprintf(said, sizeof said, " in %d key presses ", stroll_count(way, WAY).presses);
	at = strstr(readme.bytes, "\n## A first garden\n");
	ck_assert_ptr_nonnull(at);
	ck_assert_msg(strstr(at, said), "README.md does not say%s", said);
	at = strstr(at, "\nparterre rose.plot\n");
	ck_assert_ptr_nonnull(at);
	for (at = strchr(at + 1, '\n') + 1; *at != '`'; at += strcspn(at, "\n") + 1)
		add_line(&there, at, strcspn(at, "\n"));
	stroll_list(way, WAY, &here);
	ck_assert_str_eq(there.bytes, here.bytes);
	text_fini(&readme);
	text_fini(&here);
	text_fini(&there);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("first garden");
	TCase *first = suite_case(suite, "way"), *readme = suite_case(suite, "readme");

	tcase_add_test(first, a_mirrored_garden_and_its_takeoff_take_45_presses_at_most);
	tcase_add_test(readme, the_readme_has_these_keys_and_says_how_many_they_are);
	return suite;
}
