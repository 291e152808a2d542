#include "prices/prices.h"
#include "base/file.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static char *folder;
static char path[4096];

static void setup(void)
{
	folder = scratch_new();
	snprintf(path, sizeof path, "%s/book.json", folder);
}

static void teardown(void)
{
	scratch_remove(folder);
}

/* Reads a book of these bytes; what is said about it. */
static const char *read_bytes(const char *bytes)
{
	static char said[5000];
	struct text message = TEXT_EMPTY;
	struct file_error error;
	struct book book;

	ck_assert(file_write(path, bytes, strlen(bytes), &error));
	ck_assert_int_eq(prices_read(path, &book, &message), message.length == 0);
	snprintf(said, sizeof said, "%s", message.length ? message.bytes + strlen(path) : "");
	ck_assert(message.length == 0 || strncmp(message.bytes, path, strlen(path)) == 0);
	book_fini(&book);
	text_fini(&message);
	return said;
}

START_TEST(a_book_that_is_refused_is_told_by_file_and_place)
{
	ck_assert_str_eq(read_bytes(""), ":1:1: found nothing, expected a price book in JSON");
	ck_assert_str_eq(read_bytes("{\n 3"), ":2:2: found 3, expected a price book in JSON");
	ck_assert_str_eq(read_bytes("[]"), ": found a list, expected an object, { ... }");
	ck_assert_str_eq(read_bytes("{\"format\": \"parterre-prices\", \"version\": 9}"),
		": version: found 9, expected 1, the version that can be read here");
	ck_assert_str_eq(read_bytes("{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\"}"), "");
}
END_TEST

START_TEST(a_book_that_cannot_be_opened_is_told)
{
	struct text message = TEXT_EMPTY;
	struct book book;

	ck_assert(!prices_read(path, &book, &message));
	ck_assert_msg(strncmp(message.bytes, "cannot open ", 12) == 0, "%s", message.bytes);
	text_clear(&message);
	ck_assert(!prices_read(folder, &book, &message));
	ck_assert_msg(strstr(message.bytes, "it is a directory"), "%s", message.bytes);
	book_fini(&book);
	text_fini(&message);
}
END_TEST

START_TEST(a_plot_names_its_book_or_none)
{
	struct plot plot;

	plot_from_rows(&plot, (const char *[]){ "b", NULL });
	ck_assert_ptr_null(prices_path(&plot, "a/garden.plot"));
	plot_set(&plot, 0, HEAD_PRICES, "\"yard.json\"");
	char *beside = prices_path(&plot, "a/garden.plot");

	ck_assert_str_eq(beside, "a/yard.json");
	free(beside);
	plot_fini(&plot);
}
END_TEST

static const char *const samples[] = { "plots/prices.json", "plots/prices-metric.json" };

START_TEST(the_sample_books_are_read_and_say_that_they_are_invented)
{
	struct text message = TEXT_EMPTY;
	struct book book;

	ck_assert_msg(prices_read(samples[_i], &book, &message), "%s", message.bytes);
	ck_assert_int_eq(strncmp(book.note, "Invented ", 9), 0);
	ck_assert_int_gt(book.goods_count, 0);
	ck_assert_ptr_nonnull(book.vehicle.name);
	book_fini(&book);
	text_fini(&message);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("prices");
	TCase *files = suite_case(suite, "files");

	tcase_add_checked_fixture(files, setup, teardown);
	tcase_add_test(files, a_book_that_is_refused_is_told_by_file_and_place);
	tcase_add_test(files, a_book_that_cannot_be_opened_is_told);
	tcase_add_test(files, a_plot_names_its_book_or_none);
	tcase_add_loop_test(files, the_sample_books_are_read_and_say_that_they_are_invented, 0,
		sizeof samples / sizeof *samples);
	return suite;
}
