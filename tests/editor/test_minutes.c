/* Each act in each state: what the editor asks, says and makes of the plot, whole. */

#include "base/memory.h"
#include "editor/acts/act_groups.h"
#include "editor/here.h"
#include "editor/marks.h"
#include "support/clerk.h"
#include "support/desk.h"
#include "support/golden.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

/* Ways through an act, at the most: in the first place where it is tried, in others; of a card of
 * the list of them all of them. */
enum { WAYS = 14, WAYS_FURTHER = 5, CARD_WAYS = 1000, PRICE_WAYS = 40, WAYS_METRIC = 3 };

/* Lists of acts, and cards, which have minutes of their own. */
static bool is_left_out(enum act_id act)
{
	return act == ACT_CARDS || act == ACT_ALL || act == ACT_HELP ||
		acts_get(act)->run_by_key;
}

/* Of the plot as a whole, wherever the cursor is and whatever is pegged. */
static bool is_the_same_everywhere(enum act_id act)
{
	return (act >= ACT_FILES && act < ACT_LEAVE) || act == ACT_LEVELS || act == ACT_FINISH ||
		act == ACT_PLANT_ADD || act == ACT_AROUND_OUT || act == ACT_AXIS ||
		act == ACT_PAGES;
}

static void try_all(struct clerk *c, const char *where, void (*prepare)(struct editor *editor))
{
	for (enum act_id act = ACT_FIRST; act < ACTS; act++)
		if (!is_left_out(act))
			clerk_try(c, where, prepare, act, PRESS_NOTHING, WAYS);
}

static void try_further(struct clerk *c, const char *where,
	void (*prepare)(struct editor *editor))
{
	for (enum act_id act = ACT_FIRST; act < ACTS; act++)
		if (!is_left_out(act) && !is_the_same_everywhere(act))
			clerk_try(c, where, prepare, act, PRESS_NOTHING, WAYS_FURTHER);
}

static struct place place(int x, int y)
{
	return (struct place){ x, y };
}

/* ---- Where one is ---------------------------------------------------------------------------- */

static void in_a_bed(struct editor *e)
{
	e->cursor = place(2, 2);
}

static void with_a_plant(struct editor *e)
{
	e->cursor = place(3, 2);
	e->hand = 'r';
}

static void pegged(struct editor *e)
{
	e->cursor = place(10, 8);
	acts_press(e, PRESS_ENTER);
	e->cursor = place(3, 5);
	e->hand = 'q';
}

static void bent(struct editor *e)
{
	e->cursor = place(20, 2);
	acts_press(e, PRESS_ENTER);
	e->cursor = place(20, 6);
	acts_do(e, ACT_BEND);
	e->cursor = place(13, 6);
	e->hand = 'p';
}

static void marked(struct editor *e)
{
	e->cursor = place(1, 2);
	acts_press(e, PRESS_ENTER);
	e->cursor = place(4, 3);
	acts_do(e, ACT_MARK);
	e->cursor = place(12, 12);
}

/* Where the fence goes, without a mirror. */
static void at_the_gate(struct editor *e)
{
	acts_do(e, ACT_LEFT_RIGHT);
	e->cursor = place(17, 11);
}

static void with_a_book(struct editor *e)
{
	block_set(&editor_edit(e)->details.head, HEAD_PRICES,
		(struct value){ .set = true, .as.text = memory_string("book.json") });
	editor_stroke(e);
}

static void four_way(struct editor *e)
{
	acts_do(e, ACT_TOP_BOTTOM);
	e->cursor = place(5, 9);
	e->hand = 'c';
}

START_TEST(each_act_at_rest)
{
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	try_all(c, "in a bed", in_a_bed);
	try_further(c, "with a plant", with_a_plant);
	try_further(c, "at the gate", at_the_gate);
	try_further(c, "four-way", four_way);
	clerk_check(c, "minutes/rest.txt");
}
END_TEST

START_TEST(the_price_of_an_item)
{
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	clerk_try(c, "with a book", with_a_book, ACT_PRICE, PRESS_NOTHING, PRICE_WAYS);
	clerk_try(c, "with a book", with_a_book, ACT_PRICES, PRESS_NOTHING, WAYS);
	clerk_check(c, "minutes/prices.txt");
}
END_TEST

START_TEST(each_act_with_something_pegged_or_marked)
{
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	try_further(c, "pegged", pegged);
	try_further(c, "bent", bent);
	try_further(c, "marked", marked);
	clerk_check(c, "minutes/pegged.txt");
}
END_TEST

START_TEST(each_card)
{
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	clerk_try(c, "in a bed", in_a_bed, ACT_CARDS, PRESS_NOTHING, CARD_WAYS);
	clerk_check(c, "minutes/cards.txt");
}
END_TEST

/* Keys that say how far, where to or which: the ends of their ranges. */
static void try_keys(struct clerk *c, const char *where, void (*prepare)(struct editor *editor))
{
	for (enum act_id act = ACT_FIRST; act < ACTS; act++) {
		const struct act *row = acts_get(act);

		for (int i = 0; row->run_by_key && i < KEY_RANGES_MOST &&
			row->keys[i].first != PRESS_NOTHING; i++) {
			clerk_try(c, where, prepare, act, row->keys[i].first, WAYS_FURTHER);
			if (row->keys[i].last != row->keys[i].first)
				clerk_try(c, where, prepare, act, row->keys[i].last, WAYS_FURTHER);
		}
	}
}

static void trailing(struct editor *e)
{
	e->cursor = place(9, 12);
	e->hand = 'e';
	acts_do(e, ACT_TRAIL);
	acts_press(e, '3');
}

START_TEST(each_key_that_says_how_far_or_which)
{
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	try_keys(c, "in a bed", in_a_bed);
	try_keys(c, "trailing", trailing);
	try_keys(c, "marked", marked);
	clerk_check(c, "minutes/keys.txt");
}
END_TEST

/* Of every nth cell. Of one with the same words as the one before it nothing is written. */
static void cells_write(struct editor *e, int nth, struct text *out)
{
	struct mirror mirror = mirror_of(e->plot);
	struct text before = TEXT_EMPTY, words = TEXT_EMPTY;

	for (int y = 0; y < e->plot->ground.rows; y++)
		for (int x = 2 * y % nth; x < e->plot->ground.columns; x += nth) {
			const char *rest;

			e->cursor = place(x, y);
			text_clear(&words);
			here_words(e, &words);
			rest = strchr(words.bytes, '\n') + 1;
			e->cursor = place(0, 15);
			if (strcmp(rest, before.bytes) != 0)
				text_print(out, "%s", words.bytes);
			if (mark_at(e, &mirror, x, y) != MARK_NONE)
				text_print(out, "mark at %d,%d: %c\n", x, y,
					mark_sign(mark_at(e, &mirror, x, y)).plain);
			text_clear(&before);
			text_add(&before, rest);
		}
	text_fini(&before);
	text_fini(&words);
}

/* Counted with hours of sun and without, and not counted. */
START_TEST(what_is_at_each_cell)
{
	struct text plot = TEXT_EMPTY, cells = TEXT_EMPTY;
	struct file_error error;
	struct desk *b = desk_new((const char *[]){ "b", NULL });
	struct plot read;

	ck_assert(file_read("tests/plots/gallery.plot", 1 << 20, &plot, &error));
	plot_from_text(&read, plot.bytes);
	editor_take(&b->editor, &read, true);
	levels_fini(&editor_edit(&b->editor)->details.levels);
	editor_stroke(&b->editor);
	editor_draw(&b->editor);
	text_add(&cells, "Not counted\n");
	cells_write(&b->editor, 1, &cells);
	ck_assert(editor_take_back(&b->editor));
	plot_set(editor_edit(&b->editor), 0, HEAD_SITE, "48");
	plot_add_lines(editor_edit(&b->editor), "finish 2,3 9 in\nfall 2 % towards 170\n"
		"shade \"Limes\" 20 ft\n  from 4,14 to 7,19\n");
	editor_stroke(&b->editor);
	desk_refresh(b);
	text_add(&cells, "\nCounted\n");
	cells_write(&b->editor, 5, &cells);
	golden_check("minutes/cells.txt", cells.bytes);
	text_fini(&plot);
	text_fini(&cells);
	desk_free(b);
}
END_TEST

static void metric(struct editor *e)
{
	block_set(&editor_edit(e)->details.head, HEAD_UNITS,
		(struct value){ .set = true, .as.number = UNITS_METRIC });
	editor_stroke(e);
	pegged(e);
}

START_TEST(acts_in_a_metric_plot)
{
	static const enum act_id tried[] = { ACT_PLACE, ACT_STEP, ACT_FARTHER, ACT_FRAME, ACT_RUN,
		ACT_DISC, ACT_ROUNDED, ACT_MARK, ACT_FENCE_LAY, ACT_GATE_SET, ACT_KEEP_CIRCLE,
		ACT_KEEP_RECTANGLE, ACT_HOUSE, ACT_TIE, ACT_DROP, ACT_LEVELS, ACT_FINISH,
		ACT_SHOW_LEVELS, ACT_PLANT_ADD, ACT_SIZE, ACT_STRIP_PUT, ACT_STRIP_TAKE };
	struct clerk *c = clerk_new("tests/plots/gallery.plot");

	for (size_t i = 0; i < sizeof tried / sizeof *tried; i++)
		clerk_try(c, "metric", metric, tried[i], PRESS_NOTHING, WAYS_METRIC);
	clerk_check(c, "minutes/metric.txt");
}
END_TEST

static const char *or_none(const char *words)
{
	return words ? words : "-";
}

static void row_write(const struct act *act, const struct editor *e, struct text *out)
{
	text_print(out, "%s: %s, said %s; %s;", act->name, act->key_name, acts_key(act->id),
		act->wish);
	for (int i = 0; i < KEY_RANGES_MOST && act->keys[i].first != PRESS_NOTHING; i++)
		text_print(out, " %x to %x", (unsigned)act->keys[i].first,
			(unsigned)act->keys[i].last);
	text_print(out, "\n  %s\n  hints of rank %d:", or_none(act->words), act->rank);
	for (int i = 0; i < EDITOR_STATES; i++)
		text_print(out, " %s;", or_none(act->hints[i]));
	text_print(out, "%s%s%s\n  now: %s\n", act->writes ? " writes" : "",
		act->lays ? " lays" : "", act->plants ? " plants" : "",
		or_none(act->state ? act->state(e) : NULL));
}

START_TEST(the_row_of_each_act)
{
	struct desk *b = desk_new((const char *[]){ "b", NULL });
	struct text rows = TEXT_EMPTY;

	for (int i = 0; i < ACT_GROUPS; i++) {
		text_print(&rows, "== %s\n", act_groups[i]->heading);
		for (int j = 0; j < act_groups[i]->count; j++)
			row_write(&act_groups[i]->acts[j], &b->editor, &rows);
	}
	golden_check("minutes/acts.txt", rows.bytes);
	text_fini(&rows);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("minutes");
	TCase *minutes = suite_case(suite, "minutes");

	tcase_add_test(minutes, each_act_at_rest);
	tcase_add_test(minutes, each_act_with_something_pegged_or_marked);
	tcase_add_test(minutes, each_key_that_says_how_far_or_which);
	tcase_add_test(minutes, acts_in_a_metric_plot);
	tcase_add_test(minutes, the_row_of_each_act);
	tcase_add_test(minutes, each_card);
	tcase_add_test(minutes, what_is_at_each_cell);
	tcase_add_test(minutes, the_price_of_an_item);
	return suite;
}
