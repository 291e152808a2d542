/* Plots whose figures take long: every kind of key is answered before they are there, they are
 * there at last, and a signal ends the program meanwhile. With full counts the plots are as large
 * as they may be, and a key has a second, or as long as opening the plot took. */

#include "support/runner.h"
#include "support/shapes.h"
#include "support/shown.h"
#include "support/table.h"

#include <math.h>
#include <signal.h>
#include <string.h>
#include <time.h>

static const char counting[] = "Counting ...";
static struct table at;

static void teardown(void)
{
	table_leave(&at);
}

static int large(void)
{
	return runner_count(512, 2048);
}

static double now(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + (double)t.tv_nsec / 1e9;
}

/* How long it took to open the plot and draw it. */
static double opening;

/* The program on a shape, its first picture there. */
static void sit(const char *name, int size)
{
	double start;

	table_clear(&at, "large.plot");
	shape_write(shape_named(name), size, at.plot);
	start = now();
	table_start(&at, NULL);
	table_wait(at.t);
	opening = now() - start;
}

static bool is_open(int x, int y)
{
	return shown_is_open(at.t, x, y);
}

/* Presses keys and waits until what they bring about is seen: at full counts for a second, or for
 * as long as this machine took to open the plot, where that is longer. */
#define answered(keys, expression)                                                     \
	do {                                                                           \
		double start_ = now();                                                 \
                                                                                       \
		terminal_keys(at.t, keys);                                             \
		terminal_until(at.t, expression);                                      \
		if (runner_count(0, 1))                                                \
			ck_assert_msg(now() - start_ < fmax(1, opening),               \
				"%s took %.2f s until %s, opening the plot %.2f",      \
				keys, now() - start_, #expression, opening);           \
	} while (0)

/* ---- A stroke -------------------------------------------------------------------------------- */

/* Those with many regions, and so large that no machine counts them soon. */
static const char *const many[] = { "noise", "checkerboard", "beds and paths" };
enum { MANY = sizeof many / sizeof *many };

static int very_large(void)
{
	return runner_count(1024, 2048);
}

START_TEST(the_plan_is_drawn_before_its_figures_are_there)
{
	sit(many[_i], very_large());
	terminal_until(at.t, terminal_shows(at.t, counting) && !is_open(1, 1));
	terminal_wait(at.t, "In sq ft");
	ck_assert(!terminal_shows(at.t, counting));
}
END_TEST

START_TEST(a_stroke_is_drawn_before_its_figures_are_there)
{
	sit(many[_i], very_large());
	terminal_wait(at.t, "In sq ft");
	answered(". space", terminal_shows(at.t, counting) && is_open(0, 0));
	ck_assert(terminal_shows(at.t, "not saved"));
	ck_assert(!terminal_shows(at.t, "In sq ft"));
	terminal_wait(at.t, "In sq ft");
}
END_TEST

START_TEST(what_is_no_key_does_not_end_the_counting)
{
	sit("noise", very_large());
	terminal_wait(at.t, counting);
	terminal_type(at.t, "\033[<2;12;5M"); /* a mouse that nobody asked for */
	terminal_wait(at.t, "In sq ft");
}
END_TEST

/* ---- Every kind of key ----------------------------------------------------------------------- */

/* On cell 1,1, which only the fences' plan leaves open; left as it was, of one letter less. */
static void press_strokes(void)
{
	bool was_open = is_open(1, 1);

	answered("right down", shown_on_cell(at.t, 1, 1));
	answered(was_open ? "space" : ". space", is_open(1, 1) != was_open);
	answered("backspace", is_open(1, 1) == was_open);
	answered("+", is_open(1, 1) != was_open);
	answered("backspace", is_open(1, 1) == was_open);
	answered("delete", is_open(1, 1));
	answered("|", terminal_shows(at.t, "Mirror "));
	answered("'", terminal_shows(at.t, "fault") || terminal_shows(at.t, "match"));
	answered("escape", terminal_shows(at.t, "nothing to go back from"));
	answered("&", terminal_shows(at.t, "Folded") || terminal_shows(at.t, "match") ||
		terminal_shows(at.t, "axis"));
	answered("backspace", terminal_shows(at.t, "Taken back"));
	answered("@", terminal_shows(at.t, "Go to a place"));
	answered("escape", !terminal_shows(at.t, "Go to a place"));
}

/* A mark of 4 x 4 cells, carried on. */
static void press_mark(void)
{
	answered("home pageup", shown_on_cell(at.t, 0, 0));
	answered("enter", terminal_shows(at.t, "Pegged"));
	answered("right x3 down x3", shown_on_cell(at.t, 3, 3));
	answered("enter", terminal_shows(at.t, "Mark it"));
	terminal_type(at.t, "mark");
	answered("enter", terminal_shows(at.t, "Marked: "));
	answered("}", shown_ground(at.t, 3, 3) == SHOWN_OUTLINE);
	answered("[", shown_ground(at.t, 3, 3) == SHOWN_OUTLINE);
	answered("right", shown_on_cell(at.t, 1, 0));
	answered("space", terminal_shows(at.t, "not saved"));
	answered("escape", terminal_shows(at.t, "Drawing"));
}

/* Each brings about what is seen at once. page: the one that is shown, and the one after it. */
static void press_all(const char *page, const char *next)
{
	press_strokes();
	answered("tab", shown_page(at.t, next));
	answered("shift-tab", shown_page(at.t, page));
	answered(";", terminal_shows(at.t, "Which page?"));
	answered("escape", !terminal_shows(at.t, "Which page?"));
	answered("!", terminal_shows(at.t, "All that can be done"));
	answered("escape", !terminal_shows(at.t, "All that can be done"));
	answered("#", terminal_shows(at.t, "Which card?"));
	answered("escape", !terminal_shows(at.t, "Which card?"));
	press_mark();
	answered("home pageup right *", shown_on_cell(at.t, 1, 0) &&
		terminal_shows(at.t, "not saved"));
	answered("_", terminal_cursor(at.t).column == PLAN_LEFT);
	answered("\\ x16", terminal_shows(at.t, "This is the nearest view"));
	answered("> >", terminal_shows(at.t, ", saved"));
}

/* The beds of the page, thousands of them, in a list. */
static void press_there(void)
{
	answered("! t h e r e enter", terminal_shows(at.t, "The page Beds: go where?"));
	answered("end", terminal_shows(at.t, "Type what you seek"));
	answered("1 0 0", terminal_shows(at.t, "Typed: 100. "));
	answered("enter", terminal_shows(at.t, "B100 b "));
}

START_TEST(every_kind_of_key_is_answered_while_a_plot_is_counted)
{
	sit(shapes[_i].name, large());
	press_all("Areas", "Edges");
}
END_TEST

/* Once more when all figures are there, on the page that has the most of them. */
START_TEST(every_kind_of_key_is_answered_on_the_longest_page)
{
	sit(shapes[_i].name, large());
	page_turn_to(at.t, "Walls");
	terminal_wait_gone(at.t, counting);
	press_all("Walls", "Fill");
}
END_TEST

/* On the page for which the plot as saved is counted too, after each stroke. */
START_TEST(every_kind_of_key_is_answered_while_a_plot_is_compared)
{
	sit(shapes[_i].name, large());
	page_turn_to(at.t, "Changed");
	terminal_wait(at.t, "Nothing has changed since");
	press_all("Changed", "Areas");
	terminal_wait(at.t, "Nothing has changed since");
}
END_TEST

START_TEST(places_of_a_long_page_are_listed_at_once)
{
	sit("small beds", large());
	page_turn_to(at.t, "Beds");
	terminal_wait_gone(at.t, counting);
	press_there();
}
END_TEST

START_TEST(a_held_key_lays_its_trail)
{
	sit("checkerboard", large());
	terminal_keys(at.t, ". =");
	for (int x = 1; x < 20; x++)
		answered("right", is_open(x, 0) && shown_on_cell(at.t, x, 0));
	terminal_wait(at.t, "In sq ft");
}
END_TEST

/* ---- The end --------------------------------------------------------------------------------- */

START_TEST(a_signal_ends_the_program_while_it_counts)
{
	double start;

	sit(many[_i], very_large());
	terminal_wait(at.t, counting);
	terminal_keys(at.t, ". space");
	terminal_until(at.t, is_open(0, 0));
	start = now();
	terminal_signal(at.t, SIGTERM);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGTERM);
	if (runner_count(0, 1))
		ck_assert_msg(now() - start < 2, "%.2f s", now() - start);
}
END_TEST

/* ---- An act that needs the figures ----------------------------------------------------------- */

START_TEST(a_takeoff_is_written_when_it_is_counted)
{
	struct text written;

	sit("noise", 128);
	terminal_keys(at.t, "> t a k enter enter enter");
	terminal_wait(at.t, "Takeoff written to");
	written = table_file(&at, "large.txt");
	ck_assert_ptr_nonnull(strstr(written.bytes, "Snags"));
	text_fini(&written);
}
END_TEST

START_TEST(a_snag_is_gone_to_when_they_are_counted_and_the_next_at_once)
{
	sit("snags", large());
	terminal_keys(at.t, "down ,");
	terminal_wait(at.t, "Snag 1 of ");
	answered(",", terminal_shows(at.t, "Snag 2 of "));
}
END_TEST

/* A flood at the top gives all regions below it other numbers. */
START_TEST(figures_that_all_have_other_names_are_compared_soon)
{
	sit("noise", runner_count(384, 1024));
	page_turn_to(at.t, "Beds");
	terminal_wait_gone(at.t, counting);
	terminal_keys(at.t, "right down *");
	terminal_wait(at.t, "not saved");
	terminal_wait_gone(at.t, counting);
	terminal_wait(at.t, "more below");
}
END_TEST

/* ---- Given up -------------------------------------------------------------------------------- */

static const char waiting[] = "Counting. Esc gives it up.";

/* Esc is for what is waited for alone: on the plan it would have it said that there is nothing to
 * go back from. */
START_TEST(an_act_that_waits_for_figures_is_given_up)
{
	sit("noise", very_large());
	terminal_keys(at.t, ",");
	terminal_wait(at.t, waiting);
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Given up: it is not counted yet.");
}
END_TEST

START_TEST(keys_after_an_act_that_waits_are_done_after_it)
{
	sit("noise", large());
	page_turn_to(at.t, "Beds");
	terminal_keys(at.t, "! t h e r e enter");
	terminal_type(at.t, "zz");
	terminal_wait(at.t, "Typed: zz. Nothing here has it");
	terminal_keys(at.t, "escape escape");
	terminal_wait_gone(at.t, "go where?");
	ck_assert(!terminal_shows(at.t, waiting));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_large");
	TCase *strokes = suite_case(suite, "strokes"), *keys = suite_case(suite, "keys");
	TCase *ends = suite_case(suite, "ends");

	tcase_add_checked_fixture(strokes, NULL, teardown);
	tcase_add_checked_fixture(keys, NULL, teardown);
	tcase_add_checked_fixture(ends, NULL, teardown);
	tcase_add_loop_test(strokes, the_plan_is_drawn_before_its_figures_are_there, 0, MANY);
	tcase_add_loop_test(strokes, a_stroke_is_drawn_before_its_figures_are_there, 0, MANY);
	tcase_add_test(strokes, what_is_no_key_does_not_end_the_counting);
	tcase_add_loop_test(keys, every_kind_of_key_is_answered_while_a_plot_is_counted, 0,
		shape_count);
	tcase_add_loop_test(keys, every_kind_of_key_is_answered_on_the_longest_page, 0,
		shape_count);
	tcase_add_loop_test(keys, every_kind_of_key_is_answered_while_a_plot_is_compared, 0,
		shape_count);
	tcase_add_test(keys, places_of_a_long_page_are_listed_at_once);
	tcase_add_test(keys, a_held_key_lays_its_trail);
	tcase_add_loop_test(ends, a_signal_ends_the_program_while_it_counts, 0, MANY);
	tcase_add_test(ends, a_snag_is_gone_to_when_they_are_counted_and_the_next_at_once);
	tcase_add_test(ends, an_act_that_waits_for_figures_is_given_up);
	tcase_add_test(ends, keys_after_an_act_that_waits_are_done_after_it);
	tcase_add_test(ends, a_takeoff_is_written_when_it_is_counted);
	tcase_add_test(ends, figures_that_all_have_other_names_are_compared_soon);
	return suite;
}
