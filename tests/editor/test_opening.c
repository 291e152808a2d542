/* How a session starts: reading, rescued work, a new plot. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/scratch.h"

#include "base/memory.h"
#include "editor/acts/differences.h"
#include "editor/acts/opening.h"

#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#define ROWS (const char *[])

static char *folder, path[4200];

/* In place of the system's: not all file systems take a time beyond all calendars. */
static bool has_calendar = true;

struct tm *localtime_r(const time_t *when, struct tm *local)
{
	return has_calendar ? gmtime_r(when, local) : NULL;
}

/* The court, copied to a folder of its own; nothing is opened yet. */
static void court_lay_out(void)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	folder = scratch_new();
	snprintf(path, sizeof path, "%s/court.plot", folder);
	ck_assert(file_read("plots/court.plot", 1 << 20, &bytes, &error));
	ck_assert(file_write(path, bytes.bytes, bytes.length, &error));
	text_fini(&bytes);
}

static struct desk *sit(void)
{
	struct desk *b = desk_open(path);

	b->folder = folder;
	return b;
}

static struct desk *court(void)
{
	court_lay_out();
	return sit();
}

static struct desk *nothing(void)
{
	folder = scratch_new();
	snprintf(path, sizeof path, "%s/new.plot", folder);
	return sit();
}

static void read_it(struct desk *b)
{
	struct text message = TEXT_EMPTY;

	ck_assert_msg(opening_read(&b->editor, &message), "%s", message.bytes);
	text_fini(&message);
}

/* ">" goes right, "<" takes back. */
static void type(struct desk *b, const char *keys)
{
	for (; *keys; keys++)
		desk_press(b, *keys == '>' ? PRESS_RIGHT : *keys == '<' ? PRESS_BACKSPACE : *keys);
}

/* A session of its own that answers, types and is killed. */
static void cut_off(const char *const *answers, const char *keys)
{
	pid_t child = fork();

	if (child == 0) {
		struct desk *b = desk_open(path);

		read_it(b);
		desk_answer(b, answers);
		opening_ask(&b->editor);
		type(b, keys);
		raise(SIGKILL);
	}
	ck_assert_int_eq(waitpid(child, NULL, 0), child);
}

/* A sundial on the court's first cell, and its image, that were not saved. */
static void leave_a_stroke(void)
{
	court_lay_out();
	cut_off(NULL, "S ");
}

static const char *in_folder(const char *name)
{
	static char full[2][5000];
	static int next;

	next = !next;
	snprintf(full[next], sizeof full[next], "%s/%s", folder, name);
	return full[next];
}

static void file_put(const char *name, const char *bytes)
{
	struct file_error error;

	ck_assert_msg(file_write(in_folder(name), bytes, strlen(bytes), &error), "%s",
		error.sentence);
}

static bool has_file(const char *name)
{
	return access(in_folder(name), F_OK) == 0;
}

/* The file becomes so many seconds younger. */
static void file_age(const char *name, time_t seconds)
{
	const char *full = in_folder(name);
	struct timespec times[2];
	struct stat status;

	ck_assert_int_eq(stat(full, &status), 0);
	times[0] = status.st_atim;
	times[1] = (struct timespec){ status.st_mtim.tv_sec + seconds, status.st_mtim.tv_nsec };
	ck_assert_int_eq(utimensat(AT_FDCWD, full, times, 0), 0);
}

static char cell(const struct desk *b, int x, int y)
{
	return ground_cell(&b->editor.plot->ground, x, y);
}

static void open_with(struct desk *b, const char *const *answers)
{
	read_it(b);
	desk_answer(b, answers);
	opening_ask(&b->editor);
}

START_TEST(a_plot_is_opened_without_a_question)
{
	struct desk *b = court();

	open_with(b, NULL);
	ck_assert_int_eq(b->editor.plot->ground.columns, 16);
	ck_assert_int_eq(b->editor.hand, 'b');
	ck_assert(editor_is_saved(&b->editor) && b->editor.has_begun && !b->editor.is_over);
	ck_assert(editor_has_rescue(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_plot_with_an_error_is_not_opened)
{
	struct desk *b = court();
	struct text message = TEXT_EMPTY;

	file_put("court.plot", "parterre-plot 1\ncell 1\n");
	ck_assert(!opening_read(&b->editor, &message));
	ck_assert_ptr_nonnull(strstr(message.bytes, "court.plot:2:6: found 1, expected "));
	text_fini(&message);
	desk_free(b);
}
END_TEST

START_TEST(links_in_a_circle_are_no_new_plot)
{
	struct text message = TEXT_EMPTY;
	struct desk *b;

	court_lay_out();
	ck_assert_int_eq(unlink(path), 0);
	ck_assert_int_eq(symlink("court.plot", path), 0);
	b = sit();
	ck_assert(!opening_read(&b->editor, &message));
	ck_assert_ptr_nonnull(strstr(message.bytes, "Too many levels of symbolic links"));
	text_fini(&message);
	desk_free(b);
}
END_TEST

/* ---- Rescued work ---------------------------------------------------------------------------- */

START_TEST(rescued_work_is_taken_up)
{
	struct desk *b;

	leave_a_stroke();
	b = sit();
	open_with(b, ROWS { "Take up the rescued work", NULL });
	desk_asked(b, "A session ended before this plot was saved. Its work of ");
	desk_asked(b, " was rescued. 2 cells differ.");
	ck_assert_str_eq(b->first, "Take up the rescued work");
	desk_says_whole(b, "The rescued work is taken up; it is not saved yet.");
	ck_assert_int_eq(cell(b, 0, 0), 'S');
	ck_assert(!editor_is_saved(&b->editor));
	/* Until it is saved, it stays rescued. */
	ck_assert(has_file(".court.plot.journal"));
	desk_do(b, ACT_SAVE);
	ck_assert(!has_file(".court.plot.journal"));
	desk_free(b);
}
END_TEST

START_TEST(what_is_drawn_on_after_rescued_work_is_rescued_with_it)
{
	struct desk *b;

	leave_a_stroke();
	cut_off(ROWS { "Take up the rescued work", NULL }, "");
	cut_off(ROWS { "Take up the rescued work", NULL }, "S>>> ");
	b = sit();
	open_with(b, ROWS { "Take up the rescued work", NULL });
	desk_asked(b, "4 cells differ.");
	ck_assert_int_eq(cell(b, 0, 0), 'S');
	ck_assert_int_eq(cell(b, 3, 0), 'S');
	desk_free(b);
}
END_TEST

START_TEST(rescued_work_is_set_aside_and_kept)
{
	struct desk *b;
	char kept[5000];

	leave_a_stroke();
	b = sit();
	open_with(b, ROWS { "Set it aside and draw on from the plot", NULL });
	ck_assert_int_ne(cell(b, 0, 0), 'S');
	ck_assert(editor_is_saved(&b->editor) && !b->editor.is_looking);
	snprintf(kept, sizeof kept, "%s.rescued", b->path);
	ck_assert(has_file("court.plot.rescued"));
	desk_says(b, kept);
	desk_free(b);
}
END_TEST

START_TEST(the_saved_plot_can_be_looked_at_and_nothing_touches_the_rescued_work)
{
	struct desk *b;

	leave_a_stroke();
	b = sit();
	open_with(b, ROWS { "Look at the saved plot", NULL });
	ck_assert_int_ne(cell(b, 0, 0), 'S');
	desk_type(b, " ");
	desk_do(b, ACT_SAVE);
	desk_says_whole(b, "Looking only: rescued work waits to be taken up at the next start. > "
		"Save as another file makes a plot of your own of it.");
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	ck_assert(has_file(".court.plot.journal"));
	desk_free(b);
}
END_TEST

START_TEST(a_question_about_rescued_work_that_is_left_ends_the_session)
{
	struct desk *b;

	leave_a_stroke();
	b = sit();
	open_with(b, ROWS { "", NULL });
	ck_assert(b->editor.is_over);
	ck_assert(has_file(".court.plot.journal"));
	desk_free(b);
}
END_TEST

START_TEST(work_that_is_in_the_plot_already_is_dropped_silently)
{
	struct desk *b;

	court_lay_out();
	cut_off(NULL, "S <");
	b = sit();
	open_with(b, NULL);
	ck_assert_uint_eq(b->editor.message.length, 0);
	ck_assert(!has_file(".court.plot.journal"));
	desk_free(b);
}
END_TEST

/* As a kill between a save's rename and the journal's removal leaves it. */
START_TEST(a_journal_that_outlived_its_save_is_dropped_or_told_to_be_older)
{
	struct text journal = TEXT_EMPTY;
	struct file_error error;
	struct desk *b;

	leave_a_stroke();
	ck_assert(file_read(in_folder(".court.plot.journal"), 1 << 20, &journal, &error));
	b = desk_open(path);
	open_with(b, ROWS { "Take up the rescued work", NULL });
	desk_do(b, ACT_SAVE);
	desk_free(b);
	file_put(".court.plot.journal", journal.bytes);
	b = desk_open(path);
	open_with(b, NULL);
	ck_assert(!has_file(".court.plot.journal"));
	type(b, "S>>> ");
	desk_do(b, ACT_SAVE);
	desk_free(b);
	/* The saved plot went on: it has two sundials, the journal one. */
	file_put(".court.plot.journal", journal.bytes);
	file_age(".court.plot.journal", -100);
	b = sit();
	open_with(b, ROWS { "Set it aside and draw on from the plot", NULL });
	desk_asked(b, "This plot was written on ");
	desk_asked(b, ", and work of ");
	desk_asked(b, " was rescued. 2 cells differ.");
	ck_assert_str_eq(b->first, "Set it aside and draw on from the plot");
	ck_assert_int_eq(cell(b, 3, 0), 'S');
	desk_free(b);
	text_fini(&journal);
}
END_TEST

START_TEST(what_two_plots_differ_in_is_said_whatever_it_is)
{
	struct plot one, other;
	struct text said = TEXT_EMPTY;

	plot_from_rows(&one, ROWS { "bb", NULL });
	plot_from_rows(&other, ROWS { "bb", NULL });
	differences_add(&one, &other, &said);
	ck_assert_str_eq(said.bytes, "");
	details_add_extra(&other.details, memory_string("Boards"),
		(struct amount){ 24 * MILLION, AMOUNT_GOODS_EACH });
	differences_add(&one, &other, &said);
	ck_assert_str_eq(said.bytes, "other details differ");
	details_add_extra(&one.details, memory_string("Boards"),
		(struct amount){ 24 * MILLION, AMOUNT_GOODS_EACH });
	block_set(&one.details.rates, RATE_BLOCK, (struct value){ .set = true,
		.as.amount = { MILLION / 20, AMOUNT_H_EACH } });
	text_clear(&said);
	differences_add(&one, &other, &said);
	ck_assert_str_eq(said.bytes, "other details differ");
	text_fini(&said);
	plot_fini(&one);
	plot_fini(&other);
}
END_TEST

static void add_name(struct details *details)
{
	names_add(&details->names, (struct place){ 0, 0 }, memory_string("Sage"));
}

static void add_drop(struct details *details)
{
	details->around.has_drop = true;
}

static void add_levels(struct details *details)
{
	levels_init(&details->levels, NM_PER_M, 2, 2);
}

static void add_fall(struct details *details)
{
	details->finish.has_fall = true;
}

static void (*const added[])(struct details *details) = { add_name, add_drop, add_levels,
	add_fall };

START_TEST(two_plots_differ_in_names_and_in_what_is_around)
{
	struct plot one, other;
	struct text said = TEXT_EMPTY;

	plot_from_rows(&one, ROWS { "bb", NULL });
	plot_from_rows(&other, ROWS { "bb", NULL });
	added[_i](&other.details);
	differences_add(&one, &other, &said);
	ck_assert_str_eq(said.bytes, "other details differ");
	text_fini(&said);
	plot_fini(&one);
	plot_fini(&other);
}
END_TEST

/* What a plot has in its head, its legend, its ground and below that; NULL: as the other. */
static const struct {
	const char *head, *legend, *ground, *below, *said;
} apart[] = {
	{ NULL, NULL, NULL, NULL, "" },
	{ NULL, NULL, "2 x 1\n  pb\n", NULL, "1 cell differs" },
	{ NULL, NULL, "2 x 1\n  pp\n", NULL, "2 cells differ" },
	{ NULL, NULL, "2 x 2\n  bb\n  ..\n", NULL, "the size of the plan differs" },
	{ "title \"Mine\"\n", NULL, NULL, NULL, "the title differs" },
	{ NULL, "path s \"Slabs\"\n", NULL, NULL, "the legend differs" },
	{ NULL, NULL, NULL, "fence \"Pales\"\n  run 0,0 1,0\n", "the fences differ" },
	{ "north 90\n", NULL, NULL, NULL, "other details differ" },
	{ "title \"Mine\"\n", NULL, "2 x 1\n  pb\n", NULL, "1 cell and the title differ" },
	{ "title \"Mine\"\n", "path s \"Slabs\"\n", "2 x 1\n  pp\n", NULL,
		"2 cells, the title and the legend differ" },
};
enum { APART = sizeof apart / sizeof *apart };

static struct plot plot_of(int which)
{
	struct plot plot;
	char text[500];

	snprintf(text, sizeof text, "parterre-plot 1\n%sunits imperial\ncell 1 ft\n\n"
		"bed b \"Bed\"\npath p \"Path\"\n%s\nground %s\n%s",
		apart[which].head ? apart[which].head : "",
		apart[which].legend ? apart[which].legend : "",
		apart[which].ground ? apart[which].ground : "2 x 1\n  bb\n",
		apart[which].below ? apart[which].below : "");
	plot_from_text(&plot, text);
	return plot;
}

START_TEST(each_part_that_differs_is_named_and_one_alone_is_in_the_singular)
{
	struct plot one = plot_of(0), other = plot_of(_i);
	struct text said = TEXT_EMPTY;

	differences_add(&one, &other, &said);
	ck_assert_str_eq(said.bytes, apart[_i].said);
	text_fini(&said);
	plot_fini(&one);
	plot_fini(&other);
}
END_TEST

static const struct {
	time_t journal; /* seconds after the plot, which was written since the journal began */
	const char *first;
} ages[] = {
	{ 5, "Take up the rescued work" }, { -5, "Set it aside and draw on from the plot" },
};

START_TEST(of_a_plot_that_was_written_since_and_rescued_work_the_later_comes_first)
{
	struct desk *b;

	leave_a_stroke();
	file_put("court.plot", "parterre-plot 1\ntitle \"Mine\"\nunits imperial\ncell 1 ft\n\n"
		"bed b \"Bed\"\n\nground 3 x 1\n  bbb\n");
	file_age("court.plot", 100);
	file_age(".court.plot.journal", 100 + ages[_i].journal);
	b = sit();
	open_with(b, ROWS { "Look at the saved plot", NULL });
	ck_assert_str_eq(b->first, ages[_i].first);
	desk_asked(b, "The size of the plan, the title, the legend, the fences and other details "
		"differ.");
	desk_free(b);
}
END_TEST

enum { NOW_S = 1764370000, NOW_NS = 5 };

static const struct {
	long seconds, nanoseconds; /* from then to when the journal was written */
	const char *first;
} moments[] = {
	{ 0, 0, "Set it aside and draw on from the plot" },
	{ 0, 1, "Take up the rescued work" },
	{ 0, -1, "Set it aside and draw on from the plot" },
	{ 1, -1, "Take up the rescued work" },
	{ -1, 1, "Set it aside and draw on from the plot" },
};
enum { MOMENTS = sizeof moments / sizeof *moments };

static void file_write_at(const char *name, long seconds, long nanoseconds)
{
	const struct timespec at = { NOW_S + seconds, NOW_NS + nanoseconds };

	ck_assert_int_eq(utimensat(AT_FDCWD, in_folder(name), (struct timespec[]){ at, at }, 0), 0);
}

START_TEST(what_was_written_a_moment_later_comes_first_and_at_the_same_time_the_plot)
{
	struct desk *b;

	leave_a_stroke();
	file_write_at("court.plot", 0, 0);
	file_write_at(".court.plot.journal", moments[_i].seconds, moments[_i].nanoseconds);
	b = sit();
	open_with(b, ROWS { "Look at the saved plot", NULL });
	ck_assert_str_eq(b->first, moments[_i].first);
	desk_free(b);
}
END_TEST

/* The clock was set back: the work is later all the same, since it began with the plot as it is. */
START_TEST(work_on_the_plot_as_it_is_comes_first_whatever_the_clock_says)
{
	struct desk *b;

	leave_a_stroke();
	file_age(".court.plot.journal", -100);
	b = sit();
	open_with(b, ROWS { "Look at the saved plot", NULL });
	desk_asked(b, "A session ended before this plot was saved. Its work of ");
	ck_assert_str_eq(b->first, "Take up the rescued work");
	desk_free(b);
}
END_TEST

START_TEST(a_time_that_is_in_no_calendar_is_unknown)
{
	struct desk *b;

	leave_a_stroke();
	has_calendar = false;
	b = sit();
	open_with(b, ROWS { "Take up the rescued work", NULL });
	desk_asked_whole(b, "A session ended before this plot was saved. Its work of an unknown "
		"time was rescued. 2 cells differ.");
	desk_free(b);
}
END_TEST

START_TEST(what_cannot_be_read_is_said_and_kept)
{
	struct desk *b;

	court_lay_out();
	file_put(".court.plot.journal", "parterre-journal 7\n");
	b = sit();
	open_with(b, NULL);
	desk_says_whole(b, "A rescue file cannot be read: another version of the program wrote "
		"it. It is kept in FOLDER/court.plot.rescued.");
	ck_assert(has_file("court.plot.rescued"));
	desk_type(b, "S ");
	ck_assert(has_file(".court.plot.journal"));
	desk_do(b, ACT_SAVE);
	ck_assert(has_file("court.plot.rescued"));
	desk_free(b);
}
END_TEST

START_TEST(a_file_of_an_earlier_version_is_offered_after_what_is_unreadable)
{
	struct desk *b;

	court_lay_out();
	file_put(".court.plot.journal", "");
	file_put(".court.plot.rescue", "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
		"bed b \"Bed\"\n\nground 3 x 1\n  bbb\n");
	b = sit();
	open_with(b, ROWS { "Take up the rescued work", NULL });
	ck_assert_int_eq(b->editor.plot->ground.columns, 3);
	desk_says_whole(b, "A rescue file cannot be read: it is empty. It is kept in "
		"FOLDER/court.plot.rescued. The rescued work is taken up; it is not saved yet.");
	ck_assert(!has_file(".court.plot.rescue"));
	ck_assert(has_file(".court.plot.journal"));
	desk_free(b);
}
END_TEST

START_TEST(a_plot_in_pieces_is_opened_where_its_work_was_rescued)
{
	static const char *const answers[] = { "Leave both as they are",
		"Take up the rescued work" };
	struct desk *b;

	leave_a_stroke();
	file_put("court.plot", "parterre-plot 1\nunits imp");
	b = sit();
	open_with(b, ROWS { answers[_i], NULL });
	desk_asked(b, "The plot cannot be read: ");
	desk_asked(b, "court.plot:2:7: found imp, expected imperial or metric.\nIts work of ");
	ck_assert_int_eq(b->editor.is_over, _i == 0);
	ck_assert(has_file(".court.plot.journal"));
	if (_i == 1) {
		ck_assert_int_eq(cell(b, 0, 0), 'S');
		desk_do(b, ACT_SAVE);
		desk_says_whole(b, "Saved in FOLDER/court.plot.");
		ck_assert(!has_file(".court.plot.journal"));
	}
	desk_free(b);
}
END_TEST

START_TEST(work_on_a_plot_that_was_never_saved_is_offered_without_one_to_look_at)
{
	struct desk *b;

	folder = scratch_new();
	snprintf(path, sizeof path, "%s/new.plot", folder);
	cut_off(ROWS { "Title: Herb court", NULL }, "");
	b = sit();
	open_with(b, ROWS { "Take up the rescued work", NULL });
	ck_assert_ptr_null(strstr(b->offered, "Look"));
	ck_assert_ptr_null(strstr(b->asked, "differ"));
	ck_assert_str_eq(block_value(&b->editor.plot->details.head, HEAD_TITLE)->as.text,
		"Herb court");
	desk_free(b);
}
END_TEST

START_TEST(that_nothing_can_be_rescued_is_said_at_once)
{
	struct desk *b;

	court_lay_out();
	file_put("state", "");
	setenv("XDG_STATE_HOME", in_folder("state"), 1);
	ck_assert_int_eq(mkdir(in_folder(".court.plot.journal"), 0700), 0);
	b = sit();
	open_with(b, NULL);
	desk_says_whole(b, "A rescue file cannot be read: it is not a regular file. It is left "
		"in FOLDER/.court.plot.journal. No rescue can be kept here: save often.");
	ck_assert(!editor_has_rescue(&b->editor));
	desk_type(b, "S ");
	desk_says_whole(b, "No rescue: cannot keep unsaved work of FOLDER/court.plot: there is "
		"no place for it.");
	desk_free(b);
}
END_TEST

START_TEST(who_looks_on_is_not_asked_about_the_others_rescue_file)
{
	struct desk *b, *other;

	leave_a_stroke();
	b = sit();
	other = desk_open(b->path);
	read_it(other);
	opening_ask(&other->editor);
	ck_assert(other->editor.is_looking && !other->editor.is_over);
	ck_assert_int_eq(other->editor.store.lock.holder, getpid());
	desk_free(other);
	desk_free(b);
}
END_TEST

START_TEST(a_new_plot_is_being_begun_by_one_session_only)
{
	struct desk *b = nothing(), *other = desk_open(b->path);
	struct text message = TEXT_EMPTY;

	ck_assert(!opening_read(&other->editor, &message));
	ck_assert_ptr_nonnull(strstr(message.bytes, "another session is creating"));
	text_fini(&message);
	desk_free(other);
	desk_free(b);
}
END_TEST

static void check_written(const struct desk *b, const char *words)
{
	struct text written = TEXT_EMPTY;

	plot_check(b->editor.plot);
	format_write(b->editor.plot, &written);
	ck_assert_msg(strstr(written.bytes, words) != NULL, "not \"%s\" in:\n%s", words,
		written.bytes);
	text_fini(&written);
}

/* Of four entries without a line of their own: nothing is set. */
START_TEST(a_new_plot_starts_from_the_answers_in_the_form_and_with_nothing_set)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Title: Herb court", NULL });
	opening_ask(&b->editor);
	check_written(b, "parterre-plot 1\ntitle \"Herb court\"\nunits imperial\ncell 1 ft\n\n"
		"bed b \"Raised bed\"\npath p \"Crushed stone\"\nlawn l \"Turf\"\n"
		"fixture S \"Sundial\"\n\nground 24 x 20\n  ........................\n");
	ck_assert(!editor_is_saved(&b->editor) && b->editor.has_begun);
	desk_do(b, ACT_SAVE);
	ck_assert_int_eq(access(b->path, R_OK), 0);
	desk_free(b);
}
END_TEST

/* Its rounder defaults need no lines. */
START_TEST(a_metric_plot_starts_with_nothing_set_either)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Units: metric", NULL });
	opening_ask(&b->editor);
	check_written(b, "parterre-plot 1\nunits metric\ncell 300 mm\n\n"
		"bed b \"Raised bed\"\npath p \"Crushed stone\"\nlawn l \"Turf\"\n"
		"fixture S \"Sundial\"\n\nground 24 x 20\n");
	desk_free(b);
}
END_TEST

START_TEST(turning_to_other_units_leaves_what_was_typed)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Width, left to right: 12 m; Units: metric; Units: imperial; "
		"Units: metric", NULL });
	opening_ask(&b->editor);
	ck_assert_int_eq(b->editor.plot->ground.columns, 40);
	ck_assert_int_eq(b->editor.plot->ground.rows, 20);
	desk_free(b);
}
END_TEST

struct refusal {
	const char *typed, *fault;
};

static const struct refusal refusals[] = {
	{ "Width, left to right: 2416", "Width, left to right: 2416 cells, expected at most 2048" },
	{ "Width, left to right: 6 cubits", "Width, left to right: cubits is no unit of length" },
	{ "Width, left to right: 10 ft 6 in", "Width, left to right: 126 in is no whole number of "
		"cells of 1 ft, but 10 ft is, and 11 ft is" },
	{ "Depth, top to bottom: 6 in", "Depth, top to bottom: 6 in is no whole number of cells of "
		"1 ft, but 1 ft is" },
	{ "Depth, top to bottom: 2049 ft", "Depth, top to bottom: 2049 cells, expected at most "
		"2048" },
	{ "Depth, top to bottom:", "Depth, top to bottom: needed here" },
	{ "Side of a cell: 11 ft", "Side of a cell: found 11 ft, expected 1 in to 10 ft" },
	{ "Units: ells", "Units: found ells, expected imperial or metric" },
};

START_TEST(what_is_wrong_with_a_new_plot_is_said_and_asked_for_again)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, (const char *[]){ refusals[_i].typed, "", NULL });
	opening_ask(&b->editor);
	ck_assert_msg(strncmp(b->fault, refusals[_i].fault, strlen(refusals[_i].fault)) == 0,
		"said \"%s\"", b->fault);
	ck_assert(b->editor.is_over);
	ck_assert_int_ne(access(b->path, F_OK), 0);
	desk_free(b);
}
END_TEST

static void add_rescue(TCase *rescue)
{
	tcase_add_test(rescue, a_plot_is_opened_without_a_question);
	tcase_add_test(rescue, a_plot_with_an_error_is_not_opened);
	tcase_add_test(rescue, links_in_a_circle_are_no_new_plot);
	tcase_add_test(rescue, rescued_work_is_taken_up);
	tcase_add_test(rescue, what_is_drawn_on_after_rescued_work_is_rescued_with_it);
	tcase_add_test(rescue, rescued_work_is_set_aside_and_kept);
	tcase_add_test(rescue,
		the_saved_plot_can_be_looked_at_and_nothing_touches_the_rescued_work);
	tcase_add_test(rescue, a_question_about_rescued_work_that_is_left_ends_the_session);
	tcase_add_test(rescue, work_that_is_in_the_plot_already_is_dropped_silently);
	tcase_add_test(rescue, a_journal_that_outlived_its_save_is_dropped_or_told_to_be_older);
	tcase_add_test(rescue, what_two_plots_differ_in_is_said_whatever_it_is);
	tcase_add_loop_test(rescue,
		each_part_that_differs_is_named_and_one_alone_is_in_the_singular, 0, APART);
	tcase_add_loop_test(rescue, two_plots_differ_in_names_and_in_what_is_around, 0,
		(int)(sizeof added / sizeof *added));
	tcase_add_loop_test(rescue,
		of_a_plot_that_was_written_since_and_rescued_work_the_later_comes_first, 0, 2);
	tcase_add_loop_test(rescue,
		what_was_written_a_moment_later_comes_first_and_at_the_same_time_the_plot, 0,
		MOMENTS);
	tcase_add_test(rescue, work_on_the_plot_as_it_is_comes_first_whatever_the_clock_says);
	tcase_add_test(rescue, a_time_that_is_in_no_calendar_is_unknown);
	tcase_add_test(rescue, what_cannot_be_read_is_said_and_kept);
	tcase_add_test(rescue, a_file_of_an_earlier_version_is_offered_after_what_is_unreadable);
	tcase_add_loop_test(rescue, a_plot_in_pieces_is_opened_where_its_work_was_rescued, 0, 2);
	tcase_add_test(rescue,
		work_on_a_plot_that_was_never_saved_is_offered_without_one_to_look_at);
	tcase_add_test(rescue, that_nothing_can_be_rescued_is_said_at_once);
	tcase_add_test(rescue, who_looks_on_is_not_asked_about_the_others_rescue_file);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("opening");
	TCase *rescue = suite_case(suite, "rescue"), *begin = suite_case(suite, "begin");

	add_rescue(rescue);
	tcase_add_test(begin, a_new_plot_is_being_begun_by_one_session_only);
	tcase_add_test(begin, a_new_plot_starts_from_the_answers_in_the_form_and_with_nothing_set);
	tcase_add_test(begin, a_metric_plot_starts_with_nothing_set_either);
	tcase_add_test(begin, turning_to_other_units_leaves_what_was_typed);
	tcase_add_loop_test(begin, what_is_wrong_with_a_new_plot_is_said_and_asked_for_again, 0,
		(int)(sizeof refusals / sizeof *refusals));
	return suite;
}
