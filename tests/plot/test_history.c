/* Taking back and putting back: any acts, in any order, to the very bytes. */
#include "plot/history/history.h"
#include "base/memory.h"
#include "plot/edit/fence_lay.h"
#include "plot/format/format.h"
#include "plot/edit/lay.h"
#include "plot/edit/legend.h"
#include "plot/edit/resize.h"
#include "support/changes.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <malloc.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *const court[] = { "bb..", "b..p", "....", NULL };

static char *written(const struct plot *plot)
{
	struct text text = TEXT_EMPTY;

	format_write(plot, &text);
	return text_take(&text);
}

static void check_written(const struct plot *plot, const char *expected)
{
	char *bytes = written(plot);

	ck_assert_str_eq(bytes, expected);
	free(bytes);
}

/* ---- One step -------------------------------------------------------------------------------- */

START_TEST(what_changes_nothing_is_no_step)
{
	struct plot plot;
	struct place at = { 7, 7 };
	struct history *history;

	plot_from_rows(&plot, court);
	history = history_new(&plot);
	ck_assert(!history_record(history, &plot, ""));
	lay_rectangle(&plot, rectangle_between(0, 0, 1, 0), 'b');
	ck_assert(!history_record(history, &plot, ""));
	plot_set(&plot, 0, HEAD_CELL, "12 in");
	ck_assert(!history_record(history, &plot, ""));
	ck_assert_uint_eq(history_undo_count(history), 0);
	ck_assert(!history_undo(history, &plot, &at) && !history_redo(history, &plot, &at));
	ck_assert_int_eq(at.x, 7);
	history_free(history);
	history_free(NULL);
	plot_fini(&plot);
}
END_TEST

/* Acts, and the cell they are said to have changed first. */
static void act_cells(struct plot *plot)
{
	lay_rectangle(plot, rectangle_between(1, 0, 2, 2), 'p');
}

static void act_last_cell(struct plot *plot)
{
	lay_rectangle(plot, rectangle_between(3, 2, 3, 2), 'b');
}

static void act_all_cells(struct plot *plot)
{
	memset(plot->ground.cells, 'p', 11);
}

static void act_head(struct plot *plot)
{
	plot_set(plot, 0, HEAD_MIRROR, "four-way");
}

static void act_entry(struct plot *plot)
{
	details_add_entry(&plot->details, CLASS_LAWN, 'l', memory_string("Lawn"));
}

static void act_letter(struct plot *plot)
{
	legend_reletter(plot, 'p', 'q');
}

static void act_grow(struct plot *plot)
{
	resize_plot(plot, &(struct margins){ 1, 2, 3, 4 });
}

static void act_crop(struct plot *plot)
{
	plot_set(plot, 0, HEAD_AXIS, "4,3");
	resize_plot(plot, &(struct margins){ -1, -1, 0, 0 });
}

static const struct {
	void (*act)(struct plot *);
	struct place at;
} acts[] = {
	{ act_cells, { 1, 0 } }, { act_last_cell, { 3, 2 } }, { act_all_cells, { 0, 0 } },
	{ act_head, { -1, -1 } }, { act_entry, { -1, -1 } }, { act_letter, { 3, 1 } },
	{ act_grow, { -1, -1 } }, { act_crop, { -1, -1 } },
};

START_TEST(an_act_is_taken_back_and_put_back_and_its_place_told)
{
	struct plot plot;
	struct place at = { 0, 0 };

	plot_from_rows(&plot, court);
	struct history *history = history_new(&plot);
	char *before = written(&plot);
	acts[_i].act(&plot);
	char *after = written(&plot);
	ck_assert_str_ne(before, after);
	ck_assert(history_record(history, &plot, ""));
	ck_assert_uint_eq(history_undo_count(history), 1);
	for (int round = 0; round < 3; round++) {
		ck_assert(history_undo(history, &plot, &at));
		ck_assert(at.x == acts[_i].at.x && at.y == acts[_i].at.y);
		check_written(&plot, before);
		ck_assert_uint_eq(history_undo_count(history), 0);
		ck_assert_uint_eq(history_redo_count(history), 1);
		ck_assert(!history_record(history, &plot, ""));
		at = (struct place){ -2, -2 };
		ck_assert(history_redo(history, &plot, &at));
		ck_assert(at.x == acts[_i].at.x && at.y == acts[_i].at.y);
		check_written(&plot, after);
		ck_assert(!history_redo(history, &plot, &at));
		ck_assert(!history_record(history, &plot, ""));
	}
	history_free(history);
	plot_fini(&plot);
	free(before);
	free(after);
}
END_TEST

/* The name is the history's own copy. */
START_TEST(a_step_keeps_the_name_of_what_was_done)
{
	struct plot plot;
	struct place at;
	char name[] = "Lay";

	plot_from_rows(&plot, court);
	struct history *history = history_new(&plot);
	for (int i = 0; i < 3; i++) {
		plot.ground.cells[8 + i] = 'b';
		name[0] = (char)('A' + i);
		ck_assert(history_record(history, &plot, name));
		ck_assert_str_eq(history_last(history).step->name, name);
	}
	name[0] = '-';
	for (int i = 2; i >= 0; i--) {
		ck_assert(history_undo(history, &plot, &at));
		ck_assert_int_eq(history_last(history).step->name[0], 'A' + i);
	}
	for (int i = 0; i < 3; i++) {
		ck_assert(history_redo(history, &plot, &at));
		ck_assert_int_eq(history_last(history).step->name[0], 'A' + i);
	}
	history_free(history);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_new_act_drops_what_was_taken_back)
{
	struct plot plot;
	struct place at;

	plot_from_rows(&plot, court);
	struct history *history = history_new(&plot);
	for (int x = 0; x < 4; x++) {
		plot.ground.cells[8 + x] = 'b';
		ck_assert(history_record(history, &plot, ""));
	}
	ck_assert(history_undo(history, &plot, &at) && history_undo(history, &plot, &at));
	ck_assert_uint_eq(history_redo_count(history), 2);
	plot.ground.cells[11] = 'p';
	ck_assert(history_record(history, &plot, ""));
	ck_assert_uint_eq(history_redo_count(history), 0);
	ck_assert_uint_eq(history_undo_count(history), 3);
	ck_assert_mem_eq(plot.ground.cells + 8, "bb.p", 4);
	ck_assert(history_undo(history, &plot, &at));
	ck_assert_mem_eq(plot.ground.cells + 8, "bb..", 4);
	history_free(history);
	plot_fini(&plot);
}
END_TEST

/* ---- Many steps ------------------------------------------------------------------------------ */

/* States as they were written: states[0] is the first, states[now] the present one. */
struct states {
	char *texts[1000];
	int now, count;
};

/* After acts, undos and redos as chance has it, every state is reached again, back and forth. */
START_TEST(any_acts_are_taken_back_to_the_first_bytes_and_put_back_to_the_last)
{
	struct random random = { (uint64_t)_i };
	struct states states = { .count = 1 };
	struct plot plot;
	struct place at;

	whole_plot_at_random(&plot, &random, 12);
	struct history *history = history_new(&plot);
	states.texts[0] = written(&plot);
	for (int i = 0; i < 250; i++) {
		int choice = random_below(&random, 5);

		if (choice == 0) {
			states.now -= history_undo(history, &plot, &at);
		} else if (choice == 1) {
			states.now += history_redo(history, &plot, &at);
		} else {
			change_at_random(&plot, &random);
			if (history_record(history, &plot, "")) {
				while (states.count > states.now + 1)
					free(states.texts[--states.count]);
				states.texts[states.count++] = written(&plot);
				states.now++;
			}
		}
		plot_check(&plot);
		check_written(&plot, states.texts[states.now]);
		ck_assert_uint_eq(history_undo_count(history), (size_t)states.now);
		ck_assert_uint_eq(history_redo_count(history),
			(size_t)(states.count - 1 - states.now));
	}
	while (history_undo(history, &plot, &at))
		check_written(&plot, states.texts[--states.now]);
	ck_assert_int_eq(states.now, 0);
	while (history_redo(history, &plot, &at))
		check_written(&plot, states.texts[++states.now]);
	ck_assert_int_eq(states.now, states.count - 1);
	while (states.count > 0)
		free(states.texts[--states.count]);
	history_free(history);
	plot_fini(&plot);
}
END_TEST

/* ---- How much is kept ------------------------------------------------------------------------ */

/* Strokes as one draws a garden: patches of up to 12 by 12 cells, each with its images. */
START_TEST(ten_thousand_common_strokes_are_kept)
{
	struct random random = { 7 };
	struct plot plot;
	struct place at;
	size_t count = 0;

	plot_init(&plot);
	ground_init(&plot.ground, 120, 90);
	/* With one letter alone the ground would soon be full and strokes change nothing. */
	details_at_random(&plot, &random, 8);
	ck_assert_uint_ge(plot.details.legend_count, 2);
	plot_set(&plot, 0, HEAD_MIRROR, "four-way");
	block_set(&plot.details.head, HEAD_AXIS, (struct value){ .set = false });
	char *first = written(&plot);
	struct history *history = history_new(&plot);
	while (count < 10000) {
		int x = random_below(&random, 120), y = random_below(&random, 90);
		int right = x + random_below(&random, 12), bottom = y + random_below(&random, 12);

		lay_rectangle(&plot, rectangle_between(x, y, right < 119 ? right : 119,
			bottom < 89 ? bottom : 89),
			plot.details.legend[(size_t)random_below(&random,
			(int)plot.details.legend_count)].letter);
		count += history_record(history, &plot, "");
	}
	ck_assert_uint_eq(history_undo_count(history), 10000);
	while (history_undo(history, &plot, &at))
		count--;
	ck_assert_uint_eq(count, 0);
	check_written(&plot, first);
	history_free(history);
	plot_fini(&plot);
	free(first);
}
END_TEST

START_TEST(the_oldest_steps_go_first_when_there_are_too_many)
{
	enum { STEPS = 12 };
	struct plot plot;
	struct place at;

	plot_init(&plot);
	ground_init(&plot.ground, SIDE_MOST, SIDE_MOST);
	struct history *history = history_new(&plot);
	/* Each changes every cell: 4 MiB before, 4 MiB after. */
	for (int i = 0; i < STEPS; i++) {
		memset(plot.ground.cells, 'a' + i, SIDE_MOST * SIDE_MOST);
		ck_assert(history_record(history, &plot, ""));
	}
	ck_assert_uint_eq(history_undo_count(history), 7);
	while (history_undo(history, &plot, &at))
		continue;
	ck_assert_int_eq(plot.ground.cells[12345], 'a' + STEPS - 1 - 7);
	ck_assert_uint_eq(history_redo_count(history), 7);
	while (history_redo(history, &plot, &at))
		continue;
	ck_assert_int_eq(plot.ground.cells[12345], 'a' + STEPS - 1);
	history_free(history);
	plot_fini(&plot);
}
END_TEST

/* Bytes in use on the heap; 0 where an allocator of other make does not tell. */
static size_t heap_used(void)
{
	struct mallinfo2 info = mallinfo2();

	return info.uordblks + info.hblkhd;
}

/* Ways of filling a history, each with another kind of memory. */
static void fill_cell(struct plot *plot, int i)
{
	plot->ground.cells[i % 7] = plot->ground.cells[i % 7] == 'b' ? '.' : 'b';
}

static void fill_notes(struct plot *plot, int i)
{
	char note[NOTE_MOST + 1];

	snprintf(note, sizeof note, "%0*d", NOTE_MOST, i);
	if (i < 400)
		notes_add(&plot->details.head.notes, memory_string(note));
	else
		memcpy(plot->details.head.notes.texts[0], note, NOTE_MOST);
}

static void fill_mixes(struct plot *plot, int i)
{
	char mix[40];

	snprintf(mix, sizeof mix, "topsoil %d, compost 1", i % 1000 + 1);
	if (i == 0)
		for (const char *c = "abcdefghijklmnopqrstuvwxyz"; *c; c++)
			if (!plot_entry(plot, *c))
				details_add_entry(&plot->details, CLASS_BED, *c,
					memory_string("Bed"));
	for (size_t at = 0; at < plot->details.legend_count; at++)
		if (plot->details.legend[at].class == CLASS_BED)
			plot_set(plot, plot->details.legend[at].letter, BED_MIX, mix);
}

static void fill_sizes(struct plot *plot, int i)
{
	resize_plot(plot, &(struct margins){ i % 2 ? -200 : 200, 0, 0, i % 2 ? -200 : 200 });
}

static const struct {
	void (*act)(struct plot *, int);
	int acts;
	const char *name;
} fillings[] = { { fill_cell, 700000, "Lay" }, { fill_notes, 1200, "Notes" },
	{ fill_mixes, 2500, "Mixes" }, { fill_sizes, 2500, "Grow or crop" },
	{ fill_cell, 400000, "A name that is as long as what is kept of the stroke itself, and "
		"longer still: it counts as what it takes" } };

START_TEST(a_history_never_takes_more_than_64_mib)
{
	static const char *const rows[] = { "b......", NULL };
	struct plot plot;
	size_t before = heap_used(), most = 0;

	plot_from_rows(&plot, rows);
	struct history *history = history_new(&plot);
	for (int i = 0; i < fillings[_i].acts; i++) {
		fillings[_i].act(&plot, i);
		ck_assert(history_record(history, &plot, fillings[_i].name));
		if (i % 500 == 0 && heap_used() > most)
			most = heap_used();
	}
	/* It was filled, and what it took is near what it may. */
	ck_assert_uint_lt(history_undo_count(history), (size_t)fillings[_i].acts);
	if (before) {
		size_t taken = most - before;

		ck_assert_msg(taken < (size_t)HISTORY_BYTES_MOST / 100 * 104, "%zu bytes", taken);
		ck_assert_msg(taken > (size_t)HISTORY_BYTES_MOST / 100 * 60, "%zu bytes", taken);
	}
	history_free(history);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("history");
	TCase *one = suite_case(suite, "one step"), *many = suite_case(suite, "many steps"),
		*kept = suite_case(suite, "what is kept");

	tcase_add_test(one, what_changes_nothing_is_no_step);
	tcase_add_loop_test(one, an_act_is_taken_back_and_put_back_and_its_place_told, 0,
		(int)(sizeof acts / sizeof *acts));
	tcase_add_test(one, a_step_keeps_the_name_of_what_was_done);
	tcase_add_test(one, a_new_act_drops_what_was_taken_back);
	tcase_add_loop_test(many,
		any_acts_are_taken_back_to_the_first_bytes_and_put_back_to_the_last, 0, 60);
	tcase_add_test(kept, ten_thousand_common_strokes_are_kept);
	tcase_add_test(kept, the_oldest_steps_go_first_when_there_are_too_many);
	tcase_add_loop_test(kept, a_history_never_takes_more_than_64_mib, 0,
		(int)(sizeof fillings / sizeof *fillings));
	return suite;
}
