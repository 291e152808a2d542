/* A first garden, from an empty folder to a takeoff, as README.md tells it: what is pressed
 * besides typing words and measures is counted. */
#include "plot/mirror.h"
#include "plot/history/store.h"
#include "support/runner.h"
#include "support/table.h"

#include <stdlib.h>
#include <string.h>

enum { PRESSES_MOST = 60 };

/* One line of the way: words that are typed, or keys that are pressed, and what then is to be
 * seen. */
struct stroll {
	const char *typed, *pressed, *seen;
};

static const struct stroll way[] = {
	{ "Rose court", "enter enter", "Width" },
	{ "30 ft", "enter enter enter", "A new plot" },
	{ NULL, "| -", "four-way" },
	{ NULL, "b right x2 down x2 enter", "Pegged" },
	{ NULL, "9 right 5 down", "From the peg" },
	{ NULL, "enter enter", "b Raised bed        240.0" },
	{ NULL, "p right *", "p Crushed stone     360.0" },
	{ NULL, "l home pageup enter end pagedown enter", "Frame it" },
	{ NULL, "down enter", "Thickness" },
	{ NULL, "enter", "l Turf               96.0" },
	{ NULL, "S @", "Across" },
	{ "14 ft", "enter", "Down" },
	{ "9 ft", "enter", "Drawing" },
	{ NULL, "space", "S Sundial             4.0" },
	{ NULL, "> >", "saved" },
	{ NULL, "> t a k enter", "File" },
	{ NULL, "enter", "Takeoff written to" },
	{ NULL, "<", NULL },
};

/* Names between blanks, "x9" for nine of the one before. */
static int presses(const char *names)
{
	int count = 0;

	for (const char *name = names; *name; name += strcspn(name, " "), name += *name == ' ')
		count += name[0] == 'x' && name[1] >= '0' && name[1] <= '9' ? atoi(name + 1) - 1 :
			1;
	return count;
}

static void check_takeoff(const struct table *at)
{
	struct text bytes = table_file(at, "rose.txt");

	ck_assert_ptr_nonnull(strstr(bytes.bytes, "parterre takeoff 1\n"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "Rose court"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "Wall block"));
	text_fini(&bytes);
}

/* Four beds of 10 by 6 cells, a frame of turf, a sundial of 2 by 2 in the middle, all alike four
 * ways. */
static void check_plot(const char *path)
{
	struct text message = TEXT_EMPTY;
	struct mirror mirror;
	struct plot plot;

	plot_init(&plot);
	ck_assert_msg(store_read(path, &plot, &message), "%s", message.bytes);
	ck_assert_int_eq(plot.ground.columns, 30);
	ck_assert_int_eq(plot.ground.rows, 20);
	mirror = mirror_of(&plot);
	ck_assert_int_eq(mirror.kind, MIRROR_FOUR_WAY);
	ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
	ck_assert_int_eq(ground_cell(&plot.ground, 2, 2), 'b');
	ck_assert_int_eq(ground_cell(&plot.ground, 0, 10), 'l');
	ck_assert_int_eq(ground_cell(&plot.ground, 15, 10), 'S');
	ck_assert_int_eq(ground_cell(&plot.ground, 14, 3), 'p');
	plot_fini(&plot);
	text_fini(&message);
}

START_TEST(a_mirrored_garden_and_its_takeoff_take_fewer_than_sixty_presses)
{
	struct table at;
	int count = 0;

	table_clear(&at, "rose.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	for (size_t i = 0; i < sizeof way / sizeof *way; i++) {
		if (way[i].typed)
			terminal_type(at.t, way[i].typed);
		terminal_keys(at.t, way[i].pressed);
		count += presses(way[i].pressed);
		if (way[i].seen)
			terminal_wait(at.t, way[i].seen);
	}
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert_int_lt(count, PRESSES_MOST);
	check_plot(at.plot);
	check_takeoff(&at);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("first garden");
	TCase *first = suite_case(suite, "way");

	tcase_add_test(first, a_mirrored_garden_and_its_takeoff_take_fewer_than_sixty_presses);
	return suite;
}
