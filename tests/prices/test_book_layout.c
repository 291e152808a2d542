/* The text of a price book reads as the tree that it was made of, and is laid out for people. */
#include "prices/book_layout.h"
#include "base/file.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct text laid_out(const char *json)
{
	struct text text = TEXT_EMPTY, out = TEXT_EMPTY;
	struct diag d;
	cJSON *tree;

	text_add(&text, json);
	for (size_t i = 0; i < text.length; i++)
		if (text.bytes[i] == '\'')
			text.bytes[i] = '"';
	tree = book_json_parse(text.bytes, text.length, &d);
	ck_assert_msg(tree, "%d:%d: found %s", d.line, d.column, d.found);
	book_lay_out(&out, tree);
	cJSON_Delete(tree);
	text_fini(&text);
	return out;
}

static void check(const char *json, const char *lines)
{
	struct text out = laid_out(json);

	ck_assert_str_eq(out.bytes, lines);
	text_fini(&out);
}

START_TEST(what_fits_on_a_line_stands_on_one_but_the_book_and_its_lists)
{
	check("{'goods':[{'item':'mulch','spec':'bark'},{'item':'turf'}],'vehicle':{'name':'Van'}}",
		"{\n"
		"  \"goods\": [\n"
		"    { \"item\": \"mulch\", \"spec\": \"bark\" },\n"
		"    { \"item\": \"turf\" }\n"
		"  ],\n"
		"  \"vehicle\": { \"name\": \"Van\" }\n"
		"}\n");
	check("{'goods':[{'item':'mulch','spec':'a spec that takes a good deal of room beside "
		"what it is of','packs':[{'pack':'bag'}]}]}",
		"{\n"
		"  \"goods\": [\n"
		"    {\n"
		"      \"item\": \"mulch\",\n"
		"      \"spec\": \"a spec that takes a good deal of room beside what it is of\",\n"
		"      \"packs\": [ { \"pack\": \"bag\" } ]\n"
		"    }\n"
		"  ]\n"
		"}\n");
	check("{'goods':[],'allow':{}}", "{\n  \"goods\": [],\n  \"allow\": {}\n}\n");
}
END_TEST

/* The value of a key that has this many bytes of text, to be one line or several. */
static bool is_on_one_line(const char *before, size_t bytes, const char *after)
{
	struct text json = TEXT_EMPTY, out;
	bool is_one = true;

	text_add(&json, before);
	text_add_repeat(&json, 'x', bytes);
	text_add(&json, after);
	out = laid_out(json.bytes);
	for (const char *line = out.bytes, *end; (end = strchr(line, '\n')); line = end + 1) {
		const char *name = strstr(line, "\"name\"");

		is_one = is_one && !(name && name < end && end[-1] != '}' && end[-2] != '}');
		ck_assert_msg(end - line <= 92 || !is_one, "%s", out.bytes);
	}
	text_fini(&out);
	text_fini(&json);
	return is_one;
}

/* { "name": "..." } has 14 bytes besides those of the name, and stands two or four further in; the
 * vehicle has 11 more of its key. */
START_TEST(a_line_has_92_columns_and_no_more)
{
	ck_assert(is_on_one_line("{'goods':[{'name':'", 92 - 4 - 14, "'}]}"));
	ck_assert(!is_on_one_line("{'goods':[{'name':'", 92 - 4 - 13, "'}]}"));
	ck_assert(is_on_one_line("{'vehicle':{'name':'", 92 - 2 - 11 - 14, "'}}"));
	ck_assert(!is_on_one_line("{'vehicle':{'name':'", 92 - 2 - 11 - 13, "'}}"));
}
END_TEST

/* 0.1 and 4.205 are as near to themselves as a double comes; 1e999 is no number that a book has. */
START_TEST(prices_have_two_places_and_no_number_becomes_another)
{
	check("{'price':3.4}", "{\n  \"price\": 3.40\n}\n");
	check("{'delivery':65}", "{\n  \"delivery\": 65.00\n}\n");
	check("{'price':1000000}", "{\n  \"price\": 1000000.00\n}\n");
	check("{'price':0.07}", "{\n  \"price\": 0.07\n}\n");
	check("{'price':4.205}", "{\n  \"price\": 4.205\n}\n");
	check("{'price':'3.4'}", "{\n  \"price\": \"3.4\"\n}\n");
	check("{'price':-1}", "{\n  \"price\": -1\n}\n");
	check("{'size':90,'x':0.1}", "{\n  \"size\": 90,\n  \"x\": 0.1\n}\n");
}
END_TEST

START_TEST(texts_keep_their_signs_and_their_script)
{
	check("{'note':'a \\\\ b \\u0009 \\u00e9 \xc3\xa9'}",
		"{\n  \"note\": \"a \\\\ b \\t \xc3\xa9 \xc3\xa9\"\n}\n");
	check("{'\\u0041 b':true,'n':null}", "{\n  \"A b\": true,\n  \"n\": null\n}\n");
}
END_TEST

/* ---- Any tree -------------------------------------------------------------------------------- */

/* Keys in their order too: what cJSON_Compare does not look at. */
static bool is_same(const cJSON *a, const cJSON *b)
{
	const cJSON *child = a->child, *other = b->child;

	if (!child && !other)
		return cJSON_Compare(a, b, true);
	for (; child && other; child = child->next, other = other->next)
		if ((child->string != NULL) != (other->string != NULL) ||
		    (child->string && strcmp(child->string, other->string) != 0) ||
		    !is_same(child, other))
			return false;
	return !child && !other;
}

static void check_again(const cJSON *tree)
{
	struct text out = TEXT_EMPTY, again = TEXT_EMPTY;
	struct diag d;
	cJSON *read;

	book_lay_out(&out, tree);
	read = book_json_parse(out.bytes, out.length, &d);
	ck_assert_msg(read && is_same(tree, read), "%s", out.bytes);
	book_lay_out(&again, read);
	ck_assert_str_eq(again.bytes, out.bytes);
	cJSON_Delete(read);
	text_fini(&again);
	text_fini(&out);
}

static cJSON *tree_at_random(struct random *random, int levels)
{
	static const char *const keys[] = { "price", "delivery", "size", "name", "a \"b\" \\" };
	cJSON *tree = NULL;
	int kind = random_below(random, levels > 0 ? 6 : 4);

	if (kind == 0)
		return cJSON_CreateString(random_below(random, 2) ? "caf\xc3\xa9 \"1\"\n" : "");
	if (kind == 1)
		return cJSON_CreateNumber(random_below(random, 100000) / 100.0);
	if (kind == 2)
		return cJSON_CreateNumber(random_below(random, 1000000) / 7.0);
	if (kind == 3)
		return cJSON_CreateBool(random_below(random, 2));
	tree = kind == 4 ? cJSON_CreateArray() : cJSON_CreateObject();
	for (int i = random_below(random, 6); i > 0; i--) {
		cJSON *child = tree_at_random(random, levels - 1);

		if (kind == 4)
			cJSON_AddItemToArray(tree, child);
		else
			cJSON_AddItemToObject(tree, keys[random_below(random, 5)], child);
	}
	return tree;
}

START_TEST(any_tree_reads_as_itself_and_is_laid_out_the_same_again)
{
	struct random random = { 14 };

	json_start();
	for (int i = runner_count(300, 5000); i > 0; i--) {
		cJSON *tree = tree_at_random(&random, 5);

		check_again(tree);
		cJSON_Delete(tree);
	}
}
END_TEST

START_TEST(the_sample_books_read_as_themselves)
{
	static const char *const books[] = { "plots/prices.json", "plots/prices-metric.json" };
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct diag d;
	cJSON *tree;

	ck_assert(file_read(books[_i], BOOK_BYTES_MOST, &bytes, &error));
	tree = book_json_parse(bytes.bytes, bytes.length, &d);
	check_again(tree);
	cJSON_Delete(tree);
	text_fini(&bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("book_layout");
	TCase *lines = suite_case(suite, "lines");

	tcase_add_test(lines, what_fits_on_a_line_stands_on_one_but_the_book_and_its_lists);
	tcase_add_test(lines, a_line_has_92_columns_and_no_more);
	tcase_add_test(lines, prices_have_two_places_and_no_number_becomes_another);
	tcase_add_test(lines, texts_keep_their_signs_and_their_script);
	tcase_add_test(lines, any_tree_reads_as_itself_and_is_laid_out_the_same_again);
	tcase_add_loop_test(lines, the_sample_books_read_as_themselves, 0, 2);
	return suite;
}
