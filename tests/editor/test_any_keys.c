/* Every act there is, in any order, with any answers: whatever people press, a plot stays right,
 * is read back as it is written, keeps its mirror, and can all be taken back and put back. */
#include "plot/format/format.h"
#include "editor/acts/acts.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { STREAMS = 60, KEYS = 500, SIDE_LEAST = 4, SIDE_MOST_HERE = 60, ENTRIES_LEAST = 2 };

/* Somebody at the keyboard who does not read. */
struct wanton {
	struct asker asker; /* first */
	struct random random;
	struct editor editor;
	char *folder, *home; /* the session's folder, and that of the tests */
};

static int choose(struct asker *asker, const struct question *question)
{
	struct wanton *w = (struct wanton *)asker;

	return random_below(&w->random, question->count + 1) - 1; /* ANSWER_NONE among them */
}

/* Types something, good or bad, into some fields. */
static void type_anything(struct wanton *w, struct card *card)
{
	static const char *const words[] = { "", "1 ft", "6 in", "2 ft", "8 in", "0 in", "300 mm",
		"3",
		"2", "1", "0", "-1", "12.5", "5 %", "half-turn", "four-way", "left-right", "off",
		"raised", "level", "metric", "imperial", "yes", "no", "none", "a", "k", "Q", "b",
		"A note.", "\"", "topsoil 2, compost 1", "16 in x 8 in x 6 in",
		"1 ft x 6 in x 4 in",
		"150 lb/cu ft", "5,5", "7,3", "1 ft 6 in", "nonsense",
		"4 cells", "towards", "away", "gas", "to-lay", "-3 ft" };

	for (int i = 0; i < card->count; i++) {
		if (random_below(&w->random, 4) > 0)
			continue;
		card_type(card, i, words[random_below(&w->random, (int)(sizeof words /
			sizeof *words))]);
		if (card->changed)
			card->changed(card, i);
	}
}

/* Below each field a row says what it is. */
static void check_meanings(const struct card *card)
{
	for (int i = 0; i < card->count; i++)
		ck_assert_msg(card->fields[i].meaning &&
			strlen(card->fields[i].meaning) <= MEANING_MOST, "%s: %s", card->title,
			card->fields[i].label);
}

static bool fill(struct asker *asker, struct card *card)
{
	struct wanton *w = (struct wanton *)asker;
	struct fault fault = { .field = 0 };
	bool is_taken = false;

	check_meanings(card);

	for (int tries = random_below(&w->random, 4); tries > 0 && !is_taken; tries--) {
		type_anything(w, card);
		is_taken = card->accept(card, &fault);
		ck_assert_msg(is_taken || fault.words.length > 0, "%s refused without a word",
			card->title);
	}
	fault_clear(&fault);
	text_fini(&fault.words);
	if (card->onward)
		*card->onward = (struct onward){ .goes_on = is_taken,
			.right = random_between(&w->random, -1, 1),
			.down = random_between(&w->random, -1, 1) };
	return is_taken;
}

static bool await(struct asker *asker, struct task *task)
{
	(void)asker;
	return task->run(task);
}

static void nothing(struct asker *asker)
{
	(void)asker;
}

static struct wanton *sit_down(int seed)
{
	static const char *const rows[] = { "bbppl..p", "b.p.lSSp", "bbppl..p", "......lb", NULL };
	struct wanton *w = calloc(1, sizeof *w);
	struct plot plot;
	char path[4096];

	w->asker = (struct asker){ choose, fill, await, nothing, nothing };
	w->random = (struct random){ (uint64_t)seed };
	w->folder = scratch_new();
	w->home = getcwd(NULL, 0);
	ck_assert_int_eq(chdir(w->folder), 0); /* files of any name are written */
	snprintf(path, sizeof path, "%s/any.plot", w->folder);
	plot_from_rows(&plot, rows);
	editor_init(&w->editor, &w->asker, path);
	editor_take(&w->editor, &plot, true);
	editor_refresh(&w->editor);
	return w;
}

static void get_up(struct wanton *w)
{
	editor_fini(&w->editor);
	ck_assert_int_eq(chdir(w->home), 0);
	free(w->home);
	scratch_remove(w->folder);
	free(w);
}

/* A key that is pressed; PRESS_NOTHING: an act without a key of its own is picked by name. */
struct pressed {
	int key;
	enum act_id act;
};

static int any_key_of(struct random *random, const struct act *act)
{
	int ranges = 0;
	const struct key_range *range;

	while (ranges < KEY_RANGES_MOST && act->keys[ranges].first != PRESS_NOTHING)
		ranges++;
	if (ranges == 0)
		return PRESS_NOTHING;
	range = &act->keys[random_below(random, ranges)];
	return random_between(random, range->first, range->last);
}

static bool leaves_the_plot(enum act_id act)
{
	return act == ACT_LEAVE || act == ACT_TAKEOFF || act == ACT_DRAWING ||
		act == ACT_PAUSE || act == ACT_ALL || act == ACT_HELP || act == ACT_FILES;
}

/* Any act but those that leave, write a takeoff or list others; every other one moves, lays or
 * marks. */
static struct pressed any_key(struct random *random)
{
	static const int usual[] = { PRESS_LEFT, PRESS_RIGHT, PRESS_UP, PRESS_DOWN, PRESS_RIGHT,
		PRESS_DOWN, ' ', ' ', 'b', 'p', 'S', 'l', PRESS_ENTER, PRESS_ENTER, '=', '*', '1',
		'3' };
	const struct act *act;

	if (random_below(random, 2))
		return (struct pressed){
			.key = usual[random_below(random, (int)(sizeof usual / sizeof *usual))] };
	do
		act = acts_get((enum act_id)random_between(random, ACT_FIRST, ACTS - 1));
	while (leaves_the_plot(act->id));
	return (struct pressed){ any_key_of(random, act), act->id };
}

static void written(const struct plot *plot, struct text *bytes)
{
	text_clear(bytes);
	format_write(plot, bytes);
}

/* The file read back is the plot. */
static void check_file(const struct plot *plot)
{
	struct text bytes = TEXT_EMPTY;
	struct plot read;
	struct diag d;

	written(plot, &bytes);
	plot_init(&read);
	ck_assert_msg(format_read(bytes.bytes, bytes.length, &read, &d), "%d:%d %s, %s", d.line,
		d.column, d.found, d.expected);
	ck_assert(plot_equal(plot, &read));
	plot_fini(&read);
	text_fini(&bytes);
}

static void check_editor(const struct editor *e)
{
	const struct ground *ground = &e->plot->ground;

	plot_check(e->plot);
	check_file(e->plot);
	ck_assert(ground_holds(ground, e->cursor.x, e->cursor.y));
	ck_assert(!e->is_pegged || ground_holds(ground, e->peg.x, e->peg.y));
	ck_assert_int_le(e->is_trailing + e->is_pegged + e->is_marked, 1);
	ck_assert(e->hand == OPEN_GROUND || plot_entry(e->plot, e->hand) ||
		plants_find(&e->plot->details.plants, e->hand));
	ck_assert(!e->is_marked || (ground_holds(ground, e->marked.left, e->marked.top) &&
		ground_holds(ground, e->marked.right, e->marked.bottom)));
}

/* What decides where images are. */
struct stand {
	struct mirror mirror;
	int columns, rows;
};

static struct stand stand_of(const struct plot *plot)
{
	return (struct stand){ mirror_of(plot), plot->ground.columns, plot->ground.rows };
}

static bool stand_equal(const struct stand *a, const struct stand *b)
{
	return a->mirror.kind == b->mirror.kind && a->mirror.across == b->mirror.across &&
		a->mirror.down == b->mirror.down && a->columns == b->columns && a->rows == b->rows;
}

/* A step that leaves little to press keys on, or too much to be quick, is taken back at once. */
static void keep_useful(struct editor *e)
{
	const struct ground *ground = &e->plot->ground;

	while (ground->columns > SIDE_MOST_HERE || ground->rows > SIDE_MOST_HERE ||
		ground->columns < SIDE_LEAST || ground->rows < SIDE_LEAST ||
		e->plot->details.legend_count < ENTRIES_LEAST)
		ck_assert(editor_take_back(e));
}

static void press(struct wanton *w, struct pressed pressed)
{
	struct editor *e = &w->editor;
	struct stand before = stand_of(e->plot), after;
	int64_t faults = e->faults;

	if (pressed.key == PRESS_NOTHING)
		acts_do(e, pressed.act);
	else
		acts_press(e, pressed.key);
	ck_assert_msg(!editor_stroke(e), "a stroke was not ended");
	keep_useful(e);
	editor_refresh(e);
	check_editor(e);
	after = stand_of(e->plot);
	if (pressed.key != PRESS_BACKSPACE && pressed.key != '+' && faults == 0 &&
		stand_equal(&before, &after))
		ck_assert_int_eq(e->faults, 0);
}

START_TEST(any_keys_keep_a_plot_right_and_can_all_be_taken_back_and_put_back)
{
	struct wanton *w = sit_down(_i);
	struct text first = TEXT_EMPTY, last = TEXT_EMPTY, now = TEXT_EMPTY;

	written(w->editor.plot, &first);
	for (int i = 0; i < KEYS; i++) {
		struct pressed pressed = any_key(&w->random);

		mark_point();
		press(w, pressed);
	}
	while (editor_put_back(&w->editor)) /* what the keys took back */
		plot_check(w->editor.plot);
	written(w->editor.plot, &last);
	while (editor_take_back(&w->editor))
		plot_check(w->editor.plot);
	written(w->editor.plot, &now);
	ck_assert_str_eq(now.bytes, first.bytes);
	while (editor_put_back(&w->editor))
		plot_check(w->editor.plot);
	written(w->editor.plot, &now);
	ck_assert_str_eq(now.bytes, last.bytes);
	text_fini(&first);
	text_fini(&last);
	text_fini(&now);
	get_up(w);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("any keys");
	TCase *streams = suite_case(suite, "streams");

	tcase_add_loop_test(streams,
		any_keys_keep_a_plot_right_and_can_all_be_taken_back_and_put_back, 0, STREAMS);
	return suite;
}
