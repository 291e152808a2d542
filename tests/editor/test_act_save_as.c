/* A plot saved as another file, or copied to one: what goes along, what stays, what is asked. */

#include "base/memory.h"
#include "editor/acts/opening.h"
#include "support/desk.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#define ROWS (const char *[])

static struct desk *desk;
static char other[4500], deeper[4500], typed[4600], typed_deeper[4600];

static void path_make(char *path, char *answer, const char *name)
{
	snprintf(path, 4500, "%s/%s", desk->folder, name);
	snprintf(answer, 4600, "File: %s", path);
}

static void setup(void)
{
	char folder[4500];

	desk = desk_new(ROWS { "bb..", "....", NULL });
	path_make(other, typed, "other.plot");
	path_make(deeper, typed_deeper, "deeper/other.plot");
	snprintf(folder, sizeof folder, "%s/deeper", desk->folder);
	mkdir(folder, 0700);
	desk_do(desk, ACT_SAVE);
	desk_type(desk, " "); /* one stroke that is not saved */
}

static void teardown(void)
{
	desk_free(desk);
}

static void file_write_text(const char *path, const char *text)
{
	FILE *file = fopen(path, "w");

	ck_assert_ptr_nonnull(file);
	fputs(text, file);
	fclose(file);
}

/* The plot in the file, or "none". */
static const char *holds(const char *path)
{
	static char bytes[4096];
	FILE *file = fopen(path, "r");
	size_t length = 0;

	if (!file)
		return "none";
	length = fread(bytes, 1, sizeof bytes - 1, file);
	fclose(file);
	bytes[length] = '\0';
	return bytes;
}

static void check_holds(const char *path, const char *part)
{
	ck_assert_msg(strstr(holds(path), part), "%s holds %s", path, holds(path));
}

static bool is_there(const char *name)
{
	char path[4500];

	snprintf(path, sizeof path, "%s/%s", desk->folder, name);
	return access(path, F_OK) == 0;
}

/* What the desk answers next; kept for desk_free, which looks whether all was asked for. */
static void answer_with(const char *const *answers)
{
	static const char *kept[8];
	int count = 0;

	do
		kept[count] = answers[count];
	while (answers[count++]);
	desk_answer(desk, kept);
}
#define ANSWER(...) answer_with((const char *const[]){ __VA_ARGS__, NULL })

/* Another session on the file of the desk's plot. */
static struct store another_session(const char *path)
{
	struct store store;

	store_open(&store, path);
	return store;
}

/* A stroke that changes the first cell of the second row. */
static void stroke(void)
{
	desk_press(desk, PRESS_DOWN);
	desk_type(desk, "b ");
}

START_TEST(saved_as_another_file_the_session_goes_on_there)
{
	struct store next;

	stroke();
	ANSWER(typed);
	desk_do(desk, ACT_SAVE_AS);
	desk_says_whole(desk, "Saved in FOLDER/other.plot.");
	ck_assert_str_eq(desk->editor.store.path, other);
	ck_assert_str_eq(desk->editor.name, "other.plot");
	ck_assert(editor_is_saved(&desk->editor));
	check_holds(other, "  b...\n");
	check_holds(desk->path, "  ....\n");
	/* What is drawn from now on is saved there, and taken back as before. */
	desk_press(desk, PRESS_RIGHT);
	desk_type(desk, " ");
	desk_do(desk, ACT_SAVE);
	check_holds(other, "  bb..\n");
	check_holds(desk->path, "  ....\n");
	desk_press(desk, PRESS_BACKSPACE);
	desk_check(desk, ROWS { "bb..", "b...", NULL });
	/* The lock has gone along. */
	next = another_session(other);
	ck_assert_int_eq(next.access, STORE_LOOKS);
	store_close(&next);
	next = another_session(desk->path);
	ck_assert_int_eq(next.access, STORE_WRITES);
	store_close(&next);
}
END_TEST

START_TEST(a_copy_moves_nothing)
{
	struct store next;

	stroke();
	ANSWER(typed);
	desk_do(desk, ACT_COPY);
	desk_says_whole(desk, "A copy is in FOLDER/other.plot.");
	ck_assert_str_eq(desk->editor.store.path, desk->path);
	ck_assert(!editor_is_saved(&desk->editor));
	check_holds(other, "  b...\n");
	check_holds(desk->path, "  ....\n");
	next = another_session(other);
	ck_assert_int_eq(next.access, STORE_WRITES);
	store_close(&next);
	ck_assert(!is_there(".other.plot.lock"));
}
END_TEST

START_TEST(a_free_name_beside_the_plot_is_offered)
{
	file_write_text(deeper, "x");
	ANSWER("");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->offered, "/garden-2.plot\n"));
	path_make(other, typed, "garden-2.plot");
	file_write_text(other, "x");
	ANSWER("");
	desk_do(desk, ACT_COPY);
	ck_assert_ptr_nonnull(strstr(desk->offered, "/garden-3.plot\n"));
}
END_TEST

/* Up to 99; of a hundred plots none has a name that is easily told from the others. Where all are
 * there the last is offered: before it is written over that is asked. */
START_TEST(where_all_names_are_there_the_last_is_offered)
{
	for (int i = 2; i < 100; i++) {
		char name[40];

		snprintf(name, sizeof name, "garden-%d.plot", i);
		path_make(other, typed, name);
		ANSWER("");
		desk_do(desk, ACT_COPY);
		ck_assert_msg(strstr(desk->offered, name), "%s", desk->offered);
		file_write_text(other, "mine");
	}
	ANSWER("");
	desk_do(desk, ACT_COPY);
	ck_assert_ptr_nonnull(strstr(desk->offered, "/garden-99.plot\n"));
}
END_TEST

START_TEST(a_file_that_is_there_is_asked_about)
{
	enum act_id act = _i ? ACT_COPY : ACT_SAVE_AS;

	stroke();
	file_write_text(other, "something else\n");
	ANSWER(typed, "Leave that file alone", "");
	desk_do(desk, act);
	ck_assert_str_eq(holds(other), "something else\n");
	ck_assert_str_eq(desk->editor.store.path, desk->path);
	ck_assert(!editor_is_saved(&desk->editor));
	ANSWER(typed, "Write over it");
	desk_do(desk, act);
	desk_asked_whole(desk, "FOLDER/other.plot is there already.");
	check_holds(other, "  b...\n");
}
END_TEST

START_TEST(what_cannot_be_written_is_said_and_nothing_moves)
{
	path_make(other, typed, "no/such/folder.plot");
	ANSWER(typed, "");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->fault, "No such file or directory"));
	ck_assert_str_eq(desk->editor.store.path, desk->path);
	desk_do(desk, ACT_SAVE);
	desk_says_whole(desk, "Saved in FOLDER/garden.plot.");
}
END_TEST

START_TEST(where_it_cannot_be_written_it_is_said_too_what_was_set_aside_for_it)
{
	char rescued[4600];

	ck_assert_int_eq(mkdir(other, 0700), 0);
	snprintf(rescued, sizeof rescued, "%s/.other.plot.rescue", desk->folder);
	file_write_text(rescued, holds(desk->path));
	ANSWER(typed, "Write over it", "");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->fault, "it is a directory"));
	ck_assert_ptr_nonnull(strstr(desk->fault, "Work rescued for that file before is kept in "));
	ck_assert(is_there("other.plot.rescued"));
}
END_TEST

START_TEST(that_there_can_be_no_lock_for_the_new_file_is_said)
{
	char lock[4600];

	snprintf(lock, sizeof lock, "%s/.other.plot.lock", desk->folder);
	ck_assert_int_eq(mkdir(lock, 0700), 0);
	ANSWER(typed);
	desk_do(desk, ACT_SAVE_AS);
	desk_says_whole(desk, "Saved in FOLDER/other.plot. No lock can be had here: see that "
		"nobody else draws this plot.");
}
END_TEST

START_TEST(a_plot_that_another_session_draws_is_left_to_it)
{
	struct store session = another_session(other);

	ANSWER(typed, "");
	desk_do(desk, _i ? ACT_COPY : ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->fault,
		"That plot is being drawn by another session (process "));
	ck_assert_str_eq(holds(other), "none");
	store_close(&session);
}
END_TEST

/* One that has taken the lock and not signed it yet. */
START_TEST(a_session_of_which_nothing_is_known_has_no_number)
{
	struct store session = another_session(other);

	ck_assert_int_eq(ftruncate(session.lock.fd, 0), 0);
	ANSWER(typed, "");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->fault,
		"That plot is being drawn by another session."));
	store_close(&session);
}
END_TEST

START_TEST(the_plots_own_file_is_saved_by_save_as_and_takes_no_copy)
{
	char own[4600];

	stroke();
	snprintf(own, sizeof own, "File: %s", desk->path);
	ANSWER(own, "");
	desk_do(desk, ACT_COPY);
	ck_assert_ptr_nonnull(strstr(desk->fault, "needs another name"));
	ANSWER(own);
	desk_do(desk, ACT_SAVE_AS);
	ck_assert(editor_is_saved(&desk->editor));
	check_holds(desk->path, "  b...\n");
}
END_TEST

START_TEST(who_may_only_look_becomes_the_writer_of_another_file)
{
	struct desk *looker;

	stroke();
	desk_do(desk, ACT_SAVE);
	looker = desk_open(desk->path);
	struct text message = TEXT_EMPTY;

	ck_assert_msg(opening_read(&looker->editor, &message), "%s", message.bytes);
	opening_ask(&looker->editor);
	ck_assert(looker->editor.is_looking);
	desk_type(looker, "b");
	desk_type(looker, " ");
	desk_says(looker, "Save as another file");
	desk_answer(looker, ROWS { typed, NULL });
	desk_do(looker, ACT_SAVE_AS);
	ck_assert(!looker->editor.is_looking);
	ck_assert_int_eq(looker->editor.store.access, STORE_WRITES);
	desk_press(looker, PRESS_RIGHT);
	desk_press(looker, PRESS_DOWN);
	desk_type(looker, "b");
	desk_do(looker, ACT_SAVE);
	check_holds(other, "  bb..\n");
	check_holds(desk->path, "  b...\n");
	text_fini(&message);
	desk_free(looker);
	/* The writer of the first file still is. */
	desk_press(desk, PRESS_BACKSPACE);
	desk_do(desk, ACT_SAVE);
	check_holds(desk->path, "  ....\n");
}
END_TEST

START_TEST(a_file_changed_outside_or_gone_may_be_left_for_another)
{
	stroke();
	if (_i)
		unlink(desk->path);
	else
		file_write_text(desk->path, "somebody's\n");
	ANSWER("Save as another file", typed);
	desk_do(desk, ACT_SAVE);
	ck_assert_str_eq(holds(desk->path), _i ? "none" : "somebody's\n");
	check_holds(other, "  b...\n");
	ck_assert_str_eq(desk->editor.store.path, other);
}
END_TEST

START_TEST(save_and_leave_may_lead_to_another_file)
{
	stroke();
	file_write_text(desk->path, "somebody's\n");
	ANSWER("Save and leave", "Save as another file", typed);
	desk_type(desk, "<");
	ck_assert(desk->editor.is_over);
	check_holds(other, "  b...\n");
}
END_TEST

/* ---- The price book -------------------------------------------------------------------------- */

static void book_name_set(const char *name)
{
	block_set(&editor_edit(&desk->editor)->details.head, HEAD_PRICES,
		(struct value){ .set = true, .as.text = memory_string(name) });
	editor_stroke(&desk->editor);
	editor_refresh(&desk->editor);
}

static void book_lay(const char *name)
{
	char path[4500], line[9200];

	snprintf(path, sizeof path, "%s/%s", desk->folder, name);
	snprintf(line, sizeof line, "cp plots/prices.json '%s'", path);
	ck_assert_int_eq(system(line), 0);
}

START_TEST(a_book_that_is_not_beside_the_new_file_keeps_its_name_or_gets_its_place)
{
	enum act_id act = _i & 1 ? ACT_COPY : ACT_SAVE_AS;
	bool is_full = _i & 2;
	char full[4600];

	book_lay("prices.json");
	book_name_set("prices.json");
	ANSWER(typed_deeper,
		is_full ? "Write its place in full" : "Keep its name");
	desk_do(desk, act);
	desk_asked_whole(desk, "The price book prices.json is not beside the new file; it is "
		"FOLDER/prices.json.");
	snprintf(full, sizeof full, "prices \"%s/prices.json\"\n", desk->folder);
	check_holds(deeper, is_full ? full : "prices \"prices.json\"\n");
	/* The plot here has the same, but where a copy was written. */
	ck_assert_int_eq(block_value(&desk->editor.plot->details.head, HEAD_PRICES)->as.text[0] ==
		'/', is_full && act == ACT_SAVE_AS);
	ck_assert(act == ACT_COPY || editor_is_saved(&desk->editor));
	editor_refresh(&desk->editor);
	ck_assert_int_eq(desk->editor.has_book, is_full || act == ACT_COPY);
}
END_TEST

START_TEST(a_place_as_long_as_a_plot_can_hold_is_offered_and_a_longer_one_is_not)
{
	int most = (int)attribute_row(HEAD_PRICES)->rule.most;
	char name[256] = "";

	memset(name, 'a', (size_t)(most + _i) - strlen(desk->folder) - strlen("/"));
	book_lay(name);
	book_name_set(name);
	if (_i)
		ANSWER(typed_deeper);
	else
		ANSWER(typed_deeper, "Write its place in full");
	desk_do(desk, ACT_COPY);
	check_holds(deeper, _i ? "prices \"aa" : "prices \"/");
}
END_TEST

START_TEST(a_book_that_is_found_from_there_too_is_not_asked_about)
{
	book_lay("prices.json");
	book_name_set("prices.json");
	ANSWER(typed);
	desk_do(desk, ACT_SAVE_AS);
	check_holds(other, "prices \"prices.json\"\n");
	editor_refresh(&desk->editor);
	ck_assert(desk->editor.has_book);
}
END_TEST

START_TEST(where_there_is_no_such_folder_nothing_is_asked_of_the_book)
{
	book_lay("prices.json");
	book_name_set("prices.json");
	path_make(other, typed, "no/such/folder.plot");
	ANSWER(typed, "");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_ptr_nonnull(strstr(desk->fault, "No such file or directory"));
	ck_assert_str_eq(desk->asked, "Save as another file, and go on there");
}
END_TEST

START_TEST(where_the_question_about_the_book_is_left_nothing_is_written)
{
	book_lay("prices.json");
	book_name_set("prices.json");
	ANSWER(typed_deeper, "", "");
	desk_do(desk, ACT_SAVE_AS);
	ck_assert_str_eq(holds(deeper), "none");
	ck_assert_str_eq(desk->editor.store.path, desk->path);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_save_as");
	TCase *files = suite_case(suite, "files"), *book = suite_case(suite, "book");

	tcase_add_checked_fixture(files, setup, teardown);
	tcase_add_test(files, saved_as_another_file_the_session_goes_on_there);
	tcase_add_test(files, a_copy_moves_nothing);
	tcase_add_test(files, a_free_name_beside_the_plot_is_offered);
	tcase_add_test(files, where_all_names_are_there_the_last_is_offered);
	tcase_add_loop_test(files, a_file_that_is_there_is_asked_about, 0, 2);
	tcase_add_test(files, what_cannot_be_written_is_said_and_nothing_moves);
	tcase_add_test(files, that_there_can_be_no_lock_for_the_new_file_is_said);
	tcase_add_test(files,
		where_it_cannot_be_written_it_is_said_too_what_was_set_aside_for_it);
	tcase_add_loop_test(files, a_plot_that_another_session_draws_is_left_to_it, 0, 2);
	tcase_add_test(files, a_session_of_which_nothing_is_known_has_no_number);
	tcase_add_test(files, the_plots_own_file_is_saved_by_save_as_and_takes_no_copy);
	tcase_add_test(files, who_may_only_look_becomes_the_writer_of_another_file);
	tcase_add_loop_test(files, a_file_changed_outside_or_gone_may_be_left_for_another, 0, 2);
	tcase_add_test(files, save_and_leave_may_lead_to_another_file);
	tcase_add_checked_fixture(book, setup, teardown);
	tcase_add_loop_test(book,
		a_book_that_is_not_beside_the_new_file_keeps_its_name_or_gets_its_place, 0, 4);
	tcase_add_loop_test(book,
		a_place_as_long_as_a_plot_can_hold_is_offered_and_a_longer_one_is_not, 0, 2);
	tcase_add_test(book, a_book_that_is_found_from_there_too_is_not_asked_about);
	tcase_add_test(book, where_there_is_no_such_folder_nothing_is_asked_of_the_book);
	tcase_add_test(book, where_the_question_about_the_book_is_left_nothing_is_written);
	return suite;
}
