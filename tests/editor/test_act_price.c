/* Prices put in on the screen: the list, the card, the book's file; a book that is not there, is
 * spoilt, or is changed meanwhile. */

#include "base/file.h"
#include "prices/book_json.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ROWS (const char *[])

static struct desk *desk;
static char book[4500];

/* A bed on a lawn. */
static void setup(void)
{
	desk = desk_new(ROWS { "bbbbbbbbll", "bbbbbbbbll", "bbbbbbbbll", "bbbbbbbbll", NULL });
	snprintf(book, sizeof book, "%s/yard.json", desk->folder);
}

static void teardown(void)
{
	desk_free(desk);
}

/* ' for ". */
static void put(const char *text)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	text_add(&bytes, text);
	for (size_t i = 0; i < bytes.length; i++)
		if (bytes.bytes[i] == '\'')
			bytes.bytes[i] = '"';
	ck_assert(file_write(book, bytes.bytes, bytes.length, &error));
	text_fini(&bytes);
}

static struct text holds(void)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	ck_assert_msg(file_read(book, BOOK_BYTES_MOST, &bytes, &error), "%s", error.sentence);
	return bytes;
}

static void check_holds(const char *part)
{
	struct text bytes = holds();

	ck_assert_msg(strstr(bytes.bytes, part), "no %s in %.3000s", part, bytes.bytes);
	text_fini(&bytes);
}

#define HEAD "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', 'note': 'Ours.', " \
	"'suppliers': [{'name': 'Yard', 'delivery': 5}], "
#define BLOCKS "{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'spec': 'grey', 'packs': " \
	"[{'size': 1, 'pack': 'piece', 'price': 2.5}, {'pack': 'pallet', 'size': 40, 'weight': " \
	"'2000 lb', 'supplier': 'Yard'}]}"
#define OURS HEAD "'goods': [" BLOCKS ", {'item': 'spoil', 'spec': 'clean', 'packs': [{'pack': " \
	"'bulk', 'size': '1 cu yd', 'step': '0.5 cu yd', 'price': 12}]}], 'allow': {'kerf': " \
	"'1/4 in'}}"

/* The plot names the book, which holds this. */
static void lay_out(const char *text)
{
	put(text);
	plot_set(editor_edit(&desk->editor), 0, HEAD_PRICES, "\"yard.json\"");
	editor_stroke(&desk->editor);
	desk_refresh(desk);
}

/* What the desk answers; kept until desk_free, which looks whether all was asked for. */
static void answer_with(const char *const *answers)
{
	static const char *kept[16];
	int count = 0;

	desk_answered(desk);
	do
		kept[count] = answers[count];
	while (answers[count++]);
	desk_answer(desk, kept);
	desk_do(desk, ACT_PRICE);
}
#define PRICE(...) answer_with((const char *const[]){ __VA_ARGS__, NULL })

#define PIECE "Wall block 16 in x 8 in x 6 in, piece 1"
#define PALLET "Wall block 16 in x 8 in x 6 in, pallet 40"

static void check_offered(const char *part)
{
	ck_assert_msg(strstr(desk->offered, part), "no %s in %s", part, desk->offered);
}

/* ---- A plot without a book ------------------------------------------------------------------- */

START_TEST(a_plot_without_a_book_is_given_a_new_one_in_one_step)
{
	PRICE("File: yard.json; Currency: CAD", "");
	desk_says_whole(desk, "A new price book is in FOLDER/yard.json.");
	ck_assert_str_eq(desk->asked, "Which price?");
	check_offered(PIECE ": no price\n");
	check_offered("Turf, bulk 1 sq ft: no price\n");
	check_holds("\"currency\": \"CAD\"");
	ck_assert_str_eq(block_value(&desk->editor.plot->details.head, HEAD_PRICES)->as.text,
		"yard.json");
	desk_line(desk, "Costs", "In CAD", "Total of the priced");
	ck_assert_str_eq(editor_take_back(&desk->editor), "Price of an item");
	ck_assert(!block_value(&desk->editor.plot->details.head, HEAD_PRICES)->set);
	check_holds("\"currency\": \"CAD\"");
}
END_TEST

START_TEST(its_name_and_currency_are_offered_and_the_card_may_be_left)
{
	PRICE("");
	desk_asked_whole(desk, "A price book for this plot");
	ck_assert_str_eq(desk->offered, "File: prices.json\nCurrency: \n");
	ck_assert(editor_is_saved(&desk->editor));
	ck_assert(!file_stamp(book).exists);
	PRICE("File: yard.json", "");
	check_holds("\"currency\": \"XXX\"");
}
END_TEST

START_TEST(a_book_that_is_there_is_taken_as_it_is)
{
	put(OURS);
	PRICE("File: yard.json; Currency: CAD", "");
	desk_says_whole(desk, "The price book is FOLDER/yard.json.");
	check_holds("\"Ours.\"");
	check_offered(PIECE ": 2.50\n" PALLET ": no price\n");
	desk_line(desk, "Costs", "In USD", "Goods");
}
END_TEST

START_TEST(a_file_that_is_no_book_is_left_alone_and_told_with_its_place)
{
	put("{'format':\n  nonsense}");
	PRICE("File: none/yard.json", "");
	ck_assert_msg(strncmp(desk->fault, "Not written: cannot ", 20) == 0, "%s", desk->fault);
	PRICE("File: yard.json", "");
	ck_assert_msg(strstr(desk->fault, "No price book: ") && strstr(desk->fault,
		"yard.json:2:3: found nonsense}, expected a price book in JSON"), "%s",
		desk->fault);
	check_holds("nonsense}");
	ck_assert(editor_is_saved(&desk->editor));
}
END_TEST

START_TEST(more_goods_than_a_book_has_are_told_and_no_book_is_made)
{
	for (int i = 0; i < 501; i++) {
		struct text name = TEXT_EMPTY;

		text_print(&name, "Thing %d", i);
		details_add_extra(&editor_edit(&desk->editor)->details, text_take(&name),
			(struct amount){ 1000000, AMOUNT_GOODS_EACH });
	}
	editor_stroke(&desk->editor);
	desk_refresh(desk);
	PRICE("File: yard.json", "");
	ck_assert_msg(strncmp(desk->fault, "Not written: a price book for all that is bought: ", 50)
		== 0, "%s", desk->fault);
	ck_assert(!file_stamp(book).exists);
}
END_TEST

START_TEST(a_book_that_is_named_but_missing_is_made_under_its_name)
{
	lay_out(OURS);
	remove(book);
	PRICE("Currency: USD", "");
	desk_says_whole(desk, "A new price book is in FOLDER/yard.json.");
	check_holds("\"currency\": \"USD\"");
	check_offered(PIECE ": no price\n");
}
END_TEST

START_TEST(where_nothing_is_bought_there_is_nothing_to_price_and_no_book_is_made)
{
	struct desk *b = desk_new(ROWS { "..", "..", NULL });

	desk_do(b, ACT_PRICE);
	desk_says_whole(b, "Nothing is bought for this plot yet.");
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_PRICES)->set);
	desk_free(b);
}
END_TEST

/* ---- The card -------------------------------------------------------------------------------- */

/* 51 blocks at 2.75. */
START_TEST(a_price_is_written_and_counted_and_all_else_is_kept)
{
	struct text before, after;
	cJSON *expected, *got;

	lay_out(OURS);
	before = holds();
	PRICE(PIECE, "Price: 2.75", "");
	desk_says_whole(desk, "1 price written into yard.json.");
	after = holds();
	expected = cJSON_ParseWithLength(before.bytes, before.length);
	got = cJSON_ParseWithLength(after.bytes, after.length);
	cJSON_SetNumberValue(cJSON_GetObjectItem(cJSON_GetArrayItem(cJSON_GetObjectItem(
		cJSON_GetArrayItem(cJSON_GetObjectItem(expected, "goods"), 0), "packs"), 0),
		"price"), 2.75);
	ck_assert_msg(cJSON_Compare(expected, got, true), "%s", after.bytes);
	ck_assert_str_eq(desk_line(desk, "Costs", "Block and adhesive", "Wall block")->value,
		"140.25");
	cJSON_Delete(expected);
	cJSON_Delete(got);
	text_fini(&before);
	text_fini(&after);
}
END_TEST

START_TEST(the_card_shows_what_the_book_says)
{
	lay_out(OURS);
	PRICE(PALLET, "", "");
	ck_assert_str_eq(desk->asked, "Which price?");
	PRICE("Spoil, bulk 1 cu yd", "Spec: wet", "");
	check_holds("\"spec\": \"wet\"");
	check_holds("{ \"pack\": \"bulk\", \"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\", "
		"\"price\": 12.00 }");
}
END_TEST

/* Looks at the card, and leaves it. */
static char fields[1000], title[200];

static bool look(struct asker *asker, struct card *card)
{
	(void)asker;
	fields[0] = '\0';
	snprintf(title, sizeof title, "%s", card->title);
	for (int i = 0; i < card->count; i++)
		snprintf(fields + strlen(fields), sizeof fields - strlen(fields), "%s: %s (%s)\n",
			card->fields[i].label, card->fields[i].typed,
			card->fields[i].unset ? card->fields[i].unset : "");
	return false;
}

START_TEST(the_fields_have_the_pack_and_in_brackets_what_holds)
{
	lay_out(OURS);
	desk->asker.fill = look;
	PRICE(PALLET, "");
	ck_assert_str_eq(title, "Price of Wall block 16 in x 8 in x 6 in");
	ck_assert_str_eq(fields, "Price:  (none)\nSold in: pallet ()\nHolds: 40 ()\nStep:  "
		"(as is usual)\nWeight: 2000 lb (of what it holds)\nSupplier: Yard (collected)\n"
		"Spec: grey (nothing)\nCurrency: USD ()\n");
	PRICE("Turf, bulk 1 sq ft", "");
	ck_assert_str_eq(fields, "Price:  (none)\nSold in: bulk ()\nHolds: 1 sq ft ()\nStep:  "
		"(as is usual)\nWeight:  (of what it holds)\nSupplier:  (collected)\n"
		"Spec:  (nothing)\nCurrency: USD ()\n");
}
END_TEST

START_TEST(goods_that_the_book_has_not_get_a_row)
{
	lay_out(OURS);
	PRICE("Turf, bulk 1 sq ft", "Price: .95; Sold in: roll; Holds: 10", "");
	check_holds("{ \"item\": \"turf\", \"packs\": [ { \"pack\": \"roll\", \"size\": "
		"\"10 sq ft\", \"price\": 0.95 } ] }");
	check_offered("Turf, roll 10 sq ft: 0.95\n");
}
END_TEST

START_TEST(a_number_alone_is_in_what_the_thing_is_sold_by)
{
	lay_out(OURS);
	PRICE("Spoil, bulk 1 cu yd", "Holds: 2; Step: 1", "Topsoil, bag 1/2 cu ft",
		"Holds: 1.5; Price: 3", "");
	check_holds("\"size\": \"2 cu yd\", \"step\": \"1 cu yd\"");
	check_holds("\"size\": \"1.5 cu ft\", \"price\": 3.00");
}
END_TEST

START_TEST(another_pack_goes_beside_those_that_are_there)
{
	lay_out(OURS);
	PRICE("Another pack", "Wall block 16 in x 8 in x 6 in",
		"Sold in: pallet; Holds: 60; Price: 120; Supplier: Yard", "");
	check_offered("pallet 40: no price\nWall block 16 in x 8 in x 6 in, pallet 60: 120.00\n");
	ck_assert_str_eq(desk->asked, "Wall block 16 in x 8 in x 6 in is written. Which price "
		"next?");
	desk_says_whole(desk, "1 price written into yard.json.");
	PRICE("Another pack", "", "");
	ck_assert_str_eq(desk->all_asked, "Which price?\nAnother pack of what?\nWhich price?\n");
	PRICE("Another pack", "Wall block 16 in x 8 in x 6 in", "", "");
}
END_TEST

START_TEST(another_currency_is_said_to_be_that_of_all_prices)
{
	lay_out(OURS);
	PRICE(PIECE, "Currency: CAD", "");
	ck_assert_str_eq(desk->asked, "Wall block 16 in x 8 in x 6 in is written, and all prices "
		"are in CAD now. Which price next?");
	desk_line(desk, "Costs", "In CAD", "Goods");
	PRICE(PIECE, "Price: 2.75", "");
	ck_assert_str_eq(desk->asked, "Wall block 16 in x 8 in x 6 in is written. Which price "
		"next?");
}
END_TEST

START_TEST(a_row_for_all_sizes_says_so)
{
	lay_out(HEAD "'goods': [{'item': 'fence.panel', 'packs': [{'pack': 'piece', 'size': "
		"1}]}]}");
	desk_answer(desk, ROWS { "Fence the whole plan", NULL });
	desk_do(desk, ACT_FENCE);
	desk->asker.fill = look;
	PRICE("Fence panel 8 ft x 3 ft, piece 1", "");
	ck_assert_str_eq(title, "Price of Fence panel, any size");
}
END_TEST

START_TEST(the_list_begins_at_what_has_no_price_and_goes_on_from_there)
{
	lay_out(OURS);
	PRICE("");
	ck_assert_str_eq(desk->first, "Base stone, bag 1/2 cu ft");
	PRICE(PALLET, "Price: 80", "");
	ck_assert_msg(strncmp(desk->first, "Adhesive, cartridge", 19) == 0, "%s", desk->first);
	desk_says_whole(desk, "1 price written into yard.json.");
	PRICE("Adhesive, cartridge, piece 1", "Spec: grey", "");
	ck_assert_msg(strncmp(desk->first, "Topsoil", 7) == 0, "%s", desk->first);
}
END_TEST

/* Line by line of what was offered last; the last one is for another pack. */
static char lines[40][100];

static int read_lines(void)
{
	int count = 0;

	for (const char *at = desk->offered; *at; at = strchr(at, '\n') + 1)
		snprintf(lines[count++], sizeof *lines, "%.*s", (int)strcspn(at, ":\n"), at);
	return count - 1;
}

START_TEST(where_all_has_prices_the_list_goes_on_after_the_last_and_then_from_the_start)
{
	int count;

	lay_out(OURS);
	PRICE("");
	for (int i = 0; i < 40 && (strstr(desk->offered, "no price") ||
	    strstr(desk->offered, "not in the book")); i++) {
		char next[100];

		snprintf(next, sizeof next, "%s", desk->first);
		PRICE(next, "Price: 1", "");
	}
	count = read_lines();
	ck_assert_int_gt(count, 4);
	PRICE("");
	ck_assert_str_eq(desk->first, lines[0]);
	PRICE(lines[2], "Price: 2", "");
	ck_assert_str_eq(desk->first, lines[3]);
	PRICE(lines[2], "", "");
	ck_assert_str_eq(desk->first, lines[2]);
	PRICE(lines[count - 1], "Price: 2", "");
	ck_assert_str_eq(desk->first, lines[0]);
}
END_TEST

/* What somebody else writes while the card is filled in. */
static const char *meanwhile;
static bool (*usual_fill)(struct asker *asker, struct card *card);

static bool fill_late(struct asker *asker, struct card *card)
{
	if (!meanwhile)
		remove(book);
	else
		put(meanwhile);
	return usual_fill(asker, card);
}

static void while_filled(const char *text)
{
	meanwhile = text;
	usual_fill = desk->asker.fill;
	desk->asker.fill = fill_late;
}

static void check_refused(const char *typed, const char *fault)
{
	struct text before = holds(), after;

	PRICE(PIECE, typed, "", "");
	ck_assert_msg(strncmp(desk->fault, fault, strlen(fault)) == 0, "%s: %s", typed,
		desk->fault);
	after = holds();
	ck_assert_str_eq(before.bytes, after.bytes);
	text_fini(&before);
	text_fini(&after);
}

START_TEST(what_is_wrong_is_told_at_its_field_and_nothing_is_written)
{
	lay_out(OURS);
	check_refused("Price: cheap", "Price: found cheap, expected ");
	check_refused("Price: 1,250", "Price: 1,250 can be read in two ways");
	check_refused("Price: -3", "Price: found -3, expected ");
	check_refused("Price: 2.755", "Price: found 2.755, expected a number from 0 to 1000000 "
		"with at most 2 decimal places");
	check_refused("Price: 1000001", "Price: found 1000001, expected 0 to 1000000");
	check_refused("Sold in: sack", "Sold in: found sack, expected ");
	check_refused("Holds: ", "Holds: needed here");
	check_refused("Holds: a few", "Holds: found \"a few\", expected a whole number from 1 to "
		"1000000");
	check_refused("Holds: 0", "Holds: found 0, expected a whole number from 1 to 1000000");
	check_refused("Sold in: bulk", "Holds: found 1, expected another pack: what is counted is "
		"not sold in bulk");
	check_refused("Step: 1", "Step: found \"1\", expected no step: only bulk is sold in steps");
	check_refused("Weight: heavy", "Weight: found heavy, expected ");
	check_refused("Supplier: Quarry", "Supplier: found \"Quarry\", expected the name of one of "
		"the suppliers listed");
	check_refused("Currency: ", "Currency: needed here");
	check_refused("Currency: shillings", "Currency: found \"shillings\", expected text of 1 "
		"to 8 characters that can be shown");
}
END_TEST

START_TEST(a_metric_plot_has_metric_words_alone)
{
	plot_set(editor_edit(&desk->editor), 0, HEAD_UNITS, "metric");
	editor_stroke(&desk->editor);
	lay_out(HEAD "'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '50 L'}]}]}");
	PRICE("Mulch, bag 50 L", "Price: 4; Holds: 60", "");
	check_holds("\"size\": \"60 L\", \"price\": 4.00");
	PRICE("Mulch, bag 60 L", "Holds: 60 pots", "", "");
	ck_assert_msg(!strstr(desk->fault, "cu ") && strstr(desk->fault, "100 L or 6 m3"), "%s",
		desk->fault);
	while_filled(HEAD "'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': 'full'}]}"
		"]}");
	PRICE("Mulch, bag 60 L", "Price: 5", "");
	ck_assert_msg(!strstr(desk->fault, "cu ") && strstr(desk->fault, "100 L or 6 m3"), "%s",
		desk->fault);
}
END_TEST

START_TEST(a_card_that_changes_nothing_writes_nothing)
{
	struct file_stamp before, after;

	lay_out(OURS);
	before = file_stamp(book);
	PRICE(PIECE, "Price: 2.50", PIECE, "Supplier: ", "");
	after = file_stamp(book);
	ck_assert(file_stamp_equal(&before, &after));
	ck_assert_uint_eq(desk->editor.message.length, 0);
}
END_TEST

/* ---- A book that is spoilt, or changed meanwhile --------------------------------------------- */

START_TEST(a_half_written_book_is_told_with_its_place_and_stays_as_it_is)
{
	struct text before, after;

	lay_out(OURS);
	put("{'format': 'parterre-prices',\n 'version': 1, 'curr");
	before = holds();
	desk_do(desk, ACT_PRICE);
	ck_assert_msg(strstr(desk->editor.message.bytes, "No prices: ") && strstr(
		desk->editor.message.bytes, "yard.json:2:"), "%s", desk->editor.message.bytes);
	after = holds();
	ck_assert_str_eq(before.bytes, after.bytes);
	desk_line(desk, "Costs", "", "The price book yard.json is not there, or cannot be read.");
	desk_line(desk, "Costs", "", "Price of an item, in the list !, says why, or makes it.");
	text_fini(&before);
	text_fini(&after);
}
END_TEST

START_TEST(a_book_that_was_changed_is_read_anew_first)
{
	lay_out(OURS);
	put(HEAD "'goods': [{'item': 'turf', 'packs': [{'pack': 'roll', 'size': '9 sq ft', "
		"'price': 7}]}]}");
	PRICE("");
	check_offered("Turf, roll 9 sq ft: 7.00\n");
	check_offered(PIECE ": not in the book\n");
}
END_TEST

START_TEST(what_somebody_else_wrote_meanwhile_is_kept)
{
	lay_out(OURS);
	while_filled(HEAD "'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '50 L', "
		"'price': 6}]}, " BLOCKS "], 'rates': {'block': '0.1 h per each'}}");
	PRICE(PIECE, "Price: 3", "");
	desk_says_whole(desk, "1 price written into yard.json.");
	check_holds("{ \"size\": 1, \"pack\": \"piece\", \"price\": 3.00 }");
	check_holds("\"size\": \"50 L\", \"price\": 6.00");
	check_holds("\"rates\": { \"block\": \"0.1 h per each\" }");
}
END_TEST

START_TEST(where_somebody_else_changed_the_same_nothing_is_written)
{
	lay_out(OURS);
	while_filled(HEAD "'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'spec': 'grey', 'packs': [{'size': 1, 'pack': 'piece', 'price': 2.6}]}]}");
	PRICE(PIECE, "Price: 3", "", "");
	ck_assert_msg(strstr(desk->fault, "somebody else has changed this"), "%s", desk->fault);
	check_holds("2.6}");
	check_offered(PIECE ": 2.60\n");
}
END_TEST

START_TEST(a_book_that_is_spoilt_meanwhile_is_told_in_the_card)
{
	lay_out(OURS);
	while_filled("{'format': 'parterre-prices',\n 'goods': [");
	PRICE(PIECE, "Price: 3", "");
	ck_assert_msg(strstr(desk->fault, "Nothing written: ") && strstr(desk->fault,
		"yard.json:2:12: found nothing, expected a price book in JSON"), "%s",
		desk->fault);
	check_holds("\"goods\": [");
	desk_says_whole(desk, "No prices: FOLDER/yard.json:2:12: found nothing, expected a price "
		"book in JSON");
}
END_TEST

START_TEST(a_book_that_is_gone_meanwhile_is_told_and_not_made_again)
{
	lay_out(OURS);
	while_filled(NULL);
	PRICE(PIECE, "Price: 3", "", "");
	ck_assert_msg(strstr(desk->fault, "Nothing written: cannot open "), "%s", desk->fault);
	ck_assert(!file_stamp(book).exists);
	desk_asked_whole(desk, "A price book for this plot");
}
END_TEST

/* Its own price stands in the plant's card, not in the book. */
START_TEST(a_plant_with_a_price_of_its_own_is_changed_in_its_card)
{
	plot_add_lines(editor_edit(&desk->editor), "plant v \"Lavender\"\n  price 3\n  at 8,1\n"
		"plant r \"Rose\"\n  price 4.5\n  at 9,1\n");
	editor_stroke(&desk->editor);
	lay_out(HEAD "'goods': [" BLOCKS ", {'item': 'plant', 'name': 'Rose', 'packs': [{'pack': "
		"'piece', 'size': 1, 'price': 9}]}]}");
	desk_line(desk, "Costs", "Plants", "Rose");
	PRICE("Rose", "Price of one: 6", "");
	check_offered("Rose: 6.00 by its card\n");
	check_offered("Lavender: 3.00 by its card\n");
	check_holds("\"price\": 9}");
	PRICE("Rose", "Price of one: ", "");
	check_offered("Rose, piece 1: 9.00\n");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_price");
	TCase *none = suite_case(suite, "none"), *card = suite_case(suite, "card");
	TCase *late = suite_case(suite, "meanwhile");

	tcase_add_checked_fixture(none, setup, teardown);
	tcase_add_test(none, a_plot_without_a_book_is_given_a_new_one_in_one_step);
	tcase_add_test(none, its_name_and_currency_are_offered_and_the_card_may_be_left);
	tcase_add_test(none, a_book_that_is_there_is_taken_as_it_is);
	tcase_add_test(none, a_file_that_is_no_book_is_left_alone_and_told_with_its_place);
	tcase_add_test(none, more_goods_than_a_book_has_are_told_and_no_book_is_made);
	tcase_add_test(none, a_book_that_is_named_but_missing_is_made_under_its_name);
	tcase_add_test(none, where_nothing_is_bought_there_is_nothing_to_price_and_no_book_is_made);
	tcase_add_checked_fixture(card, setup, teardown);
	tcase_add_test(card, a_price_is_written_and_counted_and_all_else_is_kept);
	tcase_add_test(card, the_card_shows_what_the_book_says);
	tcase_add_test(card, the_fields_have_the_pack_and_in_brackets_what_holds);
	tcase_add_test(card, goods_that_the_book_has_not_get_a_row);
	tcase_add_test(card, a_number_alone_is_in_what_the_thing_is_sold_by);
	tcase_add_test(card, another_pack_goes_beside_those_that_are_there);
	tcase_add_test(card, another_currency_is_said_to_be_that_of_all_prices);
	tcase_add_test(card, a_row_for_all_sizes_says_so);
	tcase_add_test(card, the_list_begins_at_what_has_no_price_and_goes_on_from_there);
	tcase_add_test(card,
		where_all_has_prices_the_list_goes_on_after_the_last_and_then_from_the_start);
	tcase_add_test(card, what_is_wrong_is_told_at_its_field_and_nothing_is_written);
	tcase_add_test(card, a_metric_plot_has_metric_words_alone);
	tcase_add_test(card, a_card_that_changes_nothing_writes_nothing);
	tcase_add_test(card, a_plant_with_a_price_of_its_own_is_changed_in_its_card);
	tcase_add_checked_fixture(late, setup, teardown);
	tcase_add_test(late, a_half_written_book_is_told_with_its_place_and_stays_as_it_is);
	tcase_add_test(late, a_book_that_was_changed_is_read_anew_first);
	tcase_add_test(late, what_somebody_else_wrote_meanwhile_is_kept);
	tcase_add_test(late, where_somebody_else_changed_the_same_nothing_is_written);
	tcase_add_test(late, a_book_that_is_spoilt_meanwhile_is_told_in_the_card);
	tcase_add_test(late, a_book_that_is_gone_meanwhile_is_told_and_not_made_again);
	return suite;
}
