/* Going to what would not work on the ground, and to what a page tells of. */
#include "report/words/snag_words.h"
#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/shapes.h"

#include "base/memory.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define ROWS (const char *const[])

/* A bed that is too narrow for its wall, a narrow path, and a fixture without a path. */
static struct desk *garden(void)
{
	return desk_new(ROWS { "bbbb..p...", "b...S.p...", "b.........", "......bbbb", "......bbbb",
		NULL });
}

static const struct snag_list *snags_of(const struct desk *b)
{
	return &b->editor.takeoff.snags;
}

static void check_at(const struct desk *b, struct place cell)
{
	ck_assert_int_eq(b->editor.cursor.x, cell.x);
	ck_assert_int_eq(b->editor.cursor.y, cell.y);
}

/* ---- The next snag --------------------------------------------------------------------------- */

static void check_said(struct desk *b, size_t number)
{
	const struct snag *snag = &snags_of(b)->list[number];
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(&b->editor, &words);

	ck_assert_str_eq(b->editor.message.bytes, say(&report, "Snag %zu of %zu: %s %s", number + 1,
		snags_of(b)->count, snag_sentence(&report, snag),
		snag_cure_sentence(&report, snag)));
	check_at(b, snag->cell);
	arena_clear(&words);
}

START_TEST(a_comma_goes_from_snag_to_snag_and_from_the_last_to_the_first)
{
	struct desk *b = garden();
	size_t count = snags_of(b)->count;

	ck_assert_uint_ge(count, 4);
	b->editor.cursor = (struct place){ 9, 0 };
	for (size_t i = 0; i <= 2 * count; i++) {
		desk_type(b, ",");
		check_said(b, i % count);
	}
	desk_free(b);
}
END_TEST

START_TEST(they_come_in_the_order_of_the_page_and_as_many_as_it_counts)
{
	struct desk *b = garden();
	const struct page *page = desk_page(b, "Snags");
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(&b->editor, &words);
	size_t number = 0;

	for (size_t i = 0; i < page->count; i++) {
		if (page->lines[i].kind != LINE_FIGURE)
			continue;
		for (int left = atoi(page->lines[i].value); left > 0; left--, number++)
			ck_assert_str_eq(snag_heading(&report,
				snags_of(b)->list[number].code), page->lines[i].label);
	}
	ck_assert_uint_eq(number, snags_of(b)->count);
	arena_clear(&words);
	desk_free(b);
}
END_TEST

START_TEST(several_at_one_cell_are_told_in_turn)
{
	struct desk *b = desk_new(ROWS { ".....", "..S..", NULL });

	plot_set(editor_edit(&b->editor), 'S', FIXTURE_HEIGHT, "9 ft");
	editor_stroke(&b->editor);
	for (int round = 0; round < 2; round++) {
		desk_type(b, ",");
		desk_says_whole(b, "Snag 1 of 2: 9 ft high and 1 ft across its narrower way, "
			"over 3 ft: fix it against tipping. Cure: change the plan, or Height on "
			"the card S S.");
		desk_type(b, ",");
		desk_says_whole(b, "Snag 2 of 2: No path touches this fixture. Cure: change the "
			"plan.");
		check_at(b, (struct place){ 2, 1 });
	}
	desk_free(b);
}
END_TEST

/* The first number of a snag at another cell than the one before. */
static size_t number_elsewhere(const struct desk *b)
{
	size_t number = 1;

	while (snags_of(b)->list[number].cell.x == snags_of(b)->list[0].cell.x &&
	       snags_of(b)->list[number].cell.y == snags_of(b)->list[0].cell.y)
		number++;
	return number;
}

START_TEST(it_is_the_one_after_the_snag_that_the_cursor_was_put_on)
{
	struct desk *b = garden();
	size_t number = number_elsewhere(b);

	b->editor.cursor = snags_of(b)->list[number].cell;
	desk_type(b, ",");
	check_said(b, snag_at(snags_of(b), snags_of(b)->list[number].cell, 0) + 1);
	desk_free(b);
}
END_TEST

START_TEST(from_elsewhere_it_is_the_same_again)
{
	struct desk *b = garden();

	desk_type(b, ",,,");
	check_said(b, b->editor.snag);
	b->editor.cursor = (struct place){ 9, 0 };
	ck_assert_uint_eq(b->editor.snag, 3);
	desk_type(b, ",");
	check_said(b, 3);
	desk_free(b);
}
END_TEST

START_TEST(where_one_is_cured_the_one_after_has_its_number)
{
	struct desk *b = desk_new(ROWS { "p...S", ".....", "S....", NULL });

	/* Both fixtures are without a path; the path leads to nothing and is narrow. */
	for (b->editor.cursor = (struct place){ 1, 1 };
	     b->editor.message.length == 0 || !strstr(b->editor.message.bytes, "No path touches");)
		desk_type(b, ",");
	check_at(b, (struct place){ 4, 0 });
	desk_press(b, PRESS_DELETE);
	desk_type(b, ",");
	desk_says_whole(b, "Snag 2 of 2: No path touches this fixture. Cure: change the plan.");
	check_at(b, (struct place){ 0, 2 });
	desk_free(b);
}
END_TEST

START_TEST(where_there_is_none_it_says_so)
{
	struct desk *b = desk_new(ROWS { "...", NULL });

	b->editor.cursor = (struct place){ 2, 0 };
	desk_type(b, ",");
	ck_assert_str_eq(b->editor.message.bytes, "There is no snag.");
	check_at(b, (struct place){ 2, 0 });
	desk_free(b);
}
END_TEST

START_TEST(what_is_not_counted_yet_is_counted_first_or_given_up)
{
	struct desk *b = garden();

	editor_edit(&b->editor)->ground.cells[9] = 'S';
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 5, 4 };
	b->gives_up = true;
	acts_press(&b->editor, ',');
	ck_assert_str_eq(b->editor.message.bytes, "Given up: it is not counted yet.");
	check_at(b, (struct place){ 5, 4 });
	b->gives_up = false;
	acts_press(&b->editor, ',');
	check_said(b, 0);
	desk_free(b);
}
END_TEST

/* ---- What cures it --------------------------------------------------------------------------- */

/* How many kinds a code has, by the enums of takeoff/common/snags.h. */
static unsigned int kinds_of(enum snag_code code)
{
	switch (code) {
	case SNAG_WALL_CORNER:
		return WALL_CORNER_CAP + 1;
	case SNAG_WALL_HIGH:
		return WALL_HIGH_BOTH + 1;
	case SNAG_WALL_SLENDER:
		return WALL_SLENDER_CLAY + 1;
	case SNAG_FILL_NONE:
		return FILL_NONE_AMENDED + 1;
	case SNAG_PATH_CUT_OFF:
		return PATH_TO_NO_HOUSE + 1;
	case SNAG_DROP_CUT_OFF:
		return DROP_WHOLLY + 1;
	case SNAG_PLANT_PLACE:
		return PLANT_IN_WALL + 1;
	case SNAG_FENCE_TIGHT: case SNAG_HOLE_WALL: case SNAG_PLANT_SOIL: case SNAG_DRIFT_EMPTY:
	case SNAG_WATER_LINE: case SNAG_TRENCH_HOLE:
		return 2;
	default:
		return 1;
	}
}

/* A region of the class that such a snag is of; NO_REGION where that is none. */
static int region_of(const struct desk *b, enum snag_code code)
{
	static const struct {
		const char *word;
		enum plot_class class;
	} classes[] = {
		{ "wall-", CLASS_BED }, { "bed-", CLASS_BED }, { "cap-", CLASS_BED },
		{ "fill-", CLASS_BED }, { "soil-", CLASS_BED }, { "floor-", CLASS_BED },
		{ "hole-", CLASS_BED }, { "path-", CLASS_PATH }, { "lawn-", CLASS_LAWN },
		{ "fixture-", CLASS_FIXTURE }, { "plant-", CLASS_BED }, { "drift-", CLASS_BED },
		{ "water-", CLASS_BED },
	};
	const struct survey *survey = &b->editor.takeoff.survey;

	for (size_t i = 0; i < sizeof classes / sizeof *classes; i++)
		for (int r = 0; r < survey->region_count; r++)
			if (survey->regions[r].entry->class == classes[i].class &&
			    strncmp(snag_word(code), classes[i].word,
				strlen(classes[i].word)) == 0)
				return r;
	return NO_REGION;
}

static bool offers_field(const struct desk *b, const char *label)
{
	char line[120];

	snprintf(line, sizeof line, "\n%s: ", label);
	return strstr(b->offered, line) || strncmp(b->offered, line + 1, strlen(line + 1)) == 0;
}

/* Opens the card that the cure names, and looks for each field that it names. */
static void check_cure(struct desk *b, const struct snag *snag)
{
	const struct cure *cure = snag_cure(snag);
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(&b->editor, &words);
	const char *card = snag_card(&report, snag);
	const char *said = snag_cure_sentence(&report, snag);

	ck_assert(card);
	desk_answer(b, (const char *const[]){ card, "", NULL });
	acts_do(&b->editor, ACT_CARDS);
	ck_assert_ptr_nonnull(strstr(said, card));
	for (int i = 0; i < cure->count; i++) {
		const char *label = attribute_row(cure->attributes[i])->label;

		ck_assert_msg(offers_field(b, label), "%s: %s has no field %s of:\n%s",
			snag_word(snag->code), card, label, b->offered);
		ck_assert_ptr_nonnull(strstr(said, label));
	}
	desk_answered(b);
	arena_clear(&words);
}

START_TEST(the_card_that_a_cure_names_has_the_fields_that_it_names)
{
	const enum snag_code code = (enum snag_code)_i;
	struct desk *b = desk_new(ROWS { "b.p.l.S", NULL });

	details_add_fence(&editor_edit(&b->editor)->details, memory_string("Pickets"));
	plants_add(&editor_edit(&b->editor)->details.plants, 'r', memory_string("Rose"));
	editor_stroke(&b->editor);
	desk_refresh(b);
	for (unsigned int kind = 0; kind < kinds_of(code); kind++) {
		const struct snag snag = { .code = code, .kind = kind & UINT8_MAX, .fence = 0,
			.region = region_of(b, code),
			.figures = (const nm[SNAG_FIGURES]){ 0 } };
		const struct cure *cure = snag_cure(&snag);

		ck_assert(cure->by_drawing || cure->by_levels || cure->count > 0);
		if (cure->count > 0)
			check_cure(b, &snag);
	}
	desk_free(b);
}
END_TEST

/* ---- Going there ----------------------------------------------------------------------------- */

static void turn_to(struct desk *b, const char *page)
{
	desk_answer(b, (const char *const[]){ page, NULL });
	desk_do(b, ACT_PAGES);
	desk_answered(b);
}

static void go_to(struct desk *b, const char *answer)
{
	desk_answer(b, (const char *const[]){ answer, NULL });
	desk_do(b, ACT_GO_THERE);
	desk_answered(b);
}

START_TEST(a_bed_of_the_page_is_gone_to)
{
	struct desk *b = garden();

	turn_to(b, "Beds");
	go_to(b, "B2 b b");
	desk_asked_whole(b, "The page Beds: go where?");
	ck_assert_str_eq(b->offered,
		"B1 b b: 0 in, 0 in\nB2 b b: 6 ft, 3 ft\n");
	check_at(b, (struct place){ 6, 3 });
	desk_says_whole(b, "B2 b b");
	go_to(b, "");
	check_at(b, (struct place){ 6, 3 });
	desk_free(b);
}
END_TEST

START_TEST(kinds_of_plants_in_one_bed_are_told_apart)
{
	struct desk *b = desk_new((const char *const[]){ "bbbb..", "bbbb..", NULL });

	plot_add_lines(editor_edit(&b->editor), "plant r \"Rose\"\n  at 1,0\n"
		"plant t \"Thyme\"\n  at 3,1\n");
	editor_stroke(&b->editor);
	desk_refresh(b);
	turn_to(b, "Planting");
	go_to(b, "");
	ck_assert_str_eq(b->offered, "B1 b b Rose: 0 in, 0 in\nB1 b b Thyme: 0 in, 0 in\n");
	desk_free(b);
}
END_TEST

START_TEST(each_snag_of_the_page_is_gone_to)
{
	struct desk *b = garden();
	const struct page *page = desk_page(b, "Snags");
	int notes = 0;

	turn_to(b, "Snags");
	for (size_t i = 0; i < page->count; i++) {
		char label[400];

		if (page->lines[i].kind != LINE_NOTE ||
			strncmp(page->lines[i].label, "Rule", 4) == 0)
			continue;
		snprintf(label, sizeof label, "%s", page->lines[i].label);
		go_to(b, label);
		desk_says(b, label);
		check_at(b, page->lines[i].at);
		ck_assert_uint_lt(snag_at(snags_of(b), b->editor.cursor, 0), snags_of(b)->count);
		notes++;
	}
	ck_assert_int_ge(notes, 4);
	desk_free(b);
}
END_TEST

START_TEST(walls_fill_and_fences_are_gone_to)
{
	struct desk *b = desk_new(ROWS { "..........", ".bbbbbbbb.", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", "..........", NULL });

	desk_answer(b, (const char *const[]){ "Top", NULL });
	b->editor.cursor = (struct place){ 4, 5 };
	desk_do(b, ACT_FENCE_LAY);
	turn_to(b, "Walls");
	go_to(b, "B1 b b");
	check_at(b, (struct place){ 1, 1 });
	b->editor.cursor = (struct place){ 0, 0 };
	turn_to(b, "Fill");
	go_to(b, "B1 b b");
	check_at(b, (struct place){ 1, 1 });
	turn_to(b, "Fence");
	go_to(b, "Fence");
	check_at(b, (struct place){ 4, 5 });
	desk_free(b);
}
END_TEST

START_TEST(a_page_without_places_says_so)
{
	struct desk *b = garden();

	turn_to(b, "Areas");
	b->editor.cursor = (struct place){ 3, 2 };
	desk_do(b, ACT_GO_THERE);
	ck_assert_str_eq(b->editor.message.bytes,
		"The page Areas names no place on the plan. ; picks another page.");
	check_at(b, (struct place){ 3, 2 });
	desk_free(b);
}
END_TEST

static int listed;

static int pick_last(struct asker *asker, const struct question *question)
{
	(void)asker;
	listed = question->count;
	return question->count - 1;
}

START_TEST(one_of_thousands_of_beds_is_gone_to)
{
	struct desk *b = desk_new(ROWS { "b", NULL });
	const struct survey *survey = &b->editor.takeoff.survey;
	struct plot plot;

	shape_small_beds(&plot, 1300);
	editor_take(&b->editor, &plot, true);
	turn_to(b, "Beds");
	b->asker.choose = pick_last;
	desk_do(b, ACT_GO_THERE);
	ck_assert_int_gt(listed, 2000);
	ck_assert_int_eq(listed, survey->region_count);
	check_at(b, survey->regions[listed - 1].first_cell);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_snag");
	TCase *next = suite_case(suite, "next"), *cures = suite_case(suite, "cures");
	TCase *there = suite_case(suite, "there");

	tcase_add_test(next, a_comma_goes_from_snag_to_snag_and_from_the_last_to_the_first);
	tcase_add_test(next, they_come_in_the_order_of_the_page_and_as_many_as_it_counts);
	tcase_add_test(next, several_at_one_cell_are_told_in_turn);
	tcase_add_test(next, it_is_the_one_after_the_snag_that_the_cursor_was_put_on);
	tcase_add_test(next, from_elsewhere_it_is_the_same_again);
	tcase_add_test(next, where_one_is_cured_the_one_after_has_its_number);
	tcase_add_test(next, where_there_is_none_it_says_so);
	tcase_add_test(next, what_is_not_counted_yet_is_counted_first_or_given_up);
	tcase_add_loop_test(cures, the_card_that_a_cure_names_has_the_fields_that_it_names, 0,
		SNAG_CODES);
	tcase_add_test(there, a_bed_of_the_page_is_gone_to);
	tcase_add_test(there, kinds_of_plants_in_one_bed_are_told_apart);
	tcase_add_test(there, each_snag_of_the_page_is_gone_to);
	tcase_add_test(there, walls_fill_and_fences_are_gone_to);
	tcase_add_test(there, a_page_without_places_says_so);
	tcase_add_test(there, one_of_thousands_of_beds_is_gone_to);
	return suite;
}
