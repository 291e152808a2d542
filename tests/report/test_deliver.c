/* What is written over, and what is left as it is. */
#include "report/deliver.h"
#include "support/folder.h"
#include "support/runner.h"

#include <dirent.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static struct file_error error;

static void print(struct sink *sink, const void *context)
{
	sink_add(sink, context);
}

/* Takes the new bytes to "out", from a plot and a book, and from another plot. */
static enum delivery deliver(bool force)
{
	static const struct file_content content = { print, "new" };
	char plot[300], book[300], other[300];
	const struct delivery_from to_compare = { .plot = other };
	const struct delivery_from from = { plot, book, &to_compare };

	snprintf(plot, sizeof plot, "%s", in("yard.plot"));
	snprintf(book, sizeof book, "%s", in("book.json"));
	snprintf(other, sizeof other, "%s", in("old.plot"));
	return report_deliver(in("out"), &content, &from, force, &error);
}

static void check_holds(const char *expected)
{
	struct text bytes = bytes_of("out");

	ck_assert_str_eq(bytes.bytes, expected);
	text_fini(&bytes);
}

/* had: what is there, NULL: nothing. left: why it is left; NULL: it is written over. */
static const struct { const char *had, *left; } there[] = {
	{ NULL, NULL }, { "", NULL }, { "parterre takeoff 1\n", NULL },
	{ "parterre plan 1\n", NULL }, { "parterre setout 1\n", NULL },
	{ "parterre snags 1\n", NULL }, { "parterre sun 1\n", NULL },
	{ "parterre compare 1\n", NULL }, { "{\"format\": \"parterre-takeoff\"", NULL },
	{ "section,id,item,size,order\n",
		" holds a table, in which somebody may have filled in more: nothing written" },
	{ "x", " holds something that is no takeoff, plan, set-out, sun, drawing, comparison or "
		"snags: nothing written" },
};
enum { THERE = sizeof there / sizeof *there };

START_TEST(only_what_nobody_fills_in_is_written_over)
{
	if (there[_i].had)
		make("out", there[_i].had);
	ck_assert_int_eq(deliver(false), there[_i].left ? DELIVERY_WOULD_REPLACE : DELIVERY_DONE);
	check_holds(there[_i].left ? there[_i].had : "new");
	if (there[_i].left)
		ck_assert_ptr_nonnull(strstr(error.sentence, there[_i].left));
	ck_assert_int_eq(deliver(true), DELIVERY_DONE);
	check_holds("new");
}
END_TEST

static const struct { const char *name, *what; } sources[] = {
	{ "yard.plot", " is the plot itself: nothing written" },
	{ "book.json", " is the price book that it reads: nothing written" },
	{ "old.plot", " is the plot itself: nothing written" },
};

START_TEST(what_it_is_made_of_is_never_written_over)
{
	make(sources[_i].name, "parterre takeoff 1\n");
	ck_assert_int_eq(link(in(sources[_i].name), in("out")), 0);
	for (int force = 0; force < 2; force++) {
		ck_assert_int_eq(deliver(force), DELIVERY_FAILED);
		ck_assert_ptr_nonnull(strstr(error.sentence, sources[_i].what));
		check_holds("parterre takeoff 1\n");
	}
}
END_TEST

START_TEST(what_cannot_be_looked_into_is_left)
{
	make("out", "parterre takeoff 1\n");
	ck_assert_int_eq(chmod(in("out"), 0200), 0);
	plain_user();
	ck_assert_int_eq(deliver(false), DELIVERY_WOULD_REPLACE);
	ck_assert_ptr_nonnull(strstr(error.sentence,
		" holds something that cannot be read: nothing written"));
	usual_user();
	ck_assert_int_eq(chmod(in("out"), 0600), 0);
	check_holds("parterre takeoff 1\n");
}
END_TEST

static int files_open(void)
{
	DIR *open_files = opendir("/proc/self/fd");
	int count = 0;

	ck_assert_ptr_nonnull(open_files);
	while (readdir(open_files))
		count++;
	closedir(open_files);
	return count;
}

START_TEST(no_file_stays_open)
{
	int before;

	make("out", "");
	before = files_open();
	ck_assert_int_eq(deliver(false), DELIVERY_DONE);
	ck_assert_int_eq(deliver(false), DELIVERY_WOULD_REPLACE);
	ck_assert_int_eq(files_open(), before);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("deliver");
	TCase *all = suite_case(suite, "all");

	tcase_add_checked_fixture(all, folder_start, folder_end);
	tcase_add_loop_test(all, only_what_nobody_fills_in_is_written_over, 0, THERE);
	tcase_add_loop_test(all, what_it_is_made_of_is_never_written_over, 0,
		sizeof sources / sizeof *sources);
	tcase_add_test(all, what_cannot_be_looked_into_is_left);
	tcase_add_test(all, no_file_stays_open);
	return suite;
}
