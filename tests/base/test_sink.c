/* Sinks: whatever is printed, in pieces of any size, arrives whole, also in a file. */
#include "base/sink.h"

#include "base/file.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <errno.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

enum { KIB = 1024, PATH_ROOM = 1024 };

/* ---- Into a text, a stream, a count ---------------------------------------------------------- */

/* Each way of printing, with a NUL and nothing at all among it. */
static void print_all_ways(struct sink *sink)
{
	sink_add(sink, "beds ");
	sink_add(sink, "");
	sink_add_bytes(sink, "a\0b", 3);
	sink_print(sink, "%s", "");
	sink_print(sink, " %d of %s, %c", 12, "lavender", 'x');
}

static const char all_ways[] = "beds a\0b 12 of lavender, x";

START_TEST(a_text_takes_all_after_what_it_holds)
{
	struct text text = TEXT_EMPTY;
	struct text_sink sink;

	text_add(&text, "Old ");
	sink = text_sink(&text);
	print_all_ways(&sink.sink);
	ck_assert_uint_eq(text.length, 4 + sizeof all_ways - 1);
	ck_assert_mem_eq(text.bytes, "Old ", 4);
	ck_assert_mem_eq(text.bytes + 4, all_ways, sizeof all_ways);
	text_fini(&text);
}
END_TEST

START_TEST(what_is_printed_at_one_stroke_may_be_long)
{
	char *word = malloc(100 * KIB + 1);
	struct text text = TEXT_EMPTY;
	struct text_sink sink = text_sink(&text);

	memset(word, 'w', 100 * KIB);
	word[100 * KIB] = '\0';
	sink_print(&sink.sink, "<%s>", word);
	ck_assert_uint_eq(text.length, 100 * KIB + 2);
	ck_assert_uint_eq(strspn(text.bytes + 1, "w"), 100 * KIB);
	ck_assert_int_eq(text.bytes[100 * KIB + 1], '>');
	text_fini(&text);
	free(word);
}
END_TEST

START_TEST(a_counting_sink_counts_what_others_take)
{
	struct counting_sink counted = counting_sink();

	ck_assert_uint_eq(counted.length, 0);
	print_all_ways(&counted.sink);
	ck_assert_uint_eq(counted.length, sizeof all_ways - 1);
	print_all_ways(&counted.sink);
	ck_assert_uint_eq(counted.length, 2 * (sizeof all_ways - 1));
}
END_TEST

START_TEST(a_stream_takes_all)
{
	FILE *file = tmpfile();
	struct stream_sink sink = stream_sink(file);
	char bytes[2 * sizeof all_ways];

	print_all_ways(&sink.sink);
	ck_assert(!sink.failed);
	rewind(file);
	ck_assert_uint_eq(fread(bytes, 1, sizeof bytes, file), sizeof all_ways - 1);
	ck_assert_mem_eq(bytes, all_ways, sizeof all_ways - 1);
	fclose(file);
}
END_TEST

/* Takes what it is given, but for the second piece. */
static ssize_t take_but_second(void *cookie, const char *bytes, size_t length)
{
	int *pieces = cookie;

	(void)bytes;
	return ++*pieces == 2 ? 0 : (ssize_t)length;
}

START_TEST(a_stream_that_failed_is_remembered_and_gets_no_more)
{
	int pieces = 0;
	FILE *file = fopencookie(&pieces, "w",
		(cookie_io_functions_t){ .write = take_but_second });
	struct stream_sink sink = stream_sink(file);

	setvbuf(file, NULL, _IONBF, 0);
	sink_add(&sink.sink, "one");
	ck_assert(!sink.failed);
	sink_add(&sink.sink, "two");
	ck_assert(sink.failed);
	sink_add(&sink.sink, "three");
	ck_assert(sink.failed);
	ck_assert_int_eq(pieces, 2);
	fclose(file);
}
END_TEST

/* ---- Into a file ----------------------------------------------------------------------------- */

static char *folder, path[PATH_ROOM], other[PATH_ROOM];

static void folder_new(void)
{
	folder = scratch_new();
	snprintf(path, sizeof path, "%s/file", folder);
	snprintf(other, sizeof other, "%s/other", folder);
}

static void folder_remove(void)
{
	scratch_remove(folder);
}

/* So many bytes in pieces of up to `most`, both from a seed. */
struct printing {
	size_t length, most;
	int *times; /* how often it was printed */
};

static void print_pieces(struct sink *sink, const void *context)
{
	const struct printing *printing = context;
	struct random random = { printing->length };
	char *piece = malloc(printing->most);
	size_t left = printing->length;

	++*printing->times;
	while (left > 0) {
		size_t length = 1 + (size_t)random_below(&random, (int)printing->most);

		length = length < left ? length : left;
		for (size_t i = 0; i < length; i++)
			piece[i] = (char)random_next(&random);
		sink_add_bytes(sink, piece, length);
		left -= length;
	}
	free(piece);
}

static void check_printed(const char *name, const struct printing *printing)
{
	struct text expected = TEXT_EMPTY, found = TEXT_EMPTY;
	struct text_sink sink = text_sink(&expected);
	struct file_error error;

	print_pieces(&sink.sink, printing);
	ck_assert_msg(file_read(name, 1024 * KIB, &found, &error), "%s", error.sentence);
	ck_assert_uint_eq(found.length, printing->length);
	ck_assert_uint_eq(expected.length, printing->length);
	if (found.length > 0)
		ck_assert_mem_eq(found.bytes, expected.bytes, found.length);
	text_fini(&expected);
	text_fini(&found);
}

static void print_file(const struct printing *printing)
{
	const struct file_content content = { print_pieces, printing };
	struct file_error error;

	*printing->times = 0;
	ck_assert_msg(file_print(path, &content, &error), "%s", error.sentence);
}

/* Lengths about what is held back before it is written, in pieces far smaller and larger. */
static const struct { size_t length, most; } sizes[] = {
	{ 0, 1 }, { 1, 1 }, { 64 * KIB - 1, 100 }, { 64 * KIB, 100 }, { 64 * KIB + 1, 100 },
	{ 64 * KIB, 64 * KIB }, { 64 * KIB + 1, 70 * KIB }, { 300 * KIB + 7, 7 },
	{ 300 * KIB + 7, 200 * KIB },
};

START_TEST(a_new_file_and_one_in_place_of_another_hold_all_that_is_printed_once)
{
	int times;
	const struct printing printing = { sizes[_i].length, sizes[_i].most, &times };
	const struct printing longer = { sizes[_i].length + 9000, sizes[_i].most, &times };

	print_file(&printing);
	ck_assert_int_eq(times, 1);
	check_printed(path, &printing);
	print_file(&longer);
	ck_assert_int_eq(times, 1);
	check_printed(path, &longer);
	print_file(&printing);
	check_printed(path, &printing);
}
END_TEST

START_TEST(a_file_with_two_names_is_rewritten_with_what_is_printed_once)
{
	int times;
	const struct printing printing = { sizes[_i].length, sizes[_i].most, &times };
	const struct printing longer = { sizes[_i].length + 9000, sizes[_i].most, &times };

	print_file(&printing);
	ck_assert_int_eq(link(path, other), 0);
	print_file(&longer);
	ck_assert_int_eq(times, 1);
	check_printed(other, &longer);
	check_printed(path, &longer);
	print_file(&printing);
	check_printed(other, &printing);
	ck_assert(file_is_same(path, other));
}
END_TEST

/* ---- Errors ---------------------------------------------------------------------------------- */

/* Printing and writing fail at a name with the same words. */
static void check_fails_alike(const char *name, size_t length)
{
	int times = 0;
	const struct printing printing = { length, 100, &times };
	const struct file_content content = { print_pieces, &printing };
	struct file_error printed = { "" }, written = { "" };
	char *bytes = calloc(length, 1);

	ck_assert(!file_print(name, &content, &printed));
	ck_assert(!file_write(name, bytes, length, &written));
	ck_assert_str_eq(printed.sentence, written.sentence);
	ck_assert_int_eq(strncmp(printed.sentence, "cannot ", 7), 0);
	free(bytes);
}

START_TEST(where_nothing_can_be_written_the_sentence_is_that_of_writing)
{
	char name[PATH_ROOM + 16];

	check_fails_alike(folder, 10);
	snprintf(name, sizeof name, "%s/nowhere/file", folder);
	check_fails_alike(name, 10);
	ck_assert_int_eq(mkfifo(path, 0600), 0);
	check_fails_alike(path, 10);
	ck_assert_int_eq(symlink("other", other), 0);
	check_fails_alike(other, 10);
	check_fails_alike("", 10);
}
END_TEST

static void limit_files(rlim_t bytes)
{
	struct rlimit limit;

	ck_assert_int_eq(getrlimit(RLIMIT_FSIZE, &limit), 0);
	limit.rlim_cur = bytes;
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &limit), 0);
	signal(SIGXFSZ, SIG_IGN);
}

/* Whether it does not fit in the first of the pieces written or in a later one. */
START_TEST(what_does_not_fit_is_refused_and_the_old_file_stays_whole)
{
	int times;
	const struct printing old = { 3000, 100, &times };

	print_file(&old);
	limit_files(100 * KIB);
	check_fails_alike(path, 101 * KIB);
	check_fails_alike(path, 300 * KIB);
	check_printed(path, &old);
	ck_assert_int_eq(link(path, other), 0);
	check_fails_alike(path, 300 * KIB);
	check_printed(other, &old);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sink");
	TCase *sinks = suite_case(suite, "sinks"), *files = suite_case(suite, "files");
	TCase *errors = suite_case(suite, "errors");

	tcase_add_test(sinks, a_text_takes_all_after_what_it_holds);
	tcase_add_test(sinks, what_is_printed_at_one_stroke_may_be_long);
	tcase_add_test(sinks, a_counting_sink_counts_what_others_take);
	tcase_add_test(sinks, a_stream_takes_all);
	tcase_add_test(sinks, a_stream_that_failed_is_remembered_and_gets_no_more);

	tcase_add_checked_fixture(files, folder_new, folder_remove);
	tcase_add_loop_test(files,
		a_new_file_and_one_in_place_of_another_hold_all_that_is_printed_once, 0,
		sizeof sizes / sizeof *sizes);
	tcase_add_loop_test(files,
		a_file_with_two_names_is_rewritten_with_what_is_printed_once, 0,
		sizeof sizes / sizeof *sizes);

	tcase_add_checked_fixture(errors, folder_new, folder_remove);
	tcase_add_test(errors, where_nothing_can_be_written_the_sentence_is_that_of_writing);
	tcase_add_test(errors, what_does_not_fit_is_refused_and_the_old_file_stays_whole);
	return suite;
}
