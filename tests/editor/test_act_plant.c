/* Planting without a terminal: kinds by their cards, specimens by Space and Delete, bands of beds
 * by questions; what is said, and what the cell then says. */
#include "support/desk.h"
#include "support/plots.h"
#include "support/plot_check.h"
#include "support/runner.h"

#include "editor/here.h"
#include "editor/marks.h"

#include <string.h>

#define ROWS (const char *[])
#define ANSWERS (const char *[])

static struct desk *sit(void)
{
	return desk_new(ROWS { "bb.p.bb", "bb...bb", "..S....", NULL });
}

static void go(struct desk *b, int x, int y)
{
	b->editor.cursor = (struct place){ x, y };
}

static const struct plant *plant(const struct desk *b, int index)
{
	ck_assert_int_lt(index, (int)b->editor.plot->details.plants.count);
	return &b->editor.plot->details.plants.items[index];
}

static void add_rose(struct desk *b)
{
	desk_answer(b, ANSWERS { "Name: Rose; Letter: r; Spacing: 3 ft; Height, grown: 4 ft",
		NULL });
	desk_do(b, ACT_PLANT_ADD);
	desk_answered(b);
}

/* What is said of where one is; to be freed. */
static struct text text_here(struct desk *b)
{
	struct text text = TEXT_EMPTY;

	desk_refresh(b);
	here_words(&b->editor, &text);
	/* blanks that lines are not broken at */
	for (char *tie; text.length && (tie = strstr(text.bytes, "\302\240"));) {
		*tie = ' ';
		memmove(tie + 1, tie + 2, strlen(tie + 1));
	}
	return text;
}

static void check_here(struct desk *b, const char *words)
{
	struct text text = text_here(b);

	ck_assert_msg(strstr(text.bytes, words), "%s", text.bytes);
	text_fini(&text);
}

/* ---- Kinds ----------------------------------------------------------------------------------- */

START_TEST(a_new_plant_is_in_hand)
{
	struct desk *b = sit();

	add_rose(b);
	desk_says_whole(b, "In hand: r Rose. Space sets one at the cursor; Plant a drift fills a "
		"bed with it.");
	ck_assert_int_eq(b->editor.hand, 'r');
	ck_assert_str_eq(plant(b, 0)->name, "Rose");
	ck_assert_int_eq(plant_spacing(plant(b, 0), UNITS_IMPERIAL), 3 * NM_PER_FOOT);
	ck_assert_int_eq(plant_spread(plant(b, 0), UNITS_IMPERIAL), 3 * NM_PER_FOOT);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_uint_eq(b->editor.plot->details.plants.count, 0);
	ck_assert_int_eq(b->editor.hand, OPEN_GROUND);
	desk_free(b);
}
END_TEST

START_TEST(a_letter_of_ground_is_no_letter_of_a_plant_and_the_other_way)
{
	struct desk *b = sit();

	desk_answer(b, ANSWERS { "Name: Broom; Letter: b", "", NULL });
	desk_do(b, ACT_PLANT_ADD);
	ck_assert_uint_eq(b->editor.message.length, 0); /* none is in hand */
	ck_assert_ptr_nonnull(strstr(b->fault, "Letter: b is taken; free are a c d"));
	desk_answer(b, ANSWERS { "Name: Broom; Letter: B", "", NULL });
	desk_do(b, ACT_PLANT_ADD);
	ck_assert_ptr_nonnull(strstr(b->fault, "expected a small letter, as a plant has it"));
	desk_answer(b, ANSWERS { "Name: Broom; Letter: q", NULL });
	desk_do(b, ACT_PLANT_ADD);
	desk_answer(b, ANSWERS { "Add an entry", "A bed", "Name: Quoin; Letter: q", "", NULL });
	desk_type(b, "#");
	ck_assert_ptr_nonnull(strstr(b->fault, "q is taken"));
	plot_check(b->editor.plot);
	desk_free(b);
}
END_TEST

START_TEST(a_plant_is_changed_by_its_card_and_removed)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 0, 0);
	desk_type(b, " ");
	desk_answer(b, ANSWERS { "r Rose", "Letter: s; Name: Shrub rose; Pattern: square", NULL });
	desk_type(b, "#");
	desk_answered(b);
	ck_assert_int_eq(b->editor.hand, 's');
	ck_assert_int_eq(plant(b, 0)->letter, 's');
	ck_assert_str_eq(plant(b, 0)->name, "Shrub rose");
	ck_assert_int_eq(block_number(&plant(b, 0)->block, PLANT_PATTERN), PATTERN_SQUARE);
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 1);
	desk_answer(b, ANSWERS { "Remove a plant", "s Shrub rose", NULL });
	desk_type(b, "#");
	desk_answered(b);
	ck_assert_ptr_nonnull(strstr(b->offered, "1 single"));
	ck_assert_uint_eq(b->editor.plot->details.plants.count, 0);
	ck_assert_int_eq(b->editor.hand, OPEN_GROUND);
	desk_free(b);
}
END_TEST

/* Lifted with the images; what was not emptied stays. */
START_TEST(its_card_lists_what_is_planted_and_lifts_what_is_emptied)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 1, 1);
	desk_type(b, "| ");
	desk_answer(b, ANSWERS { "Its front", "All beds of b b", NULL });
	desk_do(b, ACT_DRIFT);
	desk_answer(b, ANSWERS { "Its back", "This bed", NULL });
	desk_do(b, ACT_DRIFT);
	ck_assert_uint_eq(plant(b, 0)->drift_count, 3);
	desk_answer(b, ANSWERS { "r Rose", "Drift: all of it", "", NULL });
	desk_type(b, "#");
	desk_answered(b);
	ck_assert_ptr_nonnull(strstr(b->offered, "\nDrift: front of every bed b"));
	ck_assert_ptr_nonnull(strstr(b->offered, "\nDrift: back of the bed at "));
	ck_assert_ptr_nonnull(strstr(b->offered, "\nSingle one at: "));
	ck_assert_ptr_nonnull(strstr(b->fault, "Drift: leave it as it is, or empty it"));
	ck_assert_uint_eq(plant(b, 0)->drift_count, 3);
	desk_answer(b, ANSWERS { "r Rose", "Single one at: ; Spacing: 2 ft", NULL });
	desk_type(b, "#");
	desk_answered(b);
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 0);
	ck_assert_uint_eq(plant(b, 0)->drift_count, 3);
	ck_assert_int_eq(plant_spacing(plant(b, 0), UNITS_IMPERIAL), 2 * NM_PER_FOOT);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 2);
	ck_assert_int_eq(plant_spacing(plant(b, 0), UNITS_IMPERIAL), 3 * NM_PER_FOOT);
	desk_free(b);
}
END_TEST

START_TEST(the_list_of_plants_says_how_many_stand_and_fill)
{
	struct desk *b = sit();

	plot_add_lines(editor_edit(&b->editor), "plant r \"Rose\"\n  at 0,0\n  drift b front\n"
		"plant s \"Sage\"\n  drift b front\n  drift b back\n"
		"plant t \"Thyme\"\n  at 0,1\n  at 1,1\nplant u \"Yew\"\n");
	editor_stroke(&b->editor);
	desk_answer(b, ANSWERS { "Remove a plant", "", NULL });
	desk_type(b, "#");
	ck_assert_str_eq(b->offered, "r Rose: 1 single, 1 band\ns Sage: 2 bands\n"
		"t Thyme: 2 single\nu Yew: \n");
	desk_free(b);
}
END_TEST

/* ---- Specimens ------------------------------------------------------------------------------- */

START_TEST(space_sets_a_specimen_and_delete_lifts_it_before_the_ground)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 1, 1);
	desk_type(b, "| ");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 2);
	ck_assert(place_equal(plant(b, 0)->specimens[1], (struct place){ 5, 1 }));
	check_here(b, "Plant: r Rose, 3 ft wide, 4 ft tall\n");
	desk_type(b, " ");
	desk_says_whole(b, "It stands there already.");
	desk_press(b, PRESS_DELETE);
	desk_says_whole(b, "Lifted: r Rose. Delete again lifts the ground.");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 0);
	desk_check(b, ROWS { "bb.p.bb", "bb...bb", "..S....", NULL });
	desk_press(b, PRESS_DELETE);
	desk_check(b, ROWS { "bb.p.bb", "b.....b", "..S....", NULL });
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Lift; 3 more can be.");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 2);
	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "Taken back: Lay (r Rose); 2 more can be.");
	desk_free(b);
}
END_TEST

START_TEST(no_plant_stands_on_a_path_and_no_image_does)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 3, 0);
	desk_type(b, " ");
	desk_says_whole(b, "No plant stands on p p: go to a bed, a lawn or open ground.");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 0);
	go(b, 4, 2);
	desk_type(b, "| ");
	desk_says_whole(b, "Images on paths or fixtures are left out.");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 1);
	desk_free(b);
}
END_TEST

/* Shapes are of ground; nothing is changed by them while a plant is in hand. */
START_TEST(shapes_are_not_laid_of_plants)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 1, 1);
	desk_type(b, "=");
	desk_says_whole(b, "r Rose is a plant: Space sets one at the cursor, and Plant a drift "
		"(!) fills a bed with it. For this take ground in hand.");
	ck_assert(!b->editor.is_trailing);
	desk_type(b, "*");
	desk_says_whole(b, "r Rose is a plant: Space sets one at the cursor, and Plant a drift "
		"(!) fills a bed with it. For this take ground in hand.");
	desk_press(b, PRESS_ENTER);
	desk_answer(b, ANSWERS { "Fill it", NULL });
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "r Rose is a plant: Space sets one at the cursor, and Plant a drift "
		"(!) fills a bed with it. For this take ground in hand.");
	ck_assert(b->editor.is_pegged);
	desk_press(b, PRESS_ESCAPE);
	/* and taking one ends a trail */
	desk_type(b, "b=r");
	ck_assert(!b->editor.is_trailing);
	desk_check(b, ROWS { "bb.p.bb", "bb...bb", "..S....", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_letter_that_is_nobodys_is_told_with_plants_among_the_rest)
{
	struct desk *b = sit();

	add_rose(b);
	desk_type(b, "bz");
	desk_says_whole(b, "z is not in the legend: b b, p p, S S, r Rose, . open ground.");
	ck_assert_int_eq(b->editor.hand, 'b');
	desk_type(b, "r");
	desk_says_whole(b, "In hand: r Rose.");
	desk_free(b);
}
END_TEST

START_TEST(a_specimen_is_marked_after_snags_and_before_axes)
{
	struct desk *b = sit();
	struct mirror mirror;

	add_rose(b);
	go(b, 3, 1);
	desk_type(b, "| ");
	go(b, 0, 2);
	mirror = mirror_of(b->editor.plot);
	editor_draw(&b->editor);
	ck_assert_int_eq(mark_at(&b->editor, &mirror, 3, 1), MARK_PLANT);
	ck_assert_int_eq(mark_at(&b->editor, &mirror, 3, 2), MARK_UPRIGHT);
	b->editor.is_pegged = true;
	b->editor.peg = (struct place){ 3, 1 };
	ck_assert_int_eq(mark_at(&b->editor, &mirror, 3, 1), MARK_PEG);
	desk_free(b);
}
END_TEST

START_TEST(folding_brings_plants_over)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 0, 1);
	desk_type(b, " |");
	desk_type(b, "&");
	ck_assert_uint_eq(plant(b, 0)->specimen_count, 2);
	ck_assert(place_equal(plant(b, 0)->specimens[1], (struct place){ 6, 1 }));
	desk_free(b);
}
END_TEST

START_TEST(a_crop_that_takes_plants_asks_first)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 4, 2);
	desk_type(b, " ");
	desk_answer(b, ANSWERS { "Each side by measure", "Bottom: -1 ft", "Leave the plan as it is",
		NULL });
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "1 cell of fixture, 1 plant would go.");
	desk_free(b);
}
END_TEST

/* ---- Bands ----------------------------------------------------------------------------------- */

START_TEST(a_band_of_a_bed_is_filled_with_its_image_and_emptied)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 1, 0);
	desk_type(b, "|");
	desk_answer(b, ANSWERS { "Its front", "This bed", NULL });
	desk_do(b, ACT_DRIFT);
	desk_answered(b);
	desk_says_whole(b, "r Rose fills it; Backspace takes it back.");
	ck_assert_uint_eq(plant(b, 0)->drift_count, 2);
	check_here(b, "In front: r Rose\n");
	go(b, 6, 1); /* another cell of the image */
	check_here(b, "In front: r Rose\n");
	desk_answer(b, ANSWERS { "Its back", "All beds of b b", NULL });
	desk_do(b, ACT_DRIFT);
	ck_assert_uint_eq(plant(b, 0)->drift_count, 3);
	check_here(b, "At the back: r Rose\n");
	desk_answer(b, ANSWERS { "r Rose: front of bed B1", NULL });
	desk_do(b, ACT_DRIFT_OUT);
	desk_says_whole(b, "Lifted: r Rose: front of bed B1; Backspace takes it back.");
	ck_assert_uint_eq(plant(b, 0)->drift_count, 1);
	desk_free(b);
}
END_TEST

START_TEST(only_a_bed_is_filled)
{
	struct desk *b = sit();

	add_rose(b);
	go(b, 2, 1);
	desk_do(b, ACT_DRIFT);
	desk_says_whole(b, "Go to the bed that is to be filled, and pick this again.");
	desk_do(b, ACT_DRIFT_OUT);
	desk_says_whole(b, "There is no drift yet.");
	desk_free(b);
}
END_TEST

START_TEST(without_a_plant_in_hand_it_is_asked_which)
{
	struct desk *b = sit();

	/* the first one has its card at once; it stays where the band is not told */
	desk_answer(b, ANSWERS { "Name: Thyme; Letter: t", "", NULL });
	desk_do(b, ACT_DRIFT);
	desk_answered(b);
	ck_assert_uint_eq(plant(b, 0)->drift_count, 0);
	ck_assert_int_eq(b->editor.hand, 't');
	desk_type(b, "b");
	desk_answer(b, ANSWERS { "t Thyme", "All of it", "This bed", NULL });
	desk_do(b, ACT_DRIFT);
	desk_answered(b);
	ck_assert_uint_eq(plant(b, 0)->drift_count, 1);
	desk_answer(b, ANSWERS { "t Thyme", "All of it", "This bed", NULL });
	desk_do(b, ACT_DRIFT);
	desk_says_whole(b, "It is filled so already.");
	/* wherever one is in this bed, and in no other */
	for (int x = 0; x < 7; x++) {
		struct text text;

		go(b, x, 0);
		text = text_here(b);
		ck_assert_int_eq(strstr(text.bytes, "All of it: t Thyme\n") != NULL, x < 2);
		text_fini(&text);
	}
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act plant");
	TCase *kinds = suite_case(suite, "kinds"), *specimens = suite_case(suite, "specimens"),
		*bands = suite_case(suite, "bands");

	tcase_add_test(kinds, a_new_plant_is_in_hand);
	tcase_add_test(kinds, a_letter_of_ground_is_no_letter_of_a_plant_and_the_other_way);
	tcase_add_test(kinds, a_plant_is_changed_by_its_card_and_removed);
	tcase_add_test(kinds, its_card_lists_what_is_planted_and_lifts_what_is_emptied);
	tcase_add_test(specimens, space_sets_a_specimen_and_delete_lifts_it_before_the_ground);
	tcase_add_test(specimens, the_list_of_plants_says_how_many_stand_and_fill);
	tcase_add_test(specimens, no_plant_stands_on_a_path_and_no_image_does);
	tcase_add_test(specimens, shapes_are_not_laid_of_plants);
	tcase_add_test(specimens, a_letter_that_is_nobodys_is_told_with_plants_among_the_rest);
	tcase_add_test(specimens, a_specimen_is_marked_after_snags_and_before_axes);
	tcase_add_test(specimens, folding_brings_plants_over);
	tcase_add_test(specimens, a_crop_that_takes_plants_asks_first);
	tcase_add_test(bands, a_band_of_a_bed_is_filled_with_its_image_and_emptied);
	tcase_add_test(bands, only_a_bed_is_filled);
	tcase_add_test(bands, without_a_plant_in_hand_it_is_asked_which);
	return suite;
}
